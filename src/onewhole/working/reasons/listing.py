"""Listing factors and multiples: pairs that make a number, and counting on."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class PairFound:
    """``first`` times ``second`` is the number; the ``skipped`` numbers before do not go into it."""

    first: int
    second: int
    skipped: tuple[int, ...]

    @property
    def number(self) -> int:
        """Return the number that the pair makes."""
        return self.first * self.second


@dataclass(frozen=True, slots=True)
class AllPairsFound:
    """Every pair is found: the next number that goes into it stands in a pair already."""

    pairs: int
    skipped: tuple[int, ...]
    number: int


@dataclass(frozen=True, slots=True)
class CountedOnBy:
    """Counting on by ``step`` up to ``most``; ``beyond`` would come next."""

    step: int
    most: int
    beyond: int


#: Every reason that lists numbers.
InListing = PairFound | AllPairsFound | CountedOnBy
