"""Two roads to the best groups: the solver, and every way to seat a small class tried."""

import random

import pytest

from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.finding import findings
from onewhole.marking.grouping.conversation import cost
from onewhole.marking.grouping.group_program import (
    ANOTHER_THAN_BEFORE,
    ONE_MORE_GROUP,
    OUTSIDE_SIZES,
    TWO_FAMILIES,
    GroupProgram,
    Sizes,
    group_program,
)
from onewhole.presses.solver import solve
from tests.kit.answers import all_right, by_pattern, marked_against
from tests.kit.odds import PAGE, known

ASKED, READY = known()
SORTS = {
    "slips": ["3 4/6", *all_right(PAGE)[1:]],
    "talk": ["9 1/7", *all_right(PAGE)[1:]],
    "half": [*all_right(PAGE)[:2], by_pattern("A01", PAGE)[2], "", "35/8", *[""] * 7],
} | {key: by_pattern(key, PAGE) for key in ("A01", "A02", "A12", "A13", "A19")}


def _least_cost(many: int, most_groups: int, sizes: Sizes, pupils: int) -> dict[int, int]:
    """For one conversation with so many pupils: the cost by its number of groups, from the rule's words."""
    if not many:
        return {0: 0}
    found = {}
    for groups in range(1, most_groups + 1):
        outside = max(0, many - sizes.largest * groups) + max(0, sizes.smallest * groups - many)
        found[groups] = ONE_MORE_GROUP * groups + OUTSIDE_SIZES * pupils * outside
    return found


def _best_by_trying(plan: GroupProgram, costs: dict[tuple[int, int], int], held: int, sizes: Sizes) -> int:
    """The least cost over every seat of every pupil and every number of groups.

    Ways to seat the first few pupils that fill the conversations alike are one, with the least cost.
    """
    pupils, talks = len(plan.placings), len(plan.talks)
    filled = {(0,) * talks: 0}
    for who in range(pupils):
        more: dict[tuple[int, ...], int] = {}
        for many, base in filled.items():
            for at in range(talks):
                if (who, at) in costs:
                    key = (*many[:at], many[at] + 1, *many[at + 1 :])
                    more[key] = min(base + costs[who, at], more.get(key, base + costs[who, at]))
        filled = more
    return min(base + rest for many, base in filled.items() for rest in _groups(many, held, sizes, pupils))


def _groups(many: tuple[int, ...], held: int, sizes: Sizes, pupils: int) -> list[int]:
    """The costs of every way to share out so many groups, or fewer, among the conversations."""
    used = {0: 0}
    for each in many:
        table = _least_cost(each, held, sizes, pupils)
        used = {
            total: min(
                used[total - groups] + cost for groups, cost in table.items() if total - groups in used
            )
            for total in range(held + 1)
            if any(total - groups in used for groups in table)
        }
    return list(used.values())


@pytest.mark.parametrize("seed", range(24))
def test_the_solver_seats_as_well_as_can_be(seed: int) -> None:
    """Random classes of up to eight, with and without yesterday's conversations."""
    chance = random.Random(seed)
    sorts = [chance.choice(sorted(SORTS)) for _ in range(chance.randint(1, 8))]
    meets, sizes = chance.randint(1, 3), chance.choice([Sizes(), Sizes(2, 3), Sizes(1, 2)])
    rows = {f"K{at}": SORTS[sort] for at, sort in enumerate(sorts)}
    marks = marked_against(ASKED, rows)
    found = findings(marks, weigh(marks, known=READY).diagnoses)
    talked = ["numerator", "regrouping", "slips only", "regrouping + numerator"]
    before = {pupil: chance.choice(talked) for pupil in rows if chance.random() < 0.4}
    plan = group_program(marks.pupils, found, meets=meets, sizes=sizes, before=before)
    by_pupil = {one.pupil: one for one in found}
    costs = {}
    for who, one in enumerate(plan.placings):
        for at, talk in enumerate(plan.talks):
            needed = cost(one, by_pupil[one.pupil], talk)
            if needed is not None:
                moved = before.get(one.pupil, talk.key) != talk.key
                costs[who, at] = (
                    needed + TWO_FAMILIES * (len(talk.families) > 1) + ANOTHER_THAN_BEFORE * moved
                )
    held = max(meets, len({one.place for one in plan.placings}))
    solved = solve(plan.program)
    assert solved is not None
    assert -solved.gained == _best_by_trying(plan, costs, held, sizes)
    assert not plan.program.broken(solved.counts)
