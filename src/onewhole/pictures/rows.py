"""Rows for the numbers beside a drawing, so that they do not overlap."""

from collections.abc import Sequence
from fractions import Fraction
from itertools import count


def rows(
    places: Sequence[Fraction], apart: Fraction | int, least: Sequence[int] | None = None
) -> tuple[int, ...]:
    """Give every number the first row in which it is ``apart`` millimetres from those before it.

    ``least`` is the first row that each may have; 0 where it is not given.

    >>> rows([Fraction(10), Fraction(20), Fraction(40)], 15)
    (0, 1, 0)
    """
    found: list[int] = []
    for at, x in enumerate(places):
        near = {row for row, other in zip(found, places, strict=False) if abs(other - x) < apart}
        found.append(next(row for row in count(least[at] if least else 0) if row not in near))
    return tuple(found)
