"""Jumps along a number line, shifts of both numbers, and making a whole."""

from fractions import Fraction
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import thing, told
from onewhole.number.ladder import TEN, Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Naming, Node, Said, Seam, Thing
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

JUMP = Thing("jump", "jumps", None)


def jumping(reason: Jumping, words: ClassWords) -> Sentences:
    """Say how a jump goes, where it lands, or what both numbers are given.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(jumping(CountedUp(whole(3), whole(7), (whole(3), whole(7))), ClassWords()))
    'Count up from 3 to 7, with stops at easy numbers.'
    """
    match reason:
        case CountedUp(start, end):
            return told(
                "count up from", Said(start), "to", Said(end), Seam(","), "with stops at easy numbers"
            )
        case JumpLengths(jumps):
            if jumps == 1:
                return told("find how long the jump is")
            return told("find how long each of the", Counted(jumps, JUMP), "is")
        case JumpedWholes(start, wholes):
            return told("start at", Said(start), "and jump on by", Said(wholes))
        case JumpedToWhole(start, by):
            lands = ("a jump of", Said(by), "lands on the next", _next(start, words))
            return told("from", Said(start), ",", lands)
        case JumpedTo(reached):
            return told("you land on", Said(reached))
        case GivenToMakeOne(first, by):
            needs = (Said(first), "needs", Said(by), "to reach the next", _next(first, words))
            return told(needs, Seam(", so", "so"), "take that from the other number")
        case WholeAndRest(filled, rest):
            return told("now", "add", Said(filled), "and", Said(rest))
        case SameToBoth(by, _):
            added = ("add", Said(by), "to both numbers")
            return told(added, Seam(":"), "the distance between them stays the same")
        case EasierToTake(second):
            return told(Said(second), "is easier to take away")
        case _:
            assert_never(reason)


def _next(quantity: Quantity, words: ClassWords) -> Node:
    """Name the unit that a small step fills up: whole, ten, foot."""
    ladder = quantity.ladder
    if ladder.style is Style.PLACES:
        return Naming(Unit(Fraction(TEN)), many=False)
    if len(ladder.units) == 1:
        return "easy number"
    if ladder.style is Style.DECIMAL:
        return "whole number" if ladder.units[-2].size == 1 else Naming(ladder.units[-2], many=False)
    return Naming(thing(ladder.units[-2], words), many=False)
