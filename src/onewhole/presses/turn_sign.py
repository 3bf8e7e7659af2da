"""The sign of a turn at the foot of the board, and a bar that runs out while the family works."""

from functools import cache
from typing import Final

import numpy as np
from msgspec.structs import replace
from PIL import Image, ImageDraw

from onewhole.presses.board_paper import INK, PAPER
from onewhole.presses.footer import Footer, paper_with_footer
from onewhole.presses.reveal import Area
from onewhole.presses.sprites import Pixels, sprites
from onewhole.walkthroughs.cue import Place, Write
from onewhole.walkthroughs.line_sizes import LIGHTER
from onewhole.walkthroughs.measure import ROW
from onewhole.walkthroughs.rooms import BAR, foot, least_type
from onewhole.walkthroughs.shape import Shape

#: Between the words and their frame, in pixels of a phone; the frame's line is half a bar thick.
_INSIDE: Final = 8


def foot_area(shape: Shape) -> Area:
    """Return the foot of a board, where the sign stands in place of the film's title."""
    room = foot(shape)
    return Area(room.x, room.y, room.x + room.width, room.y + room.height)


def put_sign(board: Pixels, words: str, footer: Footer, shape: Shape, *, left: int, of: int) -> Area:
    """Put the sign on a board, ``left`` of ``of`` equal parts of its bar still there; return what changed.

    >>> board = np.zeros((1920, 1080, 3), dtype=np.uint8)
    >>> area = put_sign(board, "Your turn", Footer("Kites", 1, 3, now=True), Shape.UPRIGHT, left=5, of=10)
    >>> bool(board.any()), area == foot_area(Shape.UPRIGHT)
    (True, True)
    """
    area = foot_area(shape)
    sign = _framed(words, shape)
    image = Image.fromarray(_untitled(footer, shape)[area.top : area.bottom, area.left : area.right])
    image.paste(sign, (0, 0))
    bar = round(shape.units(BAR))
    across = sign.width * left // of
    ImageDraw.Draw(image).rectangle((0, image.height - bar, across - 1, image.height), fill=INK)
    board[area.top : area.bottom, area.left : area.right] = np.asarray(image)
    return area


@cache
def _untitled(footer: Footer, shape: Shape) -> Pixels:
    return paper_with_footer(replace(footer, words=""), shape)


@cache
def _framed(words: str, shape: Shape) -> Image.Image:
    """Draw the words in their frame, without the bar under it."""
    room, inside, bar = foot(shape), round(shape.units(_INSIDE)), round(shape.units(BAR))
    place = Place(inside, 0, room.width, round(least_type(shape) * ROW / LIGHTER))
    (one,) = sprites([Write("turn", words, aside=True, place=place)])
    ink = Image.fromarray(one.pixels)
    letters = ink.getbbox() or (0, 0, 0, 0)
    image = Image.new("RGB", (letters[2] + 2 * inside, room.height - 3 * bar // 2), PAPER)
    image.paste(ink, (inside, (image.height - one.height) // 2), ink)
    ImageDraw.Draw(image).rectangle(
        (0, 0, image.width - 1, image.height - 1), outline=INK, width=max(2, bar // 2)
    )
    return image
