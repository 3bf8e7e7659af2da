"""Good questions for home, from what tonight's page is about. Common practice, no source."""

from collections.abc import Sequence
from typing import assert_never

from onewhole.languages.english.words import ClassWords
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation

#: So many questions about what is on the page are enough.
MOST = 2
GUESS = "Is your answer near your first guess?"


def questions_to_ask(found: Sequence[About], words: ClassWords) -> tuple[str, ...]:
    """Return questions about what most of a page is about, then one about its units, then the guess."""
    asked = [_question(one, words) for one in found[:MOST]]
    if any(one.operation is not Operation.COMPARE for one in found):
        asked += [*(_unit(one, words) for one in found[:1]), GUESS]
    return tuple(dict.fromkeys(filter(None, asked)))


def _question(one: About, words: ClassWords) -> str:
    match one.operation:
        case Operation.SUBTRACT:
            return _taking(one.units)
        case Operation.ADD:
            return _adding(one.units, words)
        case Operation.COMPARE:
            return _comparing(one.units)
        case Operation.MULTIPLY:
            return "How many groups are there, and how much is in one?"
        case Operation.FIND:
            return "What would make both sides the same amount?"
        case _:
            assert_never(one.operation)


def _taking(units: Units) -> str:
    match units:
        case Units.PIECES:
            return "Are there enough pieces to take away?"
        case Units.UNLIKE:
            return "Which size of piece fits all the fractions?"
        case Units.PLACES | Units.DECIMALS:
            return "Is there enough in each place to take away?"
        case Units.MEASURES:
            return "Are there enough of the smaller unit to take away?"
        case _:
            assert_never(units)


def _adding(units: Units, words: ClassWords) -> str:
    match units:
        case Units.PIECES:
            return f"Do the pieces fill one {words.whole} or more?"
        case Units.UNLIKE:
            return "Which size of piece fits all the fractions?"
        case Units.PLACES | Units.DECIMALS:
            return "Is there ten or more in any place?"
        case Units.MEASURES:
            return "Do the smaller units make one of the larger unit?"
        case _:
            assert_never(units)


def _comparing(units: Units) -> str:
    match units:
        case Units.PIECES | Units.UNLIKE:
            return "Are the pieces the same size?"
        case Units.PLACES | Units.DECIMALS:
            return "Which place do you look at first?"
        case Units.MEASURES:
            return "Which unit do you look at first?"
        case _:
            assert_never(units)


def _unit(one: About, words: ClassWords) -> str:
    match one.units:
        case Units.PIECES | Units.UNLIKE:
            return f"How many pieces are in one {words.whole}?"
        case Units.PLACES:
            return "" if one.operation is Operation.MULTIPLY else "How many ones make one ten?"
        case Units.DECIMALS:
            return "How many tenths make a whole?"
        case Units.MEASURES:
            return "How many of the smaller unit make one of the larger?"
        case _:
            assert_never(one.units)
