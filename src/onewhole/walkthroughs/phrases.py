"""What is said again and again, in more than one wording; numbers in digits."""

from typing import assert_never

from onewhole.languages.english.reasons import reason_told
from onewhole.languages.english.words import ClassWords, unit_name
from onewhole.notations.aloud import MOST_WORDS, spoken_words
from onewhole.notations.row import Sign, flat
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Sum
from onewhole.statements.statement import Comparison, MissingNumber, Question, Relation
from onewhole.statements.writable import Writable
from onewhole.walkthroughs.lesson import Item
from onewhole.working.line import Line, Says
from onewhole.working.reasons.jumping import (
    CountedUp,
    GivenToMakeOne,
    JumpedToWhole,
    JumpedWholes,
    SameToBoth,
)
from onewhole.working.reasons.regrouping import FullGroups, OpensOne
from onewhole.working.reasons.renaming import CutAgain, WholesInPieces
from onewhole.working.reasons.taking import (
    AddedUnitByUnit,
    LargerUnitFirst,
    OpenedToTake,
    PiecesAdded,
    PiecesTaken,
    SetAside,
    TakenUnitByUnit,
)

RELATIONS = {
    Relation.LESS: "is less than",
    Relation.EQUAL: "is the same amount as",
    Relation.GREATER: "is greater than",
}
NOT_SO = {
    Relation.LESS: "is not less than",
    Relation.EQUAL: "is not the same amount as",
    Relation.GREATER: "is not greater than",
}


def stands(says: Says) -> tuple[str, ...]:
    """Say what stands on the line, in more than one wording; nothing where the ear could not follow it.

    >>> from onewhole.statements.reading import read_expression
    >>> stands(read_expression("(6 - 3) + (8/6 - 5/6)"))[0]
    'First 6 - 3, then 8/6 - 5/6.'
    """
    if isinstance(says, Sum) and all(isinstance(term.part, Sum) and not term.taken for term in says.terms):
        if any(not plain(term.part) for term in says.terms):
            return ()
        parts = ", then ".join(text(term.part) for term in says.terms)
        return (f"First {parts}.", f"That is {parts}.") if len(says.terms) > 1 else ()
    if not plain(says):
        return ()
    said = text(says)
    if isinstance(says, MissingNumber):
        return (f"Now it says {said}.", f"Now we have {said}.")
    if isinstance(says, Comparison):
        if says.sign is None:
            left, right = text(says.left), text(says.right)
            return (f"Now compare {left} with {right}.", f"So look at {left} and at {right}.")
        return (f"So {said}.",)
    return (f"That is {said}.", f"Now it is {said}.", f"So now we have {said}.")


def plain(thing: Writable) -> bool:
    """Say whether the ear can follow a line: no brackets, and no fraction that is still being worked.

    >>> from onewhole.statements.reading import read_expression
    >>> plain(read_expression("6 8/6 - 3 5/6")), plain(read_expression("(44 - 23)/6"))
    (True, False)
    """
    return not any(piece in {Sign.OPEN, Sign.CLOSE} for piece in flat(thing))


def asked(item: Item, at: int) -> str:
    """Say a problem's label and what it asks for; ``at`` chooses the wording."""
    number, statement = f"Number {item.label}", item.statement
    said = text(statement)
    match statement:
        case Question():
            if item.story:
                return f"{number}. {item.story} We work out {said}."
            told = f"{number}: {said}." if at % 2 else f"{number} is {said}."
            return told if spoken_words(told) <= MOST_WORDS else f"{number}. {said}."
        case Comparison(left, right):
            return f"{number}. {item.story} Which is more, {text(left)} or {text(right)}?"
        case MissingNumber():
            return f"{number}. {item.story} Find the number for the blank: {said}."
        case _:
            assert_never(statement)


def outcome(item: Item) -> str:
    """Say the problem with its answer: a true statement."""
    match item.statement, item.answer:
        case Question(asked_for), Quantity() as found:
            return f"{text(asked_for)} = {text(found)}"
        case Comparison(left, right), Relation() as sign:
            return f"{text(left)} {RELATIONS[sign]} {text(right)}"
        case _, found:
            return f"the missing number is {text(found)}"


def answers(item: Item) -> tuple[str, ...]:
    """Say the answer once more, in more than one wording."""
    whole = outcome(item)
    if isinstance(item.answer, Relation) or isinstance(item.statement, MissingNumber):
        return (f"So {whole}.", f"In number {item.label}, {whole}.")
    found = text(item.answer)
    return (
        f"So {whole}.",
        f"The answer to number {item.label} is {found}.",
        f"So number {item.label} comes to {found}.",
    )


def deed(line: Line, words: ClassWords) -> str | None:
    """Say what is done at a line, without capital and full stop; None where only its reason tells it.

    It is said when a problem points back to one like it: no reason, which was given before.
    """
    match line.because:
        case OpensOne(large=large):
            return f"{words.regroup} one {unit_name(large, 1, words)}"
        case OpenedToTake():
            return f"{words.regroup} one {words.whole}"
        case TakenUnitByUnit(units):
            return f"take the {_names(units, words)}"
        case AddedUnitByUnit(units):
            return f"add the {_names(units, words)}"
        case PiecesTaken(small, _, count):
            return f"take {count} {unit_name(small, count)}"
        case PiecesAdded(small, _, count):
            return f"add {count} {unit_name(small, count)}"
        case LargerUnitFirst(unit):
            return f"take the {unit_name(unit, 2, words)} first"
        case FullGroups(small=small):
            return f"put full groups of {unit_name(small)} together"
        case SetAside(pieces=pieces):
            return f"set {text(pieces)} aside"
        case CountedUp(start, end):
            return f"count up from {text(start)} to {text(end)}"
        case JumpedWholes(start, wholes):
            return f"start at {text(start)} and jump on by {text(wholes)}"
        case JumpedToWhole(by=by):
            return f"jump on by {text(by)}"
        case GivenToMakeOne(first, by):
            return f"give {text(by)} to {text(first)}"
        case SameToBoth(by):
            return f"add {text(by)} to both numbers"
        case WholesInPieces(small=small):
            return f"count everything in {unit_name(small)}"
        case CutAgain(small):
            return f"cut the pieces again into {unit_name(small)}"
        case _:
            return None


def _names(units: tuple[Unit, ...], words: ClassWords) -> str:
    """Name units one after another; the largest of several may be the class's wholes."""
    largest = unit_name(units[0], 2, words if len(units) > 1 else None)
    named = [largest, *(unit_name(unit) for unit in units[1:])]
    return ", then the ".join(named)


def reason_said(line: Line, words: ClassWords) -> str:
    """Say why a line follows; nothing for the problem itself, nor for a reason without a number (0 + 0)."""
    match line.because:
        case None | TakenUnitByUnit(()) | AddedUnitByUnit(()):
            return ""
        case reason:
            return text_of(reason_told(reason, words))
