"""The numbers of a statement, taken out of it and put back in."""

from collections.abc import Iterator, Sequence
from typing import assert_never

from msgspec.structs import replace

from onewhole.number.quantity import Quantity
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
    in_brackets,
    quantities,
)
from onewhole.statements.rounding import Rounding
from onewhole.statements.sides import sides
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Statement,
)


def numbers_of(statement: Statement) -> tuple[Quantity, ...]:
    """Return every written number in order; the one with the gap is not among them.

    >>> from onewhole.statements.reading import read_statement
    >>> [number.counts for number in numbers_of(read_statement("7 2/6 - 3 5/6"))]
    [(7, 2), (3, 5)]
    """
    return tuple(found for side in sides(statement) for found in quantities(side))


def with_numbers(statement: Statement, numbers: Sequence[Quantity]) -> Statement:
    """Return the same statement about other numbers, given in the order of :func:`numbers_of`.

    Raises ValueError when there are too few or too many.

    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("7 2/6 - 3 5/6")
    >>> with_numbers(asked, numbers_of(asked)) == asked
    True
    """
    if len(numbers) != len(numbers_of(statement)):
        msg = f"{len(numbers)} numbers do not fill this statement"
        raise ValueError(msg)
    supply = iter(numbers)
    match statement:
        case Question(asked):
            return Question(_filled(asked, supply))
        case Comparison(left, right):
            return Comparison(_filled(left, supply), _filled(right, supply), statement.sign)
        case Ordering(parts):
            return replace(statement, parts=tuple(_each(parts, supply)))
        case MissingNumber():
            rest = _filled(statement.rest, supply)
            beside = tuple((_filled(part, supply), taken) for part, taken in statement.beside)
            return replace(statement, rest=rest, beside=beside)
        case AnotherName(_, wanted):
            return AnotherName(next(supply), wanted)
        case AskedInWords():
            return statement.with_numbers(supply)
        case Rounding():
            return Rounding(next(supply), statement.to)
        case _:
            assert_never(statement)


def _each(parts: tuple[Quantity, ...], supply: Iterator[Quantity]) -> Iterator[Quantity]:
    """Give a number of the supply for each part."""
    return (next(supply) for _ in parts)


def _filled(side: Expression, supply: Iterator[Quantity]) -> Expression:
    match side:
        case Quantity():
            return next(supply)
        case Sum(terms):
            return Sum(tuple(Term(_filled(term.part, supply), term.taken) for term in terms))
        case Times(left, right):
            return Times(_filled(left, supply), _filled(right, supply))
        case Over(top, bottom):
            return Over(_filled(top, supply), _filled(bottom, supply))
        case Quotient(left, right):
            return Quotient(_filled(left, supply), _filled(right, supply))
        case InBrackets(inside):
            return in_brackets(_filled(inside, supply))
        case WithRemainder(_, _, by):
            return WithRemainder(next(supply), next(supply), by)
        case _:
            assert_never(side)
