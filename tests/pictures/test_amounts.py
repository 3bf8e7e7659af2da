"""The amounts that a problem begins with, as strips."""

from fractions import Fraction

import pytest

from onewhole.pictures.amounts import amounts
from onewhole.pictures.scene import Box, Look, Scene, Words
from tests.kit.sheets import worked_sheet


def drawn(asked: str) -> Scene | None:
    """The strips of a problem."""
    (found,) = worked_sheet(f"1. {asked}").problems
    assert found.working is not None
    return amounts(found.working)


@pytest.mark.parametrize(
    ("asked", "wholes", "pieces", "of"),
    [
        ("7 2/6 - 3 5/6", 7, 2, 6),
        ("6 - 2 3/5", 6, 0, 1),
        ("3/4 - 1/4", 0, 3, 4),
        ("5.2 - 2.7", 5, 2, 10),
        ("2 3/4 + 1 2/4", 3, 5, 4),
        ("5 ft 2 in - 2 ft 7 in", 5, 2, 12),
    ],
)
def test_it_is_what_the_problem_begins_with(asked: str, wholes: int, pieces: int, of: int) -> None:
    """Counted on the paper: uncut strips, and pieces of one; nothing is crossed out, hatched or written."""
    scene = drawn(asked)
    assert scene is not None
    assert {piece.look for piece in scene.pieces} <= {Look.PLAIN, Look.DOTTED}
    assert not [piece for piece in scene.pieces if isinstance(piece.shape, Words)]
    widths = [
        piece.shape.width
        for piece in scene.pieces
        if piece.look is Look.PLAIN and isinstance(piece.shape, Box) and piece.shape.height > 1
    ]
    whole = Fraction(84)
    assert (widths.count(whole), widths.count(whole / of) if of > 1 else 0) == (wholes, pieces)


@pytest.mark.parametrize("asked", ["52 - 27", "14 1/6 - 2 5/6", "3 2/100 - 1 5/100"])
def test_what_strips_do_not_suit_is_not_drawn(asked: str) -> None:
    """Too many wholes or parts to be counted by looking."""
    assert drawn(asked) is None
