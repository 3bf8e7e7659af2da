from collections.abc import Callable

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.q_table import read_q_matrix
from onewhole.mastery.right_wrong import RightWrong
from onewhole.mastery.right_wrong_table import pupil_rows, read_right_wrong
from onewhole.mastery.seen_codes import SeenCodes
from onewhole.mastery.table_rows import TableRefused
from tests.kit.skill_tables import THREE, counted, q_csv, responses_csv

PROBLEMS = ("1", "2", "3")


def cut(text: str) -> list[str]:
    """The lines of a text, as a file gives them."""
    return text.splitlines(keepends=True)


def answers(text: str) -> RightWrong:
    """Read answers to three problems."""
    return read_right_wrong(lambda: cut(text), PROBLEMS, "class.csv")


def q_matrix(text: str) -> QMatrix:
    """Read a Q-matrix."""
    return read_q_matrix(cut(text), "q.csv")


@pytest.mark.parametrize(
    ("read", "text", "line", "column", "what"),
    [
        (
            answers,
            "pupil,1,2,3\nK01,1,0,1\nK02,1,x,1\n",
            3,
            3,
            "the cell is “x”, and 1, 0 or nothing is wanted",
        ),
        (
            answers,
            "pupil,1,2,3\nK01,1,0,1\nK02,1,0\n",
            3,
            3,
            "this row has 3 cells, and the first line has 4",
        ),
        (answers, "pupil,1,2,3\nK01,1,0,1,1\n", 2, 5, "this row has 5 cells, and the first line has 4"),
        (
            answers,
            "pupil,1,2,3\nK01,1,0,1\n\nK01,1,1,1\n",
            4,
            1,
            "pupil “K01” is here a second time, after line 2",
        ),
        (answers, "pupil,1,2,3\n,1,0,1\n", 2, 1, "these answers have no pupil"),
        (answers, "pupil,1,2\nK01,1,0\n", 1, 1, "2 problems here, and 3 in the Q-matrix"),
        (answers, "pupil,1,2,4\nK01,1,0,1\n", 1, 4, "the Q-matrix has no problem “4”"),
        (answers, "pupil,1,2,2\nK01,1,0,1\n", 1, 4, "the problem “2” has two columns, 3 and 4"),
        (answers, "pupil,1,2,\nK01,1,0,1\n", 1, 4, "this column has no name"),
        (answers, "pupil,1,2,3\nK01,1,0,\nK02,1,0,\n", 1, 4, "nobody answered problem “3”"),
        (answers, "pupil,1,2,3\n", 1, 1, "there is no pupil here"),
        (answers, "\n \n", 1, None, "there is nothing in this table"),
        (answers, 'pupil,1,2,3\nK01,1,0,1\nK02,"1,0,1\n', 3, None, "from here on this is no table"),
        (q_matrix, "item,a,b\n1,1,2\n", 2, 3, "the cell is “2”, and 1 or 0 is wanted"),
        (q_matrix, "item,a,b\n1,1,\n", 2, 3, "the cell is “”, and 1 or 0 is wanted"),
        (q_matrix, "item,a,b\n1,1\n", 2, 2, "this row has 2 cells, and the first line has 3"),
        (q_matrix, "item,a,b\n1,1,0\n2,0,0\n", 3, 2, "problem “2” needs no skill"),
        (q_matrix, "item,a,b\n1,1,0\n1,0,1\n", 3, 1, "problem “1” is here a second time, after line 2"),
        (q_matrix, "item,a,b\n1,1,0\n,0,1\n", 3, 1, "this problem has no label"),
        (q_matrix, "item,a,b\n1,1,0\n", 1, 3, "no problem needs the skill “b”"),
        (q_matrix, "item,a,a\n1,1,0\n", 1, 3, "the skill “a” has two columns, 2 and 3"),
        (q_matrix, "item,a,\n1,1,0\n", 1, 3, "this column has no name"),
        (q_matrix, "item\n1\n", 1, 1, "there is no skill here"),
        (q_matrix, "item,a\n", 1, 1, "there is no problem here"),
        (
            q_matrix,
            "item,a,b,c,d,e,f,g,h,i,j,k\n1,1,1,1,1,1,1,1,1,1,1,1\n",
            1,
            12,
            "11 skills, and 2,048 kinds of pupil",
        ),
        (q_matrix, "item,a\n" + "".join(f"{at},1\n" for at in range(101)), 102, 1, "more than 100 problems"),
    ],
)
def test_what_cannot_be_read_is_refused_with_its_place(
    read: Callable[[str], object], text: str, line: int, column: int | None, what: str
) -> None:
    """What is wrong, in which file, line and column, and what to do next."""
    with pytest.raises(TableRefused) as refused:
        read(text)
    assert any(
        what in one.what and (one.line, one.column) == (line, column) and one.remedy
        for one in refused.value.refusals
    )
    assert {one.file for one in refused.value.refusals} <= {"class.csv", "q.csv"}


