"""Questions about factors and multiples."""

from typing import assert_never

from onewhole.languages.english.making import asked, bare
from onewhole.misconceptions.asks.listing import (
    CountedOnce,
    CountedTo,
    GoesInto,
    HowManyFactors,
    ListAsk,
    PairedWith,
)
from onewhole.sentences.sentence import Sentences


def ask_of_listing(ask: ListAsk) -> Sentences:
    """Ask about factors or multiples.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(ask_of_listing(GoesInto(1, 12)))
    'Is there a number that you can multiply by 1 to make 12?'
    """
    match ask:
        case GoesInto(first, number):
            return asked("is there a number that you can multiply by", bare(first), "to make", bare(number))
        case PairedWith(first, number):
            return asked("what goes with", bare(first), "to make", bare(number), ", and is it a factor too")
        case CountedOnce(number):
            return asked("when you count by", bare(number), ", what do you say first, and what next")
        case HowManyFactors(number):
            return asked("which numbers are factors of", bare(number), ", and how many are there")
        case CountedTo(step, number):
            return asked("when you count by", bare(step), ", do you say", bare(number))
        case _:
            assert_never(ask)
