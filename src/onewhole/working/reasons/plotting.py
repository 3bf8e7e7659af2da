"""Reading a line plot: which marks are counted, which values are added, which stack is the highest."""

from dataclasses import dataclass

from onewhole.number.quantity import Quantity


@dataclass(frozen=True, slots=True)
class MarksCounted:
    """So many marks stand above these values; none where there are no values."""

    stacks: tuple[tuple[Quantity, int], ...]


@dataclass(frozen=True, slots=True)
class ValuesTaken:
    """Each mark is one measurement of the value below it: a value is taken as often as it has marks."""

    stacks: tuple[tuple[Quantity, int], ...]


@dataclass(frozen=True, slots=True)
class TotalShared:
    """The total of all is shared out equally to as many as there are marks."""

    many: int


@dataclass(frozen=True, slots=True)
class HighestStack:
    """Above ``value`` stand most marks."""

    value: Quantity
    count: int


@dataclass(frozen=True, slots=True)
class EndsRead:
    """The first and the last value that have marks."""

    least: Quantity
    greatest: Quantity


#: Every reason that reads a line plot.
InPlot = MarksCounted | ValuesTaken | TotalShared | HighestStack | EndsRead
