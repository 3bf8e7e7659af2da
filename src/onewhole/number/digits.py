"""Whole numbers and decimals: whether they stand in digits, and which places are named where they do not."""

from onewhole.number.ladder import TEN, Style
from onewhole.number.quantity import Quantity, trimmed
from onewhole.number.unit import ONE, Unit


def in_digits(quantity: Quantity) -> bool:
    """Say whether a whole number or decimal is written in digits: no place is overfull.

    A whole number that begins with an empty place is not: 07 would be read as 7.
    """
    counts = quantity.amounts
    led_by_zero = len(counts) > 1 and counts[0] == 0 and quantity.ladder.style is Style.PLACES
    return max(counts) < TEN and not led_by_zero


def stands_in_digits(number: Quantity) -> bool:
    """Say whether a number is a whole number or a decimal that is written in digits, without spare zeros."""
    return number.ladder.style in {Style.PLACES, Style.DECIMAL} and in_digits(trimmed(number))


def named_places(quantity: Quantity) -> tuple[tuple[int, Unit], ...]:
    """Return the places that are written when a number stands in place words: 4 tens 12 ones.

    Empty places are left out, but not the largest above the ones and the smallest below them, from which a
    reader knows which places the number has.

    >>> from onewhole.number.ladder import places
    >>> [count for count, _ in named_places(Quantity(places(3), (0, 12, 0)))]
    [0, 12]
    """
    units = quantity.ladder.units
    outer = {unit for unit in (units[0], units[-1]) if (unit is units[0]) == (unit.size > 1) and unit != ONE}
    pairs = tuple(zip(quantity.amounts, units, strict=True))
    return tuple((count, unit) for count, unit in pairs if count or unit in outer) or pairs[-1:]
