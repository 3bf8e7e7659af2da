"""Why a picture does not suit a working."""

from fractions import Fraction
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.jumping import JUMP
from onewhole.languages.english.making import bare, some, thing, told, units
from onewhole.number.ladder import TEN
from onewhole.number.unit import ONE, Unit
from onewhole.pictures.unpictured import (
    NoArea,
    NoPartsOfWhole,
    NoPlaceOnLine,
    NoPlot,
    NoRoom,
    NoShares,
    NoTensAndOnes,
    NothingToSplit,
    NotHundredths,
    NotInColumns,
    NotOnRuler,
    NotPlaceByPlace,
    OnlyPlot,
    SeveralSteps,
    TooManyJumps,
    TooManyParts,
    TooManyShares,
    TooManyWholes,
    TooMuchForBlocks,
    TooSmallBeside,
    Unpictured,
)
from onewhole.sentences.node import Counted, Naming, Thing
from onewhole.sentences.sentence import Sentences

EQUAL_PART = Thing("equal part", "equal parts", None)
TENTH, HUNDREDTH = Unit(Fraction(1, 10)), Unit(Fraction(1, 100))


def unpictured(reason: Unpictured, words: ClassWords) -> Sentences:
    """Say why a picture does not suit a working.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(unpictured(TooManyParts(100, 12), ClassWords()))
    'A whole with 100 equal parts cannot be counted in this picture: 12 are the most.'
    """
    match reason:
        case TooManyParts(parts, most):
            cut = ("a", Naming(thing(ONE, words), many=False), "with", Counted(parts, EQUAL_PART))
            return told(cut, "cannot be counted in this picture:", bare(most), "are the most")
        case TooManyWholes(wholes, most):
            need = ("this picture would need", some(wholes, ONE, words))
            return told(need, ", and", bare(most), "are the most")
        case NotHundredths(parts):
            shows = ("a hundred grid shows", units(TENTH), "and", units(HUNDREDTH))
            whole = Naming(thing(ONE, words), many=False)
            return told(shows, ", and here a", whole, "has", Counted(parts, EQUAL_PART))
        case NoPlaceOnLine():
            return told("a number line shows sums, differences, equal jumps, comparisons and rounding")
        case NotOnRuler():
            return told("a ruler shows inches in halves, fourths, eighths or sixteenths, up to a foot")
        case TooManyJumps(jumps, most):
            return told(Counted(jumps, JUMP), "would run into one another:", bare(most), "are the most")
        case NothingToSplit():
            return told("this way opens nothing and makes nothing, so there is nothing to split")
        case NoTensAndOnes():
            count = ("these numbers do not count in", units(Unit(Fraction(TEN))), "and", units(ONE))
            return told(count, ", so blocks cannot show them")
        case NotPlaceByPlace():
            return told("this way does not go place by place, so blocks cannot follow it")
        case TooMuchForBlocks(most):
            shown = ("blocks show two numbers, with", bare(most), "of the smallest place at most")
            return told(shown)
        case NoPartsOfWhole():
            return told("the bar shows a sum or a difference with one number missing")
        case TooSmallBeside():
            return told("one part would be too small to be seen beside the others")
        case NoArea():
            return told("nothing is multiplied or divided part by part, so there is no rectangle to cut")
        case NoShares():
            return told("nothing is given out here unit by unit, so there are no shares to fill")
        case TooManyShares(shares, most):
            share = Thing("share", "shares", None)
            return told(Counted(shares, share), "cannot be counted by looking:", bare(most), "are the most")
        case NotInColumns():
            return told("this way does not go column by column")
        case SeveralSteps():
            return told("these are several steps, and this picture would show only one of them")
        case NoPlot():
            return told("nothing is asked of a line plot here")
        case OnlyPlot():
            return told("what is asked of a line plot is seen on the plot itself")
        case NoRoom():
            return told("so many wholes and parts do not fit on one picture")
        case _:
            assert_never(reason)
