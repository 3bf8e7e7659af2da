"""The empty board of a film: squared paper, and the colour of ink."""

from functools import cache

import numpy as np

from onewhole.presses.sprites import Pixels
from onewhole.walkthroughs.shape import Shape

PAPER = (255, 253, 246)
#: The squares are decoration; nothing is measured by them.
GRID = (236, 231, 218)
INK = (43, 39, 35)
SQUARE = 40


@cache
def squared_paper(shape: Shape) -> Pixels:
    """Return empty squared paper, RGB, height x width x 3; not to be written on.

    >>> squared_paper(Shape.WIDE).shape, squared_paper(Shape.WIDE).flags.writeable
    ((1080, 1920, 3), False)
    """
    width, height = shape.size
    sheet = np.empty((height, width, 3), dtype=np.uint8)
    sheet[:] = PAPER
    sheet[::SQUARE] = GRID
    sheet[:, ::SQUARE] = GRID
    sheet.flags.writeable = False
    return sheet
