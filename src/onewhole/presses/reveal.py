"""The reveal effect of a film: ink that appears on the board from left to right."""

from fractions import Fraction

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray
from PIL import Image, ImageDraw

from onewhole.presses.board_paper import INK
from onewhole.presses.sprites import Pixels, Sprite

#: The width of the soft edge, in units of the board.
EDGE = 48


class Area(Struct, frozen=True):
    """A part of the board: from left and top up to, and without, right and bottom."""

    left: int
    top: int
    right: int
    bottom: int

    def with_(self, other: "Area") -> "Area":
        """Return the smallest area that holds both.

        >>> Area(0, 0, 2, 2).with_(Area(4, 1, 5, 3))
        Area(left=0, top=0, right=5, bottom=3)
        """
        return Area(
            min(self.left, other.left),
            min(self.top, other.top),
            max(self.right, other.right),
            max(self.bottom, other.bottom),
        )


def strike_line(sprite: Sprite) -> Sprite:
    """Return the line that strikes a sprite out, from its lower left to its upper right and a little beyond.

    >>> line = strike_line(Sprite(100, 50, np.zeros((40, 200, 4), dtype=np.uint8)))
    >>> line.x < 100 and line.x + line.width > 300
    True
    """
    over, thick, fine = 12, 6, 4
    width, height = sprite.width + 2 * over, max(sprite.height, 2 * thick)
    mask = Image.new("L", (width * fine, height * fine))
    ends = ((thick * fine, height * fine * 3 // 4), ((width - thick) * fine, height * fine // 4))
    ImageDraw.Draw(mask).line(ends, fill=255, width=thick * fine)
    pixels = np.empty((height, width, 4), dtype=np.uint8)
    pixels[..., :3] = INK
    pixels[..., 3] = np.asarray(mask.resize((width, height), Image.Resampling.BOX))
    return Sprite(sprite.x - over, sprite.y, pixels)


class Reveal:
    """Ink that appears on the board from left to right with a soft edge.

    The pixels under it are kept from the start, so that every column is blended with the paper once.
    """

    def __init__(self, board: Pixels, sprite: Sprite) -> None:
        height, width = board.shape[:2]
        right, bottom = min(sprite.x + sprite.width, width), min(sprite.y + sprite.height, height)
        self._area = Area(max(sprite.x, 0), max(sprite.y, 0), right, bottom)
        area = self._area
        pixels = sprite.pixels[
            area.top - sprite.y : bottom - sprite.y, area.left - sprite.x : right - sprite.x
        ].astype(np.float32)
        under = board[area.top : bottom, area.left : right].astype(np.float32)
        self._under = under
        self._gain: NDArray[np.float32] = (pixels[..., :3] - under) * (pixels[..., 3:] / np.float32(255))
        self._done = 0

    def to(self, board: Pixels, share: Fraction) -> Area | None:
        """Reveal a share of it, from 0 to 1, and return the part of the board that changed, if any did."""
        area = self._area
        width = area.right - area.left
        front = float(share) * (width + EDGE)
        upto = min(width, int(np.ceil(front)))
        first = self._done
        if upto <= first or area.bottom <= area.top:
            return None
        columns = np.arange(first, upto, dtype=np.float32)
        strength = np.clip((front - columns) / EDGE, 0, 1).astype(np.float32)[None, :, None]
        shown = self._under[:, first:upto] + self._gain[:, first:upto] * strength
        board[area.top : area.bottom, area.left + first : area.left + upto] = (shown + 0.5).astype(np.uint8)
        self._done = max(first, min(width, int(front - EDGE)))
        return Area(area.left + first, area.top, area.left + upto, area.bottom)
