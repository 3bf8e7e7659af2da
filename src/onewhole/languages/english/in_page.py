"""What an audit finds in a page, and what a teacher may do about it."""

from collections.abc import Sequence
from fractions import Fraction
from typing import assert_never

from onewhole.findings.in_page import (
    Alike,
    FallsBack,
    HardToRead,
    NumbersUntold,
    OutsideStandard,
    OverBudget,
    OverEvening,
    PageFinding,
    RightByLuck,
    Twins,
)
from onewhole.findings.searched import NumberSort, Searched
from onewhole.languages.english.making import Nodes, bare, listed, told
from onewhole.languages.english.standards import rule, standard_met
from onewhole.misconceptions.catalogue import by_id
from onewhole.number.ladder import mixed
from onewhole.number.quantity import usual
from onewhole.sentences.node import Label, Said, Typed
from onewhole.sentences.sentence import Sentences


def found_in_page(found: PageFinding) -> Sentences:
    """Say what was found.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(found_in_page(Twins(("1", "3"))))
    'Problems 1 and 3 ask the same thing with the same differences of numbers.'
    """
    match found:
        case Twins(labels):
            same = "ask the same thing with the same differences of numbers"
            return told("problems", problems(labels), same)
        case OverBudget(minutes, budget):
            return told(_takes(minutes), ", more than the", bare(budget), "that you set")
        case OverEvening(minutes, evening):
            usual_time = ("; ten minutes a grade is", bare(evening), "for one evening")
            return told(_takes(minutes), usual_time, ", all subjects together")
        case Alike(patterns):
            names = listed([(_pattern(key),) for key in patterns])
            return told("this page cannot tell", names, "apart: they write the same answers on it")
        case RightByLuck(pattern):
            return told(_pattern(pattern), "gives the right answer by luck wherever it could show")
        case FallsBack(before, after, points_before, points_after):
            easier = ("problem", Label(after), "is much easier than", Label(before))
            return told(easier, ":", bare(points_after), "points after", bare(points_before))
        case HardToRead(label, grade, aim):
            read = ("the words of problem", Label(label), "read at about grade", Said(grade))
            return told(read, ", above", bare(aim))
        case NumbersUntold(label, numbers):
            missing = listed([(Said(number),) for number in numbers])
            return told("the words of problem", Label(label), "do not tell", missing)
        case OutsideStandard(code):
            return rule(code)
        case _:
            assert_never(found)


def page_mended(found: PageFinding) -> Sentences:
    """Say what may be done about it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(page_mended(Twins(("1", "3"))))
    'Change the numbers of all but one of them.'
    """
    match found:
        case Twins():
            return told("change the numbers of all but one of them")
        case OverBudget():
            return told("leave some problems out, or set more") + _START_VALUES
        case OverEvening():
            return told("leave some problems out") + _START_VALUES
        case Alike(telling=other, tried=tried, searched=searched):
            if other is None:
                return told("ask the child to show each step: they are", *_in_vain(tried, searched))
            return told("add a problem that tells them apart, such as", Said(other))
        case RightByLuck(showing=other):
            if other is None:
                return told("a right answer here says nothing about it")
            return told("add a problem that shows it, such as", Said(other))
        case FallsBack():
            return told("put the easier one first if you want a climb")
        case HardToRead():
            return told("use shorter sentences and words") + told("the formula is rough on so few words")
        case NumbersUntold():
            return told("see that the words and the problem before the bar have the same numbers")
        case OutsideStandard(code):
            return standard_met(code)
        case _:
            assert_never(found)


def also_true(patterns: int) -> Sentences:
    """Say that what was found of one pattern is true of others too.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(also_true(2))
    'The same is true of 2 other patterns.'
    """
    others = ("one other pattern",) if patterns == 1 else (bare(patterns), "other patterns")
    return told("the same is true of", others)


_START_VALUES = told("these are our own start values: correct the budget from real nights")


def problems(labels: Sequence[str]) -> Nodes:
    """Name problems: 1, 2 and 5."""
    return listed([(Label(label),) for label in labels])


def _takes(minutes: Fraction) -> Nodes:
    return "the page takes about", Said(usual(mixed(2), minutes)), "minutes"


def _pattern(key: str) -> Typed:
    """Name an error pattern by its id and its own name."""
    return Typed(f"{key} ({by_id(key).name})")


def _in_vain(tried: int, searched: Sequence[Searched]) -> Nodes:
    """Say what was looked at in vain."""
    first = ("not told apart by the answer to any of the", bare(tried), "problems that tell most")
    if not searched:
        return first
    return (*first, ", nor by one to", *listed([_space(one) for one in searched]))


def _space(one: Searched) -> Nodes:
    return bare(one.count), "differences of" if one.taken else "sums of", _numbers(one.sort)


def _numbers(sort: NumberSort) -> str:
    """Say what the numbers of a listed space are."""
    match sort:
        case NumberSort.WHOLE_NUMBERS:
            return "whole numbers up to four digits, zeros among them"
        case NumberSort.DECIMALS:
            return "decimals with up to two places, zeros among them"
        case NumberSort.LIKE_PARTS | NumberSort.UNLIKE_PARTS:
            return "numbers up to nine wholes with these denominators"
        case NumberSort.MEASURES:
            return "measures in these units"
        case _:
            assert_never(sort)
