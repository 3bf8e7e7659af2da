"""Questions about the whole problem: its sign, what is to be taken, how big the answer should be."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import asked, bare, told, units
from onewhole.misconceptions.asks.amounts import (
    AboutHowBig,
    AllOfThem,
    AmountAsk,
    CanBeLeft,
    HowMuchTaken,
    MoreOrLess,
    MoreThanEach,
    MoveBoth,
    SignTells,
    TookTooMuch,
    WhichPartMissing,
    WholesToo,
    WriteAsAdding,
)
from onewhole.sentences.node import Said, Seam
from onewhole.sentences.sentence import Sentences


def ask_of_amounts(ask: AmountAsk, words: ClassWords) -> Sentences:
    """Ask about the whole problem.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_expression
    >>> text_of(ask_of_amounts(WhichPartMissing(read_expression("5 3/6 - 2 1/6")), ClassWords()))
    'Read 5 3/6 - 2 1/6 aloud. Which part of the numbers is not in your answer yet?'
    """
    match ask:
        case HowMuchTaken(second):
            return asked("how much of", Said(second), "did you take away") + asked("what must still go")
        case WhichPartMissing(problem):
            missing = asked("which part of the numbers is not in your answer yet")
            return told("read", Said(problem), "aloud") + missing
        case AboutHowBig(problem, wrote):
            return asked("about how big should", Said(problem), "be") + asked(
                "is your answer", Said(wrote), "near that"
            )
        case WholesToo(first, second, large):
            return told("take", Said(second), "away from", Said(first)) + asked(
                "do any", units(large, words), "go too"
            )
        case SignTells(problem, named):
            each = [("the", units(unit, words)) for unit in named]
            sign = asked("what does it tell you to do with", *each[0])
            more = tuple(sentence for one in each[1:] for sentence in asked("and with", *one))
            return told("point to the sign in", Said(problem)) + sign + more
        case MoreOrLess(problem, first):
            will = asked("will the answer be more or less than", Said(first))
            return (
                told("read", Said(problem), "aloud", Seam(", and"), "point to the sign")
                + will
                + asked("is yours")
            )
        case CanBeLeft(first, second, wrote):
            start = told("you start with", Said(first), "and take", Said(second), "away")
            return start + asked("can", Said(wrote), "be left")
        case MoreThanEach(first, second, wrote):
            more = asked("is your answer", Said(wrote), "more than", Said(first))
            return more + asked("is it more than", Said(second)) + asked("should it be")
        case TookTooMuch(second, taken):
            took = told("the problem says to take", Said(second), Seam(", and"), "you took", Said(taken))
            return took + asked("how can you make up for that")
        case MoveBoth(first, second):
            mark = told(
                "mark", Said(first), "and", Said(second), "on a number line", Seam(", and"), "move both"
            )
            return mark + asked("when does the distance between them stay the same")
        case AllOfThem(times, number, small):
            lay = told("lay out", Said(number), "once", Seam(", then"), bare(times), "times")
            return lay + asked("are the pieces still", units(small))
        case WriteAsAdding(problem, number):
            write = told("write", Said(problem), "as adding", Seam(":"), Said(number), "again and again")
            return write + asked("what do you get")
        case _:
            assert_never(ask)
