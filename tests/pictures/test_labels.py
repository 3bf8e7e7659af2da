"""Labels of a number line, measured with the font: each at its place, whole, clear of the others."""

from fractions import Fraction
from importlib.resources import files
from itertools import pairwise

import pytest
from PIL import ImageFont

from onewhole.languages.class_words import ClassWords
from onewhole.notations.pencil import Bar, Letters, lettered
from onewhole.number.quantity import Quantity
from onewhole.pictures.labels import DIGITS, across
from onewhole.pictures.number_line import number_line
from onewhole.pictures.scene import Piece, Scene, Stroke, Wedge, Words
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.reading import read_statement

PROBLEMS = [
    "1000000 - 1",
    "999999 + 1",
    "order 999998, 999999, 1000000",
    "6000 - 2369",
    "4567 + 3789",
    "304 - 128",
    "order 345, 354, 1205",
    "59 s - 30 s",
    "40 min - 30 min",
    "2 h 30 min - 45 min",
    "1 wk - 1 d",
    "3 yd - 1 in",
    "2 yd 1 ft 3 in - 1 yd 2 ft 8 in",
    "3 km 250 m - 1 km 800 m",
    "5 L 200 mL - 2 L 900 mL",
    "2 kg 800 g + 700 g",
    "3 lb 9 oz + 2 lb 10 oz",
    "order 2 ft, 1 ft 8 in, 22 in",
    "12:00 p.m. to 12:00 a.m.",
    "12:59 a.m. to 1:00 a.m.",
    "11:59 p.m. - 23 h 58 min",
    "9:50 a.m. to 2:15 p.m.",
    "9:45 to 11:20",
    "$0.05 + $0.10",
    "$5 - $2.35",
    "$3.25 ? $3.05",
    "75\N{CENT SIGN} + 50\N{CENT SIGN}",
    "order 0.5, 0.45, 0.405",
    "0.45 ? 0.6",
    "12.05 - 3.8",
    "5 5/8 in - 2 7/8 in",
    "1/100 + 1/10",
    "3 1/8 - 1/4",
    "200 in",
]
FONT = ImageFont.truetype(str(files("fontpkg_lexend") / "files" / "Lexend[wght].ttf"), 1000)


def _scenes(typed: str) -> tuple[Scene, ...]:
    working = WorkedProblem(Problem("1", read_statement(typed), typed)).working
    assert working is not None
    return number_line(working).scenes


def _reach(written: Words) -> tuple[float, float]:
    """Return where ink begins and ends, from the font's own widths."""
    parts = lettered(written, ClassWords())
    bars = [(float(part.x), float(part.to_x)) for part in parts if isinstance(part, Bar)]
    texts = [
        (float(part.x) - wide / 2, float(part.x) + wide / 2)
        for part in parts
        if isinstance(part, Letters)
        for wide in [FONT.getlength(part.text) * float(part.size) / 1000]
    ]
    return min(low for low, _ in bars + texts), max(high for _, high in bars + texts)


def _words(scene: Scene) -> dict[str, Words]:
    return {piece.name: piece.shape for piece in scene.pieces if isinstance(piece.shape, Words)}


def _place(scene: Scene, name: str) -> Fraction:
    """Return where the tick, point or jump stands that a label belongs to."""
    kind, _, number = name.partition("/")
    owner = {"whole": f"tick/{number}", "number": f"point/{number}"}[kind]
    (shape,) = (piece.shape for piece in scene.pieces if piece.name == owner)
    assert isinstance(shape, Stroke | Wedge)
    return shape.x


@pytest.mark.parametrize("typed", PROBLEMS)
def test_labels_stand_at_their_places_whole_and_apart(typed: str) -> None:
    """On the first and last scene: on the paper, at the very place, and none in a row touches the next.

    The room that is reckoned for a number is no less than the font takes, and not much more.
    """
    scenes = _scenes(typed)
    for scene in (scenes[0], scenes[-1]):
        rows: dict[Fraction, list[tuple[float, float]]] = {}
        for name, written in _words(scene).items():
            low, high = _reach(written)
            assert 0 <= low < high <= scene.width, name
            assert 0 < written.y < scene.height - DIGITS / 2
            if isinstance(written.caption, Quantity):
                assert high - low <= across(written.caption) <= (high - low) * 1.5 + 3
            rows.setdefault(written.y, []).append((low, high))
            if name.startswith(("whole/", "number/")):
                assert written.x == _place(scene, name)
        for row in rows.values():
            assert all(before[1] + 0.5 < after[0] for before, after in pairwise(sorted(row)))


@pytest.mark.parametrize("typed", ["1 wk - 1 d", "2 yd 1 ft 3 in - 1 yd 2 ft 8 in", "11:20 - 45 min"])
def test_no_line_goes_through_a_number(typed: str) -> None:
    """The line that spans an opened unit stands under all numbers, and its own words under it."""
    scene = _scenes(typed)[-1]
    spans = [p for p in scene.pieces if p.name.startswith("opened/") and p.name.endswith("/span")]
    assert spans
    for span in spans:
        assert isinstance(span.shape, Stroke)
        for name, written in _words(scene).items():
            beside = abs(written.y - span.shape.y)
            assert beside > DIGITS / 2 + 1 or not _over(span, written), name


def _over(span: Piece, written: Words) -> bool:
    assert isinstance(span.shape, Stroke)
    low, high = _reach(written)
    return low < span.shape.to_x and span.shape.x < high
