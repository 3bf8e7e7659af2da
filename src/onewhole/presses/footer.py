"""The footer of the board: the film's title, and a row of small kites, one a problem."""

from dataclasses import dataclass

import numpy as np
from PIL import Image, ImageDraw

from onewhole.presses.board_paper import INK, PAPER, squared_paper
from onewhole.presses.sprites import Pixels, sprites
from onewhole.walkthroughs.cue import Place, Write

#: Where the footer stands: the board's layout leaves it free.
TOP, HEIGHT, LEFT, RIGHT = 1028, 52, 60, 1860
#: The row of kites is not wider than this.
ROW = 640


@dataclass(frozen=True, slots=True)
class Footer:
    """Words at the left; of so many problems this is number ``at``, where ``now`` one is being worked."""

    words: str
    at: int
    of: int
    now: bool


def paper_with_footer(footer: Footer) -> Pixels:
    """Return the squared paper with this footer on it, RGB.

    >>> bool((paper_with_footer(Footer("Kites", 1, 3, now=True)) != squared_paper()).any())
    True
    """
    lines = [Write("footer", footer.words, aside=True, place=Place(LEFT, TOP, 1000, HEIGHT))]
    if footer.now:
        said = f"{footer.at} of {footer.of}"
        lines.append(Write("which", said, aside=True, place=Place(0, TOP, 300, HEIGHT)))
    sheet = Image.fromarray(squared_paper())
    start = _row(sheet, footer)
    first, *others = sprites(lines)
    left = {id(first): first.x} | {id(one): start - one.width - 20 for one in others}
    for one in (first, *others):
        ink = Image.fromarray(one.pixels)
        sheet.paste(ink, (left[id(one)], one.y), ink)
    return np.asarray(sheet)


def _row(sheet: Image.Image, footer: Footer) -> int:
    """Draw a kite a problem, those that were begun in ink, and return where the row begins."""
    if not footer.of:
        return RIGHT
    step = min(30, ROW // footer.of)
    fine = 4
    row = Image.new("RGBA", (step * footer.of * fine, HEIGHT * fine), (*INK, 0))
    pen = ImageDraw.Draw(row)
    for number in range(footer.of):
        now = footer.now and number == footer.at - 1
        x, y = (number * step + step // 2) * fine, HEIGHT * fine // 2
        half = max(2, min(step // 2 - 1, 14 if now else 9)) * fine
        kite = (
            (x, y - half),
            (x + half * 2 // 3, y - half // 4),
            (x, y + half),
            (x - half * 2 // 3, y - half // 4),
        )
        fill = (*INK, 255) if number < footer.at else (*PAPER, 255)
        pen.polygon(kite, fill=fill, outline=(*INK, 255), width=2 * fine)
    small = row.resize((step * footer.of, HEIGHT), Image.Resampling.BOX)
    sheet.paste(small, (RIGHT - small.width, TOP), small)
    return RIGHT - small.width
