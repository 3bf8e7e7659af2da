"""Factors and multiples: some are left out, or the other sort is listed."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.number.quantity import whole
from onewhole.statements.listing import Listing, ListSort
from onewhole.statements.statement import NumberRow, Statement
from onewhole.working.line import Line

#: As many multiples are written where factors are asked for. Common practice, no source.
MULTIPLES = 5

#: What is listed instead; nothing where a rule does not apply.
Instead = Callable[[Listing], tuple[int, ...]]


def on_list(sort: ListSort, instead: Instead) -> Try:
    """Return the attempt at listing factors, or multiples, that lists other numbers."""

    def attempt(statement: Statement) -> Attempt | None:
        if not isinstance(statement, Listing) or statement.sort is not sort:
            return None
        found = instead(statement)
        if not found or found == statement.found:
            return None
        wrote = NumberRow(tuple(map(whole, found)))
        return Attempt((Line(statement), Line(wrote)), wrote)

    return attempt


def without_the_ends(asked: Listing) -> tuple[int, ...]:
    """Leave out 1 and the number itself."""
    return asked.found[1:-1]


def one_of_each_pair(asked: Listing) -> tuple[int, ...]:
    """List only the smaller number of each pair."""
    return tuple(first for first, _ in asked.pairs)


def multiples_instead(asked: Listing) -> tuple[int, ...]:
    """List multiples where factors are asked for."""
    number = asked.number.parts
    return tuple(number * times for times in range(1, MULTIPLES + 1))


def without_the_number(asked: Listing) -> tuple[int, ...]:
    """Begin with twice the number."""
    return asked.found[1:]


def factors_instead(asked: Listing) -> tuple[int, ...]:
    """List factors where multiples are asked for."""
    return Listing(ListSort.FACTORS, asked.number).found
