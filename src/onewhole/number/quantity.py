"""Counts on a ladder: an amount together with the way it is written."""

from fractions import Fraction
from functools import lru_cache
from operator import mul

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import OnewholeError
from onewhole.number.ladder import TEN, Ladder, Style, decimal, measure, places, rungs_on
from onewhole.number.unit import DOLLAR, Kind


class CannotRegroupError(OnewholeError, ValueError):
    """There is nothing on the rung to regroup."""


class NotOnLadderError(OnewholeError, ValueError):
    """The amount is not a whole number of the ladder's smallest unit."""


class Quantity(Struct, frozen=True):
    """An amount as written: one count a rung, ``None`` where the wholes of a fraction are not written.

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
        counts = self.counts
        if len(counts) != len(self.ladder.units):
            msg = f"{len(counts)} counts do not fit {len(self.ladder.units)} rungs"
            raise ValueError(msg)
        if None in counts:
            self._check_unwritten()
        if min(self.amounts) < 0:
            msg = f"a count cannot be below zero: {counts}"
            raise ValueError(msg)

    def _check_unwritten(self) -> None:
        if self.ladder.style is not Style.MIXED:
            msg = (
                "only the wholes of a mixed number may be left unwritten: use a ladder without the empty unit"
            )
            raise ValueError(msg)
        if self.counts[-1] is None:
            msg = "a mixed number without its fraction is a whole number: use the ladder of places"
            raise ValueError(msg)

    @property
    def amounts(self) -> tuple[int, ...]:
        """Return the counts with 0 where nothing is written."""
        counts = self.counts
        if counts[0] is None:
            counts = (0, *counts[1:])
        return counts  # type: ignore[return-value] # only the wholes may be left unwritten

    @property
    def parts(self) -> int:
        """Return the amount counted in the ladder's smallest unit."""
        return sum(map(mul, self.amounts, self.ladder.worths))

    @property
    def value(self) -> Fraction:
        """Return the exact amount in the reference unit of the kind."""
        finest = self.ladder.finest
        return Fraction(self.parts * finest.numerator, finest.denominator)

    @property
    def kind(self) -> Kind:
        """Return what is measured."""
        return self.ladder.kind

    @property
    def plain(self) -> bool:
        """Say whether it is a whole number by its places without a unit: it can say how many times.

        >>> whole(12).plain, whole(12, "$").plain
        (True, False)
        """
        return self.ladder.style is Style.PLACES and not self.ladder.mark

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
        """Count the same amount on another ladder, every rung written, pieces staying pieces.

        3 3/2 on quarters is 3 6/4, 4 on eighths is 4 0/8, and 14 in on feet and inches is 0 ft 14 in. Raises
        NotOnLadderError when the amount is no whole number of the ladder's smallest unit.

        >>> from onewhole.number.ladder import mixed
        >>> whole(4).on(mixed(8)).counts
        (4, 0)
        """
        if ladder == self.ladder:
            return self if self.counts == self.amounts else Quantity(ladder, self.amounts)
        if self.ladder.style is Style.MIXED is ladder.style and self.ladder.mark == ladder.mark:
            wholes, pieces = self.amounts
            moved, left_over = divmod(pieces * ladder.denominator, self.ladder.denominator)
            if not left_over:
                return Quantity(ladder, (wholes, moved))
        seats = rungs_on(self.ladder, ladder)
        if seats is None:
            return counted(ladder, self.value)
        return Quantity(ladder, tuple([0 if seat is None else self.amounts[seat] for seat in seats]))

    def only(self, *rungs: int) -> "Quantity":
        """Return what stands on some rungs, written by itself; a decimal without its last empty places.

        Money keeps both of its places after the point: $0.80.

        >>> whole(304).only(0) == whole(300)
        True
        """
        kept = tuple([n if at in rungs else 0 for at, n in enumerate(self.amounts)])
        if self.ladder.style is not Style.DECIMAL:
            return _short(self.ladder, kept)
        if not any(kept[-self.ladder.after :]):
            return landmark(self.ladder, Quantity(self.ladder, kept).parts)
        money = self.ladder.mark == DOLLAR
        last = len(kept) if money else max(at for at, count in enumerate(kept) if count) + 1
        return _short(Ladder(Style.DECIMAL, self.ladder.units[:last]), kept[:last])


def counted(ladder: Ladder, value: Fraction) -> Quantity:
    """Count an amount on a ladder with every rung written and no rung but the first overfull.

    Raises NotOnLadderError when the amount is no whole number of the smallest unit.

    >>> from onewhole.number.ladder import mixed
    >>> counted(mixed(8), Fraction(39, 8)).counts
    (4, 7)
    """
    return counted_in_parts(ladder, _parts(ladder, value))


def _parts(ladder: Ladder, value: Fraction) -> int:
    parts = value / ladder.finest
    if parts.denominator != 1 or parts < 0:
        msg = f"{value} cannot be counted in units of {ladder.finest}"
        raise NotOnLadderError(msg, remedy="Choose a smaller unit.")
    return parts.numerator


