"""Words that belong to a line: what is asked of a number, by its meaning. A language writes them.

Words either begin a line (:class:`WordsBefore`) or stand behind a number (:class:`WordsBehind`). That is all
that a notation needs to know of them; which words they are, a language says.
"""

from enum import Enum

from msgspec import Struct

from onewhole.number.unit import Unit
from onewhole.statements.line_plot import Bound, PlotAsk


class WordsBefore:
    """Words that begin a line: they are written with a capital where sentences are."""

    __slots__ = ()


class WordsBehind:
    """Words that stand behind a number."""

    __slots__ = ()


class Phrase(WordsBefore, Enum):
    """Words that stand before a number, or between numbers, and have none of their own."""

    ROUND = "round"
    ORDER = "order"
    FACTORS = "factors of"
    MULTIPLES = "multiples of"
    PRIME_OR_COMPOSITE = "prime or composite:"
    MULTIPLE_OF = "multiple of"
    GROUPS_NEEDED = "groups needed:"
    GROUPS_FULL = "full groups:"
    GROUPS_LEFT = "left over:"
    FACTOR_OF = "factor of"


class FactorWords(WordsBehind, Enum):
    """What is asked of one number, what a line says of it, and the words that answer."""

    OR_NOT = "or not:"
    IS_PRIME = "is prime"
    IS_COMPOSITE = "is composite"
    IS_NEITHER = "is neither prime nor composite"
    IS_MULTIPLE_OF = "is a multiple of"
    NO_MULTIPLE_OF = "is not a multiple of"
    IS_FACTOR_OF = "is a factor of"
    NO_FACTOR_OF = "is not a factor of"
    PRIME = "prime"
    COMPOSITE = "composite"
    NEITHER = "neither"
    YES = "yes"
    NO = "no"

    @property
    def between(self) -> bool:
        """Say whether another number follows."""
        return self in _BETWEEN


_BETWEEN = frozenset(
    {
        FactorWords.OR_NOT,
        *(FactorWords.IS_MULTIPLE_OF, FactorWords.NO_MULTIPLE_OF),
        *(FactorWords.IS_FACTOR_OF, FactorWords.NO_FACTOR_OF),
    }
)


class GroupWords(WordsBehind, Enum):
    """What is asked of a division in groups."""

    NEEDED = "groups needed"
    FULL = "full groups"
    LEFT = "left over"


class ToNearest(WordsBehind, Struct, frozen=True):
    """How far a number is rounded: to the nearest hundred, to the nearest foot."""

    unit: Unit


class FromEnd(WordsBehind, Struct, frozen=True):
    """From which end numbers are put in order: from greatest to least where ``falling``."""

    falling: bool


class OfPlot(WordsBefore, Struct, frozen=True):
    """What is asked of a line plot; with a ``bound`` the value follows that it is about."""

    asks: PlotAsk
    bound: Bound | None = None


#: Every run of words that stands on a line; :mod:`onewhole.languages.english.wordings` writes it.
Wording = Phrase | FactorWords | GroupWords | ToNearest | FromEnd | OfPlot
