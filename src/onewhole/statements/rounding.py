"""Rounding: a number is to be written as the nearest whole number of a unit: 4,567 to the nearest hundred."""

from fractions import Fraction

from msgspec import Struct

from onewhole.number.ladder import TEN, Ladder, Style, decimal, joined, measure, mixed
from onewhole.number.quantity import NotOnLadderError, Quantity, usual, whole
from onewhole.number.unit import CENT_PLACES, DOLLAR, MEASURES, Kind, Unit

HALF = Fraction(1, 2)


class Rounding(Struct, frozen=True):
    """What is ``number`` to the nearest ``to``?

    On the way ``between`` are two numbers that it lies between: the neighbors on that rung, or one of them
    and the number halfway. At the end ``gives`` is what it is rounded to. Raises ValueError for a number that
    does not lie between the two.

    >>> from onewhole.number.unit import Unit
    >>> Rounding(whole(4567), Unit(Fraction(100))).rounded
    Fraction(4600, 1)
    """

    number: Quantity
    to: Unit
    between: tuple[Quantity, Quantity] | None = None
    gives: Quantity | None = None

    def __post_init__(self) -> None:
        """Refuse two numbers with the number outside them."""
        if self.between and not self.between[0].value <= self.number.value <= self.between[1].value:
            msg = "the number does not lie between the two"
            raise ValueError(msg)

    @property
    def rounded(self) -> Fraction:
        """Return what a line says that the number is rounded to.

        Where it says only what the number lies between, it is the end of that stretch that is a whole number
        of the unit, or the nearer one of two; exactly halfway it is the larger (common practice, no source;
        the standards have no rule for it: CCSSM 2010, 3.NBT.A.1, 4.NBT.A.3, 5.NBT.A.4).
        """
        if self.gives is not None:
            return self.gives.value
        low, high = self.between or (self.low, self.high)
        ends = [end.value for end in (low, high) if not (end.value / self.to.size).denominator > 1]
        return min(ends, key=lambda end: (abs(end - self.number.value), -end))

    @property
    def low(self) -> Quantity:
        """Return the largest whole number of the unit that is not more than the number."""
        return on_rung(self, self.number.value // self.to.size)

    @property
    def high(self) -> Quantity:
        """Return the smallest whole number of the unit that is more than the number."""
        return on_rung(self, self.number.value // self.to.size + 1)

    @property
    def there(self) -> bool:
        """Say whether the number is a whole number of the unit already."""
        return not self.number.value % self.to.size

    @property
    def tie(self) -> bool:
        """Say whether the number is exactly halfway between its neighbors."""
        return self.number.value % self.to.size == self.to.size * HALF


def on_rung(asked: Rounding, count: int) -> Quantity:
    """Write so many of the unit that is rounded to, as far as its place: 4,600, 4.0, 5 ft.

    >>> on_rung(Rounding(whole(4567), Unit(Fraction(100))), 46) == whole(4600)
    True
    """
    unit = asked.to
    if unit.kind is not Kind.NUMBER:
        return Quantity(measure(unit.mark), (count,))
    amount = count * unit.size
    if unit.size >= 1:
        return whole(int(amount), unit.mark)
    return usual(_pointed(unit.size, unit.mark), amount)


def halfway(asked: Rounding) -> Quantity:
    """Write the number halfway between the neighbors, on a ladder with the fewest units that holds it.

    Raises NotOnLadderError for a measure whose half is no whole number of any smaller unit.

    >>> halfway(Rounding(whole(4567), Unit(Fraction(100)))) == whole(4550)
    True
    """
    amount = asked.low.value + asked.to.size * HALF
    for ladder in _holding(asked):
        try:
            return usual(ladder, amount)
        except NotOnLadderError:
            continue
    msg = "the number halfway is no whole number of the smallest unit"
    raise NotOnLadderError(msg, remedy="Round to another unit.")


def _holding(asked: Rounding) -> tuple[Ladder, ...]:
    """Return the ladders on which the number halfway may be written, the plainest first."""
    ladder, unit = asked.number.ladder, asked.to
    if unit.kind is not Kind.NUMBER:
        own = joined(measure(unit.mark), ladder)
        smaller = (one for one in MEASURES if one.kind is unit.kind and own.finest % one.size == 0)
        return own, *(joined(own, measure(one.mark)) for one in smaller if one.size < own.finest)
    if unit.size > 1:
        return (asked.low.ladder,)
    if ladder.style is Style.MIXED:
        return (mixed(2, unit.mark),)
    return (_pointed(unit.size / TEN, unit.mark),)


def _pointed(size: Fraction, mark: str) -> Ladder:
    """Return the ladder of decimals down to a place; money has two places after the point, if any."""
    after = next(places for places in range(1, 7) if size * TEN**places >= 1)
    return decimal(1, max(after, CENT_PLACES) if mark == DOLLAR else after, mark)


def renamed(asked: Rounding) -> Quantity:
    """Write the number so that whole numbers of the unit stand apart: 2 3/4 for 11/4, 2 ft 2 in for 26 in.

    >>> from onewhole.number.unit import ONE
    >>> renamed(Rounding(Quantity(mixed(4), (None, 11)), ONE)).counts
    (2, 3)
    """
    ladder = asked.number.ladder
    if asked.to.kind is not Kind.NUMBER and asked.to not in ladder.units:
        ladder = joined(measure(asked.to.mark), ladder)
    return usual(ladder, asked.number.value)


def units_to_round_to(number: Quantity) -> tuple[Unit, ...]:
    """Return the units that a number can be rounded to: every one larger than its smallest, to a million.

    A mixed number is rounded to wholes and larger places; a measure to any unit of its kind that is a whole
    number of its smallest. Of a number with a unit they are places of that unit.

    >>> [int(unit.size) for unit in units_to_round_to(whole(4567))][:3]
    [10, 100, 1000]
    """
    ladder = number.ladder
    if number.kind is not Kind.NUMBER:
        return tuple(
            unit
            for unit in MEASURES
            if unit.kind is number.kind and unit.size > ladder.finest and not unit.size % ladder.finest
        )
    places = [Unit(Fraction(TEN) ** power, Kind.NUMBER, ladder.mark) for power in range(-ladder.after, 7)]
    least = ladder.finest if ladder.style is not Style.MIXED else HALF
    return tuple(unit for unit in places if unit.size > least)
