"""Questions about a number that is missing in an equation."""

from typing import assert_never

from onewhole.languages.english.making import asked, told
from onewhole.misconceptions.asks.gaps import (
    AreSidesEqual,
    CanBeTaken,
    ComesTo,
    GapAsk,
    HadBeforeGiving,
    SaysToDo,
    UsedWhere,
    WhatEachSideMakes,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_gaps(ask: GapAsk) -> Sentences:
    """Ask about a missing number.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(ask_of_gaps(CanBeTaken(whole(12), whole(9))))
    'Can you take 12 away from 9?'
    """
    match ask:
        case ComesTo(wrote, total):
            read = told("read the problem aloud with your", Said(wrote), "in the gap")
            return read + asked("does it come to", Said(total))
        case HadBeforeGiving(gone, left):
            had = told("you had some, you gave", Said(gone), "away, and", Said(left), "is left")
            return had + asked("did you have more or less than", Said(left))
        case CanBeTaken(wrote, first):
            return asked("can you take", Said(wrote), "away from", Said(first))
        case WhatEachSideMakes(first, second, wrote, beside):
            make = asked("what do", Said(first), "and", Said(second), "make together")
            return make + asked("and your", Said(wrote), "and", Said(beside))
        case AreSidesEqual(wrote, beside):
            put = told("put your", Said(wrote), "in the gap beside", Said(beside))
            return put + asked("are both sides the same")
        case UsedWhere(number):
            return asked("where did you use", Said(number))
        case SaysToDo(number):
            return asked("what does the sign before", Said(number), "say to do")
        case _:
            assert_never(ask)
