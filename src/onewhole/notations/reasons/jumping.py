"""Jumps along a number line, shifts of both numbers, and making a whole."""

from typing import assert_never

from onewhole.notations.text import text
from onewhole.notations.words import ClassWords, unit_name
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
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


def jumping(reason: Jumping, words: ClassWords) -> str:
    """Say how a jump goes, where it lands, or what both numbers are given.

    >>> from onewhole.number.quantity import whole
    >>> jumping(CountedUp(whole(3), whole(7)), ClassWords())
    'Count up from 3 to 7, with stops at easy numbers.'
    """
    match reason:
        case CountedUp(start, end):
            return f"Count up from {text(start)} to {text(end)}, with stops at easy numbers."
        case JumpLengths(jumps):
            if jumps == 1:
                return "Find how long the jump is."
            return f"Find how long each of the {jumps} jumps is."
        case JumpedWholes(start, wholes):
            return f"Start at {text(start)} and jump on by {text(wholes)}."
        case JumpedToWhole(start, by):
            return f"From {text(start)}, a jump of {text(by)} lands on the next {_next(start, words)}."
        case JumpedTo(reached):
            return f"You land on {text(reached)}."
        case GivenToMakeOne(first, by):
            needs = f"{text(first)} needs {text(by)} to reach the next {_next(first, words)}"
            return f"{needs}, so take that from the other number."
        case WholeAndRest(filled, rest):
            return f"Now add {text(filled)} and {text(rest)}."
        case SameToBoth(by, _):
            return f"Add {text(by)} to both numbers: the distance between them stays the same."
        case EasierToTake(second):
            return f"{text(second)} is easier to take away."
        case _:
            assert_never(reason)


def _next(quantity: Quantity, words: ClassWords) -> str:
    """Name the unit that a small step fills up: whole, ten, foot."""
    ladder = quantity.ladder
    if ladder.style is Style.PLACES:
        return "ten"
    return unit_name(ladder.units[-2], 1, words) if len(ladder.units) > 1 else "easy number"
