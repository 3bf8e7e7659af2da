"""A page in a picture laid over our own blank page, so that paper that does not lie flat does no harm.

Printed words and lines of the blank page are looked for near where four marks say that they are. What is
found around a place tells how far it is moved there, and how it is turned and stretched.
"""

from typing import Final

import cv2
import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.presses.paper.found_papers import FoundPaper, Matrix, in_picture
from onewhole.presses.paper.seen_marks import Grey, Points
from onewhole.sheets.page_map import PageBox

#: Picture elements a millimetre of a blank page, and of a page that was put right.
SCALE: Final = 4
#: A piece of the blank page that is looked for, and how far apart two are: picture elements at that scale.
_WIDE, _HIGH, _STEP = 52, 40, 40
#: So far around its place it is looked for: 4 millimetres.
_FAR: Final = 16
#: A piece has print in both directions where the weaker one is at least this.
_PRINT: Final = 60.0
#: Print is found where it is as like as this (1 is the same).
LIKE: Final = 0.6
#: Pieces further away than some of these count less for a place, in millimetres.
_AROUND: Final = 30.0
#: So many pieces are needed to tell how a place is turned and stretched, and not only moved.
_ENOUGH: Final = 6
_ROUNDS: Final = 4
#: What is this far from what the others say counts half, in millimetres.
_DOUBT: Final = 0.4


class LaidPage(Struct, frozen=True, eq=False):
    """How a page lies: where pieces of print are (millimetres), how far each is moved, how like each is.

    ``share`` is how many of the pieces were found, ``sharp`` how sharply they are seen.
    """

    to_picture: Matrix
    at: Points
    moved: Points
    like: NDArray[np.float64]
    share: float
    sharp: float

    def around(self, box: PageBox) -> Matrix:
        """Return how a part of the page lies: from millimetres of the page to picture elements."""
        x, y = (box.left + box.width / 2) / 100, (box.top + box.height / 2) / 100
        across, down = max(_AROUND, box.width / 200), max(_AROUND * 0.8, box.height / 200)
        away = ((self.at[:, 0] - x) / across) ** 2 + ((self.at[:, 1] - y) / down) ** 2
        weight = np.exp(-away / 2) * self.like**2
        return self.to_picture @ _moves(self.at - (x, y), self.moved, weight, (x, y))


def laid(grey: Grey, paper: FoundPaper, blank: Grey) -> LaidPage:
    """Lay a page over its blank one."""
    flat = flattened(grey, paper.to_picture, blank.shape)
    light = cv2.GaussianBlur(flat, (0, 0), 0.6)
    at, moved, like = [], [], []
    sharp = []
    high, wide = blank.shape
    looked = 0
    for top, left in _pieces(blank, paper):
        looked += 1
        first_y, first_x = max(0, top - _FAR), max(0, left - _FAR)
        around = light[first_y : min(high, top + _HIGH + _FAR), first_x : min(wide, left + _WIDE + _FAR)]
        piece = blank[top : top + _HIGH, left : left + _WIDE]
        fits = np.asarray(cv2.matchTemplate(around, piece, cv2.TM_CCOEFF_NORMED), dtype=np.float32)
        _, best, _, (x, y) = cv2.minMaxLoc(fits)
        if best < LIKE or not (0 < x < fits.shape[1] - 1 and 0 < y < fits.shape[0] - 1):
            continue
        more_x, more_y = _top_of(fits[y, x - 1 : x + 2]), _top_of(fits[y - 1 : y + 2, x])
        at.append(((left + _WIDE / 2) / SCALE, (top + _HIGH / 2) / SCALE))
        moved.append(((first_x + x + more_x - left) / SCALE, (first_y + y + more_y - top) / SCALE))
        like.append(best)
        seen = flat[first_y + y : first_y + y + _HIGH, first_x + x : first_x + x + _WIDE]
        sharp.append(_sharpness(seen))
    return LaidPage(
        paper.to_picture,
        np.array(at, dtype=np.float64).reshape(-1, 2),
        np.array(moved, dtype=np.float64).reshape(-1, 2),
        np.array(like, dtype=np.float64),
        len(at) / looked if looked else 0.0,
        float(np.median(sharp)) if sharp else 0.0,
    )


def flattened(grey: Grey, to_picture: Matrix, shape: tuple[int, ...], scale: float = SCALE) -> Grey:
    """Return a page put right, from its left upper corner, at so many picture elements a millimetre."""
    high, wide = shape
    return seen_through(grey, to_picture @ np.diag([1 / scale, 1 / scale, 1]), wide, high)


