"""Questions about a number that is rounded."""

from typing import assert_never

from onewhole.languages.english.in_rounding import counted_by
from onewhole.languages.english.making import asked, told, units
from onewhole.misconceptions.asks.rounding import (
    BetweenWhich,
    DigitBeside,
    DigitInPlace,
    HowFarFromEach,
    NearerThanThat,
    NearTheNumber,
    OneYouCountBy,
    RoundingAsk,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_rounding(ask: RoundingAsk) -> Sentences:
    """Ask about rounding.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import places
    >>> from onewhole.number.quantity import whole
    >>> text_of(ask_of_rounding(BetweenWhich(whole(3472), places(3).units[0])))
    'Count by hundreds: which two does 3,472 lie between? Which of them is nearer?'
    """
    match ask:
        case BetweenWhich(number, unit):
            between = ("count by", counted_by(unit), ":", "which two does", Said(number), "lie between")
            return asked(*between) + asked("which of them is nearer")
        case HowFarFromEach(number, low, high):
            return asked("how far is", Said(number), "itself from", Said(low), ", and from", Said(high))
        case DigitInPlace(number, unit):
            return asked("which digit of", Said(number), "stands in the", units(unit), "place")
        case OneYouCountBy(wrote, unit):
            said = told("count by", counted_by(unit))
            return said + asked("is", Said(wrote), "one of the numbers that you say")
        case DigitBeside(number, unit):
            digit = ("which digit of", Said(number), "stands just to the right of the", units(unit), "place")
            return asked(*digit)
        case NearTheNumber(wrote, number):
            return asked("is", Said(wrote), "near", Said(number))
        case NearerThanThat(number, wrote, unit):
            nearer = ("is one of them nearer to", Said(number), "than", Said(wrote))
            return told("count by", counted_by(unit)) + asked(*nearer)
        case _:
            assert_never(ask)
