"""Questions about products of whole numbers and of fractions."""

from typing import assert_never

from onewhole.languages.english.making import Nodes, asked, bare, told
from onewhole.misconceptions.asks.products import (
    CutInFour,
    GroupsOfNothing,
    LittleNumber,
    PartOfPart,
    ProductAsk,
    RowWorth,
    SignBetween,
    TakenTimes,
    TensInGroups,
    TenTimes,
    WhenIsItJoined,
    WhereAreItsTens,
    WhichDigitIsWritten,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_products(ask: ProductAsk) -> Sentences:
    """Ask about a product.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(ask_of_products(WhereAreItsTens(7, 6)))
    'How much is 7 times 6? Where are the tens of that in your answer?'
    """
    match ask:
        case WhereAreItsTens(digit, by):
            return _makes(digit, by) + asked("where are the tens of that in your answer")
        case WhichDigitIsWritten(digit, by):
            return _makes(digit, by) + asked("which digit of that tells the ones")
        case WhenIsItJoined(digit, by):
            joined = asked("when do you add the tens that you carried: before that or after")
            return told("look at the next digit", ",", bare(digit)) + _makes(digit, by) + joined
        case TensInGroups(times, number):
            lay = told("lay out", bare(times), "groups of", Said(number))
            return lay + asked("how many tens are in one group", ", and how many are there in all")
        case LittleNumber(times):
            small = asked("what is the small number above the tens for")
            return small + asked("do you still need the tens", bare(times), "times")
        case RowWorth(by):
            return asked("what does the first digit of", Said(by), "stand for") + asked(
                "how much is its row worth"
            )
        case TenTimes(number, wrote):
            return asked("how much is ten times", Said(number)) + asked("can", Said(wrote), "be right")
        case CutInFour(problem):
            draw = told("draw", Said(problem), "as a rectangle, cut at the tens into four parts")
            return draw + asked("which of the four have you counted")
        case GroupsOfNothing(times):
            return asked("how much are", bare(times), "groups of nothing")
        case SignBetween(problem):
            return told("point to the sign in", Said(problem)) + asked("what does it tell you to do")
        case PartOfPart(part, number):
            draw = told("draw", Said(number), ", then take", Said(part), "of that")
            return draw + asked("is it more or less than", Said(number))
        case TakenTimes(times, number, wrote):
            often: Nodes = ("once",) if times == 1 else (bare(times), "times")
            return asked("how much is", Said(number), "taken", often) + asked(
                "is your answer", Said(wrote), "more than that"
            )
        case _:
            assert_never(ask)


def _makes(digit: int, by: int) -> Sentences:
    return asked("how much is", bare(digit), "times", bare(by))