def seen_through(grey: Grey, matrix: Matrix, wide: int, high: int) -> Grey:
    """Return part of a picture: ``matrix`` takes a place in the new one, 0 its left edge, to one in the old.

    There 0 is the middle of the first picture element.

    Where the picture is finer than what is wanted, all of it counts: nothing is left out between two places.
    """
    corners = np.array([(0, 0), (wide, 0), (wide, high), (0, high)], dtype=np.float64)
    seen = in_picture(matrix, corners)
    sides = np.linalg.norm(np.roll(seen, -1, axis=0) - seen, axis=1) / (wide, high, wide, high)
    finer = max(1, min(4, round(float(np.median(sides)))))
    half = np.array([[1 / finer, 0, 0.5 / finer], [0, 1 / finer, 0.5 / finer], [0, 0, 1]])
    found = cv2.warpPerspective(
        grey,
        matrix @ half,
        (wide * finer, high * finer),
        flags=cv2.INTER_LINEAR | cv2.WARP_INVERSE_MAP,
        borderMode=cv2.BORDER_REPLICATE,
    )
    if finer > 1:
        found = cv2.resize(found, (wide, high), interpolation=cv2.INTER_AREA)
    return found.astype(np.uint8)


def _pieces(blank: Grey, paper: FoundPaper) -> list[tuple[int, int]]:
    """Return where pieces of the blank page have print that is not moved along itself."""
    shade = cv2.GaussianBlur(blank, (0, 0), 1.0).astype(np.float32)
    across, down = cv2.Sobel(shade, cv2.CV_32F, 1, 0), cv2.Sobel(shade, cv2.CV_32F, 0, 1)
    box = paper.page.pupil
    for slope in (across, down):
        slope[
            box.top * SCALE // 100 : (box.top + box.height) * SCALE // 100,
            box.left * SCALE // 100 : (box.left + box.width) * SCALE // 100,
        ] = 0
    sums = [
        cv2.boxFilter(one, cv2.CV_32F, (_WIDE, _HIGH), anchor=(0, 0), borderType=cv2.BORDER_CONSTANT)
        for one in (across * across, down * down, across * down)
    ]
    half = (sums[0] + sums[1]) / 2
    weaker = half - np.sqrt(((sums[0] - sums[1]) / 2) ** 2 + sums[2] ** 2)
    high, wide = blank.shape
    return [
        (top, left)
        for top in range(0, high - _HIGH, _STEP)
        for left in range(0, wide - _WIDE, _STEP)
        if weaker[top, left] > _PRINT
    ]


def _top_of(three: NDArray[np.float32]) -> float:
    """Return where a curve through three values has its top, from the middle one."""
    low, middle, high = (float(value) for value in three)
    bend = low - 2 * middle + high
    return 0.0 if bend >= 0 else max(-0.5, min(0.5, (low - high) / (2 * bend)))


def _sharpness(piece: Grey) -> float:
    """Return how quickly print turns to paper, whatever the light."""
    spread = float(piece.std())
    return float(cv2.Laplacian(piece, cv2.CV_32F).std()) / spread if spread > 1 else 0.0


def _moves(at: Points, moved: Points, weight: NDArray[np.float64], middle: tuple[float, float]) -> Matrix:
    """Return how the page is moved, turned and stretched around a place; what does not fit counts less."""
    plan = np.eye(3)
    if not len(at) or weight.sum() < 0.05:
        return plan
    firm = weight.sum() ** 2 / (weight**2).sum() >= _ENOUGH
    columns = np.column_stack([np.ones(len(at)), at]) if firm else np.ones((len(at), 1))
    keep = np.diag([0.0, 20.0, 20.0][: columns.shape[1]]) if firm else np.zeros((1, 1))
    trust = weight
    found = np.zeros((columns.shape[1], 2))
    for _ in range(_ROUNDS):
        weighed = columns * trust[:, None]
        found = np.linalg.solve(weighed.T @ columns + keep + 1e-9 * np.eye(len(keep)), weighed.T @ moved)
        off = np.linalg.norm(moved - columns @ found, axis=1)
        trust = weight / (1 + (off / _DOUBT) ** 2)
    plan[:2, 2] = found[0]
    if firm:
        plan[:2, :2] += found[1:].T
        plan[:2, 2] -= found[1:].T @ middle
    return plan
