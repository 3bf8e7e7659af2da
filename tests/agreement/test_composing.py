"""Two roads to the best page: the solver among the kinds that are left, and trying every page there is."""

from itertools import combinations

import pytest

from onewhole.desk.page.compose import _choice
from onewhole.findings.wished_skill import WishedSkill
from onewhole.presses.solver import SECONDS, bound
from onewhole.presses.space_at_once import space
from onewhole.sheets.learning import doubts, learnt, settles
from onewhole.sheets.page_program import page_program
from onewhole.sheets.wishes import OpenQuestion, Wishes
from tests.kit.candidates import listed, type_of

ASKED = (OpenQuestion(("A01",), ("A02",), 600), OpenQuestion(("A10",), (), 400))

TINY = [
    Wishes(number=2, denominators=(3,), largest=2, regrouping=None),
    Wishes(number=3, denominators=(3,), largest=2),
    Wishes(number=3, denominators=(2, 3), largest=1, questions=ASKED),
    Wishes(number=3, denominators=(4,), largest=1, minutes=4),
    Wishes(skill=WishedSkill.BOTH, number=2, denominators=(3,), largest=1, regrouping=None),
]


@pytest.mark.parametrize("wishes", TINY, ids=lambda one: f"{one.skill}, {one.number} of {one.denominators}")
def test_the_best_page_is_that_of_trying_all(wishes: Wishes) -> None:
    """No page of the whole space teaches more than the one chosen, and the bound lies no lower."""
    open_doubts = doubts(wishes)
    everything = space(wishes, open_doubts, crowd=10_000)
    free = [one for kind in everything.kinds for one in everything.members(kind)]
    tells = {one.typed: settles(one.statement, open_doubts) for one in free}
    best = -1
    for page in combinations(free, wishes.number):
        regrouped = sum(type_of(one).regroups for one in page)
        halves = sum(type_of(one).halves for one in page)
        if wishes.kept_regrouping not in {None, regrouped} or len({one.twin for one in page}) < len(page):
            continue
        if wishes.minutes is None or halves <= 2 * wishes.minutes:
            best = max(best, learnt(open_doubts, [tells[one.typed] for one in page]))
    few = space(wishes, open_doubts, crowd=wishes.number)
    assert len(few.kinds) <= len(everything.kinds)
    chosen = _choice(few, wishes, open_doubts, (), SECONDS)
    assert chosen is not None
    assert learnt(open_doubts, [tells[one.typed] for one in chosen.problems]) == best
    program = page_program(few.kinds, open_doubts, wishes, habits=(), crowded=chosen.crowded, ties=False)
    assert bound(program) >= best


def test_the_tiny_spaces_hold_a_choice() -> None:
    """A space with one page would prove nothing."""
    for wishes in TINY:
        taken = {WishedSkill.SUBTRACT: (True,), WishedSkill.BOTH: (True, False), WishedSkill.ADD: (False,)}[
            wishes.skill
        ]
        every = [one for way in taken for one in listed(wishes.denominators, wishes.largest, taken=way)]
        assert len(every) > 2 * wishes.number
