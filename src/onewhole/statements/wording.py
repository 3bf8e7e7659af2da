"""Words that belong to a line: what is asked of a number, by its meaning. A language writes them."""

from dataclasses import dataclass
from enum import Enum

from onewhole.number.unit import Unit
from onewhole.statements.line_plot import Bound, PlotAsk


class Phrase(Enum):
    """Words that stand before a number, or between numbers, and have none of their own."""

    ROUND = "round"
    ORDER = "order"
    FACTORS = "factors of"
    MULTIPLES = "multiples of"


@dataclass(frozen=True, slots=True)
class ToNearest:
    """How far a number is rounded: to the nearest hundred, to the nearest foot."""

    unit: Unit


@dataclass(frozen=True, slots=True)
class FromEnd:
    """From which end numbers are put in order: from greatest to least where ``falling``."""

    falling: bool


@dataclass(frozen=True, slots=True)
class OfPlot:
    """What is asked of a line plot; with a ``bound`` the value follows that it is about."""

    asks: PlotAsk
    bound: Bound | None = None


#: Every run of words that stands on a line; :mod:`onewhole.languages.english.wordings` writes it.
Wording = Phrase | ToNearest | FromEnd | OfPlot
