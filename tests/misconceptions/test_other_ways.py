"""Other ways to write what the same wrong step gives, and lines that say what went wrong."""

import pytest

from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Luck
from onewhole.misconceptions.slip import Slip
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Relation


def slip_of(key: str, problem: str) -> Slip:
    """Return the slip, which must be there."""
    slip = by_id(key).slip(read_statement(problem))
    assert slip is not None
    return slip


def written(outcomes: tuple[Outcome, ...]) -> list[str]:
    """Return answers as text."""
    return [text(other) for other in outcomes if not isinstance(other, Relation)]


@pytest.mark.parametrize(
    ("key", "problem", "outcomes"),
    [
        ("A18", "5 4/6 - 2 1/6", ["3 3/0", "3"]),
        ("A18", "5 4/6 - 5 1/6", ["3/0", "3"]),
        ("A18", "3/5 - 2/5", ["1/0", "1"]),
        ("A32", "5 4/6 - 2 1/6", ["3 2/6", "3 4/6"]),
        ("A33", "5 4/6 - 2 1/6", ["4 3/6", "2 3/6"]),
        ("A33", "5/6 - 2/6", ["1 3/6"]),
        ("A25", "4 3/8 - 5/8", ["12/8", "7/8"]),
        ("A26", "4 3/8 - 5/8", ["4", "3 3/8"]),
        ("A26", "4 - 3/8", ["4"]),
        ("A25", "4 3/8 - 1 5/8", ["7/8"]),
        ("B02", "1/2 - 2/5", ["1/3", "-1/-3"]),
        ("B02", "3/4 - 1/6", ["2/2", "2/-2"]),
        ("B02", "4/6 - 5/8", ["1/2", "-1/-2"]),
        ("B02", "3/5 - 1/2", ["2/3"]),  # nothing is below zero
        ("B02", "3 1/4 - 1 3/5", ["2 2/1"]),  # wholes are worked apart
        ("B13", "3/5 + 1/2", ["4/6", "4/8"]),
        ("B13", "2/3 - 1/2", ["1/2"]),  # one fewer than 1 is no denominator
    ],
)
def test_other_ways(key: str, problem: str, outcomes: list[str]) -> None:
    """The likeliest comes first; what would be right, below zero or the same again is left out."""
    assert written(slip_of(key, problem).outcomes) == outcomes


@pytest.mark.parametrize(
    ("key", "problem", "lines"),
    [
        ("A02", "9 5/8 - 4 6/8", ["9 13/8 - 4 6/8", "(9 - 4) + (13/8 - 6/8)", "5 7/8"]),
        ("A05", "9 5/8 - 4 6/8", ["8 6/8 - 4 6/8", "(8 - 4) + (6/8 - 6/8)", "4"]),
        ("A05", "9 1/8 - 4 6/8", ["(8 - 4) + (6/8 - 2/8)", "4 4/8"]),
        ("A08", "9 5/8 - 4 6/8", ["9 13/8 - 3 6/8", "(9 - 3) + (13/8 - 6/8)", "6 7/8"]),
        ("A30", "9 5/8 - 4 6/8", ["(9 5/8 - 2/8) - (4 6/8 + 2/8)", "9 3/8 - 5", "4 3/8"]),
        ("P03", "2 4/5 + 1 3/5", ["(2 + 1) + (4/5 + 3/5)", "3 7/5", "3 2/5"]),
        ("B07", "3/4 + 1/8", ["7/8 + 1/8", "8/8"]),
        ("G01", "7 h 8 min - 2 h 53 min", ["6 h 108 min - 2 h 53 min", "(6 h - 2 h) + (108 min - 53 min)"]),
        ("E02", "143 - 28", ["1 hundred 4 tens 13 ones - 28", "100 + (40 - 20) + (13 ones - 8)", "125"]),
    ],
)
def test_the_lines_tell_what_went_wrong(key: str, problem: str, lines: list[str]) -> None:
    """A working with a wrong step reads like one a child wrote."""
    assert [text(line.says) for line in slip_of(key, problem).lines][1 : len(lines) + 1] == lines


def test_the_false_line_carries_no_reason() -> None:
    """Nothing makes it follow; the true lines round it say why they do."""
    slip = slip_of("A31", "9 5/8 - 4 6/8")
    assert slip.false_at is not None
    assert slip.lines[slip.false_at].because is None
    assert all(line.because for line in slip.lines[1 : slip.false_at])


@pytest.mark.parametrize(
    ("key", "problem", "lucky"),
    [
        ("A04", "4 1/10 - 2 8/10", True),
        ("A27", "4 1/10 - 2 8/10", True),
        ("A03", "7 2/6 - 3 5/6", True),
        ("A01", "5 4/6 - 2 1/6", False),  # does not apply
        ("A01", "7 2/6 - 3 5/6", False),  # is wrong
        ("A35", "9 5/8 - 4 6/8", False),  # is of form
        ("P06", "2/5 + 2/5", True),
        ("C08", "1/4 ? 5/6", True),
    ],
)
def test_luck(key: str, problem: str, lucky: bool) -> None:
    """A pattern that applies and still gives the right answer is right by luck."""
    assert (by_id(key).meets(read_statement(problem)) is Luck.RIGHT) == lucky
