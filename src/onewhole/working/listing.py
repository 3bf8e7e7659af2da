"""Listing every factor of a number pair by pair, and every multiple by counting on.

Source: 4.OA.B.4 (all factor pairs; a whole number is a multiple of each of its factors), CCSSM (2010).
"""

from math import isqrt

from onewhole.number.quantity import whole
from onewhole.statements.expression import Times
from onewhole.statements.listing import Listing
from onewhole.statements.statement import Comparison, NumberRow, Relation
from onewhole.working.line import Line
from onewhole.working.reasons.listing import AllPairsFound, CountedOnBy, PairFound
from onewhole.working.working import Working

KEY = "list_in_pairs"
COUNTED = "count_on"


def listed(asked: Listing) -> NumberRow:
    """Return the numbers that are asked for, the least first.

    >>> from onewhole.statements.listing import ListSort
    >>> len(listed(Listing(ListSort.FACTORS, whole(12))).parts)
    6
    """
    return NumberRow(tuple(map(whole, asked.found)))


def work_listing(asked: Listing) -> Working:
    """List numbers line by line.

    >>> from onewhole.statements.listing import ListSort
    >>> [len(work_listing(Listing(ListSort.FACTORS, whole(number))).lines) for number in (12, 7)]
    [5, 3]
    """
    answer = listed(asked)
    if asked.most is not None:
        step, most = asked.number.parts, asked.most.parts
        reason = CountedOnBy(step, most, asked.found[-1] + step)
        return Working(COUNTED, asked, (Line(asked), Line(answer, reason)), answer)
    number, before, lines = asked.number.parts, 0, [Line(asked)]
    for first, second in asked.pairs:
        pair = Times(whole(first), whole(second))
        says = Comparison(pair, asked.number, Relation.EQUAL)
        lines.append(Line(says, PairFound(first, second, tuple(range(before + 1, first)))))
        before = first
    rest = tuple(range(before + 1, isqrt(number) + 1))
    lines.append(Line(answer, AllPairsFound(len(asked.pairs), rest, number)))
    return Working(KEY, asked, tuple(lines), answer)
