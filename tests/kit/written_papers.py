"""Papers for tests of reading: printed pages with something written on them, and what they are read by."""

from collections.abc import Callable
from functools import cache

import cv2
import numpy as np
from numpy.typing import NDArray

from onewhole.presses.blank_pages import blank_pages
from onewhole.presses.paper.reading_pages import KnownPaper
from onewhole.sheets.page_map import AnswerBox, MappedPage
from onewhole.writers.marked import of_pupil
from onewhole.writers.printed import Printed
from tests.kit.pages import made
from tests.kit.papers import mapped, page, seen

Grey = NDArray[np.uint8]
#: Picture elements a millimetre of the papers that are photographed.
FINE = 8
#: Puts something into the place of an answer: the picture of that place is changed.
Write = Callable[[Grey, AnswerBox], None]


def known(text: str) -> KnownPaper:
    """What a sheet's papers are read by."""
    return KnownPaper(mapped(text), lambda: _blank(text))


def paper(text: str, number: int = 1, pupil: str = "", write: Write | None = None) -> Grey:
    """Return a page of a sheet, printed for a pupil or for none, with something in every answer's place."""
    found = _drawn(text, pupil)[number - 1].copy()
    one = mapped(text).pages[number - 1]
    for cell in one.cells if write else ():
        box = cell.box
        place = found[
            box.top * FINE // 100 : (box.top + box.height) * FINE // 100,
            box.left * FINE // 100 : (box.left + box.width) * FINE // 100,
        ]
        assert write is not None
        write(place, cell)
    return found


def dotted(place: Grey, cell: AnswerBox) -> None:
    """Put a dot into the middle of a place, so that how it was cut out can be measured."""
    assert cell.label
    high, wide = place.shape
    cv2.circle(place, (wide // 2, high // 2), FINE * 3 // 2, 0, -1, cv2.LINE_AA)


def without_marks(grey: Grey, one: MappedPage, *hidden: int) -> Grey:
    """Return a page with a thumb on some of its marks."""
    found = grey.copy()
    for at in hidden:
        box = one.marks[at]
        middle = ((box.left + box.width // 2) * FINE // 100, (box.top + box.height // 2) * FINE // 100)
        cv2.circle(found, middle, FINE * 9, 150, -1)
    return found


@cache
def _blank(text: str) -> tuple[Grey, ...]:
    return blank_pages(page(text))


@cache
def _drawn(text: str, pupil: str) -> list[Grey]:
    plain = page(text)
    data = plain.data | ({"pupil": of_pupil(pupil)} if pupil else {})
    return seen(made(Printed(plain.kind, data)), FINE)
