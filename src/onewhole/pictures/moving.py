"""Pieces put elsewhere, and scenes given one size, so that one can stand where the other stood."""

from fractions import Fraction
from typing import assert_never

from msgspec.structs import replace

from onewhole.pictures.scene import Box, Hop, Piece, Scene, Shape, Stroke, Wedge, Words


def moved(piece: Piece, right: Fraction, down: Fraction, before: str = "") -> Piece:
    """Return a piece so many millimetres further to the right and down, with something before its name.

    >>> moved(Piece("a", Box(*map(Fraction, (1, 2, 3, 4)))), Fraction(5), Fraction(0)).shape.x
    Fraction(6, 1)
    """
    return Piece(f"{before}{piece.name}", _moved(piece.shape, right, down), piece.look)


def sized(scene: Scene, width: Fraction, height: Fraction) -> Scene:
    """Return a scene in the middle of a larger sheet.

    >>> sized(Scene(Fraction(9), Fraction(5), ()), Fraction(20), Fraction(10)).width
    Fraction(20, 1)
    """
    right, down = (width - scene.width) / 2, (height - scene.height) / 2
    pieces = tuple(moved(piece, right, down) for piece in scene.pieces)
    return replace(scene, width=width, height=height, pieces=pieces)


def scaled(scene: Scene, share: Fraction) -> Scene:
    """Return a scene drawn so many times as large, with all that is written on it.

    >>> scaled(Scene(Fraction(9), Fraction(6), ()), Fraction(1, 3)).height
    Fraction(2, 1)
    """
    pieces = tuple(replace(piece, shape=_scaled(piece.shape, share)) for piece in scene.pieces)
    return replace(scene, width=scene.width * share, height=scene.height * share, pieces=pieces)


def _scaled(shape: Shape, share: Fraction) -> Shape:
    match shape:
        case Box(x, y, width, height):
            return Box(x * share, y * share, width * share, height * share)
        case Wedge(x, y, radius):
            return replace(shape, x=x * share, y=y * share, radius=radius * share)
        case Words(x, y, _, size):
            return replace(shape, x=x * share, y=y * share, size=size * share)
        case Stroke(x, y, to_x, to_y):
            return Stroke(x * share, y * share, to_x * share, to_y * share)
        case Hop(x, y, to_x, height):
            return Hop(x * share, y * share, to_x * share, height * share)
        case _:
            assert_never(shape)


def _moved(shape: Shape, right: Fraction, down: Fraction) -> Shape:
    match shape:
        case Box(x, y) | Wedge(x, y) | Words(x, y):
            return replace(shape, x=x + right, y=y + down)
        case Stroke(x, y, to_x, to_y):
            return Stroke(x + right, y + down, to_x + right, to_y + down)
        case Hop(x, y, to_x):
            return replace(shape, x=x + right, y=y + down, to_x=to_x + right)
        case _:
            assert_never(shape)
