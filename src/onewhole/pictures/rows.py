"""Rows for the numbers beside a drawing, so that they do not overlap."""

from collections.abc import Sequence
from fractions import Fraction
from itertools import count


def rows(
    places: Sequence[Fraction], rooms: Sequence[Fraction], least: Sequence[int] | None = None
) -> tuple[int, ...]:
    """Give every number the first row in which it touches none of those before it.

    ``rooms`` is what each takes across, round its place. ``least`` is the first row that each may have; 0
    where it is not given.

    >>> rows([Fraction(10), Fraction(20), Fraction(40)], [Fraction(15)] * 3)
    (0, 1, 0)
    """
    found: list[int] = []
    for at, (x, room) in enumerate(zip(places, rooms, strict=True)):
        near = {
            row
            for row, other, beside in zip(found, places, rooms, strict=False)
            if abs(other - x) < (room + beside) / 2
        }
        found.append(next(row for row in count(least[at] if least else 0) if row not in near))
    return tuple(found)
