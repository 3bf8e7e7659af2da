"""Jumps along a number line, shifts of both numbers, and making a whole, in Spanish."""

from fractions import Fraction
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import SO, Nodes, agree, thing, told
from onewhole.number.ladder import TEN, Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Naming, Said, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.jumping import (
    CountedUp,
    EasierToTake,
    GivenToMakeOne,
    JumpedTo,
    JumpedToWhole,
    JumpedWholes,
    Jumping,
    JumpLengths,
    SameToBoth,
    WholeAndRest,
)

JUMP = Thing("salto", "saltos", None)
_EASY, _WHOLE_NUMBER = Thing("número fácil", "números fáciles", None), Thing("entero", "enteros", None)


def jumping(reason: Jumping, words: ClassWords) -> Sentences:
    """Say how a jump goes, where it lands, or what both numbers are given.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(jumping(CountedUp(whole(3), whole(7), (whole(3), whole(7))), ClassWords()))
    'Contamos desde 3 hasta 7, con paradas en números fáciles.'
    """
    match reason:
        case CountedUp(start, end):
            return told(
                "contamos desde", Said(start), "hasta", Said(end), Seam(","), "con paradas en números fáciles"
            )
        case JumpLengths(jumps):
            if jumps == 1:
                return told("buscamos cuánto mide el salto")
            return told("buscamos cuánto mide cada uno de los", Counted(jumps, JUMP))
        case JumpedWholes(start, wholes):
            return told("empezamos en", Said(start), "y saltamos", Said(wholes))
        case JumpedToWhole(start, by):
            lands = ("un salto de", Said(by), "llega", *_to_next(start, words))
            return told("desde", Said(start), ",", lands)
        case JumpedTo(reached):
            return told("llegamos a", Said(reached))
        case GivenToMakeOne(first, by):
            lacks = ("a", Said(first), _lacks(by), Said(by), "para llegar", *_to_next(first, words))
            return told(lacks, SO, "se lo quitamos al otro número")
        case WholeAndRest(filled, rest):
            return told("ahora", "sumamos", Said(filled), "y", Said(rest))
        case SameToBoth(by, _):
            added = ("sumamos", Said(by), "a los dos números")
            return told(added, Seam(":"), "la distancia entre ellos no cambia")
        case EasierToTake(second):
            return told("es más fácil quitar", Said(second))
        case _:
            assert_never(reason)


def _lacks(by: Quantity) -> str:
    counts = [count for count in by.counts if count is not None]
    return "le falta" if counts == [1] else "le faltan"


def _to_next(quantity: Quantity, words: ClassWords) -> Nodes:
    """Name the unit that a small step fills up: al siguiente entero, a la siguiente decena."""
    unit = _next(quantity, words)
    return (agree("a la siguiente", "al siguiente", unit), Naming(unit, many=False))


def _next(quantity: Quantity, words: ClassWords) -> Unit | Thing:
    ladder = quantity.ladder
    if ladder.style is Style.PLACES:
        return Unit(Fraction(TEN))
    if len(ladder.units) == 1:
        return _EASY
    if ladder.style is Style.DECIMAL:
        return _WHOLE_NUMBER if ladder.units[-2].size == 1 else ladder.units[-2]
    return thing(ladder.units[-2], words)
