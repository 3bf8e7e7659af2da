"""The papers in a picture: marks that belong together, and how each page lies.

Copies of one page have the same marks, so which four belong together is told by where they stand. A mark is
small and says roughly where the others of its page must be; the four of one page fit a page that lies flat.
"""

from collections.abc import Iterator, Sequence
from itertools import combinations, islice, product
from typing import Final

import cv2
import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.presses.paper.seen_marks import Points, SeenMark
from onewhole.sheets.page_map import MappedPage, PageBox
from onewhole.sheets.page_marks import CORNERS, DIGITS, MarksError, PageMarks, read_corners
from onewhole.sheets.pupil_marks import PUPIL_MARKS

Matrix = NDArray[np.float64]
"""Three by three: from millimetres on the page to picture elements."""

#: How far a mark may stand from where another says that it should, as a share of the way between them: paper
#: is seen aslant, and a mark is small.
_ABOUT: Final = 0.5
#: How far the corners of all marks may be from those of a flat page, in millimetres, on the whole.
FLAT: Final = 2.5
#: A page is known by so many of its marks.
ENOUGH: Final = 3
#: So many ways to put marks together are tried in a picture, in all: it may be full of them.
MOST_TRIED: Final = 2000
#: So many copies of one mark are looked at, and so many papers are found in a picture.
_MOST_COPIES, MOST_PAPERS = 40, 16


class FoundPaper(Struct, frozen=True, eq=False):
    """A page in a picture. ``off`` is how far it is from lying flat, in millimetres."""

    key: int
    page: MappedPage
    to_picture: Matrix
    marks: tuple[SeenMark, ...]
    off: float


class MarkedPage(Struct, frozen=True):
    """A page that is known, and the four marks that it has."""

    key: int
    page: MappedPage
    numbers: tuple[int, ...]


def found_papers(marks: Sequence[SeenMark], pages: Sequence[MarkedPage]) -> tuple[FoundPaper, ...]:
    """Return the known pages that marks show, each mark used once; those with all four marks first."""
    ways = ((one, some) for one in pages for some in _together(marks, one))
    fits = [fit for one, some in islice(ways, MOST_TRIED) if (fit := _laid(one, some)) is not None]
    fits.sort(key=lambda fit: (-len(fit.marks), fit.off))
    used: set[int] = set()
    found = []
    for fit in fits:
        if used.isdisjoint(map(id, fit.marks)):
            used.update(map(id, fit.marks))
            found.append(fit)
    return tuple(found[:MOST_PAPERS])


