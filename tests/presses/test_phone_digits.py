"""Digits of a film on a phone: measured on its pixels, no type is smaller than 16 pixels, in both shapes.

A phone of 390 by 844 pixels, held upright for the upright film and sideways for the wide one. A digit of type
of 16 pixels is 0.7 of that high in Lexend, and 16 is the size at which browsers set ordinary text: common
practice, no source.
"""

from functools import cache

import pytest

from onewhole.desk.walkthrough.film import FilmWishes, told
from onewhole.pictures.picture import PictureKind
from onewhole.presses.sprites import sprites
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.cue import Draw, Write
from onewhole.walkthroughs.on_board import on_board
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import Timeline
from tests.kit.how_much import sample
from tests.kit.phone_digits import line_digit, picture_digit

#: A problem for every ladder and picture: strategy, problem, picture where another than the one that suits.
ASKED = (
    ("regroup first", "12 7/12 - 5 11/12", None),
    ("columns", "1000000 - 345678", None),
    ("count up", "7 2/6 - 3 5/6", None),
    ("regroup first", "5 ft 2 in - 2 ft 7 in", None),
    ("regroup first", "round 345,678 to the nearest thousand", None),
    ("regroup first", "45678 ? 45768", None),
    ("regroup first", "9:45 a.m. + 1 h 30 min", None),
    ("regroup first", "4 1/8 in - 1 3/8 in", None),
    ("regroup first", "347 x 6", None),
    ("regroup first", "0.45 + 0.3", None),
    ("regroup first", "52 - 27", PictureKind.BLOCKS),
    ("columns", "12.05 - 3.8", None),
    ("regroup first", "3/4 + 2/3", None),
    ("regroup first", "23 x 14", None),
    ("regroup first", "order 3/8, 1/2, 1/4", None),
    ("regroup first", "? + 2 3/8 = 5 1/8", None),
    ("count up", "99 99/100 - 45 37/100", None),
    ("columns", "999999 + 987654 + 876543", None),
    ("regroup first", "7 2/6 - 3 5/6", PictureKind.SPLIT),
    ("regroup first", "7 2/6 - 3 5/6", PictureKind.DISCS),
    ("regroup first", "$5.20 - $2.75", None),
    ("regroup first", "2 kg 300 g - 850 g", None),
    ("regroup first", "304 - 128", PictureKind.BLOCKS),
    ("regroup first", "4 x 1 2/3", None),
)


@cache
def film(strategy: str, asked: str, kind: PictureKind | None) -> Timeline:
    """A film of one problem."""
    sheet = read_sheet(f"title: Kites 12\nstrategy: {strategy}\n\n1. {asked}\n")
    return told(WorkedSheet(sheet), FilmWishes(kind=kind, mistake=True))[1]


def least(shape: Shape) -> float:
    """The least height of a digit, in pixels of the film; a pixel is lost where ink begins."""
    return float(shape.units(16)) * 0.7 - 1


@pytest.mark.parametrize("shape", Shape)
def test_every_line_can_be_read_on_a_phone(shape: Shape) -> None:
    """Lines, asides, labels and fractions of every ladder."""
    writes = {
        move.act
        for asked in ASKED[: sample(10, None)]
        for chapter in on_board(film(*asked), shape).chapters
        for timed in chapter.cues
        for move in timed.moves
        if isinstance(move.act, Write) and not isinstance(move.act.content, str)
    }
    found = sorted(writes, key=str)
    for write, sprite in zip(found, sprites(found), strict=True):
        assert line_digit(write, sprite) >= least(shape), write


@pytest.mark.parametrize("shape", Shape)
@pytest.mark.parametrize("asked", ASKED[: sample(12, None)], ids=lambda asked: " ".join(map(str, asked)))
def test_every_picture_can_be_read_on_a_phone(
    asked: tuple[str, str, PictureKind | None], shape: Shape
) -> None:
    """The smallest digit of the last picture of a problem."""
    timeline = on_board(film(*asked), shape)
    drawn = [
        move.act
        for chapter in timeline.chapters
        for timed in chapter.cues
        for move in timed.moves
        if isinstance(move.act, Draw)
    ]
    assert drawn, "every problem here has a picture"
    words = read_sheet("1. 1 + 1").header.words
    assert drawn[-1].place is not None
    digit = picture_digit(drawn[-1].scene, drawn[-1].place, words)
    assert digit is None or digit >= least(shape)
