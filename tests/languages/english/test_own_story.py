"""Of whom a class's word problems tell: what is read, and what is refused."""

import pytest

from onewhole.errors import InputError
from onewhole.languages.class_words import OwnStory
from onewhole.languages.english.own_story import read_own_story, verb_after_did


@pytest.mark.parametrize(
    ("typed", "who", "does", "do"),
    [
        ("the trail club walks", "the trail club", "walks", "walk"),
        ("  our   bakery bakes ", "our bakery", "bakes", "bake"),
        ("the team carries", "the team", "carries", "carry"),
        ("the crew washes", "the crew", "washes", "wash"),
        ("the class mixes", "the class", "mixes", "mix"),
        ("the band buzzes", "the band", "buzzes", "buzz"),
        ("the group crosses", "the group", "crosses", "cross"),
        ("the garden club has", "the garden club", "has", "have"),
        ("the bus goes", "the bus", "goes", "go"),
        ("the club ties", "the club", "ties", "tie"),
        ("the club eats", "the club", "eats", "eat"),
    ],
)
def test_read(typed: str, who: str, does: str, do: str) -> None:
    """All words but the last are who, and the last is what they do; "did it" takes the plain verb."""
    own = read_own_story(typed)
    assert own == OwnStory(who, does)
    assert verb_after_did(own) == do
    assert read_own_story(own.typed) == own


@pytest.mark.parametrize(
    "typed", ["", "walks", "the pupils walk", "the class", "Room 12 walks", "the club Walks"]
)
def test_refused(typed: str) -> None:
    """Nobody, nothing done, more than one who does it, and a number are told with an example."""
    with pytest.raises(InputError) as refused:
        read_own_story(typed)
    assert refused.value.remedy is not None
    assert refused.value.remedy.startswith("Write who, and last what they do, as in: the trail club walks.")
