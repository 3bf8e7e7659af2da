import pytest

from onewhole.number.ladder import mixed
from onewhole.number.quantity import whole
from onewhole.sentences.node import Counted, Said, Spot, Typed
from onewhole.sentences.sentence import Sentence

SIXTHS = mixed(6).units[1]


def test_numbers_are_known_without_reading_words() -> None:
    """Counts, what is written, and numbers in a typed text, in order."""
    story = Typed("6 in the back row", (Spot(0, 1, whole(6)),))
    said = Sentence("en-US", (Counted(2, SIXTHS), "and", Said(whole(5)), story))
    assert said.numbers() == (Counted(2, SIXTHS), whole(5), whole(6))


def test_a_sentence_says_something() -> None:
    """No nodes, no sentence; and words are checked."""
    with pytest.raises(ValueError, match="says something"):
        Sentence("en-US", ())
    with pytest.raises(ValueError, match="holds a number"):
        Sentence("en-US", ("take 5",))


def test_a_sentence_does_not_pass_for_text() -> None:
    """Text is made by a notation and nowhere else."""
    said = Sentence("en-US", ("nothing is left",))
    with pytest.raises(TypeError, match="notation"):
        str(said)
    with pytest.raises(TypeError, match="notation"):
        f"{said}"
    assert "nothing is left" in repr(said)
