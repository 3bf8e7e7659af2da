"""Standard errors at a summit: the inverse of the observed information over what is free."""

import numpy as np

from onewhole.presses.skills.bounds import free_at
from onewhole.presses.skills.cells import Cells, Floats
from onewhole.presses.skills.curvature import curvature
from onewhole.presses.skills.likelihood import Point, slope, walk
from onewhole.presses.skills.rows import RowArrays

#: A direction in which the information is this small a part of the parameters' own is not settled.
FLAT = 1e-8
#: A parameter that has more than this of such a direction is not settled either.
TOUCHED = 1e-3


def standard_errors(cells: Cells, rows: RowArrays, point: Point) -> Floats:
    """Return the standard error of each chance, then of each share; NaN at a bound, and where a change of
    it, with others, leaves the likelihood as it is.

    The shares add up to 1, so the largest is written as what the others leave.
    """
    count = cells.count
    curved = curvature(cells, rows, point)
    free = free_at(cells, point, slope(cells, rows, point, walk(cells, rows, point)), curved)
    places = free.places[~np.isin(free.places, free.tied)]
    inside = (point.flat[places] > 0) & ((places >= count) | (point.flat[places] < 1))
    places = places[inside]
    rest = count + int(np.argmax(point.shares))
    moving = places[places != rest]
    turn = np.eye(len(point.flat))[:, moving]
    turn[rest] -= moving >= count
    information = turn.T @ curved @ turn
    scale = np.sqrt(np.maximum(np.diag(information), 1e-300))
    values, vectors = np.linalg.eigh(information / np.outer(scale, scale))
    settled = values > FLAT
    spread = turn @ (vectors[:, settled] / scale[:, None] / np.sqrt(values[settled]))
    errors = np.sqrt((spread**2).sum(axis=1))
    loose = np.abs(turn) @ (np.abs(vectors[:, ~settled]).max(axis=1, initial=0) > TOUCHED)
    known = np.isin(np.arange(len(errors)), [*moving, rest]) & (loose == 0)
    return np.where(known, errors, np.nan)
