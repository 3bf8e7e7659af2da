"""Pupils of one idea are one block, as far as a group holds them."""

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.block import IdeaBlock, blocks, cut
from onewhole.marking.grouping.placement import Placement, placements
from onewhole.misconceptions.pattern import Family
from tests.kit.classes import read


def _blocks(sorts: list[str], largest: int = 6) -> tuple[IdeaBlock, ...]:
    pupils, found = read(sorts)
    return blocks(placements(pupils, found), {one.pupil: one for one in found}, {}, largest)


def _pupils(*codes: str) -> list[Placement]:
    return [Placement(code, GroupKind.FAMILY, (), (Family.NUMERATOR,), "A01") for code in codes]


def test_one_idea_is_one_block() -> None:
    """Whoever else is there, and in whatever order; all right, slips and talks are in none."""
    made = _blocks(["A02", "A01", "right", "A02", "slips", "talk", "A02", "blank"])
    assert [(one.idea, one.pupils) for one in made] == [("A02", ("K01", "K04", "K07")), ("A01", ("K02",))]


def test_an_idea_is_cut_only_by_size() -> None:
    """Six in a group of six stay together; seven are 4 and 3."""
    assert [len(one.pupils) for one in _blocks(["A02"] * 6)] == [6]
    assert [len(one.pupils) for one in _blocks(["A02"] * 7)] == [4, 3]
    assert [len(one.pupils) for one in _blocks(["A02"] * 7, largest=7)] == [7]


def test_an_open_finding_is_a_block_that_may_have_a_talk() -> None:
    """It costs what is missing from the odds; with the idea that others have it names that one."""
    *_, one = _blocks(["A01", "half"])
    assert (one.family, one.idea, one.pupils) == (Family.NUMERATOR, "A01", ("K02",))
    assert one.talk is not None
    assert one.here < 50 < one.talk


def test_those_who_sat_together_stay_together() -> None:
    """Where it comes out even."""
    row = _pupils("K01", "K02", "K03", "K04", "K05", "K06", "K07")
    sat = {f"K{at:02}": Sat("Gulls" if at % 2 else "Larks", "numerator") for at in range(1, 8)}
    parts = [[one.pupil for one in part] for part in cut(row, 2, sat)]
    assert parts == [["K01", "K03", "K05", "K07"], ["K02", "K04", "K06"]]
    assert cut([], 0, {}) == []
