"""The second derivatives of the log-likelihood: the observed information, exactly."""

from itertools import combinations_with_replacement

import numpy as np

from onewhole.presses.skills.cells import Cells, Floats
from onewhole.presses.skills.likelihood import Point, inside, of_groups
from onewhole.presses.skills.rows import RowArrays


def curvature(cells: Cells, rows: RowArrays, point: Point) -> Floats:
    """Return minus the second derivatives of the log-likelihood by chances, then by shares: a square array.

    For a row with probability f the second derivative of log f is ``f''/f - (f'/f)(f'/f)``. In f each chance
    of a problem stands alone (a pupil has one), so f'' is not 0 only between problems, and between a chance
    and a share.
    """
    kept = inside(point.chances)
    spread = kept * (1 - kept)
    count, groups = cells.count, len(point.shares)
    pairs = _pairs(rows, len(cells.of_group))
    outer = np.zeros((count + groups, count + groups))
    by_column, by_pair = np.zeros((groups, pairs.columns)), np.zeros((groups, len(pairs.first)))
    weights = np.zeros(groups)
    for piece in rows.pieces(count + groups + len(pairs.first)):
        odds = of_groups(cells, piece, point.chances)
        odds /= (odds @ point.shares)[:, None]
        right, answered = piece.right.astype(np.float64), piece.answered.astype(np.float64)
        slopes = np.empty((len(odds), count + groups))
        off = right[:, cells.problem] - kept * answered[:, cells.problem]
        slopes[:, :count] = off / spread * ((odds * point.shares) @ cells.has)
        slopes[:, count:] = odds
        slopes *= np.sqrt(piece.times)[:, None]
        outer += slopes.T @ slopes
        odds *= piece.times[:, None]
        columns = right if pairs.whole else np.concatenate([right, answered], axis=1)
        weights += odds.sum(axis=0)
        by_column += odds.T @ columns
        by_pair += odds.T @ (columns[:, pairs.first] * columns[:, pairs.second])
    outer[:count, :count] -= _between_problems(cells, pairs, point, weights, by_column, by_pair)
    right, answered = pairs.singly(weights, by_column)
    mixed = cells.has * (right[:, cells.problem] - kept * answered[:, cells.problem]) / spread
    outer[count:, :count] -= mixed
    outer[:count, count:] -= mixed.T
    return outer


class _Pairs:
    """Which columns of a row are multiplied with each other: ``right``, then ``answered`` where any is not."""

    def __init__(self, problems: int, *, whole: bool) -> None:
        self.problems, self.whole = problems, whole
        self.columns = problems if whole else 2 * problems
        first, second = zip(*combinations_with_replacement(range(self.columns), 2), strict=True)
        self.first, self.second = np.array(first), np.array(second)

    def singly(self, weights: Floats, by_column: Floats) -> tuple[Floats, Floats]:
        """Return right and answered of each group by each problem."""
        if self.whole:
            return by_column, np.repeat(weights[:, None], self.problems, axis=1)
        return by_column[:, : self.problems], by_column[:, self.problems :]

    def squares(
        self, weights: Floats, by_column: Floats, by_pair: Floats
    ) -> tuple[Floats, Floats, Floats]:
        """Return right and right, right and answered, answered and answered, by group, problem and problem."""
        square = np.empty((len(weights), self.columns, self.columns))
        square[:, self.first, self.second] = by_pair
        square[:, self.second, self.first] = by_pair
        if self.whole:
            shape = square.shape
            return (
                square,
                np.broadcast_to(by_column[:, :, None], shape),
                np.broadcast_to(weights[:, None, None], shape),
            )
        half = self.problems
        return square[:, :half, :half], square[:, :half, half:], square[:, half:, half:]


def _pairs(rows: RowArrays, problems: int) -> _Pairs:
    return _Pairs(problems, whole=rows.whole)


def _between_problems(
    cells: Cells, pairs: _Pairs, point: Point, weights: Floats, by_column: Floats, by_pair: Floats
) -> Floats:
    """Return the sum over rows of ``f''/f`` by two chances."""
    kept = inside(point.chances)
    both, one, none = pairs.squares(weights, by_column, by_pair)
    found = np.zeros((cells.count, cells.count))
    has = cells.has * point.shares[:, None]
    for problem in range(len(cells.of_group)):
        mine = slice(cells.starts[problem], cells.starts[problem + 1])
        right = both[:, problem, cells.problem] - kept * one[:, problem, cells.problem]
        answered = one[:, cells.problem, problem] - kept * none[:, problem, cells.problem]
        mine_has = cells.has[:, mine].T
        found[mine] = mine_has @ (right * has) - kept[mine, None] * (mine_has @ (answered * has))
    found /= np.outer(kept * (1 - kept), kept * (1 - kept))
    found[cells.problem[:, None] == cells.problem] = 0
    return found
