"""How a line plot is read."""

from typing import assert_never

from onewhole.languages.english.making import Nodes, bare, listed, told
from onewhole.number.quantity import Quantity
from onewhole.sentences.node import Counted, Said, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.plotting import (
    EndsRead,
    HighestStack,
    InPlot,
    MarksCounted,
    TotalShared,
    ValuesTaken,
)

MARK = Thing("mark", "marks", None)
#: More stacks than these are not said one by one.
NAMED = 4


def in_plot(reason: InPlot) -> Sentences:
    """Say what is read from a line plot.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(in_plot(MarksCounted(((whole(3), 2), (whole(4), 1)))))
    'Above 3 are 2 marks. Above 4 is 1 mark.'
    """
    match reason:
        case MarksCounted(()):
            return told("no mark stands there")
        case MarksCounted(stacks):
            return _stacks(stacks)
        case ValuesTaken(stacks):
            each = told("each mark stands for the value below it")
            return each + _stacks(stacks)
        case TotalShared(many):
            there = told("put all the measurements together")
            return there + told("there are", Counted(many, MARK), Seam(", so"), "share the total equally")
        case HighestStack(value, count):
            highest = told("the highest stack has", Counted(count, MARK))
            return highest + told("the value below it is", Said(value))
        case EndsRead(least, greatest):
            return told("the greatest value with a mark is", Said(greatest)) + told(
                "the least is", Said(least)
            )
        case _:
            assert_never(reason)


def _stacks(stacks: tuple[tuple[Quantity, int], ...]) -> Sentences:
    if len(stacks) > NAMED:
        counts: Nodes = listed([(bare(count),) for _, count in stacks])
        return told("from left to right the stacks have", counts, "marks")
    said: Sentences = ()
    for value, count in stacks:
        said += stack_told(value, count)
    return said


def stack_told(value: Quantity, count: int) -> Sentences:
    """Say how many marks stand above a value.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(stack_told(whole(3), 2))
    'Above 3 are 2 marks.'
    """
    return told("above", Said(value), "is" if count == 1 else "are", Counted(count, MARK))
