"""Questions that compare two numbers, two kinds of pieces, a fraction and a decimal."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import a_single, asked, told, units
from onewhole.misconceptions.asks.sizes import (
    BelowOneWhole,
    CountTogether,
    EnoughOfThem,
    FirstPlace,
    HowMuchMissing,
    LastDigits,
    OneSize,
    SameAmount,
    SizeAsk,
    WhichIsFurther,
    WhichIsLonger,
    WhichPieces,
)
from onewhole.number.unit import ONE
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences

_WHOLE = a_single(ONE, ClassWords())


def ask_of_sizes(ask: SizeAsk) -> Sentences:
    """Ask for a comparison.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(ask_of_sizes(OneSize(mixed(8).units[1], mixed(3).units[1])))
    'Are eighths and thirds the same size? Show me with strips.'
    """
    match ask:
        case SameAmount(first, second):
            show = told("show", Said(first), "and", Said(second), "with strips of the same length")
            return show + asked("are they the same amount")
        case CountTogether(first, second):
            put = told("put", a_single(first), "and", a_single(second), "side by side")
            return put + asked("can we count them as the same kind of piece")
        case WhichPieces(first, second):
            cut = ("cut a strip into", units(first), "and another of the same length into", units(second))
            return told(*cut) + asked("which pieces are bigger")
        case OneSize(first, second):
            return asked("are", units(first), "and", units(second), "the same size") + told(
                "show me with strips"
            )
        case EnoughOfThem(bigger, first, second):
            enough = told(units(bigger), "are the bigger pieces") + asked("are there enough of them")
            return enough + told("show", Said(first), "and", Said(second), "with strips")
        case HowMuchMissing(first, second):
            missing = asked("how much is missing from", Said(first), "to", _WHOLE)
            return missing + asked("and from", Said(second)) + asked("which is closer to", _WHOLE)
        case WhichIsLonger(first, second):
            shade = ("shade", Said(first), "of a strip and", Said(second), "of another of the same length")
            return told(*shade) + asked("which shaded part is longer")
        case WhichIsFurther(first, second):
            return told("show", Said(first), "and", Said(second), "on one number line") + asked(
                "which is further along"
            )
        case LastDigits(first, second):
            last = asked("what is the last digit of", Said(first), "worth")
            other = asked("what is the last digit of", Said(second), "worth")
            return last + other + asked("which digits belong under one another")
        case BelowOneWhole(fraction, wrote):
            more = asked("is", Said(fraction), "more or less than", _WHOLE)
            return more + asked("and your", Said(wrote))
        case FirstPlace(fraction, wrote):
            worth = asked("in your", Said(wrote), ", what is the first place after the point worth")
            return worth + asked("is", Said(fraction), "made of such pieces")
        case _:
            assert_never(ask)
