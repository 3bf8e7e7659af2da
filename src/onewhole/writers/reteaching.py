"""What to do with a group tomorrow, by the family of its patterns and by what it missed.

Common practice, no source.
"""

from typing import assert_never

from onewhole.findings.group_kind import GroupKind
from onewhole.languages.english.words import ClassWords
from onewhole.marking.grouping.group import Group
from onewhole.misconceptions.pattern import Family
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation

#: More than two ideas are too many for ten minutes.
MOST = 2
SAME = "Write both numbers, before and after: the amount did not change."


def reteaching(group: Group, words: ClassWords, of: About) -> str:
    """Return what to do with a group, in a few sentences; ``of`` is what it missed most is about."""
    ideas = [_idea(family, of) for family in group.families[:MOST]] or [_placed(group.place, of)]
    return " ".join(dict.fromkeys(ideas)).format(whole=words.whole, wholes=words.wholes)


def _placed(place: GroupKind, of: About) -> str:
    match place:
        case GroupKind.ABSENT:
            return "Give tonight's page again, and find out whether it came home."
        case GroupKind.EXTENSION:
            more = ", and the answer in two more ways" if of.fractions else ""
            return f"Let each write a kite story for one problem{more}."
        case GroupKind.SLIPS:
            return "Let each find the slip alone: put the answer back and see whether it fits."
        case GroupKind.INTERVIEW | GroupKind.FAMILY:
            return f"Ask each child to show one problem with {_things(of.units)}. Listen first, help after."
        case _:
            assert_never(place)


def _things(units: Units) -> str:
    match units:
        case Units.PIECES | Units.UNLIKE:
            return "{wholes}"
        case Units.PLACES:
            return "blocks"
        case Units.DECIMALS:
            return "place-value disks"
        case Units.MEASURES:
            return "a drawing of both units"
        case _:
            assert_never(units)


def _idea(family: Family, of: About) -> str:
    match family:
        case Family.REGROUPING:
            return _regrouping(of)
        case Family.NUMERATOR:
            return _counting(of)
        case Family.DENOMINATOR:
            return _naming(of)
        case Family.WHOLES:
            return _unit_by_unit(of.units)
        case Family.OPERATION:
            return _reading(of.operation)
        case Family.CONVERSION:
            return _converting(of.units)
        case Family.FORM:
            return _writing(of.units)
        case Family.FACT:
            return _facts(of.operation)
        case Family.EQUIVALENCE:
            if of.fractions:
                return "Cut every piece again. Has the amount changed? How many pieces are there now?"
            return "Write one number in another way. Has the amount changed?"
        case Family.COMPARISON:
            if of.fractions:
                return "Lay both numbers side by side on equal {wholes} and look."
            return "Write one number under the other, unit under unit. Look from the largest unit on."
        case Family.PLACE_VALUE:
            return "Line the numbers up by their units and name each unit aloud."
        case _:
            assert_never(family)


def _regrouping(of: About) -> str:
    adding = of.operation is Operation.ADD
    match of.units:
        case Units.PIECES | Units.UNLIKE if adding:
            return f"Lay out all the pieces and put full {{wholes}} together. How many are left over? {SAME}"
        case Units.PIECES | Units.UNLIKE:
            return (
                "Cut one {whole} into its pieces and lay it back. How many pieces is it? How many {wholes} "
                f"are left now? {SAME}"
            )
        case Units.PLACES | Units.DECIMALS if adding:
            return f"Build it with {_things(of.units)}. Change ten of one kind for one of the next. {SAME}"
        case Units.PLACES | Units.DECIMALS:
            things = _things(of.units)
            return f"Build the first number with {things}. Change one of them for ten smaller ones. {SAME}"
        case Units.MEASURES:
            return f"How many of the smaller unit make one of the larger? Change one for the other. {SAME}"
        case _:
            assert_never(of.units)


def _counting(of: About) -> str:
    parts = "{wholes} and pieces" if of.fractions else _things(of.units)
    match of.operation:
        case Operation.SUBTRACT:
            take = "Take away one by one. What do you do when they run out?"
            return f"Build the first number with {parts}. {take}"
        case Operation.ADD:
            return f"Build the numbers with {parts} and put them together. What do you do when they fill up?"
        case Operation.MULTIPLY:
            return f"Build one group with {parts}, then all the groups. Count."
        case Operation.COMPARE | Operation.FIND:
            return f"Build both sides with {parts} and count."
        case _:
            assert_never(of.operation)


def _naming(of: About) -> str:
    if not of.fractions:
        return "Say the name of the unit after every number."
    if of.units is Units.UNLIKE:
        return "Say the name of the pieces. Cut them to one size first: then they have one name."
    match of.operation:
        case Operation.SUBTRACT:
            return "Say the pieces like a noun: 8 sixths take away 5 sixths. The name stays."
        case Operation.ADD:
            return "Say the pieces like a noun: 2 sixths and 3 sixths. The name stays."
        case Operation.MULTIPLY:
            return "Say the pieces like a noun: 4 groups of 2 thirds. The name stays."
        case Operation.COMPARE | Operation.FIND:
            return "Say the name of the pieces on both sides."
        case _:
            assert_never(of.operation)


def _unit_by_unit(units: Units) -> str:
    match units:
        case Units.PIECES | Units.UNLIKE:
            return "Say the {wholes} and the pieces of each number aloud, then work on one after the other."
        case Units.PLACES | Units.DECIMALS:
            return "Say what each digit is worth, then work place by place."
        case Units.MEASURES:
            return "Say both units of each number aloud, then work on one after the other."
        case _:
            assert_never(units)


def _reading(operation: Operation) -> str:
    match operation:
        case Operation.ADD | Operation.SUBTRACT | Operation.MULTIPLY:
            return "Read the sign aloud and guess first: will there be more or less than before?"
        case Operation.COMPARE:
            return "Read both numbers aloud and guess first: which is more?"
        case Operation.FIND:
            return "Read both sides aloud: they are the same amount. Guess the missing number first."
        case _:
            assert_never(operation)


def _converting(units: Units) -> str:
    match units:
        case Units.PIECES | Units.UNLIKE:
            return (
                "Build 2 {wholes} and 1 piece. Count all of it in pieces. Where is each piece in the number "
                "you wrote?"
            )
        case Units.PLACES | Units.DECIMALS:
            return "How many of the smaller place make one of the larger? Count a number in the smaller one."
        case Units.MEASURES:
            return "How many of the smaller unit make one of the larger? Count 2 larger ones in it."
        case _:
            assert_never(units)


def _writing(units: Units) -> str:
    match units:
        case Units.PIECES | Units.UNLIKE:
            return (
                "Lay out the pieces of the answer and put full {wholes} together. "
                "Which ways are there to write it?"
            )
        case Units.PLACES | Units.DECIMALS:
            return "Read the answer aloud, place by place."
        case Units.MEASURES:
            return "Put the smaller units of the answer together. Do they make one of the larger?"
        case _:
            assert_never(units)


def _facts(operation: Operation) -> str:
    match operation:
        case Operation.SUBTRACT:
            return "Work the hard facts beside the line: make a ten, or think of the addition."
        case Operation.ADD:
            return "Work the hard facts beside the line: make a ten."
        case Operation.MULTIPLY:
            return "Work the hard facts beside the line: begin with one that you know."
        case Operation.COMPARE | Operation.FIND:
            return "Work the hard facts beside the line."
        case _:
            assert_never(operation)
