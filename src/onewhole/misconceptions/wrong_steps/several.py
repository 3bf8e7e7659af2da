"""Three numbers and more: one of them is left out, or its sign is not seen."""

from collections.abc import Callable
from functools import reduce

from onewhole.misconceptions.attempt import Attempt, BelowZeroError
from onewhole.misconceptions.bend import Try
from onewhole.number.ladder import joined
from onewhole.number.quantity import Quantity, usual
from onewhole.statements.expression import Expression, Sum, Term, value
from onewhole.statements.statement import Question, Statement, asked_quantities
from onewhole.working.line import Line

_FEWEST = 3

#: What is worked instead, from the terms of a sum; None where a rule does not apply.
Instead = Callable[[tuple[Term, ...]], Expression | None]


def several_of(statement: Statement) -> tuple[tuple[Quantity, bool], ...]:
    """Return three numbers or more with whether each is taken away; none for anything else.

    >>> from onewhole.statements.reading import read_statement
    >>> len(several_of(read_statement("5 1/6 + 2 3/6 - 1 5/6"))), several_of(read_statement("2 + 3"))
    (3, ())
    """
    signed = asked_quantities(statement) if isinstance(statement, Question) else None
    return signed if signed is not None and len(signed) >= _FEWEST else ()


def on_several(instead: Instead) -> Try:
    """Return the attempt at a sum of three numbers or more."""

    def attempt(statement: Statement) -> Attempt | None:
        signed = several_of(statement)
        says = instead(tuple(Term(number, taken) for number, taken in signed)) if signed else None
        if says is None:
            return None
        if value(says) < 0:
            msg = "more would be taken away than there is"
            raise BelowZeroError(msg)
        wrote = usual(reduce(joined, (number.ladder for number, _ in signed)), value(says))
        lines = (Line(says),) if says != wrote else ()
        return Attempt((Line(Sum(tuple(Term(*one) for one in signed))), *lines, Line(wrote)), wrote)

    return attempt


def last_left_out(terms: tuple[Term, ...]) -> Expression:
    """Work the first numbers and leave the last one out."""
    return Sum(terms[:-1])


def last_added(terms: tuple[Term, ...]) -> Expression | None:
    """Add the last number as the others were added, though it is to be taken away."""
    if not terms[-1].taken or any(term.taken for term in terms[:-1]):
        return None
    return Sum((*terms[:-1], Term(terms[-1].part)))
