"""Good questions for home. Common practice, no source."""

from fractions import Fraction
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import a_single, told, units
from onewhole.number.ladder import TEN
from onewhole.number.unit import ONE, Unit
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Node
from onewhole.sentences.sentence import End, Sentences

_TEN, _TENTH = Unit(Fraction(TEN)), Unit(Fraction(1, TEN))


def operation_asked(one: About, words: ClassWords) -> Sentences:
    """Ask about what is done in a problem.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(operation_asked(About(Operation.ADD, Units.PIECES), ClassWords("strip", "strips")))
    'Do the pieces fill one strip or more?'
    """
    match one.operation:
        case Operation.SUBTRACT:
            return _taking(one.units)
        case Operation.ADD:
            return _adding(one.units, words)
        case Operation.COMPARE:
            return _comparing(one.units)
        case Operation.MULTIPLY:
            return _asked("how many groups are there, and how much is in one")
        case Operation.DIVIDE:
            return _asked("what is shared out first, and what is done with what is left")
        case Operation.RENAME:
            return _asked("how else can you write the same amount")
        case Operation.FIND:
            return _asked("what would make both sides the same amount")
        case Operation.ORDER:
            return _asked("which number is the least, and how do you see it")
        case Operation.READ:
            return _asked("what does each mark stand for, and which marks are meant")
        case Operation.ROUND:
            return _asked("which two does the number lie between, and which of them is nearer")
        case _:
            assert_never(one.operation)


def guess_asked() -> Sentences:
    """Ask whether an answer can be right."""
    return _asked("is your answer near your first guess")


def _asked(*nodes: Node) -> Sentences:
    return told(*nodes, end=End.ASKS)


def _taking(found: Units) -> Sentences:
    match found:
        case Units.PIECES:
            return _asked("are there enough pieces to take away")
        case Units.UNLIKE:
            return _asked("which size of piece fits all the fractions")
        case Units.PLACES | Units.DECIMALS:
            return _asked("is there enough in each place to take away")
        case Units.MEASURES:
            return _asked("are there enough of the smaller unit to take away")
        case _:
            assert_never(found)


def _adding(found: Units, words: ClassWords) -> Sentences:
    match found:
        case Units.PIECES:
            return _asked("do the pieces fill", a_single(ONE, words), "or more")
        case Units.UNLIKE:
            return _asked("which size of piece fits all the fractions")
        case Units.PLACES | Units.DECIMALS:
            return _asked("is there ten or more in any place")
        case Units.MEASURES:
            return _asked("do the smaller units make one of the larger unit")
        case _:
            assert_never(found)


def _comparing(found: Units) -> Sentences:
    match found:
        case Units.PIECES | Units.UNLIKE:
            return _asked("are the pieces the same size")
        case Units.PLACES | Units.DECIMALS:
            return _asked("which place do you look at first")
        case Units.MEASURES:
            return _asked("which unit do you look at first")
        case _:
            assert_never(found)


def unit_asked(one: About, words: ClassWords) -> Sentences:
    """Ask about the units of a problem; nothing where there is nothing to ask."""
    match one.units:
        case Units.PIECES | Units.UNLIKE:
            return _asked("how many pieces are in", a_single(ONE, words))
        case Units.PLACES if one.operation in {Operation.MULTIPLY, Operation.DIVIDE}:
            return ()
        case Units.PLACES:
            return _asked("how many", units(ONE), "make", a_single(_TEN))
        case Units.DECIMALS:
            return _asked("how many", units(_TENTH), "make a whole")
        case Units.MEASURES:
            return _asked("how many of the smaller unit make one of the larger")
        case _:
            assert_never(one.units)
