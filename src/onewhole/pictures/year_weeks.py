"""The weeks of a year: a row a topic, hatched in the week it is taught, a box where it comes back."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from msgspec import Struct

from onewhole.number.quantity import whole
from onewhole.pictures.description import Shown
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words

#: Millimetres: the edges, the names of the topics, the head with the weeks, a week, and a row.
EDGE, NAMES, HEAD = Fraction(1), Fraction(76), Fraction(10)
WEEK, ROW = Fraction(3), Fraction(27, 5)
#: How far a box keeps off the lines of its week and row.
INSET = Fraction(2, 5)
DIGITS = Fraction(5, 2)
#: The number of every so many weeks stands over them: there is no room for all.
NUMBERED = 4


class TopicWeeks(Struct, frozen=True):
    """A topic: the week in which it is taught, and those in which it comes back, counted from 1."""

    taught: int
    back: frozenset[int]


def year_weeks(topics: Sequence[TopicWeeks], weeks: int) -> Scene:
    """Draw the weeks side by side; the names of the topics are words, which a writer puts there.

    >>> scene = year_weeks([TopicWeeks(1, frozenset({3}))], 4)
    >>> [piece.name for piece in scene.pieces if isinstance(piece.shape, Box)]
    ['1/taught', '1/back-3']
    """
    height = HEAD + ROW * len(topics) + EDGE
    pieces = list(_weeks(weeks, height))
    for row, topic in enumerate(topics, start=1):
        pieces += _row(row, topic, weeks)
    shown = tuple(Shown((whole(one.taught), *map(whole, sorted(one.back)))) for one in topics)
    return Scene(2 * EDGE + NAMES + WEEK * weeks, height, tuple(pieces), shown)


def left_of(week: int) -> Fraction:
    """Return where a week begins, in millimetres from the left."""
    return EDGE + NAMES + WEEK * (week - 1)


def top_of(row: int) -> Fraction:
    """Return where a row begins, counted from 1, in millimetres from the top."""
    return HEAD + ROW * (row - 1)


def _weeks(weeks: int, height: Fraction) -> Iterator[Piece]:
    for week in range(1, weeks + 1):
        if week % NUMBERED == 1:
            x = left_of(week)
            middle = x + WEEK / 2
            yield Piece(f"week-{week}", Words(middle, HEAD - Fraction(2), whole(week), DIGITS))
            yield Piece(f"week-{week}/line", Stroke(x, HEAD, x, height - EDGE))


def _row(row: int, topic: TopicWeeks, weeks: int) -> Iterator[Piece]:
    top = top_of(row)
    yield Piece(f"{row}/line", Stroke(EDGE, top + ROW, left_of(weeks + 1), top + ROW))
    yield Piece(f"{row}/taught", _box(topic.taught, top), Look.FILLED)
    for week in sorted(topic.back):
        yield Piece(f"{row}/back-{week}", _box(week, top, small=True))


def _box(week: int, top: Fraction, *, small: bool = False) -> Box:
    tall = ROW - 2 * INSET
    side = WEEK - 2 * INSET
    if small:
        return Box(left_of(week) + INSET, top + (ROW - side) / 2, side, side)
    return Box(left_of(week), top + INSET, WEEK, tall)
