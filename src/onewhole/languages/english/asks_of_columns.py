"""Questions about subtraction in columns."""

from typing import assert_never

from onewhole.languages.english.making import a_single, asked, one_of, some, told, units
from onewhole.misconceptions.asks.columns import (
    AnyToTake,
    ColumnAsk,
    FrontDigit,
    InThisColumn,
    LeftAfterTrade,
    NothingBelow,
    OneAndTenMore,
    TenMoreFrom,
    TradedFor,
    TradeToGetMore,
    WhereDidItGo,
    WhichColumnIsShort,
    ZeroToTrade,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_columns(ask: ColumnAsk) -> Sentences:
    """Ask about subtraction in columns.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(ask_of_columns(TenMoreFrom(whole(143), whole(143).ladder.units[2])))
    'Build 143 with blocks. You need ten more ones. Where do they come from?'
    """
    match ask:
        case WhichColumnIsShort(top):
            short = asked("in which column are there too few to take away")
            return told("build", Said(top), "with blocks") + short + asked("what could you trade")
        case TradeToGetMore(top, place, need):
            enough = asked("are there enough", units(place), "to take", some(need, place), "away")
            return (
                told("look at the", units(place), "of", Said(top))
                + enough
                + asked("what could you trade to get more")
            )
        case TenMoreFrom(top, place):
            more = told("you need ten more", units(place))
            return told("build", Said(top), "with blocks") + more + asked("where do they come from")
        case ZeroToTrade(top, place):
            zero = told("there is a zero in the", units(place), "place of", Said(top))
            where = asked("where can you get", a_single(place), "to trade")
            return zero + where + told("build", Said(top), "with blocks and show me each trade")
        case InThisColumn(problem, place):
            show = told("show me the", units(place), "of", Said(problem), "with blocks")
            return show + asked("what is there, what goes, and what is left")
        case OneAndTenMore(place):
            had = told("you had", some(1, place), "and got ten more")
            return had + asked("how many", units(place), "are there now")
        case WhereDidItGo(place):
            return (
                told("you crossed off", a_single(place))
                + asked("where did it go")
                + told("show me with blocks")
            )
        case NothingBelow(top, place):
            below = told("nothing stands below the", units(place), "of", Said(top))
            return below + asked("how many", units(place), "does the problem tell you to take")
        case AnyToTake(second, place):
            worth = asked("what is each digit of", Said(second), "worth")
            return worth + asked("are there any", units(place), "to take away")
        case FrontDigit(top, place, wrote):
            read = told("read your answer", Said(wrote), "aloud")
            return read + asked("where did the", one_of(place), "of", Said(top), "go")
        case TradedFor(large, small):
            trade = told("take", a_single(large), "and trade it for", units(small))
            return trade + asked("how many", units(small), "do you get")
        case LeftAfterTrade(top, place):
            trade = told("build", Said(top), "with blocks and trade", a_single(place))
            return trade + asked("how many", units(place), "are left")
        case _:
            assert_never(ask)
