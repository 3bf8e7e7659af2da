"""Where lines and the picture may stand on a board: side by side where it is wide, else above each other."""

import math
from collections.abc import Iterator
from fractions import Fraction
from functools import cache

from msgspec import Struct

from onewhole.walkthroughs.cue import Place
from onewhole.walkthroughs.shape import LEAST, Shape

#: Pixels of a phone: the edge left free, the room of the mark beside a line, the foot of the board, and what
#: lies between the lines and the picture.
EDGE, POINTER, FOOT, APART = 13, 13, 30, 14
#: How wide the bar is that marks a line.
BAR = 4
#: The picture gets so much of the board, in hundredths of its width or height.
_SHARES = range(34, 68, 4)


class Rooms(Struct, frozen=True):
    """A way to share a board: the room of the lines, and that of the picture where there is one."""

    lines: Place
    picture: Place | None


def foot(shape: Shape) -> Place:
    """Return where the foot of a board stands: the row of kites and the film's title.

    >>> foot(Shape.UPRIGHT).y + foot(Shape.UPRIGHT).height < 1920
    True
    """
    wide, high = shape.size
    edge, tall = round(shape.units(EDGE)), round(shape.units(FOOT))
    return Place(edge, high - tall - edge // 3, wide - 2 * edge, tall)


@cache
def whole_room(shape: Shape) -> Place:
    """Return the room of a board above its foot, where lines may stand; beside it their marks."""
    below = foot(shape)
    pointer, edge = round(shape.units(POINTER)), below.x
    return Place(edge + pointer, edge, below.width - pointer, below.y - edge - edge // 2)


@cache
def shared(shape: Shape) -> tuple[Rooms, ...]:
    """Return the ways to share a board between lines and a picture, the smallest picture first."""
    return tuple(_shared(shape))


def _shared(shape: Shape) -> Iterator[Rooms]:
    room, apart = whole_room(shape), round(shape.units(APART))
    for share in _SHARES:
        if shape is Shape.WIDE:
            across = room.width * share // 100
            lines = Place(room.x, room.y, room.width - across - apart, room.height)
            yield Rooms(lines, Place(room.x + room.width - across, room.y, across, room.height))
        else:
            high = room.height * share // 100
            lines = Place(room.x, room.y, room.width, room.height - high - apart)
            edge = foot(shape)
            yield Rooms(lines, Place(edge.x, room.y + room.height - high, edge.width, high))


def pointer(shape: Shape, top: int, height: int) -> Place:
    """Return where the mark of a line stands that is spoken now: a bar in the edge of the board.

    >>> pointer(Shape.UPRIGHT, 100, 90).x < whole_room(Shape.UPRIGHT).x
    True
    """
    return Place(foot(shape).x, top, math.floor(shape.units(BAR)), height)


def least_type(shape: Shape) -> Fraction:
    """Return the least size of type on a board: a digit of a fraction then has 16 pixels on a phone.

    >>> least_type(Shape.UPRIGHT) * 88 / 100 >= Shape.UPRIGHT.units(16)
    True
    """
    return shape.units(Fraction(LEAST * 115, 100))
