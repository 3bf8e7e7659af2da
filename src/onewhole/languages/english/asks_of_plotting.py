"""Questions about a line plot."""

from typing import assert_never

from onewhole.languages.english.making import asked, bare
from onewhole.misconceptions.asks.plotting import (
    BelowFirstTick,
    CountOfWhat,
    EndsOfPlot,
    HowManyOrMuch,
    MarkAbove,
    MarkStandsFor,
    PlotAskedOf,
    PointAtEach,
    ValueItself,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_plotting(ask: PlotAskedOf) -> Sentences:
    """Ask about a line plot.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(ask_of_plotting(CountOfWhat(3)))
    'There are 3 of what? What is written below that stack?'
    """
    match ask:
        case MarkAbove(value):
            return asked("what does each mark above", Said(value), "stand for")
        case MarkStandsFor():
            return asked("what does one mark stand for") + asked("how many marks are there")
        case BelowFirstTick():
            return asked("what is written below the first tick")
        case HowManyOrMuch():
            return asked("is it asked how many there are, or how much they come to")
        case CountOfWhat(count):
            return asked("there are", bare(count), "of what") + asked("what is written below that stack")
        case EndsOfPlot():
            return asked("which is the greatest value with a mark, and which is the least")
        case PointAtEach(value, more):
            side = "more than" if more else "less than"
            return asked("which marks are", side, Said(value)) + asked("can you point at each of them")
        case ValueItself(value, more):
            side = "more than" if more else "less than"
            return asked("is one of exactly", Said(value), side, Said(value))
        case _:
            assert_never(ask)
