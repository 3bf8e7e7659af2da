"""How a line plot is read, in Spanish."""

from typing import assert_never

from onewhole.languages.spanish.making import Nodes, bare, listed, told
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

MARK = Thing("marca", "marcas", None, feminine=True)
#: More stacks than these are not said one by one.
NAMED = 4


def in_plot(reason: InPlot) -> Sentences:
    """Say what is read from a line plot.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(in_plot(MarksCounted(((whole(3), 2), (whole(4), 1)))))
    'Sobre 3 hay 2 marcas. Sobre 4 hay 1 marca.'
    """
    match reason:
        case MarksCounted(()):
            return told("ahí no hay ninguna marca")
        case MarksCounted(stacks):
            return _stacks(stacks)
        case ValuesTaken(stacks):
            each = told("cada marca representa el valor que está debajo")
            return each + _stacks(stacks)
        case TotalShared(many):
            there = told("juntamos todas las medidas")
            return there + told(
                "hay", Counted(many, MARK), Seam(", así que"), "repartimos el total por igual"
            )
        case HighestStack(value, count):
            highest = told("la columna más alta tiene", Counted(count, MARK))
            return highest + told("el valor que está debajo es", Said(value))
        case EndsRead(least, greatest):
            most = told("el mayor valor con una marca es", Said(greatest))
            return most + told("el menor es", Said(least))
        case _:
            assert_never(reason)


def _stacks(stacks: tuple[tuple[Quantity, int], ...]) -> Sentences:
    if len(stacks) > NAMED:
        counts: Nodes = listed([(bare(count),) for _, count in stacks])
        return told("de izquierda a derecha las columnas tienen", counts, "marcas")
    said: Sentences = ()
    for value, count in stacks:
        said += stack_told(value, count)
    return said


def stack_told(value: Quantity, count: int) -> Sentences:
    """Say how many marks stand above a value.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(stack_told(whole(3), 2))
    'Sobre 3 hay 2 marcas.'
    """
    return told("sobre", Said(value), "hay", Counted(count, MARK))
