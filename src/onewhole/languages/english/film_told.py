"""The beginning and the end of a film: what tonight is about, the big picture, and good night."""

from collections.abc import Sequence

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import Nodes, a_single, bare, some, told, units
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Label, Seam, Thing, Typed
from onewhole.sentences.sentence import Sentences
from onewhole.sentences.typed import typed

#: What the first and the last part of a film are called.
TONIGHT, THE_END = "Tonight", "The end"

_PROBLEM = Thing("problem", "problems", None)
_WHOLE = Thing("whole", "wholes")


def greeting_told(class_name: str) -> Sentences:
    """Greet a class by its name, or without one."""
    return told("hello", ",", typed(class_name)) if class_name else told("hello")


def date_told(date: str) -> Sentences:
    """Say what day it is."""
    return told("today is", typed(date))


def title_told(title: str) -> Sentences:
    """Say what the page is called."""
    return told("this page is called", typed(title))


def count_told(problems: int) -> Sentences:
    """Say how many problems there are."""
    return told("there is" if problems == 1 else "there are", Counted(problems, _PROBLEM), "tonight")


def whole_told(words: ClassWords) -> Sentences:
    """Say what a whole is in this class."""
    return told(Counted(1, _WHOLE, spelt=True), "is", a_single(ONE, words))


def opened_told(
    count: int, every: int, small: Unit | None, large: Unit | None, words: ClassWords, *, lacking: bool
) -> Sentences:
    """Say in how many of all problems a larger unit is opened; None for units that are not the same in all.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import mixed
    >>> wholes, sixths = mixed(6).units
    >>> text_of(opened_told(7, 8, sixths, wholes, ClassWords("strip", "strips", "regroup"), lacking=True))
    'In most of these there are not enough sixths, so regroup one strip.'
    """
    there = "there are not enough" if lacking else "we need more"
    smaller = units(small) if small else "pieces"
    larger: Nodes = (a_single(large, words),) if large else ("one larger unit",)
    lack = ("in", *_how_many(count, every), there, smaller)
    return told(lack, Seam(", so", "so"), Typed(words.regroup), larger)


def column_opened_told(count: int, every: int, words: ClassWords) -> Sentences:
    """Say in how many of all problems a column has too few.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(column_opened_told(3, 8, ClassWords()))
    'In 3 of these a column has too few, so regroup one from the column to its left.'
    """
    lack = ("in", *_how_many(count, every), "a column has too few")
    return told(lack, Seam(", so", "so"), Typed(words.regroup), "one from the column to its left")


def one_adds_told(label: str) -> Sentences:
    """Warn of the one problem that adds."""
    return told("look at the sign of number", Label(label), Seam(":"), "there you add")


def one_takes_told(label: str) -> Sentences:
    """Warn of the one problem that takes away."""
    return told("look at the sign of number", Label(label), Seam(":"), "there you take away")


def both_signs_told(added: int, taken: int) -> Sentences:
    """Warn of both signs on one page."""
    counted = ("you add in", bare(added), "and take away in", bare(taken), "of the problems")
    return told("look at the signs") + told(counted)


def try_told() -> Sentences:
    """Ask the family to try it first."""
    return told("stop here and try it")


def turn_told() -> Sentences:
    """Leave the answer to the family."""
    return told("now it is your turn") + told("stop here", Seam(","), "and write the answer")


def film_closing_told() -> Sentences:
    """End the film."""
    return (
        told("that", "was the last one")
        + told("if your answer is another one", Seam(","), "look for the line where it changes")
        + told("good night, and well done")
    )


def columns_told(*, pointed: bool) -> Sentences:
    """Say how numbers are written under each other; ``pointed`` where one of them has a point."""
    under = "point under point" if pointed else "ones under ones, tens under tens"
    return told("write the numbers in columns", Seam(":"), under) + told("work from right to left")


def tens_told(large: Unit, small: Unit, tens: Sequence[Unit], words: ClassWords) -> Sentences:
    """Say that opening a unit is the same as opening a ten; ``tens`` are the ten and the one."""
    ten, one = tens
    worth = (a_single(large, words), "is", some((large.size / small.size).numerator, small))
    return (
        told("it is the same as with tens")
        + told(a_single(ten), "is", some(10, one), Seam(", and"), worth)
        + told("the amount does not change")
    )


def _how_many(count: int, every: int) -> Nodes:
    if count == every:
        return ("all of these",)
    return ("most of these",) if 2 * count > every else (bare(count), "of these")
