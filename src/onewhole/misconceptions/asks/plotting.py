"""Questions about a line plot."""

from msgspec import Struct

from onewhole.number.quantity import Quantity


class MarkAbove(Struct, frozen=True):
    """What does each mark above ``value`` stand for?"""

    value: Quantity


class MarkStandsFor(Struct, frozen=True):
    """What does one mark stand for, and how many marks are there?"""


class BelowFirstTick(Struct, frozen=True):
    """What is written below the first tick?"""


class HowManyOrMuch(Struct, frozen=True):
    """Is it asked how many there are, or how much they come to?"""


class CountOfWhat(Struct, frozen=True):
    """Of what are there ``count``, and what is written below that stack?"""

    count: int


class EndsOfPlot(Struct, frozen=True):
    """Which is the greatest measurement on the plot, and which the least?"""


class PointAtEach(Struct, frozen=True):
    """How many are on one side of ``value``: ``more`` than it, or less?"""

    value: Quantity
    more: bool


class ValueItself(Struct, frozen=True):
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
