"""A scene: named pieces on squared paper, in exact millimetres."""

from enum import Enum
from fractions import Fraction

from msgspec import Struct

from onewhole.pictures.caption import Caption, Groups
from onewhole.pictures.description import Description
from onewhole.statements.gap import type_hole


class Look(Enum):
    """How a piece is drawn; the looks can be distinguished without colour."""

    PLAIN = "plain"  # a pencil line round empty paper
    FILLED = "filled"  # hatched: a part that is there
    DOTTED = "dotted"  # a dotted line: room where nothing is (any more)
    STRUCK = "struck"  # hatched and crossed out: taken away


class Box(Struct, frozen=True):
    """A rectangle: left, top, width and height in millimetres."""

    x: Fraction
    y: Fraction
    width: Fraction
    height: Fraction


class Wedge(Struct, frozen=True):
    """A sector of a disc: its centre and radius in millimetres; start and sweep in turns, from the top on."""

    x: Fraction
    y: Fraction
    radius: Fraction
    start: Fraction
    sweep: Fraction


class Stroke(Struct, frozen=True):
    """A straight pencil line from one point to another, in millimetres."""

    x: Fraction
    y: Fraction
    to_x: Fraction
    to_y: Fraction


class Hop(Struct, frozen=True):
    """A jump over a number line: a parabola from (x, y) to (to_x, y), ``height`` millimetres high.

    It is drawn from x to to_x, with an arrowhead at the end.
    """

    x: Fraction
    y: Fraction
    to_x: Fraction
    height: Fraction


class Words(Struct, frozen=True):
    """Something written, or a blank, centred on a point; ``size`` is the height of digits in millimetres."""

    x: Fraction
    y: Fraction
    caption: Caption | type_hole | Groups
    size: Fraction


Shape = Box | Wedge | Stroke | Hop | Words


class Piece(Struct, frozen=True):
    """A shape with a name that stays the same from scene to scene, so that a change can be followed."""

    name: str
    shape: Shape
    look: Look = Look.PLAIN


class Scene(Struct, frozen=True):
    """Pieces in the order they are drawn, on a sheet of ``width`` by ``height`` millimetres.

    ``descriptions`` say what it shows, in order, for those who cannot see it.
    Raises ValueError when two pieces have one name.
    """

    width: Fraction
    height: Fraction
    pieces: tuple[Piece, ...]
    descriptions: tuple[Description, ...] = ()

    def __post_init__(self) -> None:
        """Refuse two pieces of one name."""
        names = [piece.name for piece in self.pieces]
        if len(set(names)) != len(names):
            msg = "two pieces of a scene have the same name"
            raise ValueError(msg)
