"""Which blocks meet together, as a program, and the row that is cut where that is too much."""

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.grouping.block import IdeaBlock
from onewhole.marking.grouping.group_program import group_program, in_a_row
from onewhole.marking.grouping.group_settings import USUAL, GroupSettings, Sizes
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.catalogue import by_id
from onewhole.presses.solver import solve


def block(idea: str, pupils: int, *, talk: int | None = None, here: int = 0) -> IdeaBlock:
    """So many pupils of an idea."""
    codes = [f"{idea}-{at}" for at in range(pupils)]
    family = by_id(idea).family
    placings = tuple(Placement(code, GroupKind.FAMILY, (), (family,), idea) for code in codes)
    return IdeaBlock(placings, family, idea, here, talk)


def _solved(row: list[IdeaBlock], settings: GroupSettings = USUAL) -> list[list[str]]:
    plan = group_program(row, settings)
    found = solve(plan.program)
    assert found is not None
    return sorted([one.idea for one in held] for held in plan.chosen(found.counts))


def test_ideas_meet_alone_where_there_are_meetings_for_them() -> None:
    """Three ideas are three groups; with two meetings the two of one family meet together."""
    row = [block("A02", 3), block("A03", 3), block("A01", 3)]
    assert _solved(row) == [["A01"], ["A02"], ["A03"]]
    assert _solved(row, GroupSettings(2)) == [["A01"], ["A02", "A03"]]


def test_too_few_for_a_group_join_their_own_family_first() -> None:
    """Two pupils of regrouping sit with regrouping and not with numerators; alone they are met alone."""
    assert _solved([block("A02", 4), block("A03", 2), block("A01", 4)]) == [["A01"], ["A02", "A03"]]
    assert _solved([block("A03", 2)]) == [["A03"]]


def test_an_open_pupil_sits_only_beside_the_same_family() -> None:
    """Where that group is full already, and where nobody else has the family, a talk is better."""
    full = [block("A01", 6), block("A02", 3), block("A04", 1, talk=95, here=45)]
    assert _solved(full) == [["A01"], ["A02", "A04"]]
    assert _solved([block("A01", 3), block("A02", 1, talk=95, here=45)]) == [["A01"]]


def test_a_class_without_ideas_meets_nobody() -> None:
    """The program of nothing is solved too."""
    assert _solved([]) == []
    assert in_a_row((), USUAL) == ()


def test_a_very_long_row_is_cut_evenly_and_no_block_is_parted() -> None:
    """A whole school in one file is met in the teacher's number of groups, in the order of ideas."""
    row = [block("A02", 6) for _ in range(200)] + [block("A01", 6) for _ in range(200)]
    made = in_a_row(row, GroupSettings(4, Sizes()))
    assert [len(part) for part in made] == [100] * 4
    assert [one for part in made for one in part] == row
    assert [len(part) for part in in_a_row([block("A02", 2)], USUAL)] == [1]
