"""Two problems are twins when a pupil does the same thing with the same differences of numbers."""

from collections.abc import Hashable
from functools import reduce
from itertools import zip_longest
from typing import assert_never

from onewhole.number.ladder import Style, joined
from onewhole.problems.numbers import numbers_of
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import value
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


def twin_key(statement: Statement) -> Hashable:
    """Return a key that is equal for twins and only for them.

    ``w1 n1/d - w2 n2/d`` are twins when ``(w1 - w2, n1 - n2, d)`` agree, sums when ``(w1 + w2, n1 + n2, d)``
    do; on every ladder, count by count. A page with twins asks one thing twice. Source: our own rule, from
    the proposed make-up of a sheet.

    >>> from onewhole.statements.reading import read_statement
    >>> twin_key(read_statement("7 2/6 - 3 5/6")) == twin_key(read_statement("8 1/6 - 4 4/6"))
    True
    """
    match statement:
        case Question():
            return _of_question(statement)
        case Comparison(left, right):
            return "comparison", frozenset((value(left), value(right))), _bottoms(statement)
        case Ordering(numbers):
            return "ordering", frozenset(number.value for number in numbers), _bottoms(statement)
        case MissingNumber(rest, gap, beside):
            parts = tuple((value(part), taken) for part, taken in beside)
            return "missing number", value(rest), gap, parts, statement.gap_taken
        case AnotherName(number, wanted):
            return "another name", number, wanted
        case AskedInWords():
            return type(statement).__name__, statement
        case Rounding(number, to):
            return "rounding", number.value, to
        case _:
            assert_never(statement)


def _of_question(question: Question) -> Hashable:
    """Join the counts rung by rung, apart from how each number is cut: that is kept beside them."""
    signed = asked_quantities(question)
    if signed is None:
        return "question", question
    ladder = reduce(joined, (quantity.ladder for quantity, _ in signed))
    rows = [
        [-count if taken else count for count in reversed(quantity.on(ladder).amounts)]
        for quantity, taken in signed
    ]
    totals = [sum(column) for column in zip_longest(*rows, fillvalue=0)]
    while len(totals) > 1 and not totals[-1]:
        totals.pop()
    operations = tuple(taken for _, taken in signed[1:])
    return "question", operations, ladder.style, ladder.finest, tuple(totals), _bottoms(question)


def _bottoms(statement: Statement) -> tuple[int, ...]:
    """Return the denominators, rising: 3/4 - 1/8 and 6/8 - 1/8 are no twins."""
    found = [q.ladder.denominator for q in numbers_of(statement) if q.ladder.style is Style.MIXED]
    return tuple(sorted(set(found)))
