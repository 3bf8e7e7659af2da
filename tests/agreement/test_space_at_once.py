"""Two roads to what the model sees: one at a time, by the rooms that say what things are, or all at once."""

import random
from collections import defaultdict
from collections.abc import Hashable

import numpy as np
import pytest

from onewhole.findings.wished_skill import WishedSkill
from onewhole.number.ladder import mixed
from onewhole.presses.answers_at_once import writes
from onewhole.presses.space_at_once import (
    SORTS,
    SUITS,
    levels,
    likes,
    settled,
    sorts,
    space,
    suits,
    table,
    twins,
)
from onewhole.problems.difficulty import difficulty
from onewhole.problems.needs import needs
from onewhole.problems.points import Hardness
from onewhole.problems.traps import traps
from onewhole.problems.twins import twin_key
from onewhole.sheets.candidates import LikePair
from onewhole.sheets.learning import doubts, settles
from onewhole.sheets.wishes import OpenQuestion, Wishes
from onewhole.working.questions import unsuited
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import STRATEGIES, strategy_named
from onewhole.working.strategy import fits
from tests.kit.candidates import level_of, listed, type_of
from tests.kit.how_much import sample
from tests.kit.sheets import worked_sheet

FIELDS = [
    (2, 2, True),
    (4, 2, True),
    (5, 1, True),
    (10, 1, True),
    (2, 2, False),
    (4, 2, False),
    (12, 1, False),
]


@pytest.mark.parametrize(("denominator", "largest", "taken"), FIELDS)
def test_the_same_problems(denominator: int, largest: int, taken: bool) -> None:
    """Both roads list the same problems."""
    found = list(likes(table(denominator, largest, taken=taken)))
    assert len(found) == len(set(found))
    assert set(found) == set(listed((denominator,), largest, taken=taken))


@pytest.mark.parametrize(("denominator", "largest", "taken"), FIELDS)
def test_the_same_sort_and_level(denominator: int, largest: int, taken: bool) -> None:
    """Sort and level are those of the single problem; the level is the difficulty's share of the numbers."""
    t = table(denominator, largest, taken=taken)
    for one, sort, level in zip(likes(t), sorts(t).tolist(), levels(t).tolist(), strict=True):
        assert (SORTS[sort], level) == (type_of(one), level_of(one))
        wanted = needs(one.statement)
        assert type_of(one).regroups == wanted.regrouping
        assert type_of(one).whole_on_top == wanted.whole_first
        of_working = {Hardness.LINE, Hardness.FACT}
        parts = difficulty(one.statement, REGROUP_FIRST).parts
        assert level == sum(part.points for part in parts if part.because not in of_working)


def test_minutes_are_those_of_an_audit() -> None:
    """Half minutes of a sort are twice the minutes that an audit sees."""
    for one in (
        LikePair(5, 1, 2, 3, 4, taken=True),
        LikePair(5, 3, 2, 1, 4, taken=True),
        LikePair(1, 1, 1, 1, 4, taken=False),
    ):
        (entry,) = worked_sheet(f"1. {one.typed}").problems
        assert type_of(one).halves == 2 * entry.minutes


@pytest.mark.parametrize(("denominator", "largest", "taken"), FIELDS)
def test_the_same_twins(denominator: int, largest: int, taken: bool) -> None:
    """All three ways to say which problems are twins part a field alike."""
    t = table(denominator, largest, taken=taken)
    parted: list[dict[Hashable, set[str]]] = [defaultdict(set), defaultdict(set), defaultdict(set)]
    for one, number in zip(likes(t), twins(t).tolist(), strict=True):
        for groups, key in zip(parted, (number, one.twin, twin_key(one.statement)), strict=True):
            groups[key].add(one.typed)
    first, second, third = (sorted(map(sorted, groups.values())) for groups in parted)
    assert first == second == third


