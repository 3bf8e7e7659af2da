import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import value
from onewhole.statements.reading import read_quantity, read_statement
from onewhole.statements.statement import MissingNumber
from onewhole.working.missing import work_missing
from onewhole.working.reasons.columns import InColumns
from onewhole.working.reasons.comparing import PartTaken, TakenAndLeft, UndoneToFind
from onewhole.working.reasons.taking import Left
from onewhole.working.working import Working
from onewhole.writers.plain import working_lines


def worked(typed: str) -> Working:
    """Find a missing number."""
    asked = read_statement(typed)
    assert isinstance(asked, MissingNumber)
    return work_missing(asked)


@pytest.mark.parametrize(
    ("typed", "lines", "found"),
    [
        ("7 2/6 = 6 ?/6", ("6 + 1 + 2/6 = 6 ?/6", "6 + 6/6 + 2/6 = 6 ?/6", "6 8/6 = 6 ?/6"), "8"),
        ("6 ?/6 = 7 2/6", ("6 ?/6 = 6 + 1 + 2/6", "6 ?/6 = 6 + 6/6 + 2/6", "6 ?/6 = 6 8/6"), "8"),
        ("3/4 = ?/12", ("(3 x 3)/(4 x 3) = ?/12", "9/12 = ?/12"), "9"),
        ("6/8 = 3/?", ("3/4 = 3/?",), "4"),
        ("6 8/6 = ? 2/6", ("7 2/6 = ? 2/6",), "7"),
        ("1 = ?/5", ("5/5 = ?/5",), "5"),
        ("? + 1 1/5 = 4", ("4 - 1 1/5 = ?", None, None, "3 5/5 - 1 1/5 = ?", None, "2 4/5 = ?"), "2 4/5"),
        ("9 - ? = 4", ("9 - 4 = ?", "5 = ?"), "5"),
        ("3 ft = 1 ft + ?", ("3 ft - 1 ft = ?", "2 ft = ?"), "2 ft"),
    ],
)
def test_line_by_line(typed: str, lines: tuple[str | None, ...], found: str) -> None:
    """Undo what stands beside the gap, work the other side, rename it until it looks like the gap."""
    working = worked(typed)
    assert working.answer == read_quantity(found)
    says = [line.says for line in working.lines[1:]]
    assert len(says) == len(lines)
    for said, line in zip(says, lines, strict=True):
        if line is not None and not line.endswith("= ?"):
            assert said == read_statement(line)
        elif line is not None:
            assert isinstance(said, MissingNumber)
            assert said.rest == getattr(read_statement(line), "asked", None)


@pytest.mark.parametrize("typed", ["9 - ? = 3 1/2", "3 1/2 = 9 - ?", "9 - 2 - ? = 3 1/2", "5 ft - ? = 2 ft"])
def test_a_part_that_is_taken_is_found_from_the_whole_and_what_is_left(typed: str) -> None:
    """Nothing is undone: the reason is part and whole, and what is found is not called what is left."""
    asked = read_statement(typed)
    assert isinstance(asked, MissingNumber)
    working = worked(typed)
    reason = working.lines[1].because
    assert isinstance(reason, TakenAndLeft)
    assert (value(reason.whole), value(reason.left)) == (
        sum(-value(part) if taken else value(part) for part, taken in asked.beside),
        value(asked.rest),
    )
    assert not any(isinstance(line.because, UndoneToFind) for line in working.lines)
    said = [line.because for line in working.lines if isinstance(line.because, PartTaken | Left)]
    assert isinstance(said[-1], PartTaken)
    assert said[-1].part == working.answer


def test_what_is_added_or_first_is_still_undone() -> None:
    """? + 1 = 4 and ? - 1 = 4 are undone."""
    for typed in ("? + 1 1/5 = 4", "? - 1 1/5 = 4"):
        assert isinstance(worked(typed).lines[1].because, UndoneToFind)


def test_the_last_line_is_written_by_the_pupil() -> None:
    """1 = ?/5 is not left without its 5/5."""
    assert not worked("1 = ?/5").lines[-1].aside


@pytest.mark.parametrize(
    ("typed", "found"), [("3 x 4 = 20 - ?", 8), ("2 x 3 + ? = 9", 3), ("4 + ? = 3 x 2 1/3", 3)]
)
def test_a_product_beside_the_blank_is_worked_in_its_step(typed: str, found: int) -> None:
    """By hand: 20 - 12, 9 - 6, 7 - 4."""
    assert worked(typed).answer == whole(found)


def test_the_number_is_a_whole_number_in_a_fraction() -> None:
    """In a fraction the answer is how many, not how much."""
    answer = worked("7 1/5 = ?/5").answer
    assert isinstance(answer, Quantity)
    assert answer == whole(36)


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("7 + 7 = ? + 7", "7"),
        ("9 + 8 = ? + 12", "5"),
        ("7 + 9 + 6 = ? + 12", "10"),
        ("2 x 3 + 4 = ? + 7", "3"),
        ("12 / 4 + 3 = ? + 1", "5"),
    ],
)
def test_what_is_not_added_in_columns_is_not_taken_in_columns(typed: str, found: str) -> None:
    """Numbers of one digit have no columns, and what they make is worked on as they were; it is printed."""
    working = worked(typed)
    assert isinstance(working.answer, Quantity)
    assert working.answer.value == int(found)
    in_columns = any(isinstance(line.because, InColumns) for line in working.lines)
    assert not in_columns or "x" in typed
    assert working_lines(working, ClassWords())[-1].endswith(f"is {found}.")
