"""Questions about a larger unit that is opened."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import Nodes, a_single, asked, some, told, units
from onewhole.misconceptions.asks.opening import (
    CrossedOff,
    EnoughAlready,
    EnoughToTake,
    HadBefore,
    HowManyMake,
    HowManyMore,
    HowManyOpened,
    NoneThere,
    NotOpened,
    OneBesideOne,
    OnesAfterTrading,
    OpeningAsk,
    WhichIsShown,
)
from onewhole.number.unit import Kind, Unit
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_opening(ask: OpeningAsk, words: ClassWords) -> Sentences:
    """Ask about a larger unit that is opened.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import measure
    >>> text_of(ask_of_opening(HowManyMake(*measure("h", "min").units), ClassWords()))
    'Look at a clock. How many minutes make one hour?'
    """
    match ask:
        case EnoughToTake(start, small, need):
            enough = ("are there enough", units(small), "to take", some(need, small), "away")
            return told("show", Said(start)) + asked(enough) + asked("what can you do")
        case NoneThere(start, small):
            there = asked("are there any", units(small), "to take away")
            return told("show", Said(start)) + there + asked("what must you do first")
        case NotOpened(start, large, small):
            opened = told("show", Said(start), "and", _opens(large, small, words))
            if large.kind is Kind.NUMBER:
                return opened + asked("how many", units(large, words), "are not cut")
            return opened + asked("how many", units(large), "are left")
        case CrossedOff(large, small):
            crossed = told("you crossed off", a_single(large, words))
            return crossed + asked("where did it go") + told("show it in", units(small))
        case HowManyMake(large, small):
            make = asked("how many", units(small), "make", a_single(large, words))
            if large.kind is Kind.NUMBER:
                return told(_opens(large, small, words), "and count them") + make
            if large.kind is Kind.TIME:
                return told("look at a", "calendar" if large.mark == "wk" else "clock") + make
            return make + asked("how can you find out")
        case OneBesideOne(large, small):
            beside = told("put", a_single(large, words), "beside", a_single(small))
            fit = ("how many", units(small), "make", a_single(large, words))
            return beside + asked("are they the same amount") + asked(fit)
        case HadBefore(large, small, have):
            before = ("before you", "cut" if large.kind is Kind.NUMBER else "changed", a_single(large, words))
            to = () if large.kind is Kind.NUMBER else ("to", units(small), ",")
            where = asked("where is it now") if have == 1 else asked("where are they now")
            return told(before, to, "you had", some(have, small)) + where
        case HowManyOpened(start, large):
            begun = told("you started with", Said(start))
            cut = asked("how many", units(large, words), "did you cut")
            return begun + cut + asked("how many", units(large, words), "are not cut")
        case WhichIsShown(first, second):
            which = asked("which number do you start with", ",", Said(first), "or", Said(second))
            return which + asked("which one only tells how much to take away")
        case EnoughAlready(small, have, need):
            how = asked("how can you tell before you start")
            if not need:
                return asked("do you have to take any", units(small), "away") + how
            return (
                told("you have", some(have, small))
                + asked("is that enough to take", some(need, small), "away")
                + how
            )
        case HowManyMore(small, have):
            asks = asked("how many", units(small), "does the problem tell you to take")
            if not have:
                return (
                    told("there are no", units(small), "to start with")
                    + asks
                    + asked("where can you get them")
                )
            return told("you took", some(have, small)) + asks + asked("how many more must go")
        case OnesAfterTrading(ones, one, small):
            got = asked("where did you get more", units(small))
            still = ("is" if ones == 1 else "are", "there still", some(ones, one), "after that")
            return got + asked(still)
        case _:
            assert_never(ask)


def _opens(large: Unit, small: Unit, words: ClassWords) -> Nodes:
    """Say that one whole is cut into pieces, or that one of a measure's unit is changed to smaller ones."""
    if large.kind is Kind.NUMBER:
        return "cut", a_single(large, words), "into", units(small)
    return "change", a_single(large), "to", units(small)
