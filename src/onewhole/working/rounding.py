"""Rounding a number line by line: its two neighbors, the number halfway, and which side it lies on."""

from fractions import Fraction

from msgspec.structs import replace

from onewhole.number.ladder import Ladder, Style, joined
from onewhole.number.quantity import Quantity, trimmed, usual
from onewhole.statements.rounding import Rounding, halfway, on_rung, renamed
from onewhole.working.line import Line
from onewhole.working.reasons.regrouping import WrittenTogether
from onewhole.working.reasons.rounding import (
    BetweenNeighbors,
    ExactlyHalfway,
    NearerNeighbor,
    NothingOver,
    PastHalfway,
)
from onewhole.working.working import Working

KEY = "nearest_neighbor"


def work_rounding(asked: Rounding) -> Working:
    """Round a number: it lies between two neighbors, and the nearer one is what it is rounded to.

    Source: rounding by place-value understanding, 3.NBT.A.1, 4.NBT.A.3, 5.NBT.A.4 (CCSSM 2010); two
    neighbors and the halfway mark on a number line are common practice, no source.

    >>> from onewhole.statements.reading import read_statement
    >>> working = work_rounding(read_statement("round 4,567 to the nearest hundred"))
    >>> working.answer.counts, len(working.lines)
    ((4, 6, 0, 0), 4)
    """
    lines = [Line(asked)]
    number, unit = renamed(asked), asked.to
    count = int(asked.rounded / unit.size)
    answer = on_rung(asked, count)
    if asked.there:
        stays = Line(replace(asked, gives=answer), NothingOver(asked.number, unit, count))
        return Working(KEY, asked, (*lines, stays), answer)
    if number != asked.number:
        lines.append(Line(Rounding(number, unit), WrittenTogether(number)))
    low, high = asked.low, asked.high
    result = Rounding(number, unit, gives=answer)
    between = Rounding(number, unit, (low, high))
    lines.append(Line(between, BetweenNeighbors(unit, number, low, high)))
    middle = halfway(asked)
    below, above = number.value - low.value, high.value - number.value
    ladder = joined(number.ladder, low.ladder)
    if below == above:
        lines.append(Line(result, ExactlyHalfway(low, high, _apart(ladder, below))))
        return Working(KEY, asked, tuple(lines), answer)
    past = below > above
    half = (middle, high) if past else (low, middle)
    lines.append(Line(Rounding(number, unit, half), PastHalfway(middle, number, past), aside=True))
    near, far = sorted((below, above))
    nearer, other = (high, low) if past else (low, high)
    reason = NearerNeighbor(_apart(ladder, near), nearer, _apart(ladder, far), other)
    lines.append(Line(result, reason))
    return Working(KEY, asked, tuple(lines), answer)


def _apart(ladder: Ladder, amount: Fraction) -> Quantity:
    """Write how far two numbers are from each other."""
    found = usual(ladder, amount)
    return trimmed(found) if ladder.style is not Style.DECIMAL else found
