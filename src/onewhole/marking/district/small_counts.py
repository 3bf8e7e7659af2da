"""Which numbers of a table are not shown, so that no small one is told and none can be worked out.

A table of counts with its sums is a set of equations: each row and each column adds up. A number that is
left out can be worked out where the others of its row or column stand, and by longer ways round. So beside
each small number others are left out until the small one could as well be larger by some pupils, with every
other number that stands as it stands and none below zero: then nobody can work it out. Which ones is found
by a shortest way round, of rows and columns in turn, that hides the fewest pupils (Cox, 1995, Network models
for complementary cell suppression, Journal of the American Statistical Association 90, 1453-1462, from
memory). The sums are numbers of the table like all others and may be left out too.
"""

from collections.abc import Iterator, Mapping, Sequence
from heapq import heappop, heappush

#: Numbers from 1 to one below this are not shown. A setting.
LEAST = 10

Place = tuple[int, int]


def hidden(
    table: Sequence[Sequence[int]], least: int = LEAST, *, rows_known: bool = False
) -> frozenset[Place]:
    """Return the places of a table with its sums that are not shown.

    ``rows_known`` says that the sums of the rows stand in another table, too: then no small number rests on
    one of them being left out (:func:`without_small_rows` sees that none of them is small).

    The last row and the last column are the sums (:func:`with_sums`). Small is from 1 to one below ``least``;
    0 is shown: nobody is in it. Where no way round is found, all that is not 0 is left out.

    >>> sorted(hidden(with_sums([[50, 4], [30, 60]])))
    [(0, 0), (0, 1), (1, 0), (1, 1)]
    >>> hidden(with_sums([[50, 40], [30, 60]]))
    frozenset()
    """
    small = [
        (row, at) for row, line in enumerate(table) for at, count in enumerate(line) if 0 < count < least
    ]
    found = set(small)
    for place in sorted(small, key=lambda one: (-table[one[0]][one[1]], one)):
        way = _way_round(table, found, place, least, rows_known=rows_known)
        if way is None:
            return frozenset(
                (row, at) for row, line in enumerate(table) for at, count in enumerate(line) if count
            )
        found.update(way)
    return frozenset(found)


def with_sums(table: Sequence[Sequence[int]]) -> list[list[int]]:
    """Return a table with the sum of each row, and a row of the sums.

    >>> with_sums([[1, 2], [3, 4]])
    [[1, 2, 3], [3, 4, 7], [4, 6, 10]]
    """
    rows = [[*row, sum(row)] for row in table]
    return [*rows, [sum(column) for column in zip(*rows, strict=True)]]


def without_small_rows(
    counts: Mapping[tuple[str, str], int], other: str, least: int = LEAST
) -> dict[tuple[str, str], int]:
    """Put the rows with small sums together under a name, with the next smallest where that is small too.

    >>> without_small_rows({("A", "x"): 50, ("B", "x"): 4, ("C", "x"): 20}, "other")
    {('A', 'x'): 50, ('other', 'x'): 24}
    """
    sums: dict[str, int] = {}
    for (row, _), count in counts.items():
        sums[row] = sums.get(row, 0) + count
    merged = {row for row, whole in sums.items() if whole < least or row == other}
    left = sorted(sums.keys() - merged, key=lambda one: (-sums[one], one))
    while merged and left and sum(sums[one] for one in merged) < least:
        merged.add(left.pop())
    found: dict[tuple[str, str], int] = {}
    for (row, column), count in counts.items():
        key = (other if row in merged else row, column)
        found[key] = found.get(key, 0) + count
    return found


def _way_round(
    table: Sequence[Sequence[int]], hid: set[Place], place: Place, least: int, *, rows_known: bool
) -> list[Place] | None:
    """Return the places of the cheapest way round by which the number at a place may be ``least`` more.

    Along it numbers go up and down in turn by so many; one that goes down must be larger. Where no way
    lets it be so much more, it may be one more.
    """
    for more in (least, 1):
        if (way := _cheapest(table, hid, place, more, rows_known=rows_known)) is not None:
            return way
    return None


def _cheapest(
    table: Sequence[Sequence[int]], hid: set[Place], place: Place, more: int, *, rows_known: bool
) -> list[Place] | None:
    """Find the way from the place's row back to its column (Dijkstra, 1959); rows and columns are knots."""
    start, goal = (0, place[0]), (1, place[1])
    queue: list[tuple[int, tuple[int, int]]] = [(0, start)]
    best = {start: 0}
    came: dict[tuple[int, int], tuple[tuple[int, int], Place]] = {}
    while queue:
        cost, knot = heappop(queue)
        if knot == goal:
            way = []
            while knot != start:
                knot, over = came[knot]
                way.append(over)
            return way
        if cost > best[knot]:
            continue
        for other, over in _steps(table, knot, place, more):
            if rows_known and over[1] == len(table[0]) - 1:
                continue
            there = cost + (0 if over in hid else table[over[0]][over[1]] + 1)
            if there < best.get(other, there + 1):
                best[other] = there
                came[other] = knot, over
                heappush(queue, (there, other))
    return None


def _steps(
    table: Sequence[Sequence[int]], knot: tuple[int, int], place: Place, more: int
) -> Iterator[tuple[tuple[int, int], Place]]:
    """Give where the way may go on: from a row over a number that makes up for it, from a column likewise.

    A 0 stands in the table and does not move. A sum counts against its row and column: it goes the other way.
    """
    side, number = knot
    rows, columns = len(table), len(table[0])
    for at in range(columns if side == 0 else rows):
        over = (number, at) if side == 0 else (at, number)
        count = table[over[0]][over[1]]
        is_sum = (over[0] == rows - 1) != (over[1] == columns - 1)
        of_place = (place[0] == rows - 1) != (place[1] == columns - 1)
        goes_down = (side == 0) != (is_sum != of_place)
        if count and over != place and (not goes_down or count > more):
            yield (1 - side, at), over
