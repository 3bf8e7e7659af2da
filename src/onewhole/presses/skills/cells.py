"""A model's shape as arrays: which chance of a right answer each group of pupils has on each problem."""

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.skill_groups import SkillGroup, skill_groups
from onewhole.mastery.skill_model import SkillModel

Floats = NDArray[np.float64]
Ints = NDArray[np.intp]
Flags = NDArray[np.bool_]


class Cells(Struct, frozen=True):
    """Chances numbered through all problems; groups numbered as ``skill_groups`` gives them.

    ``of_group[j, g]`` is the chance that group ``g`` has on problem ``j``, ``problem[c]`` the problem of a
    chance, ``seen[c]`` what that problem sees of the pupils with it; ``has[g, c]`` is 1 where ``g`` has
    ``c``. ``split[g]`` is the share of all skill sets that are in a group.
    """

    groups: tuple[SkillGroup, ...]
    of_group: Ints
    problem: Ints
    starts: Ints
    seen: tuple[int, ...]
    has: Floats
    split: Floats
    ordered: bool

    @property
    def count(self) -> int:
        """How many chances there are."""
        return len(self.problem)


def cells_of(q: QMatrix, model: SkillModel) -> Cells:
    """Lay out a model for a Q-matrix.

    >>> laid = cells_of(QMatrix(("a", "b"), ("1", "2"), (0b01, 0b11)), SkillModel.DINA)
    >>> laid.of_group.tolist(), laid.problem.tolist()
    ([[0, 1, 1], [2, 2, 3]], [0, 0, 1, 1])
    """
    groups = skill_groups(q, model)
    views = np.array([group.seen for group in groups], dtype=np.intp).T
    kinds, places = zip(*(np.unique(row, return_inverse=True) for row in views), strict=True)
    starts = np.cumsum([0, *map(len, kinds)])
    of_group = np.array(places, dtype=np.intp) + starts[:-1, None]
    problem = np.repeat(np.arange(len(views)), np.diff(starts))
    has = np.zeros((len(groups), len(problem)))
    has[np.arange(len(groups))[None, :], of_group] = 1
    sets = np.array([len(group.sets) for group in groups], dtype=np.float64)
    seen = tuple(int(one) for kind in kinds for one in kind)
    ordered = model is not SkillModel.GDINA
    return Cells(groups, of_group, problem, starts, seen, has, sets / sets.sum(), ordered)
