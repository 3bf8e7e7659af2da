"""Opening a larger unit, and putting full groups together again."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import a_single, some, told, units
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Said, Seam, Thing, Typed
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.regrouping import (
    AreWorth,
    FullGroups,
    MakesLarger,
    OneIsWorth,
    OpensOne,
    OpensToMatch,
    PutTogether,
    Regrouping,
    WrittenTogether,
)

FULL_GROUP = Thing("full group", "full groups", None)


def regrouping(reason: Regrouping, words: ClassWords) -> Sentences:
    """Say why something is regrouped, or what regrouping has made.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(regrouping(OneIsWorth(*mixed(6).units, 6), ClassWords("strip", "strips")))
    'One strip is 6 sixths.'
    """
    match reason:
        case OpensOne(large, small, have, need):
            act = (Typed(words.regroup), a_single(large, words))
            if have >= need:
                return told(
                    "there are no", units(small), "to", Typed(words.regroup), Seam(", so", "so"), act, "first"
                )
            lacking = ("there are not enough", units(small), "to take", some(need, small))
            return told(lacking, Seam(", so", "so"), act)
        case OpensToMatch(large, small, times):
            return told(Typed(words.regroup), _made(times, large, words), "to get more", units(small))
        case OneIsWorth(large, small, ratio):
            return told(a_single(large, words), "is", some(ratio, small))
        case AreWorth(large, small, times, worth):
            if times == 1:
                return told(a_single(large, words), "is", some(worth, small))
            return told(some(times, large, words), "are", some(worth, small))
        case PutTogether(small, opened, had, now):
            if not had:
                return told("now", "there are", some(now, small))
            return told(some(opened, small), "and", some(had, small), "make", some(now, small))
        case FullGroups(large, small, ratio, times):
            there = "there is" if times == 1 else "there are"
            made = (some(ratio, small), "make", a_single(large, words))
            return told(made, Seam(", and"), there, Counted(times, FULL_GROUP))
        case MakesLarger(large, small, times, had):
            return told(some(had, small), "make", _made(times, large, words))
        case WrittenTogether(result):
            return told("written the usual way, this is", Said(result))
        case _:
            assert_never(reason)


def _made(times: int, large: Unit, words: ClassWords) -> Counted:
    """Count what is opened or made; one of it in a word."""
    return a_single(large, words) if times == 1 else some(times, large, words)
