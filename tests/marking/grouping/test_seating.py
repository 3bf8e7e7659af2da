"""Tomorrow's groups: one idea, one group; their sizes, and which of them are met."""

import pytest

from onewhole.desk.tomorrow.seats import seated
from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import LikelierThanNot, MeetingsUsedUp, TooFewAlike, TooManyAlike
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_settings import SIZES, GroupSettings, Sizes
from onewhole.misconceptions.pattern import Family
from tests.kit.classes import seating


def _class(**counts: int) -> list[str]:
    return [sort.replace("_", " ") for sort, count in counts.items() for _ in range(count)]


def _made(meets: int = 4, sizes: Sizes = SIZES, **counts: int) -> tuple[Group, ...]:
    return seating(_class(**counts), GroupSettings(meets, sizes)).groups


def _shape(made: tuple[Group, ...]) -> list[tuple[GroupKind, int]]:
    return [(group.place, len(group.pupils)) for group in made]


def _ideas(made: tuple[Group, ...]) -> list[list[tuple[str, int]]]:
    return [[(held.idea, len(held.pupils)) for held in group.ideas] for group in made if group.place.meets]


def test_six_children_of_one_idea_are_one_group() -> None:
    """Whatever else the class holds: all rights, slips, talks, and other ideas of the same family."""
    for others in (
        {},
        {"A03": 2},
        {"A03": 3, "A04": 1},
        {"A01": 5, "A03": 4, "A13": 2, "slips": 4, "talk": 5},
    ):
        made = seating(_class(A02=6, right=3, **others)).groups
        [ours] = [group for group in made if "A02" in {held.idea for held in group.ideas}]
        assert len(next(held.pupils for held in ours.ideas if held.idea == "A02")) == 6


def test_an_idea_is_parted_only_by_size_and_says_so() -> None:
    """Seven are 4 and 3; where the teacher meets one group only, the seven are one."""
    made = _made(A02=7)
    assert _ideas(made) == [[("A02", 4)], [("A02", 3)]]
    assert all(one.because[-1] == TooManyAlike(7) for group in made for one in group.placings)
    assert _ideas(_made(A02=7, meets=1)) == [[("A02", 7)]]
    assert _ideas(_made(A02=4, sizes=Sizes(2, 2))) == [[("A02", 2)], [("A02", 2)]]


def test_every_sort_is_apart() -> None:
    """Those the teacher meets come first."""
    made = _made(right=4, blank=1, A02=3, A01=3, slips=3, talk=3)
    assert _shape(made) == [
        (GroupKind.FAMILY, 3),
        (GroupKind.FAMILY, 3),
        (GroupKind.SLIPS, 3),
        (GroupKind.INTERVIEW, 3),
        (GroupKind.EXTENSION, 4),
        (GroupKind.ABSENT, 1),
    ]
    assert [group.families for group in made[:2]] == [(Family.REGROUPING,), (Family.NUMERATOR,)]
    assert [group.place.meets for group in made] == [True, True, False, False, False, False]


def test_slips_and_talks_use_up_no_meeting() -> None:
    """A teacher who meets two groups meets both ideas, beside any number of slips and talks."""
    made = _made(A02=4, A01=4, slips=9, talk=9, meets=2)
    assert _shape(made) == [
        (GroupKind.FAMILY, 4),
        (GroupKind.FAMILY, 4),
        (GroupKind.SLIPS, 9),
        (GroupKind.INTERVIEW, 9),
    ]


def test_all_right_and_one_blank_goes_further() -> None:
    """It was a talk first, and needs none."""
    assert _shape(_made(one_blank=3, right=2)) == [(GroupKind.EXTENSION, 5)]


def test_patterns_of_one_family_meet_and_who_has_which_is_told() -> None:
    """Three ideas of one pupil each are one group, which can be split."""
    [group] = _made(A02=1, A04=1, A06=1)
    assert group.families == (Family.REGROUPING,)
    assert [(held.idea, held.pupils) for held in group.ideas] == [
        ("A02", ("K01",)),
        ("A04", ("K02",)),
        ("A06", ("K03",)),
    ]


def test_too_few_of_a_family_join_others_and_are_told_why() -> None:
    """Fewer than three pupils do not make a group where another family can take them."""
    [group] = _made(A02=4, A01=2)
    assert (group.families, len(group.pupils)) == ((Family.REGROUPING, Family.NUMERATOR), 6)
    assert [one.because[-1] for one in group.placings[4:]] == [TooFewAlike(2)] * 2
    assert not any(TooFewAlike(4) in one.because for one in group.placings[:4])


def test_families_are_joined_before_there_are_too_many_groups() -> None:
    """Three families and two meetings: the two smaller ones meet together, and are told why."""
    made = _made(A02=5, A01=3, A13=3, meets=2)
    assert _ideas(made) == [[("A02", 5)], [("A01", 3), ("A13", 3)]]
    assert [one.because[-1] for one in made[1].placings[3:]] == [MeetingsUsedUp(2)] * 3


def test_pupils_who_go_further_are_cut_evenly() -> None:
    """They need no meeting."""
    assert _shape(_made(right=14, A02=3, meets=1)) == [
        (GroupKind.FAMILY, 3),
        (GroupKind.EXTENSION, 5),
        (GroupKind.EXTENSION, 5),
        (GroupKind.EXTENSION, 4),
    ]


def test_an_open_pupil_sits_beside_the_same_idea_and_is_told_why() -> None:
    """Two of a pattern and one who may well have it are three who need the same talk."""
    [group] = _made(A01=2, half=1)
    assert _ideas((group,)) == [[("A01", 3)]]
    assert group.placings[2].because[-1] == LikelierThanNot((Family.NUMERATOR,))


def test_a_class_without_anyone_to_meet_has_no_groups_to_meet() -> None:
    """All right and nothing written are groups all the same; no class at all is none."""
    made = seating(["right", "blank", "right"]).groups
    assert [(group.place, group.pupils) for group in made] == [
        (GroupKind.EXTENSION, ("K01", "K03")),
        (GroupKind.ABSENT, ("K02",)),
    ]
    assert seated((), ()).groups == ()


@pytest.mark.parametrize("meets", [3, 4, 5])
def test_a_whole_class_has_sizes_that_can_be_taught(meets: int) -> None:
    """28 pupils of every sort: all are placed once, the sizes hold, and the teacher's number is kept."""
    rows = _class(right=6, blank=2, A01=4, A02=3, A04=2, A12=2, A20=1, slips=3, talk=5)
    made = seating(rows, GroupSettings(meets)).groups
    codes = [pupil for group in made for pupil in group.pupils]
    assert sorted(codes) == [f"K{at:02}" for at in range(1, 29)]
    met = [group for group in made if group.place.meets]
    assert len(met) <= meets
    assert all(SIZES.smallest <= len(group.pupils) <= SIZES.largest for group in met)
