"""Which skills a problem needs, told from its numbers: a Q-matrix where nobody wrote one."""

from collections.abc import Sequence

from onewhole.findings.skill import Skill
from onewhole.languages.english.skills import skill_called
from onewhole.mastery.q_matrix import MOST_SKILLS, QMatrix

#: What a problem needs beside the skill that it practises where nothing is regrouped. The cut is our own.
REGROUPING, FROM_WHOLES = "regrouping", "pieces from wholes only"
_PARTS: dict[Skill, tuple[str, ...]] = {
    Skill.ADD: ("adding",),
    Skill.ADD_REGROUPED: ("adding", REGROUPING),
    Skill.TAKE: ("taking away",),
    Skill.TAKE_REGROUPED: ("taking away", REGROUPING),
    Skill.TAKE_FROM_WHOLES: ("taking away", REGROUPING, FROM_WHOLES),
    Skill.WHOLE_NUMBERS: ("whole numbers",),
    Skill.WHOLE_NUMBERS_REGROUPED: ("whole numbers", REGROUPING),
}


def needed_skills(problems: Sequence[str], skills: Sequence[Skill]) -> QMatrix | None:
    """Return the Q-matrix of a page; None where it has more skills than a model takes.

    >>> q = needed_skills(("1", "2"), (Skill.TAKE, Skill.TAKE_REGROUPED))
    >>> [q.named(needs) for needs in q.needs]
    [('taking away',), ('taking away', 'regrouping')]
    """
    needs = [_PARTS.get(skill, (skill_called(skill),)) for skill in skills]
    names = tuple(dict.fromkeys(name for some in needs for name in some))
    if len(names) > MOST_SKILLS:
        return None
    sets = tuple(sum(1 << names.index(name) for name in some) for some in needs)
    return QMatrix(names, tuple(problems), sets)
