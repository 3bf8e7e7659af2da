"""Reading a line plot: which marks are counted, which values are added, which stack is the highest."""

from msgspec import Struct

from onewhole.number.quantity import Quantity


class MarksCounted(Struct, frozen=True):
    """So many marks stand above these values; none where there are no values."""

    stacks: tuple[tuple[Quantity, int], ...]


class ValuesTaken(Struct, frozen=True):
    """Each mark is one measurement of the value below it: a value is taken as often as it has marks."""

    stacks: tuple[tuple[Quantity, int], ...]


class TotalShared(Struct, frozen=True):
    """The total of all is shared out equally to as many as there are marks."""

    many: int


class HighestStack(Struct, frozen=True):
    """Above ``value`` stand most marks."""

    value: Quantity
    count: int


class EndsRead(Struct, frozen=True):
    """The first and the last value that have marks."""

    least: Quantity
    greatest: Quantity


#: Every reason that reads a line plot.
InPlot = MarksCounted | ValuesTaken | TotalShared | HighestStack | EndsRead
