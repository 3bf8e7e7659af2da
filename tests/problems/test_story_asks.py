"""What a statement asks for, seen as a story."""

import pytest

from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity, whole
from onewhole.problems.answer import answer
from onewhole.problems.story_asks import NoStoryError, asked
from onewhole.problems.story_question import Asks
from onewhole.statements.expression import minus
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import AnotherName, Question


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
        ("2 + ? + 3 = 9", Asks.ONE_OF_THREE, (2,)),
        ("order 5, 3, 4", Asks.IN_ORDER, (5,)),
        ("round 4567 to the nearest hundred", Asks.ROUNDED, (4, 5, 6, 7)),
        ("12/18 = ?", Asks.OTHER_FORM, (None, 12)),
        ("26 in = ?", Asks.OTHER_UNITS, (26,)),
        ("3 x 2/5", Asks.TIMES, (3,)),
        ("? = 3 x 4", Asks.TIMES, (3,)),
        ("1/2 x 3/4", Asks.PART_OF, (None, 1)),
        ("2 ft 3 in x 4", Asks.EACH, (2, 3)),
        ("9:45 to 11:20", Asks.TIME_BETWEEN, (9, 45)),
        ("9:45 + 20 min", Asks.TIME_LATER, (9, 45)),
        ("11:20 - 45 min", Asks.TIME_EARLIER, (11, 20)),
        ("87 / 4", Asks.DIVIDED_LEFT, (8, 7)),
        ("88 / 4", Asks.DIVIDED, (8, 8)),
        ("87 / 4, groups needed", Asks.GROUPS_NEEDED, (8, 7)),
        ("87 / 4, full groups", Asks.GROUPS_FULL, (8, 7)),
        ("87 / 4, left over", Asks.THINGS_LEFT, (8, 7)),
        ("3 / 4", Asks.DIVIDED, (3,)),
        ("factors of 36", Asks.FACTORS, (3, 6)),
        ("multiples of 7 to 50", Asks.MULTIPLES, (7,)),
        ("7 - 3 - 2", Asks.LESS_LESS, (7,)),
        ("5 1/2 - 3 1/2 + 1 1/2", Asks.LESS_MORE, (5, 1)),
        ("9 - (2 + 3)", Asks.LESS_BOTH, (9,)),
        ("9 - (5 - 2)", Asks.LESS_PART, (9,)),
        ("4 + (3 x 7)", Asks.MORE_TIMES, (4,)),
        ("18 / 6 + 4 x (5 - 2)", Asks.SHARE_AND_TIMES, (1, 8)),
    ],
)
def test_what_is_unknown(typed: str, asks: Asks, first: tuple[int | None, ...]) -> None:
    """The unknown by its place, and the amount that is told first."""
    found = asked(read_statement(typed))
    assert (found.asks, found.numbers[0].counts) == (asks, first)


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("2 ft 3 in x 4 x 2", "no story is told about this problem"),
        ("2 + 3 x 4 x 5", "no story is told about this problem"),
        ("9 - 1 x 4", "no story is told about this problem"),
        ("5 + 43 / 6", "no story is told about this problem"),
        ("(3 + 20) / 4", "no story is told about this problem"),
        ("7 in / 2", "no story is told about this problem"),
        ("3 x (7 - 7)", "no story is told about this problem"),
        ("1 + 2 + 3 + 4", "no story is told about this problem"),
        ("2 x 3 x 4", "no story is told about this problem"),
        ("2 ft 3 in x 1/2", "no story is told about this problem"),
        ("9 - ? - 3 = 2", "no story is told about this problem"),
        ("9:45 + 1 h - 5 min", "no story is told about this problem"),
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


@pytest.mark.parametrize(
    ("typed", "form"),
    [
        ("12/18", NumberForm.SIMPLEST),
        ("11/4", NumberForm.MIXED),
        ("14/8", NumberForm.MIXED),
        ("2 3/4", NumberForm.FRACTION),
        ("2 6/8", NumberForm.SIMPLEST),
        ("0.75", NumberForm.FRACTION),
        ("1.5", NumberForm.MIXED),
    ],
)
def test_a_number_alone_asks_for_the_name_it_is_led_to(typed: str, form: NumberForm) -> None:
    """What a story asks in words is answered by the very number that the working leads to."""
    alone = read_statement(f"{typed} = ?")
    found = asked(alone)
    assert found.wanted is form
    right = answer(alone)
    assert isinstance(right, Quantity)
    assert AnotherName(found.numbers[0], form).answered_by(right)


def test_below_zero() -> None:
    """No story ends below zero."""
    with pytest.raises(NoStoryError, match="below zero"):
        asked(Question(minus(whole(2), whole(3))))
