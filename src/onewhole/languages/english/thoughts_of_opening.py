"""Thoughts about a larger unit that is opened, or that is not."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import Nodes, a_single, bare, some, told, units
from onewhole.misconceptions.thoughts.opening import (
    AllGone,
    AlwaysCrosses,
    AlwaysOpens,
    AlwaysTenMore,
    CompletesOne,
    CrossedThenTurned,
    CrossedTwice,
    HundredMore,
    InPlaceOf,
    LooksUnused,
    NothingAbove,
    NothingAfterPoint,
    OneMovesOver,
    OneMustGo,
    OneUsed,
    OpeningThought,
    PiecesDone,
    TurnedAround,
    WholesStay,
)
from onewhole.number.unit import Kind
from onewhole.sentences.node import Said, Typed
from onewhole.sentences.sentence import Sentences


def thought_of_opening(thought: OpeningThought, words: ClassWords) -> Sentences:
    """Say a thought about opening.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import measure
    >>> text_of(thought_of_opening(LooksUnused(*measure("ft", "in").units), ClassWords()))
    'I changed one foot to inches. The feet may look to me as if nothing was used.'
    """
    match thought:
        case TurnedAround(have, need):
            return told(_turned(have, need))
        case LooksUnused(large, small):
            change = ("cut", "into") if large.kind is Kind.NUMBER else ("changed", "to")
            opened = told("I", change[0], a_single(large, words), change[1], units(small))
            return opened + told("the", units(large, words), "may look to me as if nothing was used")
        case CrossedThenTurned(large, have, need):
            crossed = told("I cross off", a_single(large, words), "because that is what we do")
            if not have:
                return crossed + told("then I write", bare(need))
            return crossed + told("then I take", bare(have), "from", bare(need))
        case AlwaysTenMore(large):
            return told("when I", Typed(words.regroup), a_single(large, words), ", I get ten more")
        case HundredMore(large, small):
            return told("I make one hundred", units(small), "from", a_single(large), ", as with money")
        case OneMovesOver(large, small):
            return told("I move one over from the", units(large, words), "to the", units(small))
        case InPlaceOf(large, small, ratio, have):
            made = ("I make", some(ratio, small), "from", a_single(large, words))
            return told(made, "and write that in place of the", some(have, small))
        case CrossedTwice(large, small):
            first = ("I cross off", a_single(large, words), "to get more", units(small))
            return told(first, ", and once more when I subtract")
        case OneMustGo(large, first, second):
            go = told(a_single(large, words), "must go")
            return go + told("I may not be sure if it goes from", Said(first), "or from", Said(second))
        case PiecesDone(small):
            return told("the hard part with the", units(small), "is done") + told("I may think that is all")
        case AlwaysCrosses(large):
            return told("in these problems I always cross off", a_single(large, words), "first")
        case AlwaysOpens(large):
            return told("I always", Typed(words.regroup), a_single(large, words), "first")
        case AllGone(have, need):
            if not have:
                return told("I have none and must take", bare(need), ", so nothing is left")
            gone = told("I have", bare(have), "and must take", bare(need))
            return gone + told("they are all gone, so none are left")
        case NothingAbove(part):
            return told("there is nothing above", Said(part), ", so", Said(part), "comes down")
        case NothingAfterPoint(first, second):
            nothing = ("there is nothing after the point in", Said(first))
            return told(nothing, ", so what is after the point in", Said(second), "comes down")
        case CompletesOne(part, rest, large):
            makes = (Said(part), "and", Said(rest), "make", a_single(large, words))
            used = told("I may forget that this used one of the", units(large, words))
            return told(makes, ", so", Said(rest), "is left") + used
        case WholesStay(second, first):
            return told("only", Said(second), "is taken, so the", Said(first), "may seem to stay as it is")
        case OneUsed(one, small):
            return told("I traded to get more", units(small)) + told(
                "I may forget that one of the", units(one), "was used"
            )
        case _:
            assert_never(thought)


def _turned(have: int, need: int) -> Nodes:
    return "I can't take", bare(need), "from", bare(have), ", so I take", bare(have), "from", bare(need)
