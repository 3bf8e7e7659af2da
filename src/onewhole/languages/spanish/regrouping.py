"""Opening a larger unit, and putting full groups together again, in Spanish."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import SO, a_single, regroups, some, told, units
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Said, Seam, Thing
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

FULL_GROUP = Thing("grupo completo", "grupos completos", None)


def regrouping(reason: Regrouping, words: ClassWords) -> Sentences:
    """Say why something is regrouped, or what regrouping has made.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> text_of(regrouping(OneIsWorth(*mixed(6).units, 6), ClassWords("tira", "tiras", feminine=True)))
    'Una tira tiene 6 sextos.'
    """
    match reason:
        case OpensOne(large, small, have, need):
            act = regroups(words, a_single(large, words))
            if have >= need:
                return told("no hay", units(small), SO, "primero", act)
            return told("no hay suficientes", units(small), "para quitar", some(need, small), SO, act)
        case OpensToMatch(large, small, times):
            return told(regroups(words, _made(times, large, words)), "para tener más", units(small))
        case OneIsWorth(large, small, ratio):
            return told(a_single(large, words), "tiene", some(ratio, small))
        case AreWorth(large, small, times, worth):
            if times == 1:
                return told(a_single(large, words), "tiene", some(worth, small))
            return told(some(times, large, words), "tienen", some(worth, small))
        case PutTogether(small, opened, had, now):
            if not had:
                return told("ahora", "hay", some(now, small))
            return told(some(opened, small), "y", some(had, small), "son", some(now, small))
        case FullGroups(large, small, ratio, times):
            made = (some(ratio, small), "forman", a_single(large, words))
            return told(made, Seam(", y"), "hay", Counted(times, FULL_GROUP))
        case MakesLarger(large, small, times, had):
            return told(some(had, small), "forman", _made(times, large, words))
        case WrittenTogether(result):
            return told("escrito como siempre, es", Said(result))
        case _:
            assert_never(reason)


def _made(times: int, large: Unit, words: ClassWords) -> Counted:
    """Count what is opened or made; one of it in a word."""
    return a_single(large, words) if times == 1 else some(times, large, words)
