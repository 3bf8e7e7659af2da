"""A page before anybody wrote on it."""

import os

import pytest

from onewhole.presses.blank_pages import SCALE, GreyPixels, blank_pages
from onewhole.sheets.page_map import PageBox
from tests.kit.pages import SORTS
from tests.kit.papers import LINE_UP, mapped, page, texts

#: Ways on paper that press answers closest: narrow columns, large print, pictures beside and over the room.
#: `make walk` looks at all of them.
CLOSE = (
    "fit: 1",
    "picture: strip",
    "fit: 2\npaper: a4",
    "fit: 1\nprint: large",
    "picture: amounts\npaper: a4",
    "picture: number line\ncolumns: 1",
    "columns: 2\nprint: large",
)[: None if os.environ.get("ONEWHOLE_WHOLE_WALK") else 2]


def test_what_the_map_says_is_there_in_pixels() -> None:
    """The marks are black and the white round them white, at four pixels a millimetre."""
    for text in texts().values():
        pages = mapped(text).pages
        blank = blank_pages(page(text))
        assert len(blank) == len(pages)
        for one, pixels in zip(pages, blank, strict=True):
            assert pixels.shape == (-(-one.height * SCALE // 100), -(-one.width * SCALE // 100))
            for box in one.marks:
                left, top, wide, high = (
                    side * SCALE // 100 for side in (box.left, box.top, box.width, box.height)
                )
                assert pixels[top + 1 : top + 3, left + 1 : left + wide - 1].max() < 40
                assert pixels[top + high - 2, left + 1 : left + wide - 1].max() < 40
                ring = pixels[
                    top - SCALE : top + high + SCALE + 1, left - SCALE : left + wide + SCALE + 1
                ].copy()
                ring[SCALE - 1 : -SCALE, SCALE - 1 : -SCALE] = 255
                assert ring.min() > 250, "a square of white all round"


@pytest.mark.parametrize("way", CLOSE)
def test_nothing_else_is_printed_where_an_answer_is_written(way: str) -> None:
    """Over and under its line a place for an answer is white, and so is every window, hole and ring."""
    for marks in ("lines", "windows"):
        text = f"corner marks: {marks}\n{way}\n{SORTS}"
        for one, pixels in zip(mapped(text).pages, blank_pages(page(text)), strict=True):
            for cell in one.cells:
                inner = [_inside(pixels, window)[2:-2, 2:-2] for window in cell.windows]
                if cell.line:
                    whole = _inside(pixels, cell.box)
                    line = round((1 - LINE_UP) * cell.box.height) * SCALE // 100
                    inner = [whole[: line - 3], whole[line + 2 :]]
                elif not cell.windows:
                    whole = _inside(pixels, cell.box)
                    aside = (len(whole) // 5, len(whole.T) // 5)
                    inner = [whole[aside[0] : -aside[0], aside[1] : -aside[1]]]
                assert all(part.size and part.min() > 250 for part in inner), (marks, cell.label)


def _inside(pixels: GreyPixels, box: PageBox) -> GreyPixels:
    """What stands in a box, without its frame."""
    left, top, wide, high = (side * SCALE // 100 for side in (box.left, box.top, box.width, box.height))
    return pixels[top + 2 : top + high - 1, left + 2 : left + wide - 1]
