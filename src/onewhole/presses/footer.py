"""The foot of the board: the film's title, and a row of small kites, one a problem."""

import math

import numpy as np
from msgspec import Struct
from PIL import Image, ImageDraw

from onewhole.presses.board_paper import INK, PAPER, squared_paper
from onewhole.presses.sprites import Pixels, sprites
from onewhole.walkthroughs.cue import Place, Write
from onewhole.walkthroughs.line_sizes import LIGHTER
from onewhole.walkthroughs.measure import ROW, width
from onewhole.walkthroughs.rooms import foot, least_type
from onewhole.walkthroughs.shape import Shape

#: The row of kites takes this share of the foot at most, and a kite so many pixels of a phone.
SHARE, KITE = 3, 14


class Footer(Struct, frozen=True):
    """Words at the left; of so many problems this is number ``at``, where ``now`` one is being worked."""

    words: str
    at: int
    of: int
    now: bool


def paper_with_footer(footer: Footer, shape: Shape) -> Pixels:
    """Return the squared paper with this footer on it, RGB; words too long for it are left out.

    >>> made = paper_with_footer(Footer("Kites", 1, 3, now=True), Shape.WIDE)
    >>> bool((made != squared_paper(Shape.WIDE)).any())
    True
    """
    room = foot(shape)
    sheet = Image.fromarray(squared_paper(shape))
    start = _row(sheet, footer, shape)
    size = least_type(shape)
    place = Place(room.x, room.y, start - room.x, math.floor(size * ROW / LIGHTER))
    words = Write("footer", footer.words, aside=True, place=place)
    if width(words, size) <= place.width:
        (one,) = sprites([words])
        ink = Image.fromarray(one.pixels)
        sheet.paste(ink, (one.x, room.y + (room.height - one.height) // 2), ink)
    return np.asarray(sheet)


def _row(sheet: Image.Image, footer: Footer, shape: Shape) -> int:
    """Draw a kite a problem, those that were begun in ink, and return where the row begins."""
    room = foot(shape)
    right = room.x + room.width
    if not footer.of:
        return right
    step = min(math.floor(shape.units(KITE)), room.width * SHARE // 5 // footer.of)
    fine = 4
    row = Image.new("RGBA", (step * footer.of * fine, room.height * fine), (*INK, 0))
    pen = ImageDraw.Draw(row)
    for number in range(footer.of):
        now = footer.now and number == footer.at - 1
        x, y = (number * step + step // 2) * fine, room.height * fine // 2
        half = max(2, step // 2 - 1 if now else step // 3) * fine
        kite = (
            (x, y - half),
            (x + half * 2 // 3, y - half // 4),
            (x, y + half),
            (x - half * 2 // 3, y - half // 4),
        )
        fill = (*INK, 255) if number < footer.at else (*PAPER, 255)
        pen.polygon(kite, fill=fill, outline=(*INK, 255), width=2 * fine)
    small = row.resize((step * footer.of, room.height), Image.Resampling.BOX)
    sheet.paste(small, (right - small.width, room.y), small)
    return right - small.width
