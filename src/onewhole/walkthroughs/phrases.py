"""What is said again and again, in more than one wording; numbers in digits."""

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import assert_never

from onewhole.notations.aloud import MOST_WORDS, spoken_words
from onewhole.notations.row import Sign, Writable, flat
from onewhole.notations.sentences import sentence
from onewhole.notations.text import text
from onewhole.notations.words import ClassWords, unit_name
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Sum
from onewhole.statements.statement import Comparison, MissingNumber, Question, Relation
from onewhole.walkthroughs.lesson import Item
from onewhole.working.line import Line, Says
from onewhole.working.reason import Reason

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


def _names(reason: Reason, words: ClassWords) -> str:
    units = [unit for _, unit in reason.details if isinstance(unit, Unit)]
    named = [
        unit_name(unit, 2, words if at == 0 and len(units) > 1 else None) for at, unit in enumerate(units)
    ]
    return ", then the ".join(named)


def _unit(reason: Reason, name: str, words: ClassWords, count: int = 2) -> str:
    found = reason[name]
    return unit_name(found, count, words if name == "unit" else None) if isinstance(found, Unit) else ""


def _some(reason: Reason, name: str, words: ClassWords) -> str:
    count = reason[name]
    return f"{count} {_unit(reason, 'small', words, count if isinstance(count, int) else 2)}"


def _number(reason: Reason, name: str) -> str:
    found = reason[name]
    return text(found) if isinstance(found, Quantity) else str(found)


#: What is done at a step, for pointing back: no reason, which was given before.
_DEEDS: Mapping[str, Callable[[Reason, ClassWords], str]] = MappingProxyType(
    {
        "open_one": lambda r, w: f"{w.regroup} one {_unit(r, 'unit', w, 1)}",
        "open_to_take": lambda _, w: f"{w.regroup} one {w.whole}",
        "unit_from_unit": lambda r, w: f"take the {_names(r, w)}",
        "unit_to_unit": lambda r, w: f"add the {_names(r, w)}",
        "pieces_from_pieces": lambda r, w: f"take {_some(r, 'gone', w)}",
        "pieces_to_pieces": lambda r, w: f"add {_some(r, 'gone', w)}",
        "larger_units_first": lambda r, w: f"take the {_unit(r, 'unit', w)} first",
        "full_groups": lambda r, w: f"put full groups of {_unit(r, 'small', w)} together",
        "set_aside": lambda r, _: f"set {_number(r, 'pieces')} aside",
        "jump_to_stops": lambda r, _: f"count up from {_number(r, 'start')} to {_number(r, 'end')}",
        "jump_wholes": lambda r, _: f"start at {_number(r, 'start')} and jump on by {_number(r, 'wholes')}",
        "jump_to_whole": lambda r, _: f"jump on by {_number(r, 'by')}",
        "give_to_make_one": lambda r, _: f"give {_number(r, 'by')} to {_number(r, 'first')}",
        "same_to_both": lambda r, _: f"add {_number(r, 'by')} to both numbers",
        "wholes_in_pieces": lambda r, w: f"count everything in {_unit(r, 'small', w)}",
        "cut_each_again": lambda r, w: f"cut the pieces again into {_unit(r, 'small', w)}",
    }
)


def deed(line: Line, words: ClassWords) -> str | None:
    """Say what is done at a line, without capital and full stop; None where only its reason tells it."""
    if line.because is None or line.because.key not in _DEEDS:
        return None
    return _DEEDS[line.because.key](line.because, words)


def reason_said(line: Line, words: ClassWords) -> str:
    """Say why a line follows; nothing for the problem itself, nor for a reason without a number (0 + 0)."""
    return sentence(line.because, words) if line.because and _tells(line.because) else ""


def _tells(reason: Reason) -> bool:
    return bool(reason.details) or reason.key not in {"unit_from_unit", "unit_to_unit"}
