"""What to do with a group tomorrow."""

import pytest

from onewhole.findings.group_kind import GroupKind
from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.reteaching import MOST
from onewhole.languages.english.reteaching import reteaching as sentences
from onewhole.misconceptions.pattern import Family
from onewhole.notations.sentences.text import text_of
from onewhole.problems.about import About, Units
from onewhole.problems.needs import Operation

KITES = ClassWords("strip", "strips", "regroup")
ALL = ClassWords("ribbon", "ribbons", "open")


PIECES = About(Operation.SUBTRACT, Units.PIECES)


Placed = tuple[GroupKind, tuple[Family, ...]]


def group(place: GroupKind, *families: Family) -> Placed:
    """A group's place and families."""
    return place, families


def reteaching(placed: Placed, words: ClassWords, of: About) -> str:
    """The text for a group."""
    return text_of(sentences(*placed, words, of))


@pytest.mark.parametrize("family", Family)
def test_every_family_has_an_idea_in_the_words_of_the_class(family: Family) -> None:
    """Each family's idea is a few sentences in the class's words, without the name of the family."""
    said = reteaching(group(GroupKind.FAMILY, family), ALL, PIECES)
    assert said.endswith((".", "?"))
    assert not {"{", "}", "strip"} & set(said.split())
    assert family.value not in said


@pytest.mark.parametrize("place", [place for place in GroupKind if place is not GroupKind.FAMILY])
def test_every_other_place_has_an_idea(place: GroupKind) -> None:
    """Pupils who were absent, did all right, slipped or need a talk have their own idea each."""
    assert reteaching(group(place), KITES, PIECES)
    assert (
        len({reteaching(group(one), KITES, PIECES) for one in GroupKind if one is not GroupKind.FAMILY})
        == len(GroupKind) - 1
    )


def test_two_ideas_at_most() -> None:
    """Ten minutes hold two ideas: those of the first two families."""
    families = tuple(Family)[: MOST + 1]
    said = reteaching(group(GroupKind.FAMILY, *families), KITES, PIECES)
    assert said == " ".join(
        reteaching(group(GroupKind.FAMILY, family), KITES, PIECES) for family in families[:MOST]
    )


@pytest.mark.parametrize("units", [Units.PLACES, Units.DECIMALS, Units.MEASURES])
@pytest.mark.parametrize("family", Family)
def test_where_there_are_no_pieces_none_are_spoken_of(family: Family, units: Units) -> None:
    """No idea for whole numbers, decimals or measures cuts a whole or counts pieces."""
    for operation in Operation:
        said = reteaching(group(GroupKind.FAMILY, family), ALL, About(operation, units))
        assert not {"pieces", "piece", "ribbon", "ribbons", "sixths"} & set(said.split()), said


@pytest.mark.parametrize("family", Family)
def test_only_what_is_taken_away_is_spoken_of_as_taken(family: Family) -> None:
    """Adding, comparing, multiplying and looking for a number say nothing of taking away."""
    for operation in set(Operation) - {Operation.SUBTRACT}:
        for units in Units:
            said = reteaching(group(GroupKind.FAMILY, family), ALL, About(operation, units))
            assert "away" not in said.lower().replace("aloud", ""), said
