"""Opening a larger unit, and putting full groups together again."""

from typing import assert_never

from onewhole.notations.reasons.told import some
from onewhole.notations.text import text
from onewhole.notations.words import ClassWords, unit_name
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


def regrouping(reason: Regrouping, words: ClassWords) -> str:
    """Say why something is regrouped, or what regrouping has made.

    >>> from onewhole.number.ladder import mixed
    >>> regrouping(OneIsWorth(*mixed(6).units, 6), ClassWords("strip", "strips"))
    'One strip is 6 sixths.'
    """
    match reason:
        case OpensOne(large, small, have, need):
            act = f"{words.regroup} one {unit_name(large, 1, words)}"
            if have >= need:
                return f"There are no {unit_name(small)} to open, so {act} first."
            return f"There are not enough {unit_name(small)} to take {some(need, small)}, so {act}."
        case OpensToMatch(large, small, times):
            many = f"one {unit_name(large, 1, words)}" if times == 1 else some(times, large, words)
            return f"{words.regroup.capitalize()} {many} to get more {unit_name(small)}."
        case OneIsWorth(large, small, ratio):
            return f"One {unit_name(large, 1, words)} is {some(ratio, small)}."
        case AreWorth(large, small, times, worth):
            if times == 1:
                return f"One {unit_name(large, 1, words)} is {some(worth, small)}."
            return f"{some(times, large, words)} are {some(worth, small)}."
        case PutTogether(small, opened, had, now):
            if not had:
                return f"Now there are {some(now, small)}."
            return f"{some(opened, small)} and {some(had, small)} make {some(now, small)}."
        case FullGroups(large, small, ratio, times):
            there = "there is 1 full group" if times == 1 else f"there are {times} full groups"
            return f"{some(ratio, small)} make one {unit_name(large, 1, words)}, and {there}."
        case MakesLarger(large, small, times, had):
            return f"{some(had, small)} make {some(times, large, words)}."
        case WrittenTogether(result):
            return f"Written the usual way, this is {text(result)}."
        case _:
            assert_never(reason)
