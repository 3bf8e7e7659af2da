"""From a start to a summit of the likelihood: some steps of the EM algorithm, then Newton's method.

EM never goes down, and creeps near the summit: where shares are small it needs thousands of steps. Newton's
method with the exact second derivatives ends in a few. A step of it is damped (Levenberg 1944, Marquardt
1963) until the likelihood rises, and what would leave the bounds stays on them. A summit is told by three
things at once: neither the log-likelihood nor a parameter moves any more, and nothing is to be gained by
the slope.
"""

import math

import numpy as np
from msgspec import Struct

from onewhole.presses.skills.bounds import Free, bounded, free_at
from onewhole.presses.skills.cells import Cells, Floats
from onewhole.presses.skills.curvature import curvature
from onewhole.presses.skills.likelihood import Point, Sums, better, slope, walk
from onewhole.presses.skills.rows import RowArrays

#: Steps of EM before Newton's method.
EM_STEPS = 10
#: Steps of Newton's method after which a climb gives up and says so.
MOST_STEPS = 200
#: At a summit the next step would raise the log-likelihood by less than this ...
LIKELIHOOD = 1e-8
#: ... and moves no chance and no share by more than this.
PARAMETER = 1e-6
#: What rounding can do to a log-likelihood, as a part of it.
ROUNDING = 1e-13
#: The damping to begin with, the least, and how much less it is after each step.
DAMPING, LEAST_DAMPING, EASED = 1e-3, 1e-12, 30
#: How much more a step is damped that went down.
STIFFENED = 10
#: A step that must be damped more than this is not at a summit's foot: steps of EM follow.
CURVED_WRONG = 1.0
#: A step that was damped more than this tells nothing of a summit.
TELLING = 1e-5
#: A curvature is used again while what a step promises falls to this part of what the one before did.
FALLS = 0.4


class Summit(Struct, frozen=True):
    """Where a climb ended; ``reached`` is False where it gave up, and the point is only the highest seen."""

    point: Point
    log_likelihood: float
    reached: bool
    steps: int


class _Place(Struct, frozen=True):
    """A point with its sums, and what Newton's method climbs: the log-likelihood, less pupils by shares."""

    point: Point
    sums: Sums
    height: float


class _Step(Struct, frozen=True):
    to: _Place
    promised: float
    damping: float


def climb(
    cells: Cells, rows: RowArrays, start: Point, *, em_steps: int = EM_STEPS, curved: Floats | None = None
) -> Summit:
    """Climb from a start; a climb that does not arrive says so by ``reached``.

    ``curved`` is a curvature that is about right there, when one is known: working it out costs many steps.
    """
    here = _place(cells, rows, _by_em(cells, rows, start, em_steps))
    damping, promised_before, fresh = DAMPING, np.inf, False
    for number in range(1, MOST_STEPS + 1):
        if curved is None:
            curved, fresh = curvature(cells, rows, here.point), True
        made = _step(cells, rows, here, curved, damping)
        if made is None:
            if fresh:
                here = _place(cells, rows, _by_em(cells, rows, here.point, EM_STEPS))
            curved, damping, promised_before = None, DAMPING, np.inf
            continue
        moved = float(np.abs(made.to.point.flat - here.point.flat).max())
        gained = made.to.height - here.height
        if not (fresh or made.promised <= FALLS * promised_before):
            curved = None
        here, promised_before, fresh = made.to, made.promised, False
        damping = max(made.damping / EASED, LEAST_DAMPING)
        still = max(made.promised, gained) <= LIKELIHOOD + ROUNDING * abs(here.height)
        if still and moved <= PARAMETER and made.damping <= TELLING:
            return _summit(here, rows.pupils, number, reached=True)
    return _summit(here, rows.pupils, MOST_STEPS, reached=False)


def _by_em(cells: Cells, rows: RowArrays, point: Point, steps: int) -> Point:
    for _ in range(steps):
        point = better(cells, rows, point, walk(cells, rows, point))
    return bounded(cells, point)


def _place(cells: Cells, rows: RowArrays, point: Point) -> _Place:
    sums = walk(cells, rows, point)
    return _Place(point, sums, sums.log_likelihood - rows.pupils * float(point.shares.sum()))


def _step(cells: Cells, rows: RowArrays, here: _Place, curved: Floats, damping: float) -> _Step | None:
    """Return the first step, damped more and more, that does not go down; None where none does."""
    steep = slope(cells, rows, here.point, here.sums)
    free = free_at(cells, here.point, steep, curved)
    bent = curved
    if len(free.tied):
        steep, bent = steep.copy(), curved.copy()
        steep[free.tied] += steep[free.tied + 1]
        bent[free.tied] += bent[free.tied + 1]
        bent[:, free.tied] += bent[:, free.tied + 1]
    inner = bent[np.ix_(free.places, free.places)]
    scale = np.diag(inner)
    while damping <= CURVED_WRONG:
        try:
            step = _solved(inner + np.diag(damping * scale), steep[free.places], here.point, free, cells)
        except np.linalg.LinAlgError:
            damping *= STIFFENED
            continue
        point = bounded(cells, here.point.moved(step))
        there = _place(cells, rows, point)
        if there.height >= here.height - ROUNDING * abs(here.height):
            part = step[free.places]
            return _Step(there, float(steep[free.places] @ part - part @ inner @ part / 2), damping)
        damping *= STIFFENED
    return None


def _solved(damped: Floats, steep: Floats, point: Point, free: Free, cells: Cells) -> Floats:
    """Solve for a step; what would leave its bound goes to it, and the rest is solved again."""
    part = _solve(damped, steep)
    now = point.flat[free.places]
    most = np.where(free.places < cells.count, 1 - now, np.inf)
    out = (part < -now) | (part > most)
    if out.any() and not out.all():
        part = np.clip(part, -now, most)
        rest = ~out
        part[rest] = _solve(damped[np.ix_(rest, rest)], steep[rest] - damped[np.ix_(rest, out)] @ part[out])
    step = np.zeros(len(point.flat))
    step[free.places] = np.clip(part, -now, most)
    step[free.tied + 1] = step[free.tied]
    return step


def _solve(square: Floats, right: Floats) -> Floats:
    """Solve for a square that is positive definite. Raises LinAlgError where it is not."""
    np.linalg.cholesky(square)
    return np.asarray(np.linalg.solve(square, right), dtype=np.float64)


def _summit(here: _Place, pupils: float, steps: int, *, reached: bool) -> Summit:
    """End at a place, with shares that add up to 1 to the last digit."""
    total = float(here.point.shares.sum())
    likelihood = here.sums.log_likelihood - pupils * math.log(total)
    return Summit(Point(here.point.chances, here.point.shares / total), likelihood, reached, steps)
