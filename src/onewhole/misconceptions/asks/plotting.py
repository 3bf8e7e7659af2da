"""Questions about a line plot."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity


@dataclass(frozen=True, slots=True)
class MarkAbove:
    """What does each mark above ``value`` stand for?"""

    value: Quantity


@dataclass(frozen=True, slots=True)
class MarkStandsFor:
    """What does one mark stand for, and how many marks are there?"""


@dataclass(frozen=True, slots=True)
class BelowFirstTick:
    """What is written below the first tick?"""


@dataclass(frozen=True, slots=True)
class HowManyOrMuch:
    """Is it asked how many there are, or how much they come to?"""


@dataclass(frozen=True, slots=True)
class CountOfWhat:
    """Of what are there ``count``, and what is written below that stack?"""

    count: int


@dataclass(frozen=True, slots=True)
class EndsOfPlot:
    """Which is the greatest measurement on the plot, and which the least?"""


@dataclass(frozen=True, slots=True)
class PointAtEach:
    """How many are on one side of ``value``: ``more`` than it, or less?"""

    value: Quantity
    more: bool


@dataclass(frozen=True, slots=True)
class ValueItself:
    """Is one of exactly ``value`` ``more`` than that, or less?"""

    value: Quantity
    more: bool


#: Every question about a line plot.
PlotAskedOf = (
    MarkAbove
    | MarkStandsFor
    | BelowFirstTick
    | HowManyOrMuch
    | CountOfWhat
    | EndsOfPlot
    | PointAtEach
    | ValueItself
)
