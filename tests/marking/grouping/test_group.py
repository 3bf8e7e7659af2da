"""Tomorrow's groups: the rule, their sizes, and how many there are."""

import pytest

from onewhole.desk.tomorrow.seats import seats
from onewhole.errors import InputError
from onewhole.findings.group_kind import GroupKind
from onewhole.languages.english.placing import group_because
from onewhole.marking.grouping.group import NAMES, Group
from onewhole.marking.grouping.group_program import SIZES
from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Family
from onewhole.notations.sentences.text import text_of
from tests.kit.answers import all_right, by_pattern, grouped, page, right

PAGE = page()
MET = {GroupKind.FAMILY, GroupKind.SLIPS, GroupKind.INTERVIEW}


def _class(**counts: int) -> dict[str, list[str]]:
    """A class with so many pupils of each sort; a sort is a pattern's id or one of the words below."""
    sorts = {
        "right": all_right(PAGE),
        "blank": [""] * 12,
        "slips": ["3 4/6", *all_right(PAGE)[1:]],
        "talk": ["9 1/7", *all_right(PAGE)[1:]],
    }
    cells = [
        sorts.get(sort) or by_pattern(sort, PAGE) for sort, count in counts.items() for _ in range(count)
    ]
    return {f"K{at:02}": row for at, row in enumerate(cells, start=1)}


def _shape(made: tuple[Group, ...]) -> list[tuple[GroupKind, int]]:
    return [(group.place, len(group.pupils)) for group in made]


def test_one_group_a_sort() -> None:
    """Absent, all right, one family, slips and talks are apart; those the teacher meets come first."""
    made = grouped(PAGE, _class(right=4, blank=1, A02=3, A01=3, slips=3, talk=3))
    assert _shape(made) == [
        (GroupKind.FAMILY, 3),
        (GroupKind.FAMILY, 3),
        (GroupKind.SLIPS, 3),
        (GroupKind.INTERVIEW, 3),
        (GroupKind.EXTENSION, 4),
        (GroupKind.ABSENT, 1),
    ]
    assert [group.families for group in made[:2]] == [(Family.REGROUPING,), (Family.NUMERATOR,)]


def test_every_placing_has_its_reason_with_labels() -> None:
    """The reason of a group holds the reason of each pupil."""
    [group] = grouped(PAGE, _class(slips=2))
    pupils = [(placed.pupil, placed.because) for placed in group.placings]
    assert text_of(group_because(group.place, group.families, pupils)) == (
        "slips only: K01: one step beside right, perhaps a slip, in 1; "
        "K02: one step beside right, perhaps a slip, in 1"
    )


def test_patterns_of_one_family_meet() -> None:
    """Different patterns of regrouping make one group."""
    [group] = grouped(PAGE, _class(A02=1, A04=1, A06=1))
    assert (group.place, group.families, group.pupils) == (
        GroupKind.FAMILY,
        (Family.REGROUPING,),
        ("K01", "K02", "K03"),
    )


def test_small_families_are_joined() -> None:
    """Fewer than three pupils do not make a group where another family can take them."""
    made = grouped(PAGE, _class(A02=4, A01=2))
    assert _shape(made) == [(GroupKind.FAMILY, 6)]
    assert made[0].families == (Family.REGROUPING, Family.NUMERATOR)


def test_families_are_joined_before_there_are_too_many_groups() -> None:
    """Three families, slips and talks are five groups: the two smallest families meet together."""
    sorts = _class(A02=5, A01=3, A13=3, slips=3, talk=3)
    assert _shape(grouped(PAGE, sorts, meets=5)) == [
        (GroupKind.FAMILY, 5),
        (GroupKind.FAMILY, 3),
        (GroupKind.FAMILY, 3),
        (GroupKind.SLIPS, 3),
        (GroupKind.INTERVIEW, 3),
    ]
    four = grouped(PAGE, sorts, meets=4)
    assert _shape(four) == [
        (GroupKind.FAMILY, 5),
        (GroupKind.FAMILY, 6),
        (GroupKind.SLIPS, 3),
        (GroupKind.INTERVIEW, 3),
    ]
    assert four[1].families == (Family.NUMERATOR, Family.WHOLES)


