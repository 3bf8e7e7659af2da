"""The amounts that a problem begins with, as strips to be cut and crossed out on paper."""

from msgspec.structs import replace

from onewhole.pictures.choosing import picture, refusal
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Box, Look, Scene, Wedge, Words
from onewhole.working.working import Working

MARGIN = 4


def amounts(working: Working) -> Scene | None:
    """Return the strips that a working begins with, nothing cut and nothing crossed out; None without any.

    There are none where strips do not suit (:func:`~onewhole.pictures.choosing.refusal`).

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> from onewhole.working.work import work
    >>> found = amounts(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST))
    >>> sum(piece.look is Look.PLAIN for piece in found.pieces)
    9
    >>> amounts(work(read_statement("52 - 27"), REGROUP_FIRST)) is None
    True
    """
    if refusal(working, PictureKind.STRIPS) is not None:
        return None
    drawn = picture(working, PictureKind.STRIPS)
    return None if drawn is None else counted(drawn.scenes[0])


def counted(scene: Scene, *, hatched: bool = False) -> Scene:
    """Return a scene without writing and cut off under its last shape; only what is taken is hatched.

    What is there is ``hatched`` too where empty places are drawn as it is: on a hundred grid.
    """
    pieces = tuple(
        replace(piece, look=Look.PLAIN) if piece.look is Look.FILLED and not hatched else piece
        for piece in scene.pieces
        if not isinstance(piece.shape, Words)
    )
    ends = [piece.shape.y + piece.shape.height for piece in pieces if isinstance(piece.shape, Box)]
    ends += [piece.shape.y + piece.shape.radius for piece in pieces if isinstance(piece.shape, Wedge)]
    return replace(scene, pieces=pieces, height=max(ends, default=scene.height) + MARGIN)
