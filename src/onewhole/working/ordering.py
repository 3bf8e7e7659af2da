"""Putting numbers in order line by line: by one thing that tells all of it, or neighbor by neighbor.

One thing tells all of it where the pieces are of one size, or as many in each, or where the wholes all
differ. Else neighbors are compared, as two numbers are; and where that needs a common denominator, all
numbers are written with pieces of one size first. Comparing two numbers is all that 4.NBT.A.2, 4.NF.A.2 and
4.NF.C.7 ask for (CCSSM 2010); putting three and more in order is common practice, no source.
"""

from functools import reduce
from itertools import pairwise

from msgspec import Struct

from onewhole.number.ladder import Style, joined
from onewhole.number.quantity import Quantity, trimmed, usual
from onewhole.number.unit import Unit
from onewhole.statements.statement import Comparison, NumberRow, Ordering
from onewhole.working.comparing import compare
from onewhole.working.line import Line
from onewhole.working.reason import Reason
from onewhole.working.reasons.ordering import (
    AllInOneUnit,
    AllOfOneSize,
    LargerPiecesMore,
    NeighborsCompared,
    OnlyCounts,
    WholesAllDiffer,
    WholesThenPieces,
)
from onewhole.working.reasons.renaming import SamePlaces
from onewhole.working.strategies.to_fractions import in_smallest
from onewhole.working.working import Working

KEY = "put_in_order"
PAIR = 2


class _Written(Struct, frozen=True):
    """The numbers written another way, and why; ``tells`` is what then tells the order of all of them."""

    parts: tuple[Quantity, ...]
    because: Reason
    tells: Reason | None = None


def work_ordering(asked: Ordering) -> Working:
    """Put numbers in order.

    >>> from onewhole.statements.reading import read_statement
    >>> [part.amounts[1] for part in work_ordering(read_statement("order 2/3, 1/2, 3/4")).answer.parts]
    [1, 2, 3]
    """
    lines = [Line(asked)]
    tells = _at_once(asked.parts)
    compared = None if tells else _neighbors(asked.ordered)
    if tells is None and compared is None:
        written = _alike(asked.parts)
        lines.append(Line(NumberRow(written.parts), written.because))
        tells = written.tells
        compared = None if tells else _neighbors(Ordering(written.parts, asked.falling).ordered)
    if tells is None and compared is not None:
        if len(asked.parts) > PAIR:
            lines += compared
            tells = NeighborsCompared(asked.falling)
        else:
            tells = compared[0].because
    return Working(KEY, asked, (*lines, Line(asked.ordered, tells)), asked.ordered)


def _at_once(parts: tuple[Quantity, ...]) -> Reason | None:
    """Return the one thing that tells the order of all numbers as they stand, or None."""
    cut = [part for part in parts if part.ladder.style is Style.MIXED]
    if not cut or {part.ladder.style for part in parts} - {Style.MIXED, Style.PLACES}:
        return None
    ladder, alike = cut[0].ladder, len({part.ladder for part in cut}) == 1
    tops = {part.amounts[1] for part in cut}
    if len(cut) == len(parts) and not any(part.amounts[0] for part in parts):
        if alike:
            return OnlyCounts(ladder.units[-1])
        if len(tops) == 1 and tops != {0}:
            return LargerPiecesMore(cut[0].amounts[1])
    if any(map(_overfull, cut)):
        return None
    if _wholes_differ(parts):
        return WholesAllDiffer(ladder.units[0])
    return WholesThenPieces(ladder.units[0], ladder.units[-1]) if alike else None


def _wholes_or_pieces(parts: tuple[Quantity, ...], whole: Unit, small: Unit) -> Reason:
    return WholesAllDiffer(whole) if _wholes_differ(parts) else WholesThenPieces(whole, small)


def _wholes_differ(parts: tuple[Quantity, ...]) -> bool:
    return len({part.value // 1 for part in parts}) == len(parts)


def _neighbors(row: NumberRow) -> list[Line] | None:
    """Return a line for each pair of neighbors, or None where a pair must be written another way first."""
    found: list[Line] = []
    for (left, right), sign in zip(pairwise(row.parts), row.signs, strict=True):
        way = compare(left, right)
        if any((step.left, step.right) != (left, right) for step in way.steps):
            return None
        found.append(Line(Comparison(left, right, sign), way.decides))
    return found


def _alike(parts: tuple[Quantity, ...]) -> _Written:
    """Write all numbers so that they can be compared."""
    ladder = reduce(joined, (part.ladder for part in parts))
    small = ladder.units[-1]
    match ladder.style:
        case Style.MIXED:
            written = tuple(usual(ladder, part.value) for part in parts)
            if any(part.value >= 1 for part in parts):
                return _Written(
                    written, AllOfOneSize(small), _wholes_or_pieces(written, ladder.units[0], small)
                )
            return _Written(written, AllOfOneSize(small), OnlyCounts(small))
        case Style.DECIMAL:
            return _Written(tuple(usual(ladder, part.value) for part in parts), SamePlaces(small))
        case Style.PLACES | Style.MEASURE:
            counted = tuple(trimmed(in_smallest(part.on(ladder))) for part in parts)
            return _Written(counted, AllInOneUnit(small), OnlyCounts(small))


def _overfull(part: Quantity) -> bool:
    return part.ladder.style is Style.MIXED and part.amounts[1] >= part.ladder.denominator
