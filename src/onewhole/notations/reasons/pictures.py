"""Why a picture does not suit a working."""

from typing import assert_never

from onewhole.notations.words import ClassWords
from onewhole.pictures.unpictured import (
    NoPlaceOnLine,
    NoRoom,
    NoTensAndOnes,
    NothingToSplit,
    NotHundredths,
    NotPlaceByPlace,
    TooManyJumps,
    TooManyParts,
    TooManyWholes,
    TooMuchForBlocks,
    Unpictured,
)


def unpictured(reason: Unpictured, words: ClassWords) -> str:
    """Say why a picture does not suit a working.

    >>> unpictured(TooManyParts(100, 12), ClassWords())
    'A whole with 100 equal parts cannot be counted in this picture: 12 are the most.'
    """
    match reason:
        case TooManyParts(parts, most):
            cut = f"A {words.whole} with {parts} equal parts"
            return f"{cut} cannot be counted in this picture: {most} are the most."
        case TooManyWholes(wholes, most):
            return f"This picture would need {wholes} {words.wholes}, and {most} are the most."
        case NotHundredths(parts):
            shows = "A hundred grid shows tenths and hundredths"
            return f"{shows}, and here a {words.whole} has {parts} equal parts."
        case NoPlaceOnLine():
            return "Only sums, differences and comparisons go on a number line."
        case TooManyJumps(jumps, most):
            return f"{jumps} jumps would run into one another: {most} are the most."
        case NothingToSplit():
            return "This way opens nothing and makes nothing, so there is nothing to split."
        case NoTensAndOnes():
            return "These numbers do not count in tens and ones, so blocks cannot show them."
        case NotPlaceByPlace():
            return "This way does not go place by place, so blocks cannot follow it."
        case TooMuchForBlocks(most):
            return f"Blocks show two numbers, with {most} of the smallest place at most."
        case NoRoom():
            return "So many wholes and parts do not fit on one picture."
        case _:
            assert_never(reason)
