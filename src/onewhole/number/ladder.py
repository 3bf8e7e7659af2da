"""Units in order, each worth a whole number of the next: tens and ones, wholes and sixths, feet, inches."""

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from functools import cache, cached_property
from math import lcm

from onewhole.number.unit import CLOCK, HALVES, MEASURES, Kind, KindError, Unit

TEN = 10


class Style(Enum):
    """How counts on a ladder are written. Units do not decide it: 3.5 and 3 5/10 count the same units."""

    PLACES = "places"  # 304, or 2 hundreds 9 tens 14 ones
    DECIMAL = "decimal"  # 5.2, or 4 ones 12 tenths
    MIXED = "mixed"  # 7 2/6, 39/8
    MEASURE = "measure"  # 5 ft 2 in


@dataclass(frozen=True)
class Ladder:
    """Rungs from the largest unit to the smallest; each rung is worth a whole number of the next.

    >>> mixed(6).ratios
    (6,)
    >>> places(3).ratios
    (10, 10)
    """

    style: Style
    units: tuple[Unit, ...]

    def __post_init__(self) -> None:
        """Refuse rungs of different kinds or rungs that do not divide one another."""
        if not self.units:
            msg = "a ladder needs at least one rung"
            raise ValueError(msg)
        for upper, lower in zip(self.units, self.units[1:], strict=False):
            if upper.kind is not lower.kind:
                msg = f"{upper.kind} and {lower.kind} cannot stand on one ladder"
                raise KindError(msg)
            ratio = upper.size / lower.size
            if ratio.denominator != 1 or ratio < 1:
                msg = f"a rung worth {upper.size} is not a whole number of rungs worth {lower.size}"
                raise ValueError(msg)

    @cached_property
    def ratios(self) -> tuple[int, ...]:
        """How many of the next rung each rung but the last is worth."""
        pairs = zip(self.units, self.units[1:], strict=False)
        return tuple((upper.size / lower.size).numerator for upper, lower in pairs)

    @cached_property
    def worths(self) -> tuple[int, ...]:
        """How many of the smallest unit each rung is worth."""
        return tuple((unit.size / self.units[-1].size).numerator for unit in self.units)

    @property
    def kind(self) -> Kind:
        """What the ladder measures."""
        return self.units[0].kind

    @property
    def mark(self) -> str:
        """The unit that the ones of a number are: "in" of 5 5/8 in, "$" of $3.25; empty for a plain number.

        Of a measure it is the largest unit.
        """
        return self.units[0].mark

    @property
    def clock(self) -> bool:
        """Say whether it counts a time of day (:mod:`onewhole.number.clock`)."""
        return self.units[0].mark in {CLOCK, HALVES}

    @cached_property
    def after(self) -> int:
        """How many rungs are smaller than one: the places after the point."""
        return sum(unit.size < 1 for unit in self.units)

    @cached_property
    def finest(self) -> Fraction:
        """Size of the smallest unit."""
        return self.units[-1].size

    @cached_property
    def scale(self) -> tuple[int, int, Kind]:
        """Size of the smallest unit as numerator and denominator, and what is measured."""
        return self.finest.numerator, self.finest.denominator, self.kind

    @cached_property
    def _hash(self) -> int:
        return hash((self.style, self.units))

    def __repr__(self) -> str:
        """Say it as short as it is made: Ladder(mixed: 1, 1/6)."""
        return f"Ladder({self.style.value}: {', '.join(unit.mark or str(unit.size) for unit in self.units)})"

    def __hash__(self) -> int:
        """Hash once: ladders are shared by every quantity."""
        return self._hash

    @property
    def denominator(self) -> int:
        """Parts in a whole on a mixed-number ladder. Raises ValueError on any other."""
        if self.style is not Style.MIXED:
            msg = f"a ladder of {self.style.value} has no denominator"
            raise ValueError(msg)
        return self.ratios[0]


@cache
def mixed(denominator: int, mark: str = "") -> Ladder:
    """Return the ladder of wholes and equal parts: ``mixed(6)`` counts wholes and sixths.

    ``mark`` is the unit that the wholes are: ``mixed(8, "in")`` counts inches and eighths of an inch.
    """
    if denominator < 1:
        msg = f"a whole is cut into 1 or more equal parts, not {denominator}"
        raise ValueError(msg)
    return Ladder(Style.MIXED, (_ones(Fraction(1), mark), _ones(Fraction(1, denominator), mark)))


def _ones(size: Fraction, mark: str) -> Unit:
    return Unit(size, Kind.NUMBER, mark)


@cache
def places(digits: int, mark: str = "") -> Ladder:
    """Return the ladder of whole-number places: ``places(3)`` counts hundreds, tens and ones."""
    return Ladder(Style.PLACES, tuple(_ones(Fraction(TEN**power), mark) for power in reversed(range(digits))))


@cache
def decimal(digits: int, after: int, mark: str = "") -> Ladder:
    """Return the ladder of decimals with so many digits before and after the point."""
    powers = range(digits - 1, -after - 1, -1)
    return Ladder(Style.DECIMAL, tuple(_ones(Fraction(TEN) ** power, mark) for power in powers))


@cache
def measure(*marks: str) -> Ladder:
    """Return the ladder of measures with these abbreviations, largest first: ``measure("ft", "in")``."""
    known = {unit.mark: unit for unit in MEASURES}
    return Ladder(Style.MEASURE, tuple(known[mark] for mark in marks))


def _durations(ladder: Ladder) -> Ladder:
    """Return hours and minutes for a time of day, and any other ladder as it is."""
    return measure("h", "min") if ladder.clock else ladder


@cache
def joined(first: Ladder, second: Ladder) -> Ladder:
    """Return the ladder on which amounts of both ladders can be counted.

    Wholes and decimals join as decimals, anything with equal parts joins on the smallest common number of
    parts, measures of one kind join rung by rung; times of day join as hours and minutes. Raises KindError
    for different kinds.

    >>> joined(mixed(4), mixed(6)).denominator
    12
    """
    first, second = _durations(first), _durations(second)
    if first == second:
        return first
    if first.kind is not second.kind:
        msg = f"a {first.kind} and a {second.kind} cannot be put together"
        raise KindError(
            msg,
            remedy="Give both numbers the same unit, or leave the unit off both.",
        )
    if first.style is Style.MEASURE:
        units = sorted({*first.units, *second.units}, key=lambda unit: -unit.size)
        return Ladder(Style.MEASURE, tuple(units))
    styles, mark = {first.style, second.style}, first.mark or second.mark
    if Style.MIXED in styles:
        return mixed(lcm(first.finest.denominator, second.finest.denominator), mark)
    before = max(len(ladder.units) - ladder.after for ladder in (first, second))
    after = max(first.after, second.after)
    return decimal(before, after, mark) if after else places(before, mark)


@cache
def rungs_on(old: Ladder, new: Ladder) -> tuple[int | None, ...] | None:
    """Say for every rung of the new ladder which rung of the old one it is (None for none).

    None where not every rung of the old ladder has one of its own on the new one.

    >>> rungs_on(measure("in"), measure("ft", "in")), rungs_on(mixed(4), mixed(6))
    ((None, 0), None)
    """
    seats: dict[int, int] = {}
    for rung, unit in enumerate(old.units):
        if unit not in new.units or new.units.index(unit) in seats:
            return None
        seats[new.units.index(unit)] = rung
    return tuple(seats.get(rung) for rung in range(len(new.units)))