def other_pages(marks: Sequence[SeenMark]) -> tuple[PageMarks, ...]:
    """Return what marks say that are of no known page: four that agree, or three without the fourth.

    Three are taken only of the marks of one paper, since nothing checks them: its corners, and the two of a
    pupil's code, which stand between them.
    """
    corners = [[mark for mark in marks if mark.number // DIGITS == at] for at in range(CORNERS)]
    found: list[PageMarks] = []
    used: set[int] = set()
    for four in islice(product(*(some[:_MOST_COPIES] for some in corners)), MOST_TRIED):
        if used.isdisjoint(map(id, four)) and _round(four) and (says := _said(four)) is not None:
            used.update(map(id, four))
            found.append(says)
    if not found and len(marks) <= ENOUGH + PUPIL_MARKS:
        threes = [three for some in combinations(corners, ENOUGH) for three in product(*some)]
        says = _said(max(threes, key=_area)) if threes else None
        found.extend([says] if says else [])
    return tuple(found)


def _area(three: Sequence[SeenMark]) -> float:
    """Return how large the triangle of three marks is: the corners of a page make the largest."""
    (x, y), (other_x, other_y) = (mark.middle - three[0].middle for mark in three[1:])
    return abs(float(x * other_y - y * other_x)) / 2


def _said(marks: Sequence[SeenMark]) -> PageMarks | None:
    try:
        return read_corners([mark.number for mark in marks])
    except MarksError:
        return None


def within(paper: FoundPaper, mark: SeenMark) -> bool:
    """Whether the middle of a mark lies on a page."""
    x, y = on_page(paper.to_picture, mark.middle[None])[0]
    return bool(0 <= x <= paper.page.width / 100 and 0 <= y <= paper.page.height / 100)


def in_picture(matrix: Matrix, points: Points) -> Points:
    """Return where places on the page, in millimetres, are in the picture."""
    found = np.column_stack([points, np.ones(len(points))]) @ matrix.T
    places: Points = found[:, :2] / found[:, 2:]
    return places


def on_page(matrix: Matrix, points: Points) -> Points:
    """Return where places in the picture are on the page, in millimetres."""
    back: Matrix = np.linalg.inv(matrix).astype(np.float64)
    return in_picture(back, points)


def corners_of(box: PageBox) -> Points:
    """Return the corners of a box from its left upper one on, in millimetres."""
    left, top, right, low = box.left, box.top, box.left + box.width, box.top + box.height
    return np.array([(left, top), (right, top), (right, low), (left, low)], dtype=np.float64) / 100


def _together(marks: Sequence[SeenMark], page: MarkedPage) -> Iterator[tuple[tuple[Points, SeenMark], ...]]:
    """Yield every way to put marks together to this page: one a corner, where the others say it must be."""
    boxes = [corners_of(box) for box in page.page.marks]
    corners = [
        [(box, mark) for mark in marks if mark.number == number][:_MOST_COPIES]
        for box, number in zip(boxes, page.numbers, strict=True)
    ]
    agreed = {
        (id(one), id(other)): _agree(*one, *other) and _agree(*other, *one)
        for some, others in combinations(corners, 2)
        for one, other in product(some, others)
    }
    there = [some for some in corners if some]
    for count in range(CORNERS, ENOUGH - 1, -1):
        for chosen in combinations(there, count):
            for some in product(*chosen):
                if all(agreed[id(one), id(other)] for one, other in combinations(some, 2)):
                    yield some


def _agree(box: Points, mark: SeenMark, other_box: Points, other: SeenMark) -> bool:
    """Whether a mark says that the other stands about where it does."""
    sides = np.column_stack([box, np.ones(len(box))])
    move, *_ = np.linalg.lstsq(sides, mark.corners, rcond=None)
    said = np.append(other_box.mean(axis=0), 1) @ move
    way = np.linalg.norm(said - mark.middle)
    return bool(np.linalg.norm(said - other.middle) <= _ABOUT * way)


def _laid(page: MarkedPage, some: Sequence[tuple[Points, SeenMark]]) -> FoundPaper | None:
    """Lay the page under marks; None where it does not fit."""
    mm = np.concatenate([box for box, _ in some])
    seen = np.concatenate([mark.corners for _, mark in some])
    found, _ = cv2.findHomography(mm, seen, 0)
    matrix: Matrix = np.array(found, dtype=np.float64)  # of no size where there is none
    if matrix.shape != (3, 3) or abs(np.linalg.det(matrix)) < 1e-12:
        return None
    back = on_page(matrix, seen)
    off = float(np.sqrt(((back - mm) ** 2).sum(axis=1).mean()))
    if not np.isfinite(off) or off > FLAT:
        return None
    return FoundPaper(page.key, page.page, matrix, tuple(mark for _, mark in some), off)


def _round(four: Sequence[SeenMark]) -> bool:
    """Whether four marks go round as the corners of a page do, seen from above, none of them turned."""
    middles = np.array([mark.middle for mark in four])
    steps = np.roll(middles, -1, axis=0) - middles
    after = np.roll(steps, -1, axis=0)
    turns = steps[:, 0] * after[:, 1] - steps[:, 1] * after[:, 0]
    along = np.array([mark.corners[1] - mark.corners[0] for mark in four])
    same = along @ (middles[1] - middles[0]) > 0
    return bool((turns > 0).all() and same.all())
