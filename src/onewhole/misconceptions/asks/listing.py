"""Questions about factors and multiples."""

from msgspec import Struct


class GoesInto(Struct, frozen=True):
    """Does ``first`` times something make ``number``?"""

    first: int
    number: int


class PairedWith(Struct, frozen=True):
    """What does ``first`` go with to make ``number``, and is that a factor too?"""

    first: int
    number: int


class CountedOnce(Struct, frozen=True):
    """Counting by ``number``, what is said first?"""

    number: int


class HowManyFactors(Struct, frozen=True):
    """Which are all the factors of ``number``, and how many are there?"""

    number: int


class CountedTo(Struct, frozen=True):
    """Counting by ``step``, is ``number`` said?"""

    step: int
    number: int


#: Every question about factors and multiples.
ListAsk = GoesInto | PairedWith | CountedOnce | HowManyFactors | CountedTo
