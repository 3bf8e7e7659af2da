"""Thoughts about which is more, about the same amount in other pieces, and about the point."""

from typing import assert_never

from onewhole.languages.english.making import PIECE, bare, told, units
from onewhole.misconceptions.thoughts.sizes import (
    BiggerBottom,
    BiggerDigits,
    BiggerNumber,
    BiggerPiecesWin,
    BottomsCounted,
    CrossesOut,
    EvensOut,
    FewerMissing,
    MoreDigits,
    MorePieces,
    OneChanges,
    SameGap,
    SameStep,
    SizeThought,
    SmallerPlaces,
    StartedWith,
    StillSoMany,
    TopAfterPoint,
    TurnedOver,
    TwoAdditions,
    TwoSubtractions,
)
from onewhole.sentences.node import Counted, Said
from onewhole.sentences.sentence import Sentences


def thought_of_sizes(thought: SizeThought) -> Sentences:
    """Say a thought about sizes.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(thought_of_sizes(BiggerNumber(8, 4)))
    '8 is more than 4.'
    """
    match thought:
        case BiggerBottom(bottom):
            return told("both need the same bottom, so I take the bigger one", ",", bare(bottom))
        case StartedWith(small):
            return told("we started with", units(small), ", so the answer is in", units(small))
        case SameStep(start, end, other, becomes):
            does = "I add" if end > start else "I take some away"
            step = ("from", bare(start), "to", bare(end), does, ", so I do the same to the", bare(other))
            return told(*step) + told("it becomes", bare(becomes))
        case OneChanges(top, becomes, bottom):
            changes = ("I change the", bare(top), "on top to", bare(becomes))
            return told(*changes, ", and the", bare(bottom), "may stay")
        case StillSoMany(old, new, count):
            change = told("I change", units(old), "to", units(new))
            if count == 1:
                return change + told("there is still", bare(count), "of them")
            return change + told("there are still", bare(count), "of them")
        case EvensOut(top, new_top, bottom, new_bottom):
            both = ("I make the top smaller", ",", bare(top), "to", bare(new_top), ", and the bottom bigger")
            return told(*both, ",", bare(bottom), "to", bare(new_bottom)) + told("it may seem to even out")
        case CrossesOut(digit):
            return told("top and bottom both have", bare(digit), ", so I cross it out")
        case BiggerNumber(more, less):
            return told(bare(more), "is more than", bare(less))
        case MorePieces(more, less):
            if more == less:
                return told("both have", Counted(more, PIECE))
            are = "is" if more == 1 else "are"
            return told(Counted(more, PIECE), are, "more than", Counted(less, PIECE))
        case BiggerPiecesWin(bigger, smaller):
            won = ("so the", units(bigger), "win")
            return told(units(bigger), "are bigger than", units(smaller), ",", *won)
        case SameGap(first, second):
            short = ("as many pieces are missing from", Said(first), "as from", Said(second))
            return told(*short, ", so they may look the same")
        case FewerMissing(more, less):
            fewer = ("fewer pieces are missing from", Said(more), "than from", Said(less))
            return told(*fewer, ", so I take it as more")
        case BiggerDigits(more, less):
            return told("the numbers in", Said(more), "look bigger than the numbers in", Said(less))
        case TwoSubtractions(first, second, after_first, after_second):
            before = ("I take", bare(second), "from", bare(first), "before the point")
            return told(*before, ", and", bare(after_second), "from", bare(after_first), "after it")
        case TwoAdditions(first, second):
            both_ = ("I add", bare(first), "and", bare(second), "after the point")
            return told(*both_, "and write that there")
        case MoreDigits(longer, shorter):
            longer_has = (Said(longer), "shows more digits than", Said(shorter))
            return told(*longer_has, ", so it is more")
        case SmallerPlaces(small, large, longer):
            sizes = (units(small), "are smaller than", units(large))
            return told(*sizes, ", so", Said(longer), "is smaller")
        case TopAfterPoint(top):
            return told("it is less than one, so I write zero, the point, and then", bare(top))
        case TurnedOver(fraction, turned):
            turns = ("one fraction is turned over, so", Said(fraction), "becomes", Said(turned))
            return told(*turns) + told("then I do the tops and the bottoms")
        case BottomsCounted(one, other, found, taken):
            apart = told("I do the tops, and I do the bottoms")
            if taken:
                return apart + told("from", bare(other), "to", bare(one), "I counted", bare(found))
            return apart + told(bare(one), "and", bare(other), "came to", bare(found))
        case _:
            assert_never(thought)
