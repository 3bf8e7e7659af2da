"""The same amount in other units, in Spanish."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import PIECE, SO, a_single, bare, some, the, told, units
from onewhole.number.unit import ONE
from onewhole.sentences.node import Counted, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.renaming import (
    AllInPieces,
    CutAgain,
    EachIsWhole,
    FewestPieces,
    LastPlaceNames,
    NothingOf,
    OverOne,
    PiecesJoined,
    PointPlaces,
    RenamedSameAmount,
    Renaming,
    SamePlaces,
    SameSizePieces,
    SimplestAlready,
    WholesInPieces,
)

_PLACE = Thing("lugar", "lugares", None)


def renaming(reason: Renaming, words: ClassWords) -> Sentences:
    """Say how the same amount is written in other units.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(renaming(CutAgain(mixed(12).units[1]), ClassWords()))
    'Cortamos cada parte otra vez para tener doceavos.'
    """
    match reason:
        case WholesInPieces(large, small, ratio):
            worth = (a_single(large, words), "tiene", some(ratio, small))
            return told(worth, SO, "contamos todo en", units(small))
        case AllInPieces(small, first, second):
            return told("eso", "da", some(first, small), "y", some(second, small))
        case CutAgain(small):
            return told("cortamos cada parte otra vez para tener", units(small))
        case SameSizePieces(small):
            return told("ahora", "todas las partes son del mismo tamaño", Seam(":"), units(small))
        case SamePlaces(small):
            return told("escribimos cada número hasta", the(small))
        case RenamedSameAmount(small):
            return told("es la misma cantidad, contada en", units(small))
        case FewestPieces(small, large, times, top, bottom):
            made = told("cada", some(times, small), "forman", some(1, large))
            return _factor(times, top, bottom) + made + told("esa es su mínima expresión")
        case OverOne(wholes):
            is_so = "es" if wholes == 1 else "son"
            uncut = (some(wholes, ONE, words), "sin cortar", is_so, Counted(wholes, PIECE))
            return told(uncut) + told("por eso", "el denominador es", bare(1))
        case PiecesJoined(small, large, times, top, bottom):
            return _factor(times, top, bottom) + told("cada", some(times, small), "forman", some(1, large))
        case SimplestAlready(top, bottom):
            only = ("solo", bare(1), "cabe justo en", bare(top), "y en", bare(bottom))
            return told(only, Seam(":", "por eso"), "ya está en su mínima expresión")
        case PointPlaces(small, places):
            return told(the(small), "ocupan", Counted(places, _PLACE), "después del punto")
        case LastPlaceNames(small):
            last = ("el último dígito cuenta", units(small))
            return told(last, SO, "el denominador es", bare(small.size.denominator))
        case NothingOf(small):
            return told(some(0, small), "no son nada", SO, "no se escriben")
        case EachIsWhole():
            return told("el denominador es", bare(1), SO, "cada parte es", a_single(ONE, words))
        case _:
            assert_never(reason)


def _factor(times: int, top: int | None, bottom: int | None) -> Sentences:
    """Say that a number is a factor of a numerator and of a denominator, where they are to be named."""
    if top is None or bottom is None:
        return ()
    return told(bare(times), "es factor de", bare(top), "y de", bare(bottom))
