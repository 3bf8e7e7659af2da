"""Questions about factors and multiples."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class GoesInto:
    """Does ``first`` times something make ``number``?"""

    first: int
    number: int


@dataclass(frozen=True, slots=True)
class PairedWith:
    """What does ``first`` go with to make ``number``, and is that a factor too?"""

    first: int
    number: int


@dataclass(frozen=True, slots=True)
class CountedOnce:
    """Counting by ``number``, what is said first?"""

    number: int


@dataclass(frozen=True, slots=True)
class HowManyFactors:
    """Which are all the factors of ``number``, and how many are there?"""

    number: int


@dataclass(frozen=True, slots=True)
class CountedTo:
    """Counting by ``step``, is ``number`` said?"""

    step: int
    number: int


#: Every question about factors and multiples.
ListAsk = GoesInto | PairedWith | CountedOnce | HowManyFactors | CountedTo
