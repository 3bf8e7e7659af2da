"""Numbers to be rounded: read, refused, and what they lie between."""

from fractions import Fraction

import pytest

from onewhole.notations.text import printed, text
from onewhole.number.quantity import whole
from onewhole.number.unit import Unit
from onewhole.statements.reading import read_statement
from onewhole.statements.rounding import Rounding, halfway
from onewhole.statements.tokens import ReadingError

#: As it may be typed, and as it is written.
SPELLINGS = [
    ("round 4567 to hundreds", "round 4567 to the nearest hundred"),
    ("Round 4,567 to the nearest 100.", "round 4567 to the nearest hundred"),
    ("round 4567 to the nearest hundreds place", "round 4567 to the nearest hundred"),
    ("round 45678 to ten-thousands", "round 45678 to the nearest ten thousand"),
    ("round 456789 to hundred thousands", "round 456789 to the nearest hundred thousand"),
    ("round 999999 to the nearest million", "round 999999 to the nearest million"),
    ("round 3.46 to 0.1", "round 3.46 to the nearest tenth"),
    ("round 3.46 to ones", "round 3.46 to the nearest whole number"),
    ("round 2 5/8 to wholes", "round 2 5/8 to the nearest whole number"),
    ("round 26 in to feet", "round 26 in to the nearest foot"),
    ("round 2 h 40 min to the nearest hour", "round 2 h 40 min to the nearest hour"),
    ("round $3.46 to dollars", "round $3.46 to the nearest dollar"),
    ("round 75¢ to dollars", "round $0.75 to the nearest dollar"),
    ("round 346 cents to the nearest dime", "round $3.46 to the nearest dime"),
    ("round $3.46 to the nearest dime", "round $3.46 to the nearest dime"),
    ("round 5 5/8 in to inches", "round 5 5/8 in to the nearest inch"),
    ("round 5.27 km to tenths", "round 5.27 km to the nearest tenth"),
    ("round 4 tens 12 ones to the nearest ten", "round 4 tens 12 ones to the nearest ten"),
]


@pytest.mark.parametrize(("typed", "written"), SPELLINGS)
def test_every_spelling_is_read(typed: str, written: str) -> None:
    """Places by name or in digits, units in any spelling."""
    found = read_statement(typed)
    assert isinstance(found, Rounding)
    assert text(found) == written


def test_print_has_commas() -> None:
    """A number of four digits or more, as it is printed in the United States."""
    assert printed(read_statement("round 4567 to hundreds")) == "round 4,567 to the nearest hundred"


#: What cannot be rounded, where the mistake is, and what is said of it.
REFUSED = [
    ("round 4567", 11, "what to round to is missing: here the line ends"),
    ("round 4567 to kites", 15, "what to round to is no place and no unit: here there is “kites”"),
    ("round 45 to tenths", 13, "there is nothing smaller than this in the number to round off"),
    ("round 5 ft 8 in to tens", 20, "the number and what it is rounded to measure different things"),
    ("round 45 to feet", 13, "the number and what it is rounded to measure different things"),
    (
        "round 2 5/8 to tenths",
        16,
        "a number with a fraction is rounded to whole numbers or to a larger place",
    ),
    ("round ? to tens", 9, "a number that is rounded has no missing part: here there is “to”"),
    ("round 45 to tens and 3", 18, "this does not belong to the problem: here there is “and”"),
]


@pytest.mark.parametrize(("typed", "column", "said"), REFUSED)
def test_a_refusal_says_where_and_why(typed: str, column: int, said: str) -> None:
    """With its place in the line."""
    with pytest.raises(ReadingError) as refused:
        read_statement(typed)
    assert (refused.value.what, refused.value.column) == (said, column)


#: A number, its neighbors and what is halfway; worked out by hand.
BETWEEN = [
    ("4,567 to hundreds", "4500", "4600", "4550"),
    ("47 to hundreds", "0", "100", "50"),
    ("3.97 to tenths", "3.9", "4.0", "3.95"),
    ("34.6 to tens", "30", "40", "35"),
    ("2 2/3 to wholes", "2", "3", "2 1/2"),
    ("5 ft 8 in to feet", "5 ft", "6 ft", "5 ft 6 in"),
    ("$3.46 to dollars", "$3", "$4", "$3.50"),
    ("$3.46 to dimes", "$3.40", "$3.50", "$3.45"),
    ("5 5/8 in to inches", "5 in", "6 in", "5 1/2 in"),
    ("7 ft to yards", "2 yd", "3 yd", "2 yd 1 ft 6 in"),
]


@pytest.mark.parametrize(("typed", "low", "high", "middle"), BETWEEN)
def test_neighbors_and_halfway(typed: str, low: str, high: str, middle: str) -> None:
    """As far as the place, and no farther: 4.0 for tenths."""
    found = read_statement(f"round {typed}")
    assert isinstance(found, Rounding)
    assert tuple(map(text, (found.low, found.high, halfway(found)))) == (low, high, middle)


def test_a_stretch_that_does_not_hold_the_number_is_refused() -> None:
    """A line cannot say that 4,567 lies between 4,600 and 4,700."""
    with pytest.raises(ValueError, match="does not lie between"):
        Rounding(whole(4567), Unit(Fraction(100)), (whole(4600), whole(4700)))
