"""Two roads to the best groups: the solver, and every way to seat a few blocks tried."""

import random
from collections.abc import Iterator, Sequence

import pytest

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.block import IdeaBlock
from onewhole.marking.grouping.group_program import (
    APART_FROM_BEFORE,
    FURTHER_FAMILY,
    FURTHER_IDEA,
    ONE_MORE_GROUP,
    OUTSIDE_SIZES,
    group_program,
)
from onewhole.marking.grouping.group_settings import GroupSettings, Sizes
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.catalogue import by_id
from onewhole.presses.solver import solve

IDEAS = ("A02", "A03", "A04", "A01", "A12", "A13", "A18")
Seats = tuple[tuple[IdeaBlock, ...], ...]


def _class(chance: random.Random) -> tuple[IdeaBlock, ...]:
    """Up to seven blocks of one to four pupils, some of them a single pupil who may talk instead."""
    row = []
    for idea in sorted(chance.sample(IDEAS, chance.randint(1, 7))):
        family = by_id(idea).family
        is_open = chance.random() < 0.3
        codes = [f"{idea}-{at}" for at in range(1 if is_open else chance.randint(1, 4))]
        placings = tuple(Placement(code, GroupKind.FAMILY, (), (family,), idea) for code in codes)
        named = "" if is_open and chance.random() < 0.5 else idea
        talk = chance.randint(50, 100) if is_open else None
        row.append(IdeaBlock(placings, family, named, chance.randint(0, 50) if is_open else 0, talk))
    return tuple(row)


def _ways(row: Sequence[IdeaBlock]) -> Iterator[tuple[Seats, int]]:
    """Every way to seat blocks in groups or, where it can be, to talk with them; with what the talks cost."""
    if not row:
        yield (), 0
        return
    *rest, last = row
    for groups, talks in _ways(rest):
        if last.talk is not None:
            yield groups, talks + last.talk
        yield (*groups, (last,)), talks
        for at, group in enumerate(groups):
            yield (*groups[:at], (*group, last), *groups[at + 1 :]), talks


def _cost(groups: Seats, before: dict[str, Sat], sizes: Sizes, pupils: int) -> int | None:
    """What groups cost by the rule's words; None where an open pupil sits without the same family."""
    total = 0
    for group in groups:
        many = sum(len(block.placings) for block in group)
        for block in group:
            others = [one.family for one in group if one is not block]
            if block.talk is not None and block.family not in others:
                return None
        groups_before = [before[pupil].group for pupil in group[0].pupils if pupil in before]
        most = max(sorted(set(groups_before)), key=groups_before.count, default=None)
        apart = sum(
            before[pupil].group != most
            for block in group
            for pupil in block.pupils
            if pupil in before and most is not None
        )
        families, ideas = {block.family for block in group}, {block.idea for block in group if block.idea}
        first = {group[0].idea} if group[0].idea else set()
        total += ONE_MORE_GROUP + FURTHER_FAMILY * (len(families) - 1) + FURTHER_IDEA * len(ideas - first)
        total += OUTSIDE_SIZES * pupils * (max(0, many - sizes.largest) + max(0, sizes.smallest - many))
        total += APART_FROM_BEFORE * apart + sum(block.here for block in group)
    return total


@pytest.mark.parametrize("seed", range(40))
def test_the_solver_seats_as_well_as_can_be(seed: int) -> None:
    """Random rows of blocks, with and without the groups of the night before."""
    chance = random.Random(seed)
    row = _class(chance)
    settings = GroupSettings(chance.randint(1, 3), chance.choice([Sizes(), Sizes(2, 3), Sizes(1, 2)]))
    codes = [pupil for block in row for pupil in block.pupils]
    before = {code: Sat("", "", chance.choice(["7", "8", "9"])) for code in codes if chance.random() < 0.4}
    plan = group_program(row, settings, before)
    solved = solve(plan.program)
    assert solved is not None
    costs = [
        cost + talks
        for groups, talks in _ways(row)
        if len(groups) <= settings.meets
        and (cost := _cost(groups, before, settings.sizes, len(codes))) is not None
    ]
    assert -solved.gained == min(costs)
    assert not plan.program.broken(solved.counts)
    assert sorted(block.pupils for group in plan.chosen(solved.counts) for block in group) == sorted(
        block.pupils for block in row if block.talk is None or _seated(block, plan.chosen(solved.counts))
    )


def _seated(block: IdeaBlock, groups: Seats) -> bool:
    return any(block in group for group in groups)
