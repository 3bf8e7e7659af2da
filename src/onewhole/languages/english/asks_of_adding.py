"""Questions about addition in columns."""

from typing import assert_never

from onewhole.languages.english.making import asked, bare, one_of, told, units
from onewhole.misconceptions.asks.adding import (
    AddingAsk,
    AsManyPlaces,
    CarriedBefore,
    FirstAndLast,
    FirstDigits,
    HandedOn,
    HowManyOfEach,
    HowOftenCarried,
    MakeTogether,
    TenAreOneOf,
    TenMade,
    WhichColumnGets,
    WhichDigitSays,
    WholesOfEach,
    ZeroInTheColumn,
)
from onewhole.number.unit import Unit
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_adding(ask: AddingAsk) -> Sentences:
    """Ask about addition in columns.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(ask_of_adding(TenAreOneOf(whole(14).ladder.units[1])))
    'The ones make ten or more. Ten ones are one of what?'
    """
    match ask:
        case MakeTogether(first, second, place):
            make = asked("what do the", units(place), "of", Said(first), "and", Said(second), "make together")
            return make + asked("where did ten of them go")
        case TenMade(problem, place, large):
            look = told("look at the", units(place), "of", Said(problem))
            make = asked("do they make one", one_of(large), "or more")
            return look + make + asked("so what is there to carry")
        case TenAreOneOf(place):
            return _full(place) + asked("ten", units(place), "are one of what")
        case WhichDigitSays(place, total):
            comes = told("the", units(place), "come to", bare(total))
            return comes + asked("which digit of", bare(total), "counts", units(place))
        case FirstDigits(first, second):
            stands = ("what does the first digit of", Said(first), "stand for")
            return asked(*stands) + asked("and the first digit of", Said(second))
        case FirstAndLast(number):
            stands = ("what does the first digit of", Said(number), "stand for")
            return asked(*stands) + asked("is it as much as the last digit")
        case HowOftenCarried(large, small):
            count = told("show me the", units(large), "that the", units(small), "make")
            return count + asked("how often did you add them")
        case ZeroInTheColumn(problem, place):
            look = told("look at the", units(place), "of", Said(problem))
            return look + told("a zero stands there") + asked("how many", units(place), "are there in all")
        case CarriedBefore(first, second):
            return told("you carried from the", units(first)) + asked("what about the", units(second))
        case WhichColumnGets(place):
            return _full(place) + asked("which column should get ten of them")
        case HowManyOfEach(number, small, large):
            many = asked("how many", units(small), "is", Said(number))
            return many + asked("are there any", units(large), "in it")
        case HandedOn(small, large):
            return asked("what do the", units(small), "hand on to the", units(large))
        case AsManyPlaces(first, second):
            write = ("write", Said(first), "and", Said(second), "with the same number of decimal places")
            return told(*write) + asked("what does each say now")
        case WholesOfEach(first, second):
            return asked("how many wholes are there in", Said(first)) + asked("and in", Said(second))
        case _:
            assert_never(ask)


def _full(place: Unit) -> Sentences:
    return told("the", units(place), "make ten or more")