def test_large_groups_are_cut_evenly_while_there_is_room() -> None:
    """Seven become 4 and 3; where the teacher cannot meet one more the group grows instead."""
    assert _shape(grouped(PAGE, _class(A02=7))) == [(GroupKind.FAMILY, 4), (GroupKind.FAMILY, 3)]
    assert _shape(grouped(PAGE, _class(A02=7), meets=1)) == [(GroupKind.FAMILY, 7)]
    assert _shape(grouped(PAGE, _class(A02=13, talk=8), meets=4)) == [
        (GroupKind.FAMILY, 7),
        (GroupKind.FAMILY, 6),
        (GroupKind.INTERVIEW, 4),
        (GroupKind.INTERVIEW, 4),
    ]


def test_pupils_who_go_further_are_cut_too_and_count_for_nothing() -> None:
    """They need no meeting, so their groups do not use up the teacher's."""
    made = grouped(PAGE, _class(right=14, A02=3), meets=1)
    assert _shape(made) == [
        (GroupKind.FAMILY, 3),
        (GroupKind.EXTENSION, 5),
        (GroupKind.EXTENSION, 5),
        (GroupKind.EXTENSION, 4),
    ]


def test_sorts_are_never_mixed() -> None:
    """A teacher who meets one group still gets families, slips and talks apart."""
    made = grouped(PAGE, _class(A02=3, A01=3, slips=3, talk=3), meets=1)
    assert _shape(made) == [(GroupKind.FAMILY, 6), (GroupKind.SLIPS, 3), (GroupKind.INTERVIEW, 3)]


def test_a_pattern_that_fits_several_families_joins_the_fuller_one() -> None:
    """A12, A18 and A26 write alike on this page: their pupils go where most others are."""
    made = grouped(PAGE, _class(A12=2, A01=3))
    assert [(group.families, len(group.pupils)) for group in made] == [((Family.NUMERATOR,), 5)]


def test_a_whole_class_has_sizes_that_can_be_taught() -> None:
    """28 pupils of every sort: all are placed once, the sizes hold, and the teacher's number is kept."""
    rows = _class(right=6, blank=2, A01=4, A02=3, A04=2, A12=2, A20=1, slips=3, talk=5)
    made = grouped(PAGE, rows)
    assert sorted(pupil for group in made for pupil in group.pupils) == sorted(rows)
    met = [group for group in made if group.place in MET]
    assert len(met) <= 4
    assert all(SIZES.smallest <= len(group.pupils) <= SIZES.largest for group in met)


def test_names_are_neutral_and_apart() -> None:
    """No name of a pattern, no colour, no rank; names run on when they are used up."""
    made = grouped(PAGE, _class(right=80))
    names = [group.name for group in made]
    assert names[: len(NAMES) + 1] == [*NAMES, f"{NAMES[0]} 2"]
    assert len(set(names)) == len(names) == 14
    for pattern in patterns():
        assert not set(NAMES) & set(pattern.name.title().split())


def test_the_teacher_meets_at_least_one() -> None:
    """Nobody can be met in no groups."""
    with pytest.raises(InputError, match="at least one group, not 0"):
        seats((), (), meets=0)
    assert seats((), ()) == ()


def test_the_sorts_of_this_file_are_what_they_say() -> None:
    """3 4/6 is one piece beside 3 3/6; 9 1/7 is nothing that a pattern writes."""
    assert right(PAGE[0]) == "3 3/6"
    assert _shape(grouped(PAGE, _class(slips=1, talk=1))) == [(GroupKind.SLIPS, 1), (GroupKind.INTERVIEW, 1)]
