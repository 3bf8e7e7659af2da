"""Numbers in order as answers: read, marked, and what is said of a wrong row."""

import pytest

from onewhole.findings.in_answer import Remark, Tier
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.expected import expect
from onewhole.marking.reading.mark import Mark, Verdict, mark
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_statement

ASKED = Problem("1", read_statement("order 1/8, 1/2, 1/4"), "order 1/8, 1/2, 1/4")


def marked(written: str, problem: Problem = ASKED) -> Mark:
    """Mark one answer."""
    return mark(expect(problem), read_written(written, problem))


@pytest.mark.parametrize(
    "written", ["1/8, 1/4, 1/2", "1/8 < 1/4 < 1/2", "1/8; 1/4; 1/2", " 1/8,1/4,1/2 ", "1/8, 2/8, 0.5"]
)
def test_a_right_row(written: str) -> None:
    """With commas or signs, in any equal form."""
    assert marked(written).verdict is Verdict.RIGHT
    assert marked(written).remarks == ()


@pytest.mark.parametrize(
    ("written", "patterns", "tier", "remarks"),
    [
        ("1/2, 1/4, 1/8", ("C08", "C13"), Tier.EXACT, (Remark.OTHER_END,)),
        ("1/2 < 1/4 < 1/8", ("C08", "C13"), Tier.EXACT, (Remark.OTHER_END,)),
        ("1/2 > 1/4 > 1/8", ("C08", "C13"), Tier.EXACT, (Remark.OTHER_END,)),
        ("1/8 > 1/4 > 1/2", (), None, (Remark.SIGNS_DO_NOT_FIT,)),
        ("1/8, 1/2, 1/4", (), None, ()),
        ("1/8, 1/4", (), None, (Remark.OTHER_NUMBERS,)),
        ("1/8, 1/4, 1/2, 1/2", (), None, (Remark.OTHER_NUMBERS,)),
        ("1/2", (), None, (Remark.OTHER_NUMBERS,)),
    ],
)
def test_a_wrong_row(
    written: str, patterns: tuple[str, ...], tier: Tier | None, remarks: tuple[Remark, ...]
) -> None:
    """The ideas whose order it is, and what else is to be seen: the other end, other numbers, false signs."""
    found = marked(written)
    assert found.verdict is Verdict.WRONG
    assert (found.patterns, found.tier, found.remarks) == (patterns, tier, remarks)


def test_equal_numbers_stand_in_either_order() -> None:
    """1/2 and 2/4 are one amount."""
    problem = Problem("1", read_statement("order 3/4, 1/2, 2/4"), "order 3/4, 1/2, 2/4")
    rows = ("1/2, 2/4, 3/4", "2/4, 1/2, 3/4", "1/2 = 2/4 < 3/4", "2/4 < 1/2 < 3/4")
    verdicts = [marked(row, problem).verdict for row in rows]
    assert verdicts == [Verdict.RIGHT, Verdict.RIGHT, Verdict.RIGHT, Verdict.WRONG]


def test_from_the_other_end() -> None:
    """Asked from greatest, the row from least is the other end."""
    problem = Problem("1", read_statement("order 1/8, 1/2 from greatest"), "order 1/8, 1/2 from greatest")
    assert marked("1/2, 1/8", problem).verdict is Verdict.RIGHT
    assert marked("1/8, 1/2", problem).remarks == (Remark.OTHER_END,)


@pytest.mark.parametrize(
    ("written", "why"),
    [
        ("1/8 1/4 1/2", "This does not belong to the expression"),
        ("kite", "A number is missing"),
        ("1/8, < 1/4", "A number is missing between two commas or signs"),
        ("1/8, 1/4 < 1/2", "Here stand commas and signs between the numbers"),
    ],
)
def test_what_cannot_be_read_is_kept_and_looked_at(written: str, why: str) -> None:
    """Nothing is guessed."""
    read = read_written(written, ASKED).read
    assert isinstance(read, Unreadable)
    assert read.why.startswith(why)
    assert read.why.endswith("Look at the paper; an answer is such as 1/2, 2/3, 3/4")
    assert marked(written).verdict is Verdict.UNREADABLE


def test_a_blank_is_a_blank() -> None:
    """An empty cell, or a dash."""
    assert marked("").verdict is marked("-").verdict is Verdict.BLANK
