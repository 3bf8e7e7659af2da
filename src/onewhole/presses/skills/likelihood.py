"""The likelihood of right and wrong rows, with all that a climb needs of it, in one walk over the rows.

With chance ``p`` of a right answer and share ``q`` of each group, a row has the probability
``f = sum over groups q * product over problems (p or 1 - p)``; a problem that was not answered has no factor
(missing at random). The derivatives are those of the definition; `tests/presses/skills/test_likelihood.py`
holds them against differences of it.
"""

import numpy as np
from msgspec import Struct

from onewhole.presses.skills.cells import Cells, Floats
from onewhole.presses.skills.rows import RowArrays

#: A chance of 0 or 1 is worked with as if it were this far inside: its row is then as good as impossible.
EDGE = 1e-11


class Point(Struct, frozen=True):
    """Chances of a right answer, and the shares of the groups."""

    chances: Floats
    shares: Floats

    def moved(self, step: Floats) -> "Point":
        """Return the point a step away."""
        return Point(self.chances + step[: len(self.chances)], self.shares + step[len(self.chances) :])

    @property
    def flat(self) -> Floats:
        """Return all of it in one array."""
        return np.concatenate([self.chances, self.shares])


class Sums(Struct, frozen=True):
    """What one walk over the rows finds.

    ``log_likelihood``; ``weights`` of each group, and its ``right`` and ``answered`` answers on each problem,
    all before they are multiplied by the group's share: times the share they are the expected numbers of
    pupils and answers.
    """

    log_likelihood: float
    weights: Floats
    right: Floats
    answered: Floats


def inside(chances: Floats) -> Floats:
    """Return chances kept a hair away from 0 and 1."""
    return np.clip(chances, EDGE, 1 - EDGE)


def of_groups(cells: Cells, rows: RowArrays, chances: Floats) -> Floats:
    """Return the probability of each row in each group: rows by groups."""
    kept = inside(chances)
    right, wrong = np.log(kept)[cells.of_group], np.log1p(-kept)[cells.of_group]
    if rows.whole:
        logs = rows.right.astype(np.float64) @ (right - wrong)
        logs += wrong.sum(axis=0)
    else:
        logs = rows.right.astype(np.float64) @ (right - wrong)
        logs += rows.answered.astype(np.float64) @ wrong
    return np.asarray(np.exp(logs, out=logs))


def walk(cells: Cells, rows: RowArrays, point: Point) -> Sums:
    """Return the sums at a point."""
    problems, groups = cells.of_group.shape
    log_likelihood = 0.0
    weights, right, answered = np.zeros(groups), np.zeros((groups, problems)), np.zeros((groups, problems))
    whole = rows.whole
    for piece in rows.pieces(groups):
        odds = of_groups(cells, piece, point.chances)
        of_row = odds @ point.shares
        log_likelihood += float(piece.times @ np.log(of_row))
        odds *= (piece.times / of_row)[:, None]
        weights += odds.sum(axis=0)
        right += odds.T @ piece.right
        if not whole:
            answered += odds.T @ piece.answered
    return Sums(
        log_likelihood, weights, right, answered if not whole else np.repeat(weights[:, None], problems, 1)
    )


def slope(cells: Cells, rows: RowArrays, point: Point, sums: Sums) -> Floats:
    """Return the slope of ``log likelihood - pupils * sum of the shares`` by chances, then by shares.

    The likelihood grows with the shares' sum, so that at the summit of this the shares add up to 1 by
    themselves, and no condition has to be kept.
    """
    kept = inside(point.chances)
    expected = point.shares[:, None] * (sums.right - kept[cells.of_group].T * sums.answered)
    by_chance = _to_cells(cells, expected) / (kept * (1 - kept))
    return np.concatenate([by_chance, sums.weights - rows.pupils])


def better(cells: Cells, rows: RowArrays, point: Point, sums: Sums) -> Point:
    """Return the next point of the EM algorithm (Dempster, Laird & Rubin 1977): never a lower likelihood.

    Where a model asks that skills never hurt, the two chances of a problem that would cross are pooled.
    """
    answered = _to_cells(cells, point.shares[:, None] * sums.answered)
    right = _to_cells(cells, point.shares[:, None] * sums.right)
    chances = np.where(answered > 0, right / np.where(answered > 0, answered, 1), point.chances)
    if cells.ordered:
        for low in crossed(cells, chances):
            both = slice(low, low + 2)
            chances[both] = right[both].sum() / answered[both].sum()
    return Point(np.clip(chances, 0, 1), point.shares * sums.weights / rows.pupils)


def crossed(cells: Cells, chances: Floats) -> list[int]:
    """Return the first chance of each problem with two where the second is smaller."""
    two = np.diff(cells.starts) == 2
    lows = cells.starts[:-1][two]
    return [int(low) for low in lows[chances[lows] > chances[lows + 1]]]


def _to_cells(cells: Cells, of_groups: Floats) -> Floats:
    """Add up numbers of groups by problems over the groups that have each chance."""
    return np.bincount(cells.of_group.ravel(), of_groups.T.ravel(), cells.count).astype(np.float64)
