"""Rounding told in Spanish: the two neighbors, what is halfway, and which neighbor is nearer."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import SO, thing, told
from onewhole.languages.spanish.wordings import rung_of
from onewhole.number.unit import Kind, Unit
from onewhole.sentences.node import Counted, Naming, Said, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.rounding import (
    BetweenNeighbors,
    ExactlyHalfway,
    InRounding,
    NearerNeighbor,
    NothingOver,
    PastHalfway,
)


def in_rounding(reason: InRounding, words: ClassWords) -> Sentences:
    """Say why a number is rounded to one neighbor and not to the other.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import places
    >>> from onewhole.number.quantity import whole
    >>> hundred = places(3).units[0]
    >>> why = BetweenNeighbors(hundred, whole(4567), whole(4500), whole(4600))
    >>> text_of(in_rounding(why, ClassWords()))
    'Contamos por centenas: 4,567 está después de 4,500 y antes de 4,600.'
    """
    match reason:
        case BetweenNeighbors(unit, number, low, high):
            after = (Said(number), "está después de", Said(low))
            before = ("antes de", Said(high))
            counted = Naming(rung_of(unit))
            return told("contamos por", counted, Seam(":"), after, Seam("y", "está"), before)
        case PastHalfway(middle, number, past):
            side = "ya lo pasa" if past else "no llega tan lejos"
            return told("el punto medio es", Said(middle), Seam(", y"), Said(number), side)
        case NearerNeighbor(near, nearer, far, other):
            first, second = (Said(near), "de", Said(nearer)), ("a", Said(far), "de", Said(other))
            apart = ("está a", *first, Seam("y", "está"), *second)
            return told(apart, SO, Said(nearer), "está más cerca")
        case ExactlyHalfway(low, high, far):
            start = ("está justo en el punto medio", Seam(":", "está"), "a", Said(far), "de", Said(low))
            return told(start, Seam("e", "está"), "igual de lejos de", Said(high)) + told(
                "el acuerdo es subir"
            )
        case NothingOver(number, unit, count):
            is_so = "es exactamente" if count == 1 else "son exactamente"
            exactly = (Said(number), is_so, Counted(count, _counted(unit, words)))
            return told(exactly, SO, "se queda igual")
        case _:
            assert_never(reason)


def _counted(unit: Unit, words: ClassWords) -> Unit | Thing:
    named = unit.kind is Kind.NUMBER and unit.mark
    return rung_of(unit) if named else thing(unit, words)
