"""What to do with a group tomorrow, by the family of its patterns and by what it missed.

Common practice, no source.
"""

from collections.abc import Sequence
from fractions import Fraction
from typing import assert_never

from onewhole.findings.group_kind import GroupKind
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import a_single, some, told, units
from onewhole.misconceptions.pattern import Family
from onewhole.number.unit import ONE, Unit
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation
from onewhole.sentences.node import Counted, Node, Thing
from onewhole.sentences.sentence import End, Sentences

#: More than two ideas are too many for ten minutes.
MOST = 2
_SIXTH, _THIRD = Unit(Fraction(1, 6)), Unit(Fraction(1, 3))
_PIECE = Thing("piece", "pieces", None)
_GROUP = Thing("group", "groups", None)
_LARGER = Thing("larger one", "larger ones", None)


def reteaching(place: GroupKind, families: Sequence[Family], words: ClassWords, of: About) -> Sentences:
    """Say what to do with a group, in a few sentences; ``of`` is what it missed most is about.

    >>> from onewhole.notations.sentences.text import text_of
    >>> about = About(Operation.COMPARE, Units.PIECES)
    >>> text_of(reteaching(GroupKind.FAMILY, [Family.COMPARISON], ClassWords("strip", "strips"), about))
    'Lay both numbers side by side on equal strips and look.'
    """
    ideas = [_idea(family, of, words) for family in families[:MOST]] or [_placed(place, of, words)]
    return tuple(sentence for idea in dict.fromkeys(ideas) for sentence in idea)


def _asks(*nodes: Node) -> Sentences:
    return told(*nodes, end=End.ASKS)


def _same() -> Sentences:
    return told("write both numbers, before and after: the amount did not change")


def _placed(place: GroupKind, of: About, words: ClassWords) -> Sentences:
    match place:
        case GroupKind.ABSENT:
            return told("give tonight's page again, and find out whether it came home")
        case GroupKind.EXTENSION if of.fractions:
            return told("let each write a story for one problem, and the answer in two more ways")
        case GroupKind.EXTENSION:
            return told("let each write a story for one problem")
        case GroupKind.SLIPS:
            return told("let each find the slip alone: put the answer back and see whether it fits")
        case GroupKind.OWN_IDEA:
            shown = told("let each child work two problems aloud with", _things(of.units, words))
            return shown + told("write down what is done the same way both times")
        case GroupKind.INTERVIEW | GroupKind.FAMILY:
            shown = told("ask each child to show one problem with", _things(of.units, words))
            return shown + told("listen first, help after")
        case _:
            assert_never(place)


def _things(found: Units, words: ClassWords) -> Node:
    match found:
        case Units.PIECES | Units.UNLIKE:
            return units(ONE, words)
        case Units.PLACES:
            return "blocks"
        case Units.DECIMALS:
            return "place-value disks"
        case Units.MEASURES:
            return "a drawing of both units"
        case _:
            assert_never(found)


def _idea(family: Family, of: About, words: ClassWords) -> Sentences:
    match family:
        case Family.REGROUPING:
            return _regrouping(of, words)
        case Family.NUMERATOR:
            return _counting(of, words)
        case Family.DENOMINATOR:
            return _naming(of)
        case Family.WHOLES:
            return _unit_by_unit(of.units, words)
        case Family.OPERATION:
            return _reading(of.operation)
        case Family.CONVERSION:
            return _converting(of.units, words)
        case Family.FORM:
            return _writing(of.units, words)
        case Family.FACT:
            return _facts(of.operation)
        case Family.EQUIVALENCE if of.fractions:
            cut = told("cut every piece again") + _asks("has the amount changed")
            return cut + _asks("how many pieces are there now")
        case Family.EQUIVALENCE:
            return told("write one number in another way") + _asks("has the amount changed")
        case Family.COMPARISON if of.fractions:
            return told("lay both numbers side by side on equal", units(ONE, words), "and look")
        case Family.COMPARISON:
            under = told("write one number under the other, unit under unit")
            return under + told("look from the largest unit on")
        case Family.PLACE_VALUE if of.operation is Operation.ROUND:
            return _on_a_line()
        case Family.PLACE_VALUE:
            return told("line the numbers up by their units and name each unit aloud")
        case _:
            assert_never(family)


def _on_a_line() -> Sentences:
    """Say how a number is rounded on a number line."""
    drawn = told("draw a number line from one neighbor to the other and mark what is halfway")
    return drawn + _asks("where does the number lie") + _asks("which neighbor is nearer")


def _on_the_plot() -> Sentences:
    """Say how a line plot is read: mark by mark."""
    pointed = told("point at each mark of the line plot and say the value below it")
    return pointed + _asks("what does one mark stand for") + _asks("is it asked how many, or how much")


def _regrouping(of: About, words: ClassWords) -> Sentences:
    adding = of.operation is Operation.ADD
    things = _things(of.units, words)
    match of.units:
        case Units.PIECES | Units.UNLIKE if adding:
            laid = told("lay out all the pieces and put full", things, "together")
            return laid + _asks("how many are left over") + _same()
        case Units.PIECES | Units.UNLIKE:
            cut = told("cut", a_single(ONE, words), "into its pieces and lay it back")
            asked = _asks("how many pieces is it") + _asks("how many", things, "are left now")
            return cut + asked + _same()
        case Units.PLACES | Units.DECIMALS if adding:
            change = told("change ten of one kind for one of the next")
            return told("build it with", things) + change + _same()
        case Units.PLACES | Units.DECIMALS:
            change = told("change one of them for ten smaller ones")
            return told("build the first number with", things) + change + _same()
        case Units.MEASURES:
            asked = _asks("how many of the smaller unit make one of the larger")
            return asked + told("change one for the other") + _same()
        case _:
            assert_never(of.units)


