"""Where a climb begins: the usual start, then starts by seeded chance."""

from collections.abc import Iterator

import numpy as np

from onewhole.presses.skills.cells import Cells, Floats
from onewhole.presses.skills.likelihood import Point

#: The chance of a right answer with nothing that a problem sees, and what all of it adds (common practice).
LEAST, ADDED = 0.2, 0.6
#: A chance by lot lies this far inside its half.
INSIDE = 0.02


def usual_start(cells: Cells) -> Point:
    """Return the usual start: 0.2 with nothing, 0.8 with all, evenly between; every skill set as likely.

    >>> from onewhole.mastery.q_matrix import QMatrix
    >>> from onewhole.mastery.skill_model import SkillModel
    >>> from onewhole.presses.skills.cells import cells_of
    >>> q = QMatrix(("a", "b"), ("1",), (0b11,))
    >>> usual_start(cells_of(q, SkillModel.DINA)).chances.round(3).tolist()
    [0.2, 0.8]
    >>> usual_start(cells_of(q, SkillModel.GDINA)).chances.round(3).tolist()
    [0.2, 0.5, 0.5, 0.8]
    """
    return Point(LEAST + ADDED * _part(cells), cells.split.copy())


def starts(cells: Cells, chance: np.random.Generator) -> Iterator[Point]:
    """Give the usual start, then without end starts by lot.

    There a chance lies by lot below one half with nothing, above it with all, and the shares of the skill
    sets are by lot, each mixture as likely (a flat Dirichlet distribution).
    """
    yield usual_start(cells)
    part = _part(cells)
    sets = [len(group.sets) for group in cells.groups]
    while True:
        low = chance.uniform(INSIDE, 0.5 - INSIDE, len(cells.of_group))[cells.problem]
        high = chance.uniform(0.5 + INSIDE, 1 - INSIDE, len(cells.of_group))[cells.problem]
        between = np.where((part > 0) & (part < 1), chance.uniform(0, 1, cells.count), part)
        yield Point(low + (high - low) * between, chance.dirichlet(sets))


def _part(cells: Cells) -> Floats:
    """Return how much of all that a problem can see each chance stands for: 0 to 1."""
    most: dict[int, int] = {}
    for seen, problem in zip(cells.seen, cells.problem, strict=True):
        most[int(problem)] = max(most.get(int(problem), 0), seen.bit_count())
    return np.array(
        [
            seen.bit_count() / most[int(problem)]
            for seen, problem in zip(cells.seen, cells.problem, strict=True)
        ]
    )