def test_all_mistakes_are_told_at_once_and_not_without_end() -> None:
    """Two mistakes are both told; of a hundred, twenty."""
    with pytest.raises(TableRefused, match="3 things in the table need a change") as refused:
        answers("pupil,1,2,3\nK01,1,x,1\nK02,y,0\nK01,1,1,1\n")
    assert [one.line for one in refused.value.refusals] == [2, 3, 4]
    with pytest.raises(TableRefused) as refused:
        answers("pupil,1,2,3\n" + "".join(f"K{at},{at + 2},1,1\n" for at in range(100)))
    assert len(refused.value.refusals) == 20


def test_columns_stand_in_any_order_and_cells_may_have_spaces() -> None:
    """By their labels; semicolons and tabs divide too."""
    assert answers("code;3;1;2\nA; 1 ;0;\nB;0;0;1\n").rows == ("0.1", "010")
    assert answers("code\t3\t1\t2\nA\t1\t0\t1\nB\t1\t0\t1\n").times == (2,)


@given(st.lists(st.text("01.", min_size=10, max_size=10), min_size=1, max_size=30))
def test_a_table_comes_back_as_it_was_written(rows: list[str]) -> None:
    """Counts of equal rows, and each pupil's own row in the order of the file."""
    rows.append("1" * 10)
    table = counted(THREE, rows)
    text = responses_csv(table)
    read = read_right_wrong(lambda: cut(text), THREE.problems)
    assert dict(zip(read.rows, read.times, strict=True)) == dict(zip(table.rows, table.times, strict=True))
    told = list(pupil_rows(cut(text), THREE.problems))
    assert [code for code, _ in told] == [f"K{at}" for at in range(1, len(rows) + 1)]
    assert [row for _, row in told] == [
        row for row, times in zip(table.rows, table.times, strict=True) for _ in range(times)
    ]


def test_a_q_matrix_comes_back_as_it_was_written() -> None:
    """Skills, problems and what they need."""
    assert read_q_matrix(cut(q_csv(THREE))) == THREE


def test_a_code_that_was_there_is_always_known() -> None:
    """Of 50,000 codes every second coming is known, and at most 1 in 100 of the first comings is doubted."""
    seen = SeenCodes()
    assert sum(seen.add(f"pupil {at}") for at in range(50_000)) < 500
    assert all(seen.add(f"pupil {at}") for at in range(50_000))


def test_codes_that_only_may_be_twice_are_let_pass(monkeypatch: pytest.MonkeyPatch) -> None:
    """Where the field of marks takes every code for known, only the code that is there twice is refused."""
    monkeypatch.setattr(SeenCodes, "add", lambda _self, _code: True)
    assert answers("pupil,1,2,3\nK01,1,0,1\nK02,1,0,1\n").pupils == 2
    with pytest.raises(TableRefused, match="Pupil “K02” is here a second time, after line 3"):
        answers("pupil,1,2,3\nK01,1,0,1\nK02,1,0,1\nK02,1,0,1\n")


@pytest.mark.parametrize(
    ("rows", "times"),
    [((), ()), (("101",), ()), (("10",), (1,)), (("1x1",), (1,)), (("101", "101"), (1, 1)), (("101",), (0,))],
)
def test_what_is_no_table_cannot_be_built(rows: tuple[str, ...], times: tuple[int, ...]) -> None:
    """No row, no pupil, another width, another sign, a row twice."""
    with pytest.raises(ValueError, match=r"a table has|a row"):
        RightWrong(PROBLEMS, rows, times)