@pytest.mark.parametrize("taught", STRATEGIES, ids=lambda one: one.key)
@pytest.mark.parametrize("taken", [True, False])
def test_the_same_problems_suit(taught: object, taken: bool) -> None:
    """A problem suits a strategy, or its partner for the other operation, when that one can work it."""
    strategy = strategy_named(str(getattr(taught, "key", "")))
    here = strategy if strategy.offered(mixed(4)) else strategy_named(strategy.partner)
    chosen = here if fits(here, taken=taken) else strategy_named(here.partner)
    t = table(4, 2, taken=taken)
    for one, well in zip(likes(t), suits(t, strategy).tolist(), strict=True):
        assert well == (unsuited(one.statement, chosen) is None), one.typed


def test_every_strategy_says_when_it_suits() -> None:
    """A new strategy needs its line, unless it is for other numbers."""
    assert set(SUITS) == {one.key for one in STRATEGIES if one.offered(mixed(4))}


@pytest.mark.parametrize("skill", list(WishedSkill)[:: sample(1, 6, 1)])
def test_the_same_doubts_are_settled(skill: WishedSkill) -> None:
    """The bits of a seeded sample of problems are those that the catalogue gives; sets of two among them."""
    asked = (
        OpenQuestion(("A01", "A10"), ("A01",), 400),
        OpenQuestion(("A02", "A21"), ("A01", "A20"), 300),
        OpenQuestion((), ("A01", "P03"), 300),
    )
    every = doubts(Wishes(skill=skill, questions=asked))
    for taken in (True, False):
        t = table(8, 4, taken=taken)
        t = t.at(np.array(sorted(random.Random(1).sample(range(len(t)), sample(12, 12, 40)))))
        rows = settled(t, writes(t), every)
        for at, one in enumerate(likes(t)):
            bits = sum(int(row) << place for place, row in enumerate(rows[:, at]))
            assert bits == settles(one.statement, every), one.typed


@pytest.mark.more("marking/diagnosis/test_finding.py")
@pytest.mark.parametrize(("denominator", "largest"), [(3, 3), (4, 3), (10, 2)])
def test_the_same_numbers_hide_nothing(denominator: int, largest: int) -> None:
    """Kept are just the problems that hide, beyond what all of their sort do, as little as the best of it."""
    every = list(listed((denominator,), largest, taken=True))
    hides: dict[LikePair, set[object]] = {}
    for one in every:
        found = traps(one.statement).core
        pairs = {frozenset((a, b)) for group in found.alike for a in group for b in group if a < b}
        hides[one] = {*pairs, *found.lucky}
    kept = set()
    for sort in {type_of(one) for one in every}:
        of_sort = [one for one in every if type_of(one) is sort]
        shared = set.intersection(*(hides[one] for one in of_sort))
        best = min(len(hides[one] - shared) for one in of_sort)
        kept |= {one for one in of_sort if len(hides[one] - shared) == best}
    wishes = Wishes(denominators=(denominator,), largest=largest, regrouping=None)
    found_space = space(wishes, doubts(wishes), crowd=10_000)
    assert found_space.listed == len(kept)
    members = [one for kind in found_space.kinds for one in found_space.members(kind)]
    assert sorted(members) == sorted(kept)
    bits = doubts(wishes)
    for kind in found_space.kinds:
        these = found_space.members(kind)
        assert {settles(one.statement, bits) for one in these[:1]} == {kind.tells}
        assert {(type_of(one), one.d, level_of(one)) for one in these} == {
            (kind.sort, kind.group, kind.level)
        }
        assert kind.twins == len({one.twin for one in these})


def test_problems_of_the_last_nights_are_left_out() -> None:
    """What is to be avoided is not among the members of any kind."""
    wishes = Wishes(denominators=(8,), avoid=("9 5/8 - 4 6/8",))
    found = space(wishes, doubts(wishes), crowd=10_000)
    typed = {one.typed for kind in found.kinds for one in found.members(kind)}
    assert "9 5/8 - 4 6/8" not in typed
    assert "9 5/8 - 3 6/8" in typed
