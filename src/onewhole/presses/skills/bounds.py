"""What a step may not leave: chances are in 0..1, shares not negative, and skills never hurt where the
model says so.

An active set: what is at its bound and would go beyond stays there, and the rest is free.
"""

import numpy as np
from msgspec import Struct

from onewhole.presses.skills.cells import Cells, Flags, Floats, Ints
from onewhole.presses.skills.likelihood import Point, crossed

#: A chance this near to 0 or 1, and a share this near to 0, is there: the rest is rounding.
NEAR, NEAR_SHARE = 1e-8, 1e-11


class Free(Struct, frozen=True):
    """Which numbers of a flat point may move; of two chances that are ``tied`` the second goes with the
    first.
    """

    places: Ints
    tied: Ints


def free_at(cells: Cells, point: Point, slope: Floats, curved: Floats) -> Free:
    """Return what may move from a point with this slope, and matters: no pupil has a chance without
    curvature.
    """
    flat, count = point.flat, cells.count
    held: Flags = ((flat <= 0) & (slope <= 0)) | (np.diag(curved) <= 0)
    held[:count] |= (point.chances >= 1) & (slope[:count] >= 0)
    tied = _tied(cells, point, slope)
    held[tied] = (flat[tied] <= 0) & (slope[tied] + slope[tied + 1] <= 0)
    held[tied] |= (flat[tied] >= 1) & (slope[tied] + slope[tied + 1] >= 0)
    held[tied + 1] = True
    return Free(np.flatnonzero(~held), tied)


def _tied(cells: Cells, point: Point, slope: Floats) -> Ints:
    """Return the first of two equal chances of a problem that would cross if each went its way."""
    if not cells.ordered:
        return np.empty(0, dtype=np.intp)
    lows = cells.starts[:-1][np.diff(cells.starts) == 2]
    equal = point.chances[lows] >= point.chances[lows + 1]
    tied: Ints = lows[equal & (slope[lows] >= slope[lows + 1])]
    return tied


def bounded(cells: Cells, point: Point) -> Point:
    """Return the point with what is beyond its bound, or next to it, put there, and crossed chances put
    together.
    """
    chances = np.where(point.chances < NEAR, 0.0, np.where(point.chances > 1 - NEAR, 1.0, point.chances))
    if cells.ordered:
        for low in crossed(cells, chances):
            chances[low : low + 2] = chances[low : low + 2].mean()
    return Point(chances, np.where(point.shares < NEAR_SHARE, 0.0, point.shares))