def counted_in_parts(ladder: Ladder, parts: int) -> Quantity:
    """Count so many of the smallest unit, as ``counted`` does.

    >>> from onewhole.number.ladder import mixed
    >>> counted_in_parts(mixed(8), 39).counts
    (4, 7)
    """
    return Quantity(ladder, _dealt(ladder, parts))


def _dealt(ladder: Ladder, parts: int) -> tuple[int, ...]:
    """Distribute so many of the smallest unit over the rungs, as many as possible to the largest."""
    counts = []
    for worth in ladder.worths:
        count, parts = divmod(parts, worth)
        counts.append(count)
    return tuple(counts)


@lru_cache(maxsize=4096)
def whole(number: int, mark: str = "") -> Quantity:
    """Write a whole number by its digits, with a unit where its ones are one. Raises ValueError below zero.

    >>> whole(304).counts
    (3, 0, 4)
    """
    if number < 0:
        msg = f"a count cannot be below zero: {number}"
        raise ValueError(msg)
    digits = tuple(int(digit) for digit in str(number))
    return Quantity(places(len(digits), mark), digits)


def with_mark(quantity: Quantity, mark: str) -> Quantity:
    """Write a number with a unit behind it (or a dollar sign before it), or without one where it is empty.

    >>> from onewhole.number.ladder import mixed
    >>> with_mark(Quantity(mixed(8), (5, 5)), "in").ladder == mixed(8, "in")
    True
    """
    units = tuple([replace(unit, mark=mark) for unit in quantity.ladder.units])
    return Quantity(Ladder(quantity.ladder.style, units), quantity.counts)


def usual(ladder: Ladder, value: Fraction) -> Quantity:
    """Write an amount the usual way on a ladder: nothing overfull, empty parts left out.

    Zero pieces or zero wholes of a mixed number are not written, nor are leading zeros of a whole number
    or the empty units of a measure. Digits after a decimal point stay.

    >>> from onewhole.number.ladder import mixed
    >>> usual(mixed(8), Fraction(4)) == whole(4)
    True
    """
    return usual_in_parts(ladder, _parts(ladder, value))


def usual_in_parts(ladder: Ladder, parts: int) -> Quantity:
    """Write so many of the smallest unit the usual way.

    >>> from onewhole.number.ladder import mixed
    >>> usual_in_parts(mixed(8), 39).counts
    (4, 7)
    """
    if ladder.style is Style.PLACES:
        return whole(parts, ladder.mark)
    if ladder.style is Style.DECIMAL:
        after = ladder.after
        digits = str(parts).rjust(after + 1, "0")
        wide = decimal(len(digits) - after, after, ladder.mark)
        return Quantity(wide, tuple([int(digit) for digit in digits]))
    return _short(ladder, _dealt(ladder, parts))


def landmark(ladder: Ladder, parts: int) -> Quantity:
    """Write so many of the smallest unit the usual way, and whole decimals without their point: 3, not 3.0.

    >>> from onewhole.number.ladder import decimal
    >>> landmark(decimal(1, 1), 30) == whole(3)
    True
    """
    if ladder.style is Style.DECIMAL:
        ones, rest = divmod(parts, TEN**ladder.after)
        if not rest:
            return whole(ones, ladder.mark)
    return usual_in_parts(ladder, parts)


def trimmed(quantity: Quantity) -> Quantity:
    """Leave out what nobody writes: zero wholes, zero pieces, leading zeros, empty units of a measure.

    Overfull counts stay: (0, 8) on sixths is written 8/6, and (0, 12) on tens and ones 12 ones.

    >>> from onewhole.number.ladder import mixed
    >>> trimmed(Quantity(mixed(6), (0, 8))).counts
    (None, 8)
    """
    return _short(quantity.ladder, quantity.amounts)


def _short(ladder: Ladder, amounts: tuple[int, ...]) -> Quantity:
    """Leave out the counts that nobody writes."""
    match ladder.style:
        case Style.MIXED:
            wholes, pieces = amounts
            return Quantity(ladder, (wholes or None, pieces)) if pieces else whole(wholes, ladder.mark)
        case Style.MEASURE if ladder.clock:
            return Quantity(ladder, amounts)
        case Style.MEASURE:
            pairs = list(zip(ladder.units, amounts, strict=True))
            kept = [pair for pair in pairs if pair[1]] or pairs[-1:]
            return Quantity(measure(*[unit.mark for unit, _ in kept]), tuple([count for _, count in kept]))
        case Style.PLACES | Style.DECIMAL:
            after = ladder.after
            lead = next((at for at, count in enumerate(amounts) if count), len(amounts))
            start = min(lead, len(amounts) - after - 1)
            before = len(amounts) - after - start
            mark = ladder.mark
            wide = decimal(before, after, mark) if after else places(before, mark)
            return Quantity(wide, amounts[start:])


def overfull(number: Quantity) -> bool:
    """Say whether a count fills a larger unit: 4 15/8, 39/8, 2 ft 14 in.

    >>> overfull(whole(14))
    False
    """
    return any(n >= ratio for n, ratio in zip(number.amounts[1:], number.ladder.ratios, strict=True))
