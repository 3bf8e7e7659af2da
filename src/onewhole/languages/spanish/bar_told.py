"""What the bars of a story show."""

from collections.abc import Callable
from typing import assert_never

from onewhole.languages.spanish.making import Nodes, bare, told
from onewhole.number.quantity import Quantity
from onewhole.pictures.bar_description import (
    BarDescription,
    BarNumber,
    EachPart,
    EqualInBar,
    Lacking,
    SidesAndArea,
    SomeParts,
    TimesAsLong,
)
from onewhole.sentences.node import Counted, Said, Thing
from onewhole.sentences.sentence import Sentences

#: A part of a bar whose parts are all equal.
EQUAL_PART = Thing("parte igual", "partes iguales", None, feminine=True)


def bar_told(each: BarDescription, known: Callable[[Quantity | None], Nodes]) -> Sentences:
    """Describe one thing about bars; ``known`` names an amount, or says that it is not known yet.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(bar_told(EqualInBar(4), lambda amount: ()))
    '4 partes iguales.'
    """
    match each:
        case BarNumber(number):
            return told("barra", bare(number))
        case EqualInBar(count):
            return told(
                "partes iguales: no se sabe cuántas" if count is None else (Counted(count, EQUAL_PART),)
            )
        case EachPart(part):
            return told("cada parte:", known(part))
        case SomeParts(count, part):
            return told(bare(count), "de estas partes:", known(part))
        case Lacking(amount):
            return told("diferencia:", known(amount))
        case TimesAsLong(times):
            return told(
                "veces el largo de la siguiente barra:", known(None) if times is None else (Said(times),)
            )
        case SidesAndArea(side, other, area):
            return (
                *told("un rectángulo"),
                *told("un lado:", known(side)),
                *told("el otro lado:", known(other)),
                *told("área:", known(area)),
            )
        case _:
            assert_never(each)
