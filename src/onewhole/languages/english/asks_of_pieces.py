"""Questions about pieces: what they are called, how many there are, how many make a whole."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import Nodes, a_single, asked, bare, listed, some, told, units
from onewhole.misconceptions.asks.pieces import (
    BottomTells,
    CouldMakeOne,
    CountAgain,
    CutIntoSmaller,
    GotSmaller,
    HowManyWholes,
    PieceAsk,
    PiecesIn,
    PushedTogether,
    SetAsideBefore,
    SideBySide,
    StillLoose,
    TenthsInAll,
    WhereIsTheWhole,
    WhichCountsWholes,
)
from onewhole.number.ladder import Style
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_pieces(ask: PieceAsk, words: ClassWords) -> Sentences:
    """Ask about pieces.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(ask_of_pieces(CountAgain(mixed(6).units[1]), ClassWords()))
    'Count the sixths that are left once more, aloud. How many are there?'
    """
    match ask:
        case BottomTells(bottom):
            tells = asked("what does the bottom number", bare(bottom), "tell us about the pieces")
            return tells + asked("does it change when some pieces are taken away")
        case GotSmaller(small, written):
            wrote = told("you wrote", units(written))
            return (
                wrote
                + asked("did the", units(small), "get any smaller")
                + asked("what are the pieces called")
            )
        case PiecesIn():
            return _pieces_in(ask, words)
        case WhichCountsWholes(large, small, pieces):
            make = asked("how many", units(small), "make", a_single(large, words))
            if pieces < large.size / small.size:
                return make + asked(
                    "do you have enough for", a_single(large, words), ", or only a part of it"
                )
            made = told("make", units(large, words), "from your", some(pieces, small))
            return make + made + asked("which number counts the", units(large, words))
        case CountAgain(unit):
            left = told("count the", units(unit, words), "that are left once more, aloud")
            return left + asked("how many are there")
        case CouldMakeOne(large, small, pieces):
            if pieces == 1:
                return told("right") + asked("does", some(pieces, small), "make", a_single(large, words))
            could = ("could some of your", some(pieces, small), "make", a_single(large, words))
            return told("right") + asked(could)
        case HowManyWholes(large, small, pieces):
            many = ("how many", units(large, words), "could you make of your", some(pieces, small))
            return told("right") + asked(many)
        case SideBySide(small):
            put = told("put", a_single(small), "and another", "one side by side")
            return put + asked("how many pieces are there") + asked("what is each one called")
        case WhereIsTheWhole(large, small, pieces, wrote):
            made = told("you made", a_single(large, words), "from", some(pieces, small))
            return made + asked("where is it in your answer", Said(wrote))
        case StillLoose(large, small, pieces):
            make = told("make", a_single(large, words), "from your", some(pieces, small))
            return make + asked("how many", units(small), "are left beside it")
        case PushedTogether(first, second, named):
            show = told("show", Said(first), "and", Said(second), "and push them together")
            return show + asked("how many", listed([(units(unit, words),) for unit in named]), "do you count")
        case SetAsideBefore(small, have):
            still = (
                asked("does it still belong to you") if have == 1 else asked("do they still belong to you")
            )
            return told("you set", some(have, small), "aside at the start") + still
        case CutIntoSmaller(number, small):
            return told("cut", Said(number), "into", units(small)) + asked(
                "how many", units(small), "is it now"
            )
        case TenthsInAll(tenth, one):
            fill = ("how many", units(tenth), "make", a_single(one, ClassWords()))
            return asked("how many", units(tenth), "are there in all") + asked(fill)
        case _:
            assert_never(ask)


def _pieces_in(ask: PiecesIn, words: ClassWords) -> Sentences:
    """Ask for the pieces in one whole, in the wholes and in the number; none of them twice."""
    wholes, top = ask.number.amounts[0], ask.number.amounts[-1]
    alone = ask.number.ladder.style is not Style.MIXED
    count = ask.number.parts if alone else wholes
    parts: list[Nodes] = [("how many", units(ask.small), "are in", a_single(ask.large, words))]
    if count > 1:
        parts.append(("how many are in", some(count, ask.large, words)))
    if top and not alone:
        parts.append(("how many are in", Said(ask.number)))
    cut = told("cut", a_single(ask.large, words), "into", units(ask.small))
    return cut + tuple(sentence for one in parts for sentence in asked(*one))
