"""Thoughts about subtraction in columns."""

from typing import assert_never

from onewhole.languages.english.making import a_single, bare, told, units
from onewhole.misconceptions.thoughts.columns import (
    ColumnThought,
    DigitComesDown,
    JustEnough,
    MakesItTen,
    SameDigits,
    SmallOnesStay,
    StillTooFew,
    TenUnseen,
    TopDigitStays,
)
from onewhole.sentences.sentence import Sentences


def thought_of_columns(thought: ColumnThought) -> Sentences:
    """Say a thought about subtraction in columns.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(thought_of_columns(TopDigitStays(2, 6)))
    "I can't take 6 from 2, so the 2 stays."
    """
    match thought:
        case TenUnseen(large, small):
            got = told("I get ten more", units(small))
            return got + told("I may not see that", a_single(large), "was used")
        case DigitComesDown(digit):
            return told("only a zero stands above the", bare(digit), ", so the", bare(digit), "comes down")
        case SameDigits(digit):
            return told("both are", bare(digit), ", so I write", bare(digit))
        case TopDigitStays(have, need):
            return told("I can't take", bare(need), "from", bare(have), ", so the", bare(have), "stays")
        case StillTooFew(large, have, need):
            crossed = ("I crossed off", a_single(large))
            return told(*crossed, ", and still I can't take", bare(need), "from", bare(have))
        case SmallOnesStay(large, small):
            crossed_off = told("I crossed off", a_single(large))
            return crossed_off + told("the", units(small), "may look to me as if they stay")
        case JustEnough(large, small):
            lack = ("I take as many from the", units(large), "as I need for the", units(small))
            return told(*lack)
        case MakesItTen(need):
            return told("I can't take", bare(need), "from zero, so I make the zero ten")
        case _:
            assert_never(thought)
