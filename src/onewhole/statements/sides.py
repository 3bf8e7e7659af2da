"""The expressions that make up a statement."""

from typing import assert_never

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
)


def sides(statement: Statement) -> tuple[Expression, ...]:
    """Return the expressions that make up a statement, in order; the number with the gap is none of them.

    Of a line plot it is the values on it, and not the one that a question names once more.

    >>> from onewhole.statements.reading import read_statement
    >>> len(sides(read_statement("3 + ? = 5 1/2")))
    2
    """
    match statement:
        case Question(asked):
            return (asked,)
        case Comparison(left, right):
            return left, right
        case Ordering(parts):
            return parts
        case MissingNumber():
            return (statement.rest, *(part for part, _ in statement.beside))
        case AnotherName(number) | Rounding(number):
            return (number,)
        case AskedInWords():
            return statement.numbers
        case _:
            assert_never(statement)
