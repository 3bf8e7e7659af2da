"""A ruler for inches and parts of an inch."""

from fractions import Fraction

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.pictured import pictured
from onewhole.notations.sentences.text import text_of
from onewhole.number.quantity import Quantity
from onewhole.pictures.choosing import chosen, picture, refusal
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Hop, Piece, Scene, Stroke, Wedge, Words
from onewhole.pictures.unpictured import NotOnRuler
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.reading import read_statement
from onewhole.working.working import Working


def _working(typed: str) -> Working:
    found = WorkedProblem(Problem("1", read_statement(typed), typed)).working
    assert found is not None
    return found


def _last(typed: str) -> Scene:
    drawn = picture(_working(typed))
    assert drawn is not None
    assert drawn.kind is PictureKind.RULER
    return drawn.scenes[-1]


def _x(pieces: dict[str, Piece], name: str) -> Fraction:
    shape = pieces[name].shape
    assert isinstance(shape, Stroke | Wedge | Words)
    return shape.x


@pytest.mark.parametrize(
    ("typed", "parts"),
    [
        ("5 5/8 in - 2 7/8 in", 8),
        ("3 3/4 in + 2 1/2 in", 4),
        ("1 3/16 in ? 1 1/4 in", 16),
        ("11 1/8 in - 1/2 in", 8),
        ("order 2 3/4 in, 2 5/8 in, 1 7/8 in", 8),
        ("5 in - 2 3/16 in", 16),
    ],
)
def test_every_mark_is_exactly_at_its_place_and_as_long_as_its_part(typed: str, parts: int) -> None:
    """From the numbers at the inches: each part of an inch is where it is, the longer the larger the part."""
    pieces = {piece.name: piece for piece in _last(typed).pieces}
    inches = [int(name.removeprefix("whole/")) for name in pieces if name.startswith("whole/")]
    assert inches == list(range(0, inches[-1] + 1, parts))
    zero, inch = _x(pieces, "whole/0"), _x(pieces, f"whole/{parts}") - _x(pieces, "whole/0")
    lengths: dict[int, set[Fraction]] = {}
    for point in range(inches[-1] + 1):
        shape = pieces[f"part/{point}" if point % parts else f"tick/{point}"].shape
        assert isinstance(shape, Stroke)
        assert shape.x == shape.to_x == zero + inch * Fraction(point, parts)
        lengths.setdefault(Fraction(point, parts).denominator, set()).add(shape.to_y - shape.y)
    assert all(len(same) == 1 for same in lengths.values())
    by_part = [next(iter(lengths[part])) for part in sorted(lengths)]
    assert by_part == sorted(by_part, reverse=True)
    assert len(set(by_part)) == len(by_part) == parts.bit_length()


def test_the_jumps_go_from_mark_to_mark() -> None:
    """5 5/8 in less 2 7/8 in jumps back by 2 inches and by 7 eighths; words name the points."""
    scene = _last("5 5/8 in - 2 7/8 in")
    pieces = {piece.name: piece for piece in scene.pieces}
    hops = [piece.shape for piece in scene.pieces if isinstance(piece.shape, Hop)]
    assert [(hop.x, hop.to_x) for hop in hops] == [
        (_x(pieces, "part/45"), _x(pieces, "part/29")),
        (_x(pieces, "part/29"), _x(pieces, "part/22")),
    ]
    named = [piece.shape for piece in scene.pieces if piece.name.startswith("number/")]
    assert [
        one.caption.counts for one in named if isinstance(one, Words) and isinstance(one.caption, Quantity)
    ] == [
        (2, 6),
        (3, 5),
        (5, 5),
    ]
    assert text_of(pictured(scene, ClassWords())).startswith(
        "A ruler marked in eighths of an inch. Shown: 5 inches and 5 eighths. Jump: 2 inches."
    )


@pytest.mark.parametrize(
    "typed", ["1/2 in + 1/3 in", "13 1/2 in - 1/4 in", "5 5/8 - 2 7/8", "5 ft 2 in - 2 ft 7 in", "12/18 = ?"]
)
def test_what_no_ruler_shows_has_another_picture(typed: str) -> None:
    """Thirds, more than a foot, plain numbers: the refusal says why."""
    working = _working(typed)
    refused = refusal(working, PictureKind.RULER)
    assert refused is not None
    assert refused.reason == NotOnRuler()
    assert chosen(working) not in {None, PictureKind.RULER}
