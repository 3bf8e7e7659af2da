"""How much room a number takes across, so that it stands at its place, whole, and touches no other."""

from fractions import Fraction

from onewhole.number.clock import shown
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import DOLLAR

#: The height of digits on a line, in millimetres.
DIGITS = Fraction(4)
#: What a digit or letter, a comma, point, colon or blank, and an m or w takes across at that height. Source:
#: the widths of Lexend's characters, rounded up.
SIGN, SMALL_SIGN, WIDE_SIGN = Fraction(18, 5), Fraction(8, 5), Fraction(11, 2)
#: Numerators and denominators are smaller, and their bar reaches out a little.
PART, REACH = Fraction(3, 4), Fraction(5, 2)
#: The least blank from one label to the next.
BLANK = Fraction(2)
THOUSAND = 3


def across(number: Quantity) -> Fraction:
    """Return how many millimetres a number takes across, written with digits of the usual height.

    >>> from onewhole.number.quantity import whole
    >>> across(whole(60)), across(whole(1_000_000))
    (Fraction(36, 5), Fraction(142, 5))
    """
    ladder = number.ladder
    if ladder.clock:
        hour, _, half = shown(number)
        return SIGN * (len(str(hour)) + 2) + SMALL_SIGN + (SIGN + WIDE_SIGN + SMALL_SIGN * 3 if half else 0)
    match ladder.style:
        case Style.MEASURE:
            parts = [part for part in zip(number.counts, ladder.units, strict=True) if part[0] is not None]
            return sum(
                (_digits(count or 0) + SMALL_SIGN + _letters(unit.mark) for count, unit in parts),
                SMALL_SIGN * (len(parts) - 1),
            )
        case Style.MIXED:
            wholes, top = number.counts
            tall = max(len(str(top or 0)), len(str(ladder.denominator)))
            before = Fraction(0) if wholes is None else _digits(wholes)
            return before + SIGN * PART * tall + REACH + _mark(ladder.mark)
        case Style.PLACES | Style.DECIMAL:
            places = SMALL_SIGN + SIGN * ladder.after if ladder.after else Fraction(0)
            return _digits(int(number.value)) + places + _mark(ladder.mark)


def _digits(count: int) -> Fraction:
    """Return what a whole number takes, with its commas."""
    digits = len(str(count))
    return SIGN * digits + SMALL_SIGN * ((digits - 1) // THOUSAND)


def _mark(mark: str) -> Fraction:
    """Return what a unit beside a number takes, with the blank before it."""
    if not mark:
        return Fraction(0)
    return SIGN if mark == DOLLAR else SMALL_SIGN + _letters(mark)


def _letters(mark: str) -> Fraction:
    return sum((WIDE_SIGN if letter in "mw" else SIGN for letter in mark), Fraction(0))
