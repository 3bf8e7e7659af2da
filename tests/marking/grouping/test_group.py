"""A group: its pupils, their ideas, and the order of groups."""

from onewhole.findings.group_kind import GroupKind
from onewhole.marking.grouping.group import (
    Group,
    IdeaHeld,
    evidence_of,
    in_order,
    key_of,
    main_family,
    place_of,
)
from onewhole.marking.grouping.placement import Placement
from onewhole.misconceptions.pattern import Family
from tests.kit.answers import by_pattern
from tests.kit.odds import PAGE, finding_of


def _placed(pupil: str, idea: str = "", *families: Family) -> Placement:
    return Placement(pupil, GroupKind.FAMILY, (), families, idea)


GROUP = Group(
    "Larks",
    GroupKind.FAMILY,
    (
        _placed("K01", "A01"),
        _placed("K02", "A02"),
        _placed("K03", "A02"),
        _placed("K04", "", Family.WHOLES),
        _placed("K05", "A13"),
    ),
)


def test_ideas_of_most_come_first_and_no_idea_last() -> None:
    """How the minutes of a group may be split."""
    assert [(held.idea, held.pupils) for held in GROUP.ideas] == [
        ("A02", ("K02", "K03")),
        ("A01", ("K01",)),
        ("A13", ("K05",)),
        ("", ("K04",)),
    ]
    assert Group("Larks", GroupKind.SLIPS, GROUP.placings).ideas == ()


def test_a_group_is_kept_by_its_families_or_its_place() -> None:
    """A key tells the place again."""
    assert main_family(GROUP) is Family.REGROUPING
    assert main_family(Group("Larks", GroupKind.FAMILY, (_placed("K04"),))) is None
    key = key_of(GroupKind.FAMILY, GROUP.placings)
    assert key == "regrouping + numerator + whole-number part"
    assert place_of(key) is GroupKind.FAMILY
    assert [place_of(key_of(kind, ())) for kind in GroupKind] == list(GroupKind)


def test_those_who_are_met_come_first() -> None:
    """In the order of families; then slips, talks, all right, nothing written."""
    groups = [Group(kind.name, kind, (_placed("K09"),)) for kind in GroupKind]
    assert [one.name for one in in_order([*groups, GROUP])] == [
        "FAMILY",
        "Larks",
        "SLIPS",
        "OWN_IDEA",
        "INTERVIEW",
        "EXTENSION",
        "ABSENT",
    ]


def test_the_evidence_of_an_idea_is_of_those_who_have_it() -> None:
    """Labels of other pupils' answers, and of other ideas, are left out."""
    found = finding_of(by_pattern("A02", PAGE))
    assert evidence_of(IdeaHeld("A02", ("K01",)), [found]) == set(found.evidence)
    assert evidence_of(IdeaHeld("A02", ("K02",)), [found]) == set()
    assert evidence_of(IdeaHeld("A01", ("K01",)), [found]) == set()
