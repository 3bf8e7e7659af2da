"""The words that do a picture's job."""

from fractions import Fraction

import pytest

from onewhole.languages.english.pictured import pictured
from onewhole.languages.english.words import words_for
from onewhole.notations.sentences.text import text_of
from onewhole.number.ladder import decimal, measure, mixed, places
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import ONE, Unit
from onewhole.pictures.bar_description import (
    BarNumber,
    EachPart,
    EqualInBar,
    Lacking,
    SidesAndArea,
    SomeParts,
    TimesAsLong,
)
from onewhole.pictures.caption import Count
from onewhole.pictures.description import (
    Compared,
    CrossedOut,
    CutInto,
    Description,
    Gathered,
    JumpEnds,
    Makes,
    OneJump,
    PartAmount,
    Shown,
    SplitInto,
    StillThere,
    WholeAmount,
)
from onewhole.pictures.scene import Scene

WORDS = words_for("strip of kite paper")
SIXTH, TEN = Unit(Fraction(1, 6)), Unit(Fraction(10))
FOOT, INCH = measure("ft", "in").units


def _told(*described: Description) -> str:
    return text_of(pictured(Scene(Fraction(9), Fraction(9), (), described), WORDS))


def _sixths(wholes: int | None, pieces: int) -> Quantity:
    return Quantity(mixed(6), (wholes, pieces))


TWO_SIXTHS = _sixths(None, 2)
FEET = measure("ft", "in")
STRIPS = Quantity(decimal(1, 1), (5, 2))


@pytest.mark.parametrize(
    ("described", "said"),
    [
        (Shown((Count(7, ONE), Count(2, SIXTH))), "Shown: 7 strips and 2 sixths."),
        (Shown((_sixths(7, 2),)), "Shown: 7 strips and 2 sixths."),
        (Shown((_sixths(7, 2), _sixths(3, 5))), "Shown: 7 strips and 2 sixths, and 3 strips and 5 sixths."),
        (Shown(()), "Shown: nothing."),
        (Shown((whole(52),)), "Shown: 52."),
        (Shown((STRIPS,)), "Shown: 5.2 strips."),
        (Shown((Quantity(FEET, (5, 2)),)), "Shown: 5 feet 2 inches."),
        (CutInto(Count(1, ONE), Count(6, SIXTH)), "One strip is cut into 6 sixths."),
        (CutInto(Count(2, ONE), Count(12, SIXTH)), "2 strips are cut into 12 sixths."),
        (CutInto(Count(1, TEN), Count(10, ONE)), "One ten is cut into 10 ones."),
        (CutInto(Count(1, FOOT), Count(12, INCH)), "One foot is cut into 12 inches."),
        (CrossedOut((Count(3, ONE), Count(1, SIXTH))), "Crossed out: 3 strips and 1 sixth."),
        (Gathered((Count(1, ONE), Count(6, SIXTH))), "Put together: 1 strip and 6 sixths."),
        (Gathered((Quantity(places(2), (4, 12)),)), "Put together: 4 tens and 12 ones."),
        (Makes(Count(10, ONE), Count(1, TEN)), "10 ones make 1 ten."),
        (Makes(_sixths(None, 8), _sixths(1, 2)), "8 sixths make 1 strip and 2 sixths."),
        (StillThere((_sixths(3, 3),)), "Left: 3 strips and 3 sixths."),
        (OneJump(_sixths(None, 5)), "Jump: 5 sixths."),
        (JumpEnds(_sixths(3, 3)), "The jump ends at 3 strips and 3 sixths."),
        (SplitInto(whole(52), (whole(40), whole(10), whole(2))), "52 is split into 40, 10, and 2."),
        (
            SplitInto(_sixths(None, 8), (whole(1), TWO_SIXTHS)),
            "8 sixths are split into 1 strip and 2 sixths.",
        ),
        (
            SplitInto(Quantity(FEET, (1, 5)), (Quantity(FEET, (1, 0)), Quantity(FEET, (0, 5)))),
            "1 foot 5 inches are split into 1 foot 0 inches and 0 feet 5 inches.",
        ),
        (
            SplitInto(STRIPS, (whole(5), Quantity(decimal(1, 1), (0, 2)))),
            "5.2 strips are split into 5 strips and 0.2 of a strip.",
        ),
        (Compared(_sixths(None, 5), _sixths(None, 4)), "5 sixths is more than 4 sixths."),
        (Compared(_sixths(None, 6), whole(1)), "6 sixths is the same as 1 strip."),
        (Compared(Count(1, SIXTH), Count(1, ONE)), "1 sixth is less than 1 strip."),
        (WholeAmount(_sixths(7, 2)), "In all: 7 strips and 2 sixths."),
        (PartAmount(None), "One part: not known yet."),
        (BarNumber(2), "Bar 2."),
        (EqualInBar(4), "4 equal parts."),
        (EqualInBar(None), "Equal parts: not known how many."),
        (EachPart(whole(21)), "Each part: 21."),
        (EachPart(_sixths(2, 1)), "Each part: 2 strips and 1 sixth."),
        (SomeParts(3, None), "3 of these parts: not known yet."),
        (Lacking(_sixths(1, 2)), "The difference: 1 strip and 2 sixths."),
        (TimesAsLong(None), "Times as long as the next bar: not known yet."),
        (TimesAsLong(whole(3)), "Times as long as the next bar: 3."),
        (
            SidesAndArea(_sixths(None, 2), _sixths(None, 3), None),
            "A rectangle. One side: 2 sixths. The other side: 3 sixths. Area: not known yet.",
        ),
    ],
)
def test_sentences(described: Description, said: str) -> None:
    """Each has its short sentence, in the class's words without what the whole is made of."""
    assert _told(described) == said


def test_a_scene_tells_its_sentences_in_order() -> None:
    """Sentence after sentence, and a scene without any is room to draw."""
    shown, struck = Shown((_sixths(6, 8),)), CrossedOut((_sixths(3, 5),))
    assert _told(shown, struck) == "Shown: 6 strips and 8 sixths. Crossed out: 3 strips and 5 sixths."
    assert _told() == "Room to draw."
