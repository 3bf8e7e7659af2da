"""Problems that others printed with their answers, of every topic: worked, marked, and wrong ones recognised.

Source: ../shared/domain/check-values-2.csv, of which `check_values_2.csv` beside this file holds every row:
how it is typed here, its answer, which printed or predicted wrong answers are those of a pattern, and the
source of the row. A row that cannot be served says why not.
"""

import csv
from pathlib import Path

import pytest

from onewhole.errors import InputError
from onewhole.marking.reading.expected import expect_worked
from onewhole.marking.reading.writing import alike
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.reading import read_answer, read_statement
from onewhole.statements.statement import NumberRow, Statement
from tests.kit.how_much import sample

ROWS = tuple(
    csv.DictReader(Path(__file__).with_name("check_values_2.csv").read_text(encoding="utf-8").splitlines())
)
SERVED = [row for row in ROWS if row["answer"]]
RECOGNISED = [row for row in ROWS if row["recognised"]]
REFUSED = [row for row in ROWS if row["typed"] and not row["answer"]]
EVERY = sample(20, 2, 1)


def _worked(row: dict[str, str]) -> WorkedProblem:
    statement: Statement = read_statement(row["typed"])
    return WorkedProblem(Problem("1", statement, row["typed"]))


def test_how_many_rows_are_held() -> None:
    """Of 354 rows 264 are served or refused rightly; each other says why not, and each has its source."""
    assert len(ROWS) == 354
    assert (len(SERVED), len(REFUSED)) == (263, 1)
    assert all(bool(row["typed"]) != bool(row["why_not"]) for row in ROWS)
    assert all(row["source"] for row in ROWS)


@pytest.mark.parametrize("start", range(EVERY))
def test_a_printed_answer_is_worked_and_marked_right(start: int) -> None:
    """The working of every row ends with an answer of the printed amount, which is marked right."""
    for row in SERVED[start::EVERY]:
        one = _worked(row)
        assert one.working, row["id"]
        if isinstance(one.answer, NumberRow):
            assert [str(number) for number in one.answer.values] == row["answer"].split(", "), row["id"]
        else:
            assert expect_worked(one).is_right(read_answer(row["answer"])), row["id"]


def test_a_wrong_answer_is_recognised() -> None:
    """What was printed as a wrong choice, or predicted, is what these patterns write, and not right."""
    for row in RECOGNISED[:: sample(4, 1)]:
        asked = expect_worked(_worked(row))
        for told in row["recognised"].split(";"):
            wrong, _, patterns = told.rpartition("=")
            read = read_answer(wrong)
            assert not asked.is_right(read)
            assert set(asked.exact[alike(read)]) >= set(patterns.split()), row["id"]


def test_nothing_is_divided_by_zero() -> None:
    """The one row without an answer is refused."""
    for row in REFUSED:
        with pytest.raises(InputError):
            read_statement(row["typed"])
