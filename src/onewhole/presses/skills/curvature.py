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
    pairs = _Pairs(len(cells.of_group), groups, whole=rows.whole)
    outer = np.zeros((count + groups, count + groups))
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
        pairs.add(odds, right, answered)
    outer[:count, :count] -= _between_problems(cells, pairs, point)
    right, answered = pairs.singly()
    mixed = cells.has * (right[:, cells.problem] - kept * answered[:, cells.problem]) / spread
    outer[count:, :count] -= mixed
    outer[:count, count:] -= mixed.T
    return outer


class _Pairs:
    """Columns of rows multiplied with each other and added up by groups: ``right``, then ``answered`` where
    anything was not answered.
    """

    def __init__(self, problems: int, groups: int, *, whole: bool) -> None:
        self.problems, self.whole = problems, whole
        self.columns = problems if whole else 2 * problems
        first, second = zip(*combinations_with_replacement(range(self.columns), 2), strict=True)
        self.first, self.second = np.array(first), np.array(second)
        self.weights = np.zeros(groups)
        self.by_column, self.by_pair = np.zeros((groups, self.columns)), np.zeros((groups, len(first)))

    def add(self, odds: Floats, right: Floats, answered: Floats) -> None:
        """Add rows, with the weight of each group for each."""
        columns = right if self.whole else np.concatenate([right, answered], axis=1)
        self.weights += odds.sum(axis=0)
        self.by_column += odds.T @ columns
        self.by_pair += odds.T @ (columns[:, self.first] * columns[:, self.second])

    def singly(self) -> tuple[Floats, Floats]:
        """Return right and answered of each group by each problem."""
        if self.whole:
            return self.by_column, np.repeat(self.weights[:, None], self.problems, axis=1)
        return self.by_column[:, : self.problems], self.by_column[:, self.problems :]

    def squares(self) -> tuple[Floats, Floats, Floats]:
        """Return right times right, right times answered, and answered times answered, by group."""
        square = np.empty((len(self.weights), self.columns, self.columns))
        square[:, self.first, self.second] = self.by_pair
        square[:, self.second, self.first] = self.by_pair
        if self.whole:
            return (
                square,
                np.broadcast_to(self.by_column[:, :, None], square.shape),
                np.broadcast_to(self.weights[:, None, None], square.shape),
            )
        half = self.problems
        return square[:, :half, :half], square[:, :half, half:], square[:, half:, half:]


def _between_problems(cells: Cells, pairs: _Pairs, point: Point) -> Floats:
    """Return the sum over rows of ``f''/f`` by two chances."""
    kept = inside(point.chances)
    both, one, none = pairs.squares()
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
