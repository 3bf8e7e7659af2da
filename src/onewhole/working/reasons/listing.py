"""Factors and multiples: pairs that make a number, counting on, and trying what goes into it."""

from msgspec import Struct


class PairFound(Struct, frozen=True):
    """``first`` times ``second`` is the number; the ``skipped`` numbers before do not go into it."""

    first: int
    second: int
    skipped: tuple[int, ...]

    @property
    def number(self) -> int:
        """Return the number that the pair makes."""
        return self.first * self.second


class AllPairsFound(Struct, frozen=True):
    """Every pair is found: the next number that goes into it stands in a pair already."""

    pairs: int
    skipped: tuple[int, ...]
    number: int


class CountedOnBy(Struct, frozen=True):
    """Counting on by ``step`` up to ``most``; ``beyond`` would come next."""

    step: int
    most: int
    beyond: int


class FactorTried(Struct, frozen=True):
    """``by`` is tried as a factor; the ``skipped`` numbers before are multiples of what was tried."""

    number: int
    by: int
    skipped: tuple[int, ...] = ()

    @property
    def times(self) -> int:
        """Return how many times it goes into the number."""
        return self.number // self.by

    @property
    def left(self) -> int:
        """Return what is left over; 0 for a factor."""
        return self.number % self.by


class OtherFactor(Struct, frozen=True):
    """``by`` is a factor besides 1 and the number itself, so the number is composite."""

    number: int
    by: int


class NoOtherFactor(Struct, frozen=True):
    """All that can be the smaller of two factors is tried: ``beyond`` times itself is more."""

    number: int
    beyond: int


class OneFactorOnly(Struct, frozen=True):
    """The number 1 has one factor, and a prime has two."""


class CountingMeets(Struct, frozen=True):
    """Counting by ``step`` comes to ``number``, or passes it where something is ``left`` over."""

    number: int
    step: int

    @property
    def left(self) -> int:
        """Return what is left over after the last full step."""
        return self.number % self.step


#: Every reason about factors and multiples.
InListing = (
    PairFound
    | AllPairsFound
    | CountedOnBy
    | FactorTried
    | OtherFactor
    | NoOtherFactor
    | OneFactorOnly
    | CountingMeets
)
