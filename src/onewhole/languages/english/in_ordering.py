"""What puts numbers in order."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import bare, told, units
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
    'There are 2 pieces in each. The larger the pieces are, the more it is.'
    """
    match reason:
        case AllOfOneSize(small):
            return told("write every number with pieces of the same size", Seam(":"), units(small))
        case AllInOneUnit(small):
            return told("count everything in", units(small))
        case OnlyCounts(small):
            return told("all are", units(small), Seam(", so", "so"), "only the counts matter")
        case WholesThenPieces(whole, small):
            first = told("the", units(whole, words), "decide first")
            return first + told("where they are the same", ",", "the", units(small), "decide")
        case LargerPiecesMore(count):
            there = ("there is", bare(count), "piece") if count == 1 else ("there are", bare(count), "pieces")
            return told(there, "in each") + told("the larger the pieces are", ",", "the more it is")
        case WholesAllDiffer(whole):
            return told("the", units(whole, words), "are all different", Seam(", and"), "they decide")
        case NeighborsCompared(falling):
            ends = "from greatest to least" if falling else "from least to greatest"
            return told("so they stand in order", ",", ends)
        case _:
            assert_never(reason)
