from itertools import product

import pytest

from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.skill_groups import skill_groups
from onewhole.mastery.skill_model import SkillModel

#: Every Q-matrix of two problems and two skills.
SMALL = [QMatrix(("a", "b"), ("1", "2"), needs) for needs in product((1, 2, 3), repeat=2)]


def right(model: SkillModel, has: set[str], needs: tuple[str, ...]) -> object:
    """What the models say in words: all are there; any is there; which of them are there."""
    if model is SkillModel.DINA:
        return all(skill in has for skill in needs)
    if model is SkillModel.DINO:
        return any(skill in has for skill in needs)
    return frozenset(has.intersection(needs))


@pytest.mark.parametrize("model", SkillModel)
@pytest.mark.parametrize("q", SMALL, ids=lambda q: str(q.needs))
def test_a_group_is_what_every_problem_sees_alike(q: QMatrix, model: SkillModel) -> None:
    """Two sets are in one group when all problems see the same of them, and only then."""
    groups = skill_groups(q, model)
    where = {one: at for at, group in enumerate(groups) for one in group.sets}
    assert sorted(where) == [0, 1, 2, 3]
    for one, other in product(range(4), repeat=2):
        alike = all(
            right(model, set(q.named(one)), q.named(needs))
            == right(model, set(q.named(other)), q.named(needs))
            for needs in q.needs
        )
        assert (where[one] == where[other]) == alike


def test_a_group_tells_how_many_of_its_sets_have_a_skill() -> None:
    """Where the second skill shows only beside the first, half of those without the first have it."""
    without, _, _ = skill_groups(QMatrix(("a", "b"), ("1", "2"), (1, 3)), SkillModel.DINA)
    assert without.sets == (0, 2)
    assert [without.having(at) for at in (0, 1)] == [0, 1]


@pytest.mark.parametrize(
    ("skills", "problems", "needs"),
    [
        ((), ("1",), (1,)),
        (tuple("abcdefghijk"), ("1",), (1,)),
        (("a",), (), ()),
        (("a",), ("1", "2"), (1,)),
        (("a",), ("1",), (0,)),
        (("a",), ("1",), (2,)),
        (("a", "a"), ("1",), (1,)),
        (("a",), ("1", "1"), (1, 1)),
    ],
)
def test_what_is_no_q_matrix_cannot_be_built(
    skills: tuple[str, ...], problems: tuple[str, ...], needs: tuple[int, ...]
) -> None:
    """Sizes, a problem without a skill, a skill without a name, a name twice."""
    with pytest.raises(ValueError, match=r"Q-matrix|each problem|two skills"):
        QMatrix(skills, problems, needs)


def test_chances_are_counted() -> None:
    """Two a problem; for G-DINA one for each mixture of a problem's skills."""
    q = QMatrix(("a", "b", "c"), ("1", "2"), (0b001, 0b111))
    assert [q.chances(model) for model in SkillModel] == [4, 4, 10]
