"""Counts on a ladder: an amount together with the way it is written."""

from dataclasses import dataclass
from fractions import Fraction

from onewhole.errors import OnewholeError
from onewhole.number.ladder import Ladder, Style, decimal, places
from onewhole.number.unit import Kind


class CannotRegroupError(OnewholeError, ValueError):
    """There is nothing on the rung to regroup."""


class NotOnLadderError(OnewholeError, ValueError):
    """The amount is not a whole number of the ladder's smallest unit."""


@dataclass(frozen=True, slots=True)
class Quantity:
    """An amount as written: one count a rung, ``None`` where the rung is not written at all.

    ``==`` means *written the same*; ``.value`` is the exact amount in the reference unit of the ladder's
    kind (ones, inches, ounces, minutes). So 4 8/5 and 5 3/5 have one value and are two quantities, and so
    are 39/8 (no wholes written) and 0 39/8.

    >>> from onewhole.number.ladder import mixed
    >>> Quantity(mixed(5), (4, 8)).value == Quantity(mixed(5), (5, 3)).value
    True
    >>> Quantity(mixed(5), (4, 8)) == Quantity(mixed(5), (5, 3))
    False
    """

    ladder: Ladder
    counts: tuple[int | None, ...]

    def __post_init__(self) -> None:
        """Refuse counts that do not fit the rungs, counts below zero, and nothing written at all."""
        if len(self.counts) != len(self.ladder.units):
            msg = f"{len(self.counts)} counts do not fit {len(self.ladder.units)} rungs"
            raise ValueError(msg)
        written = [count for count in self.counts if count is not None]
        if not written:
            msg = "at least one count must be written"
            raise ValueError(msg)
        if min(written) < 0:
            msg = f"a count cannot be below zero: {self.counts}"
            raise ValueError(msg)
        if self.ladder.style in {Style.PLACES, Style.DECIMAL} and len(written) != len(self.counts):
            msg = "every place of a whole number or a decimal is written"
            raise ValueError(msg)
        if self.ladder.style is Style.MIXED and self.counts[-1] is None:
            msg = "a mixed number without its fraction is a whole number: use the ladder of places"
            raise ValueError(msg)

    @property
    def amounts(self) -> tuple[int, ...]:
        """Return the counts with 0 where nothing is written."""
        return tuple(count or 0 for count in self.counts)

    @property
    def parts(self) -> int:
        """Return the amount counted in the ladder's smallest unit."""
        return sum(count * worth for count, worth in zip(self.amounts, self.ladder.worths, strict=True))

    @property
    def value(self) -> Fraction:
        """Return the exact amount in the reference unit of the kind."""
        return self.parts * self.ladder.finest

    @property
    def kind(self) -> Kind:
        """Return what is measured."""
        return self.ladder.kind

    def regroup(self, rung: int = 0, times: int = 1) -> "Quantity":
        """Take ``times`` from rung ``rung`` and put their worth on the rung below. The value does not change.

        Raises CannotRegroupError when the rung holds fewer, or has no rung below.

        >>> from onewhole.number.ladder import mixed
        >>> Quantity(mixed(6), (7, 2)).regroup().counts
        (6, 8)
        """
        amounts = list(self.amounts)
        if rung + 1 >= len(amounts) or amounts[rung] < times:
            msg = f"there are not {times} on that rung to regroup"
            raise CannotRegroupError(msg, remedy="Regroup from a larger unit first.")
        amounts[rung] -= times
        amounts[rung + 1] += times * self.ladder.ratios[rung]
        return Quantity(self.ladder, tuple(amounts))

    def compose(self, rung: int = 0, times: int = 1) -> "Quantity":
        """Trade ``times`` full groups on the rung below for ``times`` on rung ``rung``: regroup backwards.

        >>> from onewhole.number.ladder import mixed
        >>> Quantity(mixed(6), (6, 8)).compose().counts
        (7, 2)
        """
        amounts = list(self.amounts)
        if rung + 1 >= len(amounts) or amounts[rung + 1] < times * self.ladder.ratios[rung]:
            msg = f"there are not {times} full groups on the rung below to put together"
            raise CannotRegroupError(msg, remedy="Leave the count as it is.")
        amounts[rung] += times
        amounts[rung + 1] -= times * self.ladder.ratios[rung]
        return Quantity(self.ladder, tuple(amounts))

    def on(self, ladder: Ladder) -> "Quantity":
        """Count the same amount on another ladder, keeping wholes and pieces apart where both ladders can.

        7 2/3 on sixths is 7 4/6, and 3 3/2 on quarters is 3 6/4: pieces stay pieces. Raises
        NotOnLadderError when the amount is no whole number of the ladder's smallest unit.
        """
        if ladder == self.ladder:
            return self
        if self.ladder.style is Style.MIXED is ladder.style:
            wholes, pieces = self.counts
            scale = Fraction(ladder.denominator, self.ladder.denominator)
            moved = (pieces or 0) * scale
            if moved.denominator == 1:
                return Quantity(ladder, (wholes, moved.numerator))
        return usual(ladder, self.value)


def counted(ladder: Ladder, value: Fraction) -> Quantity:
    """Count an amount on a ladder with every rung written and no rung but the first overfull.

    Raises NotOnLadderError when the amount is no whole number of the smallest unit.

    >>> from onewhole.number.ladder import mixed
    >>> counted(mixed(8), Fraction(39, 8)).counts
    (4, 7)
    """
    parts = value / ladder.finest
    if parts.denominator != 1 or parts < 0:
        msg = f"{value} cannot be counted in units of {ladder.finest}"
        raise NotOnLadderError(msg, remedy="Choose a smaller unit.")
    left = parts.numerator
    counts = []
    for worth in ladder.worths:
        count, left = divmod(left, worth)
        counts.append(count)
    return Quantity(ladder, tuple(counts))


def whole(number: int) -> Quantity:
    """Write a whole number by its digits.

    >>> whole(304).counts
    (3, 0, 4)
    """
    digits = tuple(int(digit) for digit in str(number))
    return Quantity(places(len(digits)), digits)


def usual(ladder: Ladder, value: Fraction) -> Quantity:
    """Write an amount the usual way on a ladder: nothing overfull, empty parts left out.

    Zero pieces or zero wholes of a mixed number are not written, nor are leading zeros of a whole number
    or the empty units of a measure. Digits after a decimal point stay.

    >>> from onewhole.number.ladder import mixed
    >>> usual(mixed(8), Fraction(4)) == whole(4)
    True
    """
    if ladder.style is Style.PLACES:
        if value.denominator != 1 or value < 0:
            msg = f"{value} is not a whole number"
            raise NotOnLadderError(msg, remedy="Choose a ladder with smaller units.")
        return whole(value.numerator)
    full = counted(ladder, value)
    match ladder.style:
        case Style.MIXED:
            wholes, pieces = full.amounts
            if not pieces:
                return whole(wholes)
            return full if wholes else Quantity(ladder, (None, pieces))
        case Style.DECIMAL:
            after = len([unit for unit in ladder.units if unit.size < 1])
            digits = str(full.parts).rjust(after + 1, "0")
            kept = ladder if len(digits) == len(ladder.units) else decimal(len(digits) - after, after)
            return Quantity(kept, tuple(int(digit) for digit in digits))
        case Style.MEASURE:
            counts = tuple(count or None for count in full.amounts)
            if any(counts):
                return Quantity(ladder, counts)
            return Quantity(ladder, (*(None,) * (len(counts) - 1), 0))

