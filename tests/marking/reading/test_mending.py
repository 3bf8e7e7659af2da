"""What would make a false equals sign true."""

import pytest

from onewhole.marking.reading.mending import mended
from onewhole.notations.text import text
from onewhole.statements.expression import kind, value
from onewhole.statements.reading import read_expression


@pytest.mark.parametrize(
    ("left", "right", "instead"),
    [
        ("7 2/6 - 3 5/6", "7 8/6 - 3 5/6", "6 8/6 - 3 5/6"),
        ("7 2/6", "7 8/6", "6 8/6"),
        ("7 2/6", "6 9/6", "6 8/6"),
        ("7 2/6", "40/6", "44/6"),
        ("9 5/8 - 4 6/8", "5 1/8", "4 7/8"),
        ("9 5/8 - 4 6/8", "4 1/8", "4 7/8"),
        ("9 5/8 - 4 6/8", "3 1/8", "4 7/8"),
        ("9 5/8 - 4 6/8", "40/8", "39/8"),
        ("9 5/8 - 4 6/8", "5", "4 7/8"),
        ("9 5/8 - 4 6/8", "9 5/8 - 5", "9 7/8 - 5"),
        ("9 5/8 - 4 6/8", "(9 - 4) + (6/8 - 5/8)", "4 7/8"),
        ("1/2 + 1/3", "2/5", "5/6"),
        ("52 - 27", "35", "25"),
        ("52 - 27", "4 tens 13 ones - 27", "4 tens 12 ones - 27"),
        ("5.2 - 2.7", "3.5", "2.5"),
        ("5 ft 2 in - 2 ft 7 in", "4 ft 12 in - 2 ft 7 in", "4 ft 14 in - 2 ft 7 in"),
        ("5 ft", "5", "5 ft"),
        ("3 x 2/7", "5/7", "6/7"),
        ("6/7", "2 x 2/7", "6/7"),
        ("7 1/6 + 2 5/6", "9 8/6", "9 6/6"),
    ],
)
def test_as_little_as_can_be_is_changed(left: str, right: str, instead: str) -> None:
    """One count where that is enough, else the amount as the false side was written, else the usual way."""
    before, after = read_expression(left), read_expression(right)
    found = mended(before, after)
    assert found is not None
    assert text(found) == instead
    assert (kind(found), value(found)) == (kind(before), value(before))


def test_nothing_stands_for_an_amount_below_zero() -> None:
    """3 - 5 has no answer in grade 4."""
    assert mended(read_expression("3 - 5"), read_expression("2")) is None


def test_nothing_stands_for_a_measure_that_does_not_come_out_even() -> None:
    """A fifth of 2 in is no whole number of inches."""
    assert mended(read_expression("1/5 x 2 in"), read_expression("1 in")) is None
