"""A contact sheet: small pictures in rows, each with its words, under headings; one picture to look at."""

from collections.abc import Sequence
from functools import lru_cache
from importlib.resources import files
from io import BytesIO
from typing import Final

from msgspec import Struct
from PIL import Image, ImageDraw, ImageFont

_FONT: Final = str(files("fontpkg_lexend") / "files" / "Lexend[wght].ttf")
#: Pixels: pictures in a row, the room of one with its words, the edge of the sheet, heights of words.
_ACROSS, _WIDE, _HIGH, _EDGE, _LARGE, _SMALL = 4, 264, 168, 24, 20, 15
#: A picture of a cell stands in so much room.
_PICTURE: Final = (240, 96)
_PAPER, _INK, _LINE = 255, 20, 150
#: More pictures nobody looks at on one sheet.
MOST_ON_SHEET = 400


class ContactPart(Struct, frozen=True):
    """A heading and the pictures under it: each a PNG, with two short lines of words."""

    heading: str
    pictures: tuple[tuple[bytes, str, str], ...]


def contact_sheet(title: str, parts: Sequence[ContactPart]) -> bytes:
    """Return a contact sheet as PNG; a picture that cannot be opened is an empty frame.

    Words that are too long for their room are cut. At most 400 pictures are on it.
    """
    left = MOST_ON_SHEET
    rows: list[tuple[str, Sequence[tuple[bytes, str, str]]]] = [(title, ())]
    for part in parts:
        shown = part.pictures[:left]
        left -= len(shown)
        rows.append((part.heading, ()))
        rows += [("", shown[at : at + _ACROSS]) for at in range(0, len(shown), _ACROSS)]
    height = 2 * _EDGE + sum(_HIGH if pictures else 2 * _LARGE for _, pictures in rows)
    sheet = Image.new("L", (2 * _EDGE + _ACROSS * _WIDE, height), _PAPER)
    draw = ImageDraw.Draw(sheet)
    top = _EDGE
    for heading, pictures in rows:
        if heading or not pictures:
            draw.text((_EDGE, top), _fitting(heading, _LARGE, _ACROSS * _WIDE), _INK, _font(_LARGE))
            top += 2 * _LARGE
            continue
        for at, (content, first, second) in enumerate(pictures):
            _one(sheet, (_EDGE + at * _WIDE, top), content, (first, second))
        top += _HIGH
    made = BytesIO()
    sheet.save(made, "png")
    return made.getvalue()


def _one(sheet: Image.Image, place: tuple[int, int], content: bytes, words: tuple[str, str]) -> None:
    """Draw one picture in its frame, with its words above and below."""
    left, top = place
    draw = ImageDraw.Draw(sheet)
    wide, high = _PICTURE
    draw.text(place, _fitting(words[0], _SMALL, wide), _INK, _font(_SMALL))
    top += _SMALL + 7
    try:
        with Image.open(BytesIO(content), formats=("png",)) as picture:
            seen = picture.convert("L")
            seen.thumbnail(_PICTURE)
            sheet.paste(seen, (left, top))
    except (OSError, ValueError, SyntaxError, Image.DecompressionBombError):
        pass
    draw.rectangle((left - 1, top - 1, left + wide, top + high), outline=_LINE)
    draw.text((left, top + high + 3), _fitting(words[1], _SMALL, wide), _INK, _font(_SMALL))


def _fitting(words: str, size: int, wide: int) -> str:
    """Cut words to a width."""
    font = _font(size)
    if font.getlength(words) <= wide:
        return words
    while words and font.getlength(f"{words} …") > wide:
        words = words[:-1]
    return f"{words} …"


@lru_cache(maxsize=4)
def _font(size: int) -> ImageFont.FreeTypeFont:
    return ImageFont.truetype(_FONT, size)
