"""The same amount in other units."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import a_single, bare, some, told, units
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

_PIECE, _PLACE = Thing("piece", "pieces"), Thing("place", "places")


def renaming(reason: Renaming, words: ClassWords) -> Sentences:
    """Say how the same amount is written in other units.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(renaming(CutAgain(mixed(12).units[1]), ClassWords()))
    'Cut each piece again to get twelfths.'
    """
    match reason:
        case WholesInPieces(large, small, ratio):
            worth = (a_single(large, words), "is", some(ratio, small))
            return told(worth, Seam(", so", "so"), "count everything in", units(small))
        case AllInPieces(small, first, second):
            return told("that", "is", some(first, small), "and", some(second, small))
        case CutAgain(small):
            return told("cut each piece again to get", units(small))
        case SameSizePieces(small):
            return told("now", "all the pieces are the same size", Seam(":"), units(small))
        case SamePlaces(small):
            return told("write every number as far as the", units(small))
        case RenamedSameAmount(small):
            return told("it is the same amount, counted in", units(small))
        case FewestPieces(small, large, times, top, bottom):
            made = told("every", some(times, small), "make", some(1, large))
            return _factor(times, top, bottom) + made + told("that is the simplest form")
        case OverOne(wholes):
            are = "is" if wholes == 1 else "are"
            uncut = (some(wholes, ONE, words), "not cut", are, Counted(wholes, _PIECE))
            return told(uncut) + told("so the denominator is", bare(1))
        case PiecesJoined(small, large, times, top, bottom):
            return _factor(times, top, bottom) + told("every", some(times, small), "make", some(1, large))
        case SimplestAlready(top, bottom):
            only = ("only", bare(1), "goes into", bare(top), "and into", bare(bottom))
            return told(only, Seam(":", "so"), "it is in simplest form already")
        case PointPlaces(small, places):
            return told(units(small), "take", Counted(places, _PLACE), "after the point")
        case LastPlaceNames(small):
            last = ("the last digit stands for", units(small))
            return told(last, Seam(", so", "so"), "the denominator is", bare(small.size.denominator))
        case NothingOf(small):
            return told(some(0, small), "are nothing", Seam(", so", "so"), "they are not written")
        case EachIsWhole():
            return told(
                "the denominator is", bare(1), Seam(", so", "so"), "each piece is", a_single(ONE, words)
            )
        case _:
            assert_never(reason)


def _factor(times: int, top: int | None, bottom: int | None) -> Sentences:
    """Say that a number is a factor of a numerator and of a denominator, where they are to be named."""
    if top is None or bottom is None:
        return ()
    return told(bare(times), "is a factor of", bare(top), "and of", bare(bottom))
