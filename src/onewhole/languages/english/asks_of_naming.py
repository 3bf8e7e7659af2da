"""Questions about a number that is written another way."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import a_single, asked, some, told, units
from onewhole.misconceptions.asks.naming import (
    BackToPieces,
    LastDigitCalled,
    MadeOf,
    NamingAsk,
    PartOfLarger,
    PiecesBefore,
    StillGoesInto,
    StillMore,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_naming(ask: NamingAsk, words: ClassWords) -> Sentences:
    """Ask about another name of a number.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_quantity
    >>> text_of(ask_of_naming(LastDigitCalled(read_quantity("0.35")), ClassWords()))
    'Say 0.35 aloud. What is its last digit called?'
    """
    match ask:
        case PiecesBefore(fraction, wrote):
            called = ("what are the pieces of", Said(fraction), "called, and those of your", Said(wrote))
            return asked(*called) + asked("did they change size")
        case BackToPieces(fraction, wholes, large, small):
            there = told("at first there was", Said(fraction))
            are = "is" if wholes == 1 else "are"
            return there + asked("how many", units(small), are, some(wholes, large, words))
        case StillGoesInto(wrote):
            look = told("look at the top and the bottom of", Said(wrote))
            return look + asked("is there a number that still goes into both")
        case LastDigitCalled(number):
            return told("say", Said(number), "aloud") + asked("what is its last digit called")
        case PartOfLarger(large, small, count):
            are = "is" if count == 1 else "are"
            return asked("what part of", a_single(large, words), are, some(count, small, words))
        case MadeOf(number, wholes, large, small):
            are = "is" if wholes == 1 else "are"
            there = told("at first there was", Said(number))
            made = asked("how many", units(small, words), are, some(wholes, large, words))
            return there + made + asked("how many are left")
        case StillMore(wrote, number):
            return asked("which is more", ",", "your", Said(wrote), "or", Said(number))
        case _:
            assert_never(ask)