def _counting(of: About, words: ClassWords) -> Sentences:
    things = _things(of.units, words)
    parts = (things, "and pieces") if of.fractions else (things,)
    match of.operation:
        case Operation.SUBTRACT:
            taken = told("take away one by one") + _asks("what do you do when they run out")
            return told("build the first number with", parts) + taken
        case Operation.ADD:
            built = told("build the numbers with", parts, "and put them together")
            return built + _asks("what do you do when they fill up")
        case Operation.MULTIPLY:
            return told("build one group with", parts, ", then all the groups") + told("count")
        case Operation.DIVIDE:
            shared = told("build the number with", parts, "and share it out, the largest first")
            return shared + _asks("what do you do with what is left")
        case Operation.RENAME:
            return told("build the number with", parts, "and count it again in the other way")
        case Operation.COMPARE | Operation.ORDER | Operation.FIND:
            return told("build both sides with", parts, "and count")
        case Operation.ROUND:
            return _on_a_line()
        case Operation.READ:
            return _on_the_plot()
        case _:
            assert_never(of.operation)


def _naming(of: About) -> Sentences:
    if not of.fractions:
        return told("say the name of the unit after every number")
    if of.units is Units.UNLIKE:
        one = told("cut them to one size first: then they have one name")
        return told("say the name of the pieces") + one
    noun, stays = "say the pieces like a noun:", told("the name stays")
    match of.operation:
        case Operation.SUBTRACT:
            return told(noun, some(8, _SIXTH), "take away", some(5, _SIXTH)) + stays
        case Operation.ADD:
            return told(noun, some(2, _SIXTH), "and", some(3, _SIXTH)) + stays
        case Operation.MULTIPLY:
            return told(noun, Counted(4, _GROUP), "of", some(2, _THIRD)) + stays
        case Operation.DIVIDE:
            return told(noun, some(8, _SIXTH), "shared out in", Counted(4, _GROUP)) + stays
        case Operation.COMPARE | Operation.FIND | Operation.RENAME | Operation.ORDER:
            return told("say the name of the pieces on both sides")
        case Operation.ROUND:
            return _on_a_line()
        case Operation.READ:
            return _on_the_plot()
        case _:
            assert_never(of.operation)


def _unit_by_unit(found: Units, words: ClassWords) -> Sentences:
    match found:
        case Units.PIECES | Units.UNLIKE:
            spoken = ("say the", units(ONE, words), "and the pieces of each number aloud")
            return told(spoken, ", then work on one after the other")
        case Units.PLACES | Units.DECIMALS:
            return told("say what each digit is worth, then work place by place")
        case Units.MEASURES:
            return told("say both units of each number aloud, then work on one after the other")
        case _:
            assert_never(found)


def _reading(operation: Operation) -> Sentences:
    match operation:
        case Operation.ADD | Operation.SUBTRACT | Operation.MULTIPLY | Operation.DIVIDE:
            return _asks("read the sign aloud and guess first: will there be more or less than before")
        case Operation.COMPARE:
            return _asks("read both numbers aloud and guess first: which is more")
        case Operation.RENAME:
            return told("read aloud how the number is to be written") + _asks("has the amount changed")
        case Operation.ORDER:
            return _asks("read all the numbers aloud and guess first: which is least")
        case Operation.FIND:
            same = told("read both sides aloud: they are the same amount")
            return same + told("guess the missing number first")
        case Operation.READ:
            return _on_the_plot()
        case Operation.ROUND:
            return _asks("read the number aloud and guess first: which two is it between")
        case _:
            assert_never(operation)


def _converting(found: Units, words: ClassWords) -> Sentences:
    match found:
        case Units.PIECES | Units.UNLIKE:
            built = told("build", some(2, ONE, words), "and", Counted(1, _PIECE))
            asked = _asks("where is each piece in the number you wrote")
            return built + told("count all of it in pieces") + asked
        case Units.PLACES | Units.DECIMALS:
            asked = _asks("how many of the smaller place make one of the larger")
            return asked + told("count a number in the smaller one")
        case Units.MEASURES:
            asked = _asks("how many of the smaller unit make one of the larger")
            return asked + told("count", Counted(2, _LARGER), "in it")
        case _:
            assert_never(found)


def _writing(found: Units, words: ClassWords) -> Sentences:
    match found:
        case Units.PIECES | Units.UNLIKE:
            laid = told("lay out the pieces of the answer and put full", units(ONE, words), "together")
            return laid + _asks("which ways are there to write it")
        case Units.PLACES | Units.DECIMALS:
            return told("read the answer aloud, place by place")
        case Units.MEASURES:
            asked = _asks("do they make one of the larger")
            return told("put the smaller units of the answer together") + asked
        case _:
            assert_never(found)


def _facts(operation: Operation) -> Sentences:
    beside = "work the hard facts beside the line"
    match operation:
        case Operation.SUBTRACT:
            return told(beside, ": make a ten, or think of the addition")
        case Operation.ADD:
            return told(beside, ": make a ten")
        case Operation.MULTIPLY:
            return told(beside, ": begin with one that you know")
        case Operation.DIVIDE:
            return told(beside, ": think of the multiplication")
        case Operation.COMPARE | Operation.FIND | Operation.RENAME | Operation.ORDER:
            return told(beside)
        case Operation.ROUND | Operation.READ:
            return told(beside)
        case _:
            assert_never(operation)
