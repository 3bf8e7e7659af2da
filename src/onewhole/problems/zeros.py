"""Zeros on top: where there is nothing to take from, and where nothing can be opened before it is opened."""

from msgspec import Struct

from onewhole.number.quantity import Quantity, counted
from onewhole.problems.needs import runs_below_zero
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Expression
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Statement,
    asked_quantities,
)
from onewhole.working.missing import alone_on_its_side
from onewhole.working.strategies.same_units import common_ladder


class Zeros(Struct, frozen=True):
    """How many zeros of the first number are in the way of a subtraction.

    ``taken_from`` counts those from which something is to be taken (3 - 2 1/5, 50 - 27), ``passed`` those of
    which one is needed by the unit below, so that a larger unit is opened first (the tens of 507 - 49).
    """

    taken_from: int = 0
    passed: int = 0


def zeros(statement: Statement) -> Zeros:
    """Return the zeros in the way of a subtraction, worked from left to right.

    A comparison and a rounding have none.

    >>> from onewhole.statements.reading import read_statement
    >>> zeros(read_statement("507 - 49")), zeros(read_statement("500 - 49")).taken_from
    (Zeros(taken_from=0, passed=1), 1)
    """
    match statement:
        case Question(asked):
            return _zeros(asked)
        case MissingNumber():
            return _zeros(alone_on_its_side(statement).rest)
        case Comparison() | AnotherName() | Rounding() | Ordering() | AskedInWords():
            return Zeros()


def has_zeros(statement: Statement) -> bool:
    """Say whether any zero is in the way.

    >>> from onewhole.statements.reading import read_statement
    >>> [has_zeros(read_statement(typed)) for typed in ("504 - 136", "342 - 118")]
    [True, False]
    """
    return zeros(statement) != Zeros()


def _zeros(side: Expression) -> Zeros:
    signed = asked_quantities(Question(side))
    if signed is None or runs_below_zero(side):
        return Zeros()
    ladder = common_ladder(signed)
    (first, _), *rest = signed
    top, taken_from, passed = first.on(ladder), 0, 0
    for number, taken in rest:
        second = number.on(ladder)
        if taken:
            here = _in_the_way(top, second)
            taken_from, passed = taken_from + here.taken_from, passed + here.passed
        parts = top.parts - second.parts if taken else top.parts + second.parts
        top = counted(ladder, parts * ladder.finest)
    return Zeros(taken_from, passed)


def _in_the_way(first: Quantity, second: Quantity) -> Zeros:
    """Count the zeros, from the smallest unit up; the largest unit has nothing to be opened."""
    taken_from, passed, opened = 0, 0, False
    for have, gone in reversed(list(zip(first.amounts, second.amounts, strict=True))[1:]):
        taken_from += not have and gone > 0 and not opened
        passed += not have and opened
        opened = have - opened < gone
    return Zeros(taken_from, passed)
