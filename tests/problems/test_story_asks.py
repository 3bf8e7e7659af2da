"""What a statement asks for, seen as a story."""

import pytest

from onewhole.number.quantity import whole
from onewhole.problems.story_asks import Asks, NoStoryError, asked
from onewhole.statements.expression import minus
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question


@pytest.mark.parametrize(
    ("typed", "asks", "first"),
    [
        ("5 - 1 3/8", Asks.DIFFERENCE, (5,)),
        ("? = 4 - 1 3/8", Asks.DIFFERENCE, (4,)),
        ("2 4/5 + 1 3/5", Asks.SUM, (2, 4)),
        ("5/6 ? 7/8", Asks.WHICH, (None, 5)),
        ("9 - ? = 3 1/2", Asks.CHANGE_TAKEN, (9,)),
        ("3 1/2 = 9 - ?", Asks.CHANGE_TAKEN, (9,)),
        ("3 + ? = 5", Asks.CHANGE_ADDED, (3,)),
        ("? - 2 = 3", Asks.START_TAKEN, (2,)),
        ("? + 2 = 5", Asks.START_ADDED, (2,)),
        ("7 2/6 = 6 ?/6", Asks.RENAMED, (7, 2)),
        ("?/12 = 3/4", Asks.RENAMED, (None, 3)),
    ],
)
def test_what_is_unknown(typed: str, asks: Asks, first: tuple[int | None, ...]) -> None:
    """The unknown by its place, and the amount that is told first."""
    found = asked(read_statement(typed))
    assert (found.asks, found.first.counts) == (asks, first)


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("5 1/2 - 3 1/2 + 1 1/2", "no story is told about this problem"),
        ("1 + 2 + 3 + 4", "no story is told about this problem"),
        ("3 x 2/5", "no story is told about this problem"),
        ("5/6 < 7/8", "no story is told about this problem"),
        ("1 + 1 ? 3", "no story is told about this problem"),
        ("3/4 = 9/?", "no story is told about this problem"),
        ("39/8 = ? 7/8", "no story is told about this problem"),
        ("5.2 = 5 ?/10", "no story is told about this problem"),
        ("7", "no story is told about this problem"),
        ("5 - 0", "an amount of 0"),
        ("4 tens 12 ones - 27", "overfull place"),
    ],
)
def test_what_is_not_told(typed: str, why: str) -> None:
    """Each refusal says why, and what may be done."""
    with pytest.raises(NoStoryError, match=why) as refused:
        asked(read_statement(typed))
    assert refused.value.remedy


def test_below_zero() -> None:
    """No story ends below zero."""
    with pytest.raises(NoStoryError, match="below zero"):
        asked(Question(minus(whole(2), whole(3))))
