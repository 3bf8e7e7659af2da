"""The weeks of a term: a row a skill with two lanes, what was on a page above, what is planned below."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from msgspec import Struct

from onewhole.number.quantity import whole
from onewhole.pictures.description import Shown
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words

#: Millimetres: the edge to the left and right, the head with the weeks, and a week.
EDGE, HEAD, WEEK = Fraction(2), Fraction(11), Fraction(52, 5)
#: Millimetres of a row: its name, a lane, and the paper below.
NAME, LANE, BELOW = Fraction(6), Fraction(11, 2), Fraction(3)
ROW = NAME + 2 * LANE + BELOW
#: How far a box keeps off the lines of its week.
INSET = Fraction(3, 5)
DIGITS = Fraction(23, 10)


class SkillLanes(Struct, frozen=True):
    """A skill: on how many nights of each week it was on a page, and the weeks in which it is planned."""

    on_page: tuple[int, ...]
    planned: tuple[bool, ...]


def term_weeks(skills: Sequence[SkillLanes], days: Sequence[int], now: int | None) -> Scene:
    """Draw the weeks side by side, each under the day on which it begins; ``now`` stands between bold lines.

    A hatched box has the number of nights on a page in it. A box with a bold edge is planned; what stands in
    it, and the names above the lanes, are words, which a writer puts there.

    >>> scene = term_weeks([SkillLanes((3, 0), (False, True))], (16, 23), 1)
    >>> [piece.name for piece in scene.pieces if isinstance(piece.shape, Box)]
    ['1/week-1/on-page', '1/week-2/planned']
    """
    pieces = [
        Piece(f"week-{at}/day", Words(middle(at), Fraction(3), whole(day), DIGITS))
        for at, day in enumerate(days, start=1)
    ]
    for number, lanes in enumerate(skills, start=1):
        pieces += _row(number, lanes)
    if now is not None:
        pieces += _bold_lines(now + 1, len(skills))
    width, height = 2 * EDGE + WEEK * len(days), HEAD + ROW * len(skills)
    return Scene(width, height, tuple(pieces), tuple(Shown(tuple(map(whole, one.on_page))) for one in skills))


def middle(week: int) -> Fraction:
    """Return the middle of a week, counted from 1, in millimetres from the left.

    >>> middle(2) - middle(1) == WEEK
    True
    """
    return EDGE + WEEK * (2 * week - 1) / 2


def top(row: int) -> Fraction:
    """Return where a row begins, counted from 1, in millimetres from the top."""
    return HEAD + ROW * (row - 1)


def _row(number: int, lanes: SkillLanes) -> Iterator[Piece]:
    upper, floor = top(number) + NAME, top(number) + NAME + 2 * LANE
    yield Piece(f"{number}/floor", Stroke(EDGE, floor, EDGE + WEEK * len(lanes.on_page), floor))
    for week, (nights, planned) in enumerate(zip(lanes.on_page, lanes.planned, strict=True), start=1):
        name = f"{number}/week-{week}"
        if nights:
            box = _box(week, upper)
            yield Piece(f"{name}/on-page", box, Look.FILLED)
            yield Piece(f"{name}/nights", Words(middle(week), upper + box.height / 2, whole(nights), DIGITS))
        if planned:
            box = _box(week, upper + LANE)
            yield Piece(f"{name}/planned", box)
            yield from _bold_edge(name, box)


def _box(week: int, upper: Fraction) -> Box:
    return Box(middle(week) - WEEK / 2 + INSET, upper, WEEK - 2 * INSET, LANE - INSET)


def _bold_edge(name: str, box: Box) -> Iterator[Piece]:
    right, low = box.x + box.width, box.y + box.height
    edges = {
        "above": Stroke(box.x, box.y, right, box.y),
        "right": Stroke(right, box.y, right, low),
        "below": Stroke(right, low, box.x, low),
        "left": Stroke(box.x, low, box.x, box.y),
    }
    for side, edge in edges.items():
        yield Piece(f"{name}/{side}", edge, Look.FILLED)


def _bold_lines(week: int, rows: int) -> Iterator[Piece]:
    """A bold line to both sides of a week, but not through the names."""
    lanes = [(top(row) + NAME, top(row) + NAME + 2 * LANE) for row in range(1, rows + 1)]
    for at, (begins, ends) in enumerate([(Fraction(0), HEAD - 2), *lanes]):
        for side, x in (("before", middle(week) - WEEK / 2), ("after", middle(week) + WEEK / 2)):
            yield Piece(f"now/{at}/{side}", Stroke(x, begins, x, ends), Look.FILLED)
