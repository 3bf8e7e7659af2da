"""What to do with a group tomorrow."""

import pytest

from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.placement import GroupKind, Placement
from onewhole.misconceptions.pattern import Family
from onewhole.notations.words import ClassWords
from onewhole.writers.reteaching import MOST, reteaching

KITES = ClassWords("strip", "strips", "regroup")
ALL = ClassWords("ribbon", "ribbons", "open")


def group(place: GroupKind, *families: Family) -> Group:
    """A group of one pupil."""
    return Group("Swifts", place, (Placement("K01", place, "because", families),), families)


@pytest.mark.parametrize("family", Family)
def test_every_family_has_an_idea_in_the_words_of_the_class(family: Family) -> None:
    """Each family's idea is a few sentences in the class's words, without the name of the family."""
    said = reteaching(group(GroupKind.FAMILY, family), ALL)
    assert said.endswith((".", "?"))
    assert not {"{", "}", "strip"} & set(said.split())
    assert family.value not in said


@pytest.mark.parametrize("place", [place for place in GroupKind if place is not GroupKind.FAMILY])
def test_every_other_place_has_an_idea(place: GroupKind) -> None:
    """Pupils who were absent, did all right, slipped or need a talk have their own idea each."""
    assert reteaching(group(place), KITES)
    assert (
        len({reteaching(group(one), KITES) for one in GroupKind if one is not GroupKind.FAMILY})
        == len(GroupKind) - 1
    )


def test_two_ideas_at_most() -> None:
    """Ten minutes hold two ideas: those of the first two families."""
    families = tuple(Family)[: MOST + 1]
    said = reteaching(group(GroupKind.FAMILY, *families), KITES)
    assert said == " ".join(reteaching(group(GroupKind.FAMILY, family), KITES) for family in families[:MOST])
