"""Questions about which of two numbers is more."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import a_single, asked, some, told, units
from onewhole.misconceptions.asks.comparing import (
    AllInOnePlace,
    AnythingAfter,
    BetweenWholes,
    ComparingAsk,
    HowManyIn,
    SameWholes,
    SignReadAloud,
    WholesFrom,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_comparing(ask: ComparingAsk, words: ClassWords) -> Sentences:
    """Ask about which is more.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_quantity
    >>> text_of(ask_of_comparing(BetweenWholes(*map(read_quantity, ("2 3/4", "5 1/4"))), ClassWords()))
    'Between which two whole numbers does 2 3/4 lie? And 5 1/4?'
    """
    match ask:
        case SameWholes(first, second, wholes, large):
            there = ("in", Said(first), "and in", Said(second), "there", "is" if wholes == 1 else "are")
            return told(*there, some(wholes, large, words)) + asked("what more is in each")
        case BetweenWholes(first, second):
            lies = ("between which two whole numbers does", Said(first), "lie")
            return asked(*lies) + asked("and", Said(second))
        case WholesFrom(fraction, small, large):
            make = asked("how many", units(small), "make", a_single(large, words))
            return make + asked("how many", units(large, words), "can you make of", Said(fraction))
        case HowManyIn(first, second, place):
            digit = ("which digit tells the", units(place), "of", Said(first))
            return asked(*digit) + asked("and of", Said(second))
        case AllInOnePlace(first, second, place):
            return asked("how many", units(place), "is", Said(first)) + asked("and", Said(second))
        case AnythingAfter(first, second, place):
            after = ("is there anything after the", units(place), "in one of them")
            return told("look at", Said(first), "and", Said(second)) + asked(*after)
        case SignReadAloud(first, second):
            read = told("read your line with", Said(first), "and", Said(second), "aloud")
            return read + asked("which one do you say is more")
        case _:
            assert_never(ask)
