"""Who sits with whom, as a program, and the groups that a choice makes."""

from collections.abc import Mapping

import pytest

from onewhole.desk.tomorrow.seats import seats
from onewhole.errors import InputError
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import JoinsOthers, LikelierThanNot
from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_program import Sizes, group_program
from onewhole.marking.reading.mark import PupilMarks
from onewhole.misconceptions.pattern import Family
from tests.kit.answers import all_right, by_pattern, marked_against
from tests.kit.odds import PAGE, known

ASKED, READY = known()
SORTS = {
    "right": all_right(PAGE),
    "blank": [""] * 12,
    "slips": ["3 4/6", *all_right(PAGE)[1:]],
    "talk": ["9 1/7", *all_right(PAGE)[1:]],
    "half": [*all_right(PAGE)[:2], by_pattern("A01", PAGE)[2], "", "35/8", *[""] * 7],
}


def _read(sorts: list[str]) -> tuple[tuple[PupilMarks, ...], tuple[Finding, ...]]:
    rows = {f"K{at:02}": SORTS.get(sort) or by_pattern(sort, PAGE) for at, sort in enumerate(sorts, start=1)}
    marks = marked_against(ASKED, rows)
    return marks.pupils, findings(marks, weigh(marks, known=READY).diagnoses)


def _groups(sorts: list[str], before: Mapping[str, Sat] | None = None, meets: int = 4) -> tuple[Group, ...]:
    return seats(*_read(sorts), before=before, meets=meets)


def _sat(made: tuple[Group, ...]) -> dict[str, Sat]:
    return {pupil: Sat(group.name, group.key) for group in made for pupil in group.pupils}


def test_the_program_has_a_seat_for_every_pupil_where_it_can_be() -> None:
    """Two families and both together, slips by themselves: seats, groups, too few, too many."""
    plan = group_program(*_read(["A01", "A02", "slips", "right", "blank"]))
    assert [one.pupil for one in plan.placings] == ["K01", "K02", "K03"]
    assert [talk.key for talk in plan.talks] == [
        "regrouping",
        "numerator",
        "regrouping + numerator",
        "slips only",
    ]
    assert len(plan.places) == 3 + 3 + 1
    assert len(plan.program.gains) == 7 + 3 * 4
    assert {limit.name for limit in plan.program.limits} == {
        "one seat each",
        "no seat without a group",
        "not too many",
        "not too few",
        "groups met",
    }


def test_a_class_without_anyone_to_meet_has_no_groups_to_meet() -> None:
    """All right and nothing written are groups all the same."""
    made = _groups(["right", "blank", "right"])
    assert [(group.place, group.pupils) for group in made] == [
        (GroupKind.EXTENSION, ("K01", "K03")),
        (GroupKind.ABSENT, ("K02",)),
    ]


def test_a_pupil_who_is_likelier_than_not_sits_with_the_family_and_is_told_why() -> None:
    """Two of a pattern and one who may well have it are three who need the same talk."""
    [group] = _groups(["A01", "A01", "half"])
    assert (group.place, group.families) == (GroupKind.FAMILY, (Family.NUMERATOR,))
    assert group.placings[2].because[-1] == LikelierThanNot((Family.NUMERATOR,))


def test_a_pupil_whom_nobody_else_is_like_joins_others_and_is_told_why() -> None:
    """One about the denominator, one about the wholes and four about regrouping, with one group to meet."""
    made = _groups(["A02", "A02", "A02", "A04", "A13", "A19"], meets=1)
    [group] = made
    assert group.families == (Family.REGROUPING, Family.DENOMINATOR, Family.WHOLES)
    joined = [one.pupil for one in group.placings if one.because[-1] == JoinsOthers()]
    assert joined in (["K05"], ["K06"])


def test_a_class_sits_as_before_where_nothing_speaks_for_a_change() -> None:
    """Read again in another order and with one answer more, everyone keeps group and name."""
    sorts = ["A02"] * 4 + ["A01"] * 3 + ["A04"] * 3 + ["talk"] * 3
    first = _groups(sorts)
    assert _sat(_groups(sorts, _sat(first))) == _sat(first)
    names = {pupil: Sat(f"{sat.name} of old", sat.key) for pupil, sat in _sat(first).items()}
    kept = _groups(sorts, names)
    assert [group.pupils for group in kept] == [group.pupils for group in first]
    assert [group.name for group in kept] == [f"{group.name} of old" for group in first]


def test_pupils_who_sat_together_stay_together_when_a_talk_is_cut() -> None:
    """Seven about regrouping in two groups: those of yesterday's Gulls are not torn apart."""
    before = {f"K{at:02}": Sat("Gulls" if at % 2 else "Larks", "regrouping") for at in range(1, 8)}
    made = _groups(["A02"] * 7, before)
    assert {group.name: group.pupils for group in made} == {
        "Gulls": ("K01", "K03", "K05", "K07"),
        "Larks": ("K02", "K04", "K06"),
    }


def test_a_change_in_the_answers_moves_a_pupil() -> None:
    """Yesterday's talk is no reason to stay in it when the answers fit another."""
    before = _sat(_groups(["A02"] * 3 + ["A01"] * 3))
    moved = _groups(["A01"] + ["A02"] * 3 + ["A01"] * 3, {"K01": before["K01"]})
    assert next(group for group in moved if "K01" in group.pupils).families == (Family.NUMERATOR,)


def test_sizes_are_a_setting() -> None:
    """Pairs where a teacher wants pairs."""
    pupils, found = _read(["A02"] * 4)
    made = seats(pupils, found, sizes=Sizes(2, 2))
    assert [len(group.pupils) for group in made] == [2, 2]


@pytest.mark.parametrize("sizes", [(0, 3), (4, 3), (-1, -1)])
def test_sizes_that_cannot_be_are_refused(sizes: tuple[int, int]) -> None:
    """Below one, and the smaller above the larger."""
    with pytest.raises(InputError, match="cannot be"):
        Sizes(*sizes)
