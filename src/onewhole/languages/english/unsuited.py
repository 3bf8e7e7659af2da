"""Why a strategy does not suit a problem."""

from typing import assert_never

from onewhole.languages.english.making import told
from onewhole.number.quantity import whole
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Quotient
from onewhole.working.reasons.unsuited import (
    AllOnesAlready,
    DigitsGoOn,
    FilledNotRound,
    NoColumns,
    NoFactKnown,
    NoFractionToMultiply,
    NoGroups,
    NoPartsToSplit,
    NoShiftNeeded,
    NotByHeart,
    NotByWholes,
    NothingLacking,
    NothingToSetAside,
    NotSharedOut,
    NotSoManyTimes,
    NoWholesToTake,
    OtherOperation,
    ShiftNoEasier,
    TooFewToShare,
    TooLittleToGive,
    TooManyTimes,
    Unsuited,
    WholeTooSmall,
)


def unsuited(reason: Unsuited) -> Sentences:
    """Say why a strategy does not suit a problem.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(unsuited(NothingLacking(whole(4))))
    '4 is full already, so there is nothing to give.'
    """
    match reason:
        case OtherOperation():
            return told("this way is for another sign")
        case AllOnesAlready():
            return told("these are whole numbers, so there are no pieces to change to")
        case NoWholesToTake(second):
            return told(Said(second), "has no larger units to take first")
        case NothingToSetAside(first):
            return told(Said(first), "has no smaller part to set aside")
        case WholeTooSmall(wholes, second):
            return told(Said(wholes), "is not enough to take", Said(second), "from")
        case NoShiftNeeded(second):
            return told(Said(second), "is easy to take away as it is")
        case NothingLacking(first):
            return told(Said(first), "is full already, so there is nothing to give")
        case TooLittleToGive(first, second):
            return told(Said(second), "is not enough to fill", Said(first), "up")
        case NoColumns():
            return told("these numbers have no tens and ones to stand under each other")
        case ShiftNoEasier(second, by):
            return told(Said(second), "needs", Said(by), "to be round, and that is as hard to find")
        case FilledNotRound(first, by):
            return told(Said(first), "and", Said(by), "make no round number, so nothing becomes easier")
        case NotSoManyTimes():
            return told("no whole number says how many times the other number is taken")
        case TooManyTimes(times, most):
            return told(
                "a number is written", Said(whole(most)), "times at most, and not", Said(whole(times))
            )
        case NoPartsToSplit():
            return told("both numbers have one part only, so there is nothing to split")
        case NoFractionToMultiply():
            return told("there is no fraction to multiply")
        case NotByHeart():
            return told("a number has several digits to multiply")
        case NotSharedOut():
            return told("no whole number says among how many it is shared")
        case TooFewToShare(number, by):
            return told(
                Said(number), "is less than", Said(by), "so no whole can be given out before it is cut"
            )
        case NotByWholes():
            return told("this way needs two whole numbers")
        case NoFactKnown():
            return told("this is none of the facts up to", Said(whole(10)), "times", Said(whole(10)))
        case NoGroups():
            return told("a whole number says among how many it is shared, so no group is measured out")
        case DigitsGoOn(number, by):
            return told("the digits of", Said(Quotient(number, by)), "go on beyond the thousandths")
        case _:
            assert_never(reason)
