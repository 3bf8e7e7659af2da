"""A wrong worked example: one false equals sign, a true mend, and no name of a pattern."""

import pytest

from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.sheets.find_the_slip import FindTheSlip, find_the_slip, looks_like, wrong_lines
from onewhole.statements.reading import read_expression, read_statement
from onewhole.statements.statement import Statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

ASKED = read_statement("9 5/8 - 4 6/8")


def lines(*typed: str) -> tuple[object, ...]:
    """Typed lines as they are read."""
    return tuple(map(read_expression, typed))


def made(model: str, *patterns: str, taken: tuple[Statement, ...] = (), skip: int = 0) -> FindTheSlip:
    """An example of some patterns; there is one."""
    found = find_the_slip([read_statement(model)], patterns, REGROUP_FIRST, label="7", taken=taken, skip=skip)
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("pattern", "would_be"),
    [
        ("A01", "(6 - 3) + (9/8 - 2/8)"),
        ("A02", "6 9/8 - 3 2/8"),
        ("A09", "3 7/8"),
        ("A24", "57/8 - 26/8"),
        ("A11", "6 9/8 - 3 2/8"),
    ],
)
def test_what_would_be_true(pattern: str, would_be: str) -> None:
    """A right line built like the false one, or else the line that follows, or else the answer."""
    found = made("9 5/8 - 4 6/8", pattern, skip=1)
    assert text(found.lines[0]) == "7 1/8 - 3 2/8"
    assert text(found.would_be) == would_be


def test_of_a_measure_and_of_columns() -> None:
    """The same rule on every ladder."""
    feet = made("5 ft 2 in - 2 ft 7 in", "G02")
    assert (text(feet.lines[1]), text(feet.would_be)) == ("7 ft 11 in - 5 ft 8 in", "7 ft 13 in - 5 ft 8 in")
    tens = made("71 - 38", "E12")
    assert (text(tens.lines[1]), text(tens.would_be)) == ("7 tens 10 ones - 64", "7 tens 11 ones - 64")


def test_the_problem_is_a_new_one() -> None:
    """Not the model, none that is taken; another for another group."""
    first = made("9 5/8 - 4 6/8", "A02")
    assert first.problem != ASKED
    assert made("9 5/8 - 4 6/8", "A02", taken=(first.problem,)).problem != first.problem
    assert made("9 5/8 - 4 6/8", "A02", skip=1).problem != first.problem


def test_the_first_pattern_with_anything_to_find() -> None:
    """A35 leaves a right amount in a form, A18 writes no number: A02 is the first that can be mended."""
    assert made("9 5/8 - 4 6/8", "A35", "A18", "A02", "A01").pattern == "A02"


@pytest.mark.parametrize(
    ("model", "pattern"),
    [
        ("9 5/8 - 4 6/8", "A35"),  # no false sign
        ("9 5/8 - 4 6/8", "A18"),  # the answer has no value and stands on no line
        ("6 7/8 - 3 2/8", "A02"),  # does not show here
        ("5/6 ? 7/8", "C09"),  # no chain of equal amounts
        ("6 7/8 - 3 2/8", "A32"),  # one equals sign only
    ],
)
def test_nothing_to_find(model: str, pattern: str) -> None:
    """Then there is no example, and that is no mistake."""
    assert find_the_slip([read_statement(model)], [pattern], REGROUP_FIRST, label="7") is None
    assert find_the_slip([], [pattern], REGROUP_FIRST, label="7") is None


def test_what_a_pupil_need_not_write_is_left_out() -> None:
    """An aside of the pattern's working does not stand among the wrong lines."""
    slip = by_id("A02").slip(ASKED)
    assert slip is not None
    assert wrong_lines(slip) == lines("9 5/8 - 4 6/8", "9 13/8 - 4 6/8", "5 7/8")


@pytest.mark.parametrize(
    ("said", "sign", "would_be", "why"),
    [
        (("9 - 4", "5"), 1, "5", "one of them is false"),
        (("9 - 4", "6", "6"), 2, "6", "one of them is false"),
        (("9 - 4", "5", "5"), 1, "5", "one of them is false"),
        (("9 - 4", "6", "7"), 1, "5", "one of them is false"),
        (("9 - 4", "6", "6"), 1, "6", "not equal"),
        (("9 - 4", "6", "6"), 1, "5 in", "not equal"),
    ],
)
def test_only_one_false_sign_and_a_true_mend(
    said: tuple[str, ...], sign: int, would_be: str, why: str
) -> None:
    """Anything else cannot be built."""
    with pytest.raises(ValueError, match=why):
        FindTheSlip("1", tuple(map(read_expression, said)), sign, read_expression(would_be), "A02")


@pytest.mark.parametrize(
    ("one", "other", "alike"),
    [
        ("8 13/8 - 4 6/8", "9 13/8 - 4 6/8", True),
        ("8 13/8 - 4 6/8", "9 13/6 - 4 6/6", False),
        ("8 - 4", "8 + 4", False),
        ("8 - 4 - 1", "8 - 4", False),
        ("8", "8 - 4", False),
        ("3 x 2/5", "5 x 1/5", True),
        ("(44 - 23)/6", "(45 - 23)/6", True),
        ("(44 - 23)/6", "44 - 23", False),
    ],
)
def test_lines_that_look_alike(one: str, other: str, alike: bool) -> None:
    """The same signs between numbers in the same units."""
    assert looks_like(read_expression(one), read_expression(other)) == alike
