"""What an audit finds in a page, and what a teacher may do about it."""

from collections.abc import Sequence
from fractions import Fraction
from typing import assert_never

from onewhole.findings.in_page import (
    Alike,
    FallsBack,
    HardToRead,
    HigherThanPage,
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

_HIGH = "needs more room than a page"
_HIGHER_THAN_FIRST = "needs more room than there is under the title"


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
        case FallsBack(before, after):
            return told("problem", Label(after), "is much easier than", Label(before), "before it")
        case HardToRead(label, grade, aim):
            read = ("the words of problem", Label(label), "read at about grade", Said(grade))
            return told(read, ", above", bare(aim))
        case NumbersUntold(label, numbers):
            missing = listed([(Said(number),) for number in numbers])
            return told("the words of problem", Label(label), "do not tell", missing)
        case HigherThanPage(label, missing, unpictured, first):
            high = _HIGHER_THAN_FIRST if first else _HIGH
            return told("problem", Label(label), high, _left_out(missing, unpictured))
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
            return told("leave some problems out, or set more")
        case OverEvening():
            return told("leave some problems out")
        case Alike(telling=other):
            if other is None:
                return told("ask the child to show each step: no other problem tells them apart")
            return told("add a problem that tells them apart, such as", Said(other))
        case RightByLuck(showing=other):
            if other is None:
                return told("a right answer here says nothing about it")
            return told("add a problem that shows it, such as", Said(other))
        case FallsBack():
            return told("put the easier one first if you want a climb")
        case HardToRead():
            return told("use shorter sentences and words")
        case NumbersUntold():
            return told("see that the words and the problem before the bar have the same numbers")
        case HigherThanPage(missing=0):
            return told("let it be drawn on other paper")
        case HigherThanPage(first=True):
            return told("put a shorter problem first, or let the rest be written on other paper")
        case HigherThanPage():
            return told("let the rest be written on other paper, or use smaller numbers or fewer of them")
        case OutsideStandard(code):
            return standard_met(code)
        case _:
            assert_never(found)


def how_known(found: PageFinding) -> Sentences:
    """Say how a finding is known, for whoever asks; nothing where it is plain to see.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(how_known(FallsBack("1", "2", 11, 7)))
    'By our own count of what makes a problem hard, 2 has 7 points and 1 has 11.'
    """
    match found:
        case FallsBack(before, after, points_before, points_after):
            ours = "by our own count of what makes a problem hard,"
            first = (Label(after), "has", bare(points_after), "points")
            return told(ours, *first, "and", Label(before), "has", bare(points_before))
        case OverBudget() | OverEvening():
            return told("these are our own start values: correct the budget from real nights")
        case Alike(patterns, _, other, tried, searched):
            keys = told("in the list of mistakes they are", *listed([(Typed(key),) for key in patterns]))
            return keys if other else keys + told("they are", *_in_vain(tried, searched))
        case RightByLuck(pattern):
            return told("in the list of mistakes it is", Typed(pattern))
        case HardToRead():
            return told("a formula counts syllables and words, and is rough on so few words")
        case Twins() | NumbersUntold() | HigherThanPage() | OutsideStandard():
            return ()
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


def problems(labels: Sequence[str]) -> Nodes:
    """Name problems: 1, 2 and 5."""
    return listed([(Label(label),) for label in labels])


def _takes(minutes: Fraction) -> Nodes:
    return "the page takes about", Said(usual(mixed(2), minutes)), "minutes"


def _left_out(missing: int, unpictured: bool) -> Nodes:
    """Say what of a problem is not on its page; nothing where it is all there."""
    lines = "line is missing" if missing == 1 else "lines are missing"
    if not missing:
        return (": it has no place for a picture",) if unpictured else ()
    return (":", bare(missing), lines, *(("and the place for a picture",) if unpictured else ()))


def _pattern(key: str) -> Typed:
    """Name an error pattern by what a child does."""
    return Typed(f"“{by_id(key).name}”")


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
