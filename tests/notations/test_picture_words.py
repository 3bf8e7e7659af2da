"""The words that do a picture's job."""

from fractions import Fraction

import pytest

from onewhole.errors import Fault
from onewhole.languages.english.words import ClassWords
from onewhole.notations.picture_words import EMPTY, told
from onewhole.number.ladder import measure, mixed, places
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import MEASURES, ONE, Unit
from onewhole.pictures.scene import Caption, Count, Scene, Tell

WORDS = ClassWords.for_whole("strip of kite paper")
SIXTH, TEN = Unit(Fraction(1, 6)), Unit(Fraction(10))
FOOT, INCH = MEASURES[1], MEASURES[2]


def _told(*tells: Tell) -> str:
    return told(Scene(Fraction(9), Fraction(9), (), tells), WORDS)


def _sixths(wholes: int | None, pieces: int) -> Quantity:
    return Quantity(mixed(6), (wholes, pieces))


TWO_SIXTHS = _sixths(None, 2)


@pytest.mark.parametrize(
    ("key", "amounts", "said"),
    [
        ("shown", (Count(7, ONE), Count(2, SIXTH)), "Shown: 7 strips and 2 sixths."),
        ("shown", (_sixths(7, 2),), "Shown: 7 strips and 2 sixths."),
        ("shown", (_sixths(7, 2), _sixths(3, 5)), "Shown: 7 strips and 2 sixths, and 3 strips and 5 sixths."),
        ("shown", (), "Shown: nothing."),
        ("shown", (whole(52),), "Shown: 52."),
        ("shown", (Quantity(measure("ft", "in"), (5, 2)),), "Shown: 5 feet 2 inches."),
        ("cut", (Count(1, ONE), Count(6, SIXTH)), "One strip is cut into 6 sixths."),
        ("cut", (Count(2, ONE), Count(12, SIXTH)), "2 strips are cut into 12 sixths."),
        ("cut", (Count(1, TEN), Count(10, ONE)), "One ten is cut into 10 ones."),
        ("cut", (Count(1, FOOT), Count(12, INCH)), "One foot is cut into 12 inches."),
        ("struck", (Count(3, ONE), Count(1, SIXTH)), "Crossed out: 3 strips and 1 sixth."),
        ("joined", (Count(1, ONE), Count(6, SIXTH)), "Put together: 1 strip and 6 sixths."),
        ("joined", (Count(10, ONE), Count(1, TEN)), "10 ones make 1 ten."),
        ("joined", (_sixths(None, 8), _sixths(1, 2)), "8 sixths make 1 strip and 2 sixths."),
        ("joined", (Quantity(places(2), (4, 12)),), "Put together: 4 tens and 12 ones."),
        ("left", (_sixths(3, 3),), "Left: 3 strips and 3 sixths."),
        ("jump", (_sixths(None, 5),), "Jump: 5 sixths."),
        ("landed", (_sixths(3, 3),), "The jump ends at 3 strips and 3 sixths."),
        ("split", (whole(52), whole(40), whole(10), whole(2)), "52 is split into 40, 10, and 2."),
        (
            "split",
            (_sixths(None, 8), whole(1), _sixths(None, 2)),
            "8 sixths are split into 1 strip and 2 sixths.",
        ),
        ("compared", (_sixths(None, 5), _sixths(None, 4)), "5 sixths is more than 4 sixths."),
        ("compared", (_sixths(None, 6), whole(1)), "6 sixths is the same as 1 strip."),
        ("compared", (Count(1, SIXTH), Count(1, ONE)), "1 sixth is less than 1 strip."),
    ],
)
def test_sentences(key: str, amounts: tuple[Caption, ...], said: str) -> None:
    """Each key has its short sentence, in the class's words without what the whole is made of."""
    assert _told(Tell(key, amounts)) == said


def test_a_scene_tells_its_sentences_in_order() -> None:
    """Sentence after sentence, and a scene without any is room to draw."""
    shown, struck = Tell("shown", (_sixths(6, 8),)), Tell("struck", (_sixths(3, 5),))
    assert _told(shown, struck) == "Shown: 6 strips and 8 sixths. Crossed out: 3 strips and 5 sixths."
    assert _told() == EMPTY


@pytest.mark.parametrize(
    "tell",
    [Tell("flown", (whole(1),)), Tell("cut", (whole(1),)), Tell("compared", (whole(1),)), Tell("jump")],
)
def test_what_cannot_be_told(tell: Tell) -> None:
    """A key without a sentence, or too few amounts, is a fault and not half a sentence."""
    with pytest.raises(Fault, match="cannot tell"):
        _told(tell)
