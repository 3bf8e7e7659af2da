"""Amounts of one unit that are added or taken away: 75¢ + 50¢ is worked as 75 + 50, with the unit behind."""

from collections.abc import Callable
from typing import assert_never

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.pair import pair_of
from onewhole.number.ladder import TEN, Style, measure
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
    minus,
    plus,
)
from onewhole.statements.statement import Question, Statement
from onewhole.working.line import Line


def without_unit(statement: Statement) -> Question | None:
    """Return a sum or difference of two counts of one unit as that of the counts alone; else None.

    >>> from onewhole.statements.reading import read_statement
    >>> without_unit(read_statement("75¢ + 50¢")) == read_statement("75 + 50")
    True
    """
    pair = pair_of(statement)
    if pair is None or pair.styles != {Style.MEASURE} or pair.first.ladder != pair.second.ladder:
        return None
    if len(pair.first.ladder.units) > 1:
        return None
    first, second = whole(pair.first.parts), whole(pair.second.parts)
    return Question(minus(first, second) if pair.taken else plus(first, second))


def in_one_unit(attempt: Try) -> Try:
    """Return an attempt at whole numbers that works counts of one unit too, with the unit or without."""

    def tried(statement: Statement) -> Attempt | None:
        plain = without_unit(statement)
        if plain is None:
            return attempt(statement)
        found, pair = attempt(plain), pair_of(statement)
        if found is None or pair is None or not isinstance(found.wrote, Quantity):
            return None
        mark = pair.first.ladder.mark

        def counted(number: Quantity) -> Expression:
            return _by_place(number, mark)

        said = [pair.asked, *(each_number(_expression(line), counted) for line in found.lines[1:])]
        lines = tuple(Line(says) for at, says in enumerate(said) if not at or says != said[at - 1])
        return Attempt(lines, _counted(found.wrote, mark), (found.wrote, *found.also))

    return tried


def _expression(line: Line) -> Expression:
    assert isinstance(line.says, Expression)
    return line.says


def _counted(number: Quantity, mark: str) -> Quantity:
    return Quantity(measure(mark), (number.parts,))


def _by_place(number: Quantity, mark: str) -> Expression:
    """Put a unit behind a number; one with ten or more of a place is written place by place."""
    if max(number.amounts) < TEN:
        return _counted(number, mark)
    return plus(*[_counted(number.only(rung), mark) for rung, count in enumerate(number.amounts) if count])


def each_number(says: Expression, write: Callable[[Quantity], Expression]) -> Expression:
    """Write each number of a sum or a difference another way; every other expression stays as it is.

    >>> from onewhole.number.quantity import with_mark
    >>> in_inches = each_number(plus(whole(3), whole(4)), lambda number: with_mark(number, "in"))
    >>> [term.part.ladder.mark for term in in_inches.terms]
    ['in', 'in']
    """
    match says:
        case Quantity():
            return write(says)
        case Sum(terms):
            return Sum(tuple([Term(each_number(term.part, write), term.taken) for term in terms]))
        case Times() | Over() | Quotient() | InBrackets() | WithRemainder():
            return says
        case _:
            assert_never(says)
