"""The best of several climbs, and how many of them came to it."""

from itertools import islice

import numpy as np
from msgspec import Struct

from onewhole.presses.one_thread import one_thread
from onewhole.presses.skills.cells import Cells
from onewhole.presses.skills.climb import Summit, climb
from onewhole.presses.skills.curvature import curvature
from onewhole.presses.skills.likelihood import Point
from onewhole.presses.skills.rows import RowArrays, fewer
from onewhole.presses.skills.starts import starts

#: Beyond so many different rows a climb begins on as many pupils drawn by lot, and ends on all.
DRAWN = 6_000
#: Steps of EM with which the climb on all rows begins.
EM_AGAIN = 3
#: Two summits whose log-likelihoods differ by less are one.
SAME = 1e-4


class Summits(Struct, frozen=True):
    """The highest summit; how many climbs there were, how many ended at it, and how many did not arrive."""

    best: Summit
    climbs: int
    same: int
    lost: int


@one_thread()
def best_summit(cells: Cells, rows: RowArrays, climbs: int, seed: int) -> Summits:
    """Climb from the usual start and from ``climbs - 1`` by lot, and return the best."""
    begun = islice(starts(cells, np.random.default_rng(seed)), climbs)
    found = [_climbed(cells, rows, start, seed) for start in begun]
    best = max(found, key=lambda one: (one.log_likelihood, one.reached))
    same = sum(one.log_likelihood > best.log_likelihood - SAME for one in found)
    return Summits(best, climbs, same, sum(not one.reached for one in found))


def _climbed(cells: Cells, rows: RowArrays, start: Point, seed: int) -> Summit:
    """Climb on all rows, where they are many over pupils drawn by lot."""
    if len(rows.times) <= DRAWN:
        return climb(cells, rows, start)
    drawn = fewer(rows, DRAWN, np.random.default_rng(seed))
    near = climb(cells, drawn, start).point
    curved = curvature(cells, drawn, near) * (rows.pupils / drawn.pupils)
    return climb(cells, rows, near, em_steps=EM_AGAIN, curved=curved)
