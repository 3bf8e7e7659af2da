"""A number between its neighbors on a number line."""

from fractions import Fraction
from itertools import pairwise

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.pictured import pictured
from onewhole.notations.sentences.text import text_of
from onewhole.pictures.choosing import chosen, picture, refusal
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Words
from onewhole.statements.reading import read_statement
from onewhole.statements.rounding import Rounding
from onewhole.working.rounding import work_rounding
from onewhole.working.working import Working

#: A problem, into how many parts its stretch is marked, and what the last scene tells.
DRAWN = [
    ("4,567 to hundreds", 10, "4,567 lies between 4,500 and 4,600. Halfway: 4,550. Nearer: 4,600."),
    ("450 to hundreds", 10, "450 lies between 400 and 500. Halfway: 450. Nearer: 500."),
    ("2 5/8 to wholes", 8, None),
    ("5 ft 8 in to feet", 12, None),
    ("2 h 40 min to hours", 12, None),
    ("400 to hundreds", 10, "Shown: 400. Nearer: 400."),
]


def _worked(typed: str) -> Working:
    asked = read_statement(f"round {typed}")
    assert isinstance(asked, Rounding)
    return work_rounding(asked)


@pytest.mark.parametrize(("typed", "parts", "told"), DRAWN)
def test_the_stretch_is_marked_in_the_next_smaller_unit(typed: str, parts: int, told: str | None) -> None:
    """Tens between hundreds, eighths between wholes, inches between feet; of 60 minutes every fifth."""
    drawn = picture(_worked(typed))
    assert drawn is not None
    last = drawn.scenes[-1]
    assert sum(piece.name.startswith("tick/") for piece in last.pieces) == parts + 1
    if told:
        assert text_of(pictured(last, ClassWords())) == told


def test_a_line_is_the_only_picture() -> None:
    """Nothing else shows which neighbor is nearer."""
    working = _worked("4,567 to hundreds")
    assert chosen(working) is PictureKind.LINE
    assert all(refusal(working, kind) for kind in PictureKind if kind is not PictureKind.LINE)


def test_numbers_do_not_run_into_one_another() -> None:
    """The longest numbers of the grade: the three under the line are as far apart as they are wide."""
    drawn = picture(_worked("999,999 to hundred thousands"))
    assert drawn is not None
    under = sorted(
        piece.shape.x
        for piece in drawn.scenes[-1].pieces
        if isinstance(piece.shape, Words) and piece.name != "number"
    )
    assert min(b - a for a, b in pairwise(under)) > Fraction(30)
