"""Places for the numbers beside a drawing, so that they overlap neither each other nor a jump."""

from collections.abc import Sequence
from fractions import Fraction
from itertools import count

from onewhole.pictures.scene import Hop


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


def over_hops(hops: Sequence[Hop], rooms: Sequence[Fraction], high: int) -> tuple[Fraction, ...]:
    """Return how far over the line the middle of each hop's length stands, in millimetres.

    ``rooms`` is what each length takes across and ``high`` what each takes upward. A length stands over its
    own hop, over what it would cover of another, and over the lengths before it that it would touch. Exact.

    >>> line = Fraction(0)
    >>> long, short = (
    ...     Hop(line, line, Fraction(60), Fraction(20)),
    ...     Hop(Fraction(60), line, Fraction(64), Fraction(6)),
    ... )
    >>> [float(place) for place in over_hops((long, short), (Fraction(10), Fraction(8)), 6)]
    [23.0, 9.0]
    >>> [float(place) for place in over_hops((long, short), (Fraction(10), Fraction(34)), 6)]
    [23.0, 18.0]
    """
    found: list[tuple[Fraction, Fraction, Fraction]] = []
    for hop, room in zip(hops, rooms, strict=True):
        x = (hop.x + hop.to_x) / 2
        y = max(_highest(other, x - room / 2, x + room / 2) for other in hops) + Fraction(high, 2)
        beside = [place for other, wide, place in found if abs(other - x) < (room + wide) / 2]
        while touched := [place for place in beside if abs(place - y) < high]:
            y = max(touched) + high
        found.append((x, room, y))
    return tuple(y for _, _, y in found)


def _highest(hop: Hop, left: Fraction, right: Fraction) -> Fraction:
    """Return the height of the highest point of a hop from left to right; 0 where none of it is there."""
    begins, ends = sorted((hop.x, hop.to_x))
    left, right = max(left, begins), min(right, ends)
    if left >= right:
        return Fraction(0)
    middle = (begins + ends) / 2
    share = (min(max(middle, left), right) - begins) / (ends - begins)
    return 4 * share * (1 - share) * hop.height
