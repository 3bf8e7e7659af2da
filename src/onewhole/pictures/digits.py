"""How small the digits of a scene are, beside the scene itself: on a board they must be read from a phone."""

from fractions import Fraction

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.pictures.labels import PART
from onewhole.pictures.limits import PicturePaper
from onewhole.pictures.scene import Scene, Words


def least_digit(scene: Scene) -> Fraction | None:
    """Return the height of the smallest digit of a scene, in millimetres; None for a scene without words.

    >>> from onewhole.number.quantity import whole
    >>> from onewhole.pictures.scene import Piece
    >>> written = Piece("count", Words(Fraction(9), Fraction(9), whole(6), Fraction(4)))
    >>> least_digit(Scene(Fraction(20), Fraction(20), (written,)))
    Fraction(4, 1)
    """
    return min(
        (_digit(piece.shape) for piece in scene.pieces if isinstance(piece.shape, Words)), default=None
    )


def _digit(words: Words) -> Fraction:
    """Return how high the smallest digit is: those of a fraction are smaller than a whole's."""
    written = words.caption
    stacked = (
        isinstance(written, Quantity)
        and written.ladder.style is Style.MIXED
        and written.counts[1] is not None
    )
    return words.size * PART if stacked else words.size


def can_be_read(scenes: tuple[Scene, ...], paper: PicturePaper) -> bool:
    """Say whether the digits of a picture are large enough beside it, where its paper asks for that."""
    return all(
        (least_digit(scene) or scene.width) >= paper.least * max(scene.width, scene.height)
        for scene in scenes
    )
