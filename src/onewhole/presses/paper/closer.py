"""A closer look at small writing: where a cell is written on, and that part from a finer picture of it."""

from typing import Final

import cv2
import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

Grey = NDArray[np.uint8]

#: The finer picture of a cell has so many times as many rows and columns.
FINE: Final = 2
#: A place is ink where it is so much darker than the paper around, seen a little less sharply.
_DARK: Final = 18
_SMOOTH: Final = 0.8
#: What is level for so many places is a printed line.
_LINE: Final = 61
#: A piece of ink that is smaller than this is a speck: places in all, and its longer side.
_SPECK: Final = 8
_SHORT: Final = 5
#: A piece of a faint line, or of a curved one, is so long and no higher than this.
_LONG: Final = 26
_FLAT: Final = 5
#: A digit is at least so high; and it is brought to that height, but made no larger than so many times.
_LOW: Final = 7
_USUAL: Final = 33
_MOST: Final = 2.0
#: So much is left around what is written, and less than this is no closer look.
_EDGE: Final = 4
_LEAST: Final = 1.1


class CloserPart(Struct, frozen=True):
    """The part of a cell that is written on: its left upper corner, and how many times it can be larger."""

    left: float
    top: float
    zoom: float


def written(crop: Grey) -> CloserPart | None:
    """Return the part of a cell that is looked at closely; None where that shows no more than the cell.

    >>> cell = np.full((96, 240), 250, np.uint8)
    >>> cell[40:54, 100:106] = 30
    >>> written(cell)
    CloserPart(left=43.0, top=23.0, zoom=2.0)
    >>> cell[5:90, 120:124] = 30
    >>> written(cell)
    """
    high, wide = crop.shape
    paper = cv2.GaussianBlur(cv2.dilate(crop, np.ones((9, 9), np.uint8)), (0, 0), 6)
    seen = cv2.GaussianBlur(crop, (0, 0), _SMOOTH)
    ink = (seen.astype(np.int16) < paper.astype(np.int16) - _DARK).astype(np.uint8)
    lines = cv2.morphologyEx(ink, cv2.MORPH_OPEN, np.ones((1, _LINE), np.uint8))
    ink[cv2.dilate(lines, np.ones((3, 1), np.uint8)) > 0] = 0
    count, _, pieces, _ = cv2.connectedComponentsWithStats(ink, connectivity=8)
    pieces = pieces[1:count]
    sides = pieces[:, 2:4]
    speck = (pieces[:, 4] < _SPECK) | (sides.max(axis=1, initial=0) < _SHORT)
    level = (sides[:, 0] >= _LONG) & (sides[:, 1] <= _FLAT)
    pieces = pieces[~speck & ~level]
    if not len(pieces):
        return None
    low, far = pieces[:, :2].min(0), (pieces[:, :2] + pieces[:, 2:4]).max(0)
    tall = pieces[pieces[:, 3] >= _LOW, 3]
    size = float(np.median(tall)) if len(tall) else float(far[1] - low[1])
    across, down = (far - low) + 2 * _EDGE
    zoom = min(_MOST, _USUAL / size, wide / across, high / down)
    if zoom < _LEAST:
        return None
    part = np.array([wide, high]) / zoom
    left, top = np.clip((low + far - part) / 2, 0, np.array([wide, high]) - part)
    return CloserPart(float(left), float(top), float(zoom))


def closer(finer: Grey, part: CloserPart) -> Grey:
    """Return a part of a cell as large as a cell; ``finer`` is the cell with more rows and columns."""
    high, wide = finer.shape[0] // FINE, finer.shape[1] // FINE
    step = FINE / part.zoom
    place = np.array(
        [
            [step / 2, 0, (part.left * FINE) + step / 4 - 0.5],
            [0, step / 2, (part.top * FINE) + step / 4 - 0.5],
        ]
    )
    twice = cv2.warpAffine(
        finer,
        place,
        (2 * wide, 2 * high),
        flags=cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP,
        borderMode=cv2.BORDER_REPLICATE,
    )
    return np.asarray(cv2.resize(twice, (wide, high), interpolation=cv2.INTER_AREA), np.uint8)
