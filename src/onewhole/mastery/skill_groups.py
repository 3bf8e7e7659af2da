"""Which kinds of pupil these problems cannot tell apart: skill sets with one ideal response."""

from msgspec import Struct

from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.skill_model import SkillModel, SkillSet


class SkillGroup(Struct, frozen=True):
    """Skill sets that every problem sees alike, in rising order; ``seen`` is what each problem sees of them.

    No number of answers tells two sets of one group apart (Tatsuoka 1991; Köhn & Chiu 2017, Psychometrika
    82, 112-132, from memory).
    """

    sets: tuple[SkillSet, ...]
    seen: tuple[int, ...]

    def having(self, skill: int) -> int:
        """Return how many of the sets have a skill, told by its place from 0."""
        return sum(one >> skill & 1 for one in self.sets)


def skill_groups(q: QMatrix, model: SkillModel) -> tuple[SkillGroup, ...]:
    """Return the groups of skill sets that these problems can tell apart, by their smallest set.

    >>> q = QMatrix(("a", "b"), ("1", "2"), (0b01, 0b11))
    >>> [group.sets for group in skill_groups(q, SkillModel.DINA)]
    [(0, 2), (1,), (3,)]
    >>> len(skill_groups(q, SkillModel.GDINA))
    4
    """
    found: dict[tuple[int, ...], list[SkillSet]] = {}
    different = tuple(dict.fromkeys(q.needs))
    places = [different.index(needs) for needs in q.needs]
    for has in range(1 << len(q.skills)):
        seen = tuple([model.seen(has, needs) for needs in different])
        found.setdefault(seen, []).append(has)
    return tuple(
        SkillGroup(tuple(sets), tuple([seen[place] for place in places])) for seen, sets in found.items()
    )
