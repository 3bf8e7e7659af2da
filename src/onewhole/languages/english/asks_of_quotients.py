"""Questions about quotients of whole numbers, fractions, decimals and measures."""

from typing import assert_never

from onewhole.languages.english.making import asked, told
from onewhole.misconceptions.asks.quotients import (
    AllUsedUp,
    DigitNotUsed,
    FirstBlocks,
    GroupsMakeAgain,
    HowBigIsAGroup,
    HowManyFit,
    LargerThanAll,
    LeftAmongHowMany,
    MoreOrLessThanAll,
    MoreOrLessThanOne,
    OneMoreGroup,
    PiecesInAll,
    QuotientAsk,
    TensOfAll,
    WhereTheRestWent,
    WhichIsShared,
    WhoGetsThePieces,
)
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_quotients(ask: QuotientAsk) -> Sentences:
    """Ask about a quotient.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.quantity import whole
    >>> text_of(ask_of_quotients(GroupsMakeAgain(whole(4), whole(26), whole(824))))
    'Make 4 groups of 26. How much is that? Is it near 824?'
    """
    match ask:
        case GroupsMakeAgain(by, quotient, number):
            groups = told("make", Said(by), "groups of", Said(quotient))
            return groups + asked("how much is that") + asked("is it near", Said(number))
        case AllUsedUp(quotient, by, number):
            used = asked("how many do", Said(quotient), "groups of", Said(by), "use up")
            return used + asked("is that all of", Said(number))
        case LeftAmongHowMany(left):
            among = asked("among how many would you share the", Said(left), "that are left")
            return among + asked("is that the same as tenths")
        case FirstBlocks(by, number):
            first = told("lay out", Said(number), "in blocks")
            return (
                first
                + asked("can each of", Said(by), "children get one of the largest blocks")
                + asked("if not, what do you change them into")
            )
        case WhereTheRestWent(number):
            when = ("when you shared out the largest unit of", Said(number))
            return asked(*when, ", was something left") + asked("where did it go")
        case OneMoreGroup(left, by):
            return asked("could you make one more group of", Said(by), "out of the", Said(left), "left")
        case LargerThanAll(number, wrote):
            return asked("is", Said(wrote), "larger than", Said(number)) + asked("can it be")
        case DigitNotUsed(number):
            return asked("which digit of", Said(number), "have you not used yet")
        case TensOfAll(number):
            return asked("how many tens does", Said(number), "have once its hundreds are changed into tens")
        case HowBigIsAGroup(problem):
            return told("look at", Said(problem)) + asked("which of the two tells how big each group is")
        case HowManyFit(number, by):
            return asked("how many times does", Said(by), "fit in", Said(number)) + asked("more than once")
        case WhichIsShared(problem):
            shared = asked("which one is shared out, the first or the second")
            return told("look at", Said(problem)) + shared
        case PiecesInAll(piece, wholes):
            pieces = asked("how many pieces like", Said(piece), "are in one whole")
            return pieces + asked("how many are in", Said(wholes))
        case MoreOrLessThanAll(number, by):
            share = told("share", Said(number), "among", Said(by))
            return share + asked("does each get more or less than", Said(number))
        case MoreOrLessThanOne(number, by):
            shares = told(Said(number), "strips are for", Said(by), "children")
            return shares + asked("does each get more or less than one strip")
        case WhoGetsThePieces(pieces):
            return asked("who gets the", Said(pieces))
        case _:
            assert_never(ask)
