"""One half is marked where numbers are compared with it, and nowhere else."""

from fractions import Fraction

import pytest

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.pictured import pictured
from onewhole.notations.sentences.text import text_of
from onewhole.pictures.half import half_marked
from onewhole.pictures.number_line import number_line
from onewhole.pictures.scene import Box, Piece, Stroke
from onewhole.pictures.strips import strips
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from onewhole.working.working import Working


def worked(typed: str) -> Working:
    """Work a comparison."""
    return work(read_statement(typed), REGROUP_FIRST)


def marks(pieces: tuple[Piece, ...]) -> dict[str, Fraction]:
    """Where the marks at one half stand, in millimetres from the left."""
    found = {piece.name: piece.shape for piece in pieces if piece.name.startswith("half")}
    return {name: shape.x for name, shape in found.items() if isinstance(shape, Stroke)}


@pytest.mark.parametrize(
    ("typed", "mark"),
    [
        ("3/7 ? 5/8", Fraction(1, 2)),
        ("2 3/7 ? 2 1/2", Fraction(5, 2)),
        ("11/4 ? 2 1/2", Fraction(5, 2)),
        ("4/5 ? 4/7", None),
        ("7 2/6 - 3 5/6", None),
    ],
)
def test_where_the_mark_is(typed: str, mark: Fraction | None) -> None:
    """At one half, or as many wholes further as both have; none where something else decides."""
    assert half_marked(worked(typed)) == mark


@pytest.mark.parametrize(("typed", "slot"), [("3/7 ? 5/8", "whole-1-"), ("1 2/4 ? 1 3/8", "whole-2-")])
def test_the_mark_cuts_each_strip_in_two(typed: str, slot: str) -> None:
    """Both marks stand under each other at the middle of a strip, and only in the last scene."""
    scenes = strips(worked(typed)).scenes
    assert all(not marks(scene.pieces) for scene in scenes[:-1])
    first, second = marks(scenes[-1].pieces).values()
    assert first == second
    named = [piece for piece in scenes[-1].pieces if slot in piece.name or piece.name.startswith("room-0")]
    boxes = [piece.shape for piece in named if isinstance(piece.shape, Box)]
    assert (min(box.x for box in boxes) + max(box.x + box.width for box in boxes)) / 2 == first


def test_the_mark_on_the_number_line_is_in_proportion() -> None:
    """Half way from 0 to 1."""
    scene = number_line(worked("3/7 ? 5/8")).scenes[-1]
    ticks = [piece.shape for piece in scene.pieces if piece.name.startswith("tick/")]
    ends = [tick.x for tick in ticks if isinstance(tick, Stroke)]
    assert marks(scene.pieces) == {"half": sum(ends, Fraction(0)) / 2}


def test_the_mark_is_told() -> None:
    """For whoever cannot see it."""
    scene = strips(worked("3/7 ? 5/8")).scenes[-1]
    assert "Marked: 1/2." in text_of(pictured(scene, ClassWords()))
