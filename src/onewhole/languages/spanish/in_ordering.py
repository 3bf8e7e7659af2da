"""What puts numbers in order, in Spanish."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import SO, agree, bare, the, thing, told, units
from onewhole.sentences.node import Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.ordering import (
    AllInOneUnit,
    AllOfOneSize,
    InOrdering,
    LargerPiecesMore,
    NeighborsCompared,
    OnlyCounts,
    WholesAllDiffer,
    WholesThenPieces,
)


def in_ordering(reason: InOrdering, words: ClassWords) -> Sentences:
    """Say how numbers are put in order.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(in_ordering(LargerPiecesMore(2), ClassWords()))
    'Hay 2 partes en cada número. Mientras más grandes son las partes, mayor es el número.'
    """
    match reason:
        case AllOfOneSize(small):
            same = "escribimos cada número con partes del mismo tamaño"
            return told(same, Seam(":"), units(small))
        case AllInOneUnit(small):
            return told("contamos todo en", units(small))
        case OnlyCounts(small):
            every = agree("todas son", "todos son", small)
            return told(
                every,
                units(small),
                SO,
                "solo importa cuántos hay" if every == "todos son" else "solo importa cuántas hay",
            )
        case WholesThenPieces(whole, small):
            first = told("primero deciden", the(whole, words))
            return first + told("donde son iguales", ",", "deciden", the(small))
        case LargerPiecesMore(count):
            there = ("hay", bare(count), "parte" if count == 1 else "partes", "en cada número")
            return told(there) + told("mientras más grandes son las partes", ",", "mayor es el número")
        case WholesAllDiffer(whole):
            differ = agree("son todas diferentes", "son todos diferentes", thing(whole, words))
            return told(the(whole, words), differ, Seam(", y"), "eso decide")
        case NeighborsCompared(falling):
            ends = "de mayor a menor" if falling else "de menor a mayor"
            return told("así quedan en orden", ",", ends)
        case _:
            assert_never(reason)
