"""Sprites: what is written on the board, as pictures on a transparent ground."""

from collections.abc import Sequence
from io import BytesIO

import numpy as np
from msgspec import Struct
from msgspec.structs import replace
from numpy.typing import NDArray
from PIL import Image

from onewhole.languages.language import Language
from onewhole.languages.table import SPOKEN
from onewhole.presses.pdf import press_images
from onewhole.walkthroughs.cue import Write
from onewhole.writers.board import BLEED, board

Pixels = NDArray[np.uint8]

#: Board units kept clear round the ink of a sprite.
MARGIN = 2


class Sprite(Struct, frozen=True, eq=False):
    """Ink on the board: left, top, and RGBA pixels (height x width x 4), a pixel for a unit of the board."""

    x: int
    y: int
    pixels: Pixels

    @property
    def width(self) -> int:
        """Return how wide it is."""
        return int(self.pixels.shape[1])

    @property
    def height(self) -> int:
        """Return how high it is."""
        return int(self.pixels.shape[0])


def sprites(writes: Sequence[Write], language: Language = SPOKEN) -> tuple[Sprite, ...]:
    """Return the sprite of each line, cut down to its ink; one run of the page press sets them all.

    Raises Fault for a line without a place.

    >>> from onewhole.walkthroughs.cue import Place
    >>> (kites,) = sprites([Write("a", "Kites", place=Place(100, 50, 300, 80))])
    >>> kites.x >= 98 and kites.y >= 48 and kites.width < 300
    True
    """
    if not writes:
        return ()
    alike: dict[Write, int] = {}
    places = [alike.setdefault(_still(write), len(alike)) for write in writes]
    source, data = board(tuple(alike), language)
    images = [_inked(page) for page in press_images(source, data=data)]
    found = []
    for write, at in zip(writes, places, strict=True):
        assert write.place is not None
        left, top, pixels = images[at]
        found.append(Sprite(write.place.x + left - BLEED, write.place.y + top - BLEED, pixels))
    return tuple(found)


def _still(write: Write) -> Write:
    """Return a line without its name and place, which do not change how it looks."""
    return replace(write, name="", place=write.place and replace(write.place, x=0, y=0))


def _inked(page: bytes) -> tuple[int, int, Pixels]:
    """Cut a page down to its ink: left, top and pixels."""
    image = Image.open(BytesIO(page)).convert("RGBA")
    box = image.getchannel("A").getbbox() or (0, 0, 1, 1)
    left, top = max(box[0] - MARGIN, 0), max(box[1] - MARGIN, 0)
    return left, top, np.asarray(image.crop((left, top, box[2] + MARGIN, box[3] + MARGIN)))
