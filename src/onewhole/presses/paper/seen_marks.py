"""The marks that a picture shows, each with its number and where its corners are."""

from collections import Counter
from collections.abc import Iterable, Sequence
from functools import cache
from typing import Final

import cv2
import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

Grey = NDArray[np.uint8]
"""Rows of picture elements: 0 is black, 255 is white."""

Points = NDArray[np.float64]
"""Rows of a place across and a place down."""

#: Marks are looked for in a picture of so many picture elements along its longer side: quick, and less noise.
#: Where that does not show enough, all of it is looked at, sharpened, and twice as large where it is small.
QUICK: Final = 2000
SHARP: Final = 2400
#: How far around a place is compared with it to sharpen it, at that size, and how much of that is taken off.
_SOFT, _SHARPER = 3.0, 1.5
#: The smallest and largest part of a picture within which black is told from white, and the step between.
_PLAIN: Final = (5, 45, 20)
_FINE: Final = (9, 69, 15)
#: The least that the four sides of a mark have together, as a share of the picture's longer side.
_LEAST: Final = 0.012
#: The corner of a mark is looked for within this share of its side; half a square of it.
_NEAR: Final = 1 / 14


class SeenMark(Struct, frozen=True, eq=False):
    """A mark: its number in the collection, and where its corners are, from its own left upper one on."""

    number: int
    corners: Points

    @property
    def middle(self) -> Points:
        """Where its middle is."""
        middle: Points = self.corners.mean(axis=0)
        return middle


def marks_of_pages(grey: Grey, pages: Sequence[tuple[int, ...]]) -> tuple[SeenMark, ...]:
    """Return the marks in a picture; each of ``pages`` are the marks of a page that may be in it.

    The picture is looked at more closely where it shows no page that is known, or part of one.
    """
    marks = list(seen_marks(grey))
    there = Counter(mark.number for mark in marks)
    counts = [[there[number] for number in page] for page in pages]
    whole = any(map(any, counts)) and all(len(set(count)) == 1 for count in counts)
    if not whole:
        marks.extend(more for more in seen_marks(grey, finely=True) if not _again(more, marks))
    return tuple(marks)


def seen_marks(grey: Grey, *, finely: bool = False) -> tuple[SeenMark, ...]:
    """Return the marks in a picture; ``finely`` takes longer and also sees small and blurred ones."""
    longest = max(grey.shape)
    scale = max(1.0, min(2.0, SHARP / longest)) if finely else min(1.0, QUICK / longest)
    how = cv2.INTER_AREA if scale < 1 else cv2.INTER_CUBIC
    looked = grey if scale == 1 else cv2.resize(grey, None, fx=scale, fy=scale, interpolation=how)
    if finely:
        soft = cv2.GaussianBlur(looked, (0, 0), _SOFT * max(1.0, max(looked.shape) / SHARP))
        looked = cv2.addWeighted(looked, 1 + _SHARPER, soft, -_SHARPER, 0)
    found, numbers, _ = _finder(_FINE if finely else _PLAIN).detectMarkers(looked)
    if not found:
        return ()
    return tuple(
        SeenMark(int(number), _exactly(grey, (corners[0].astype(np.float64) + 0.5) / scale - 0.5))
        for number, corners in zip(numbers.ravel(), found, strict=True)
    )


def _again(mark: SeenMark, marks: Iterable[SeenMark]) -> bool:
    """Whether a mark was seen before."""
    side = float(np.linalg.norm(mark.corners[0] - mark.corners[1]))
    return any(
        mark.number == other.number and float(np.linalg.norm(mark.middle - other.middle)) < side
        for other in marks
    )


def _exactly(grey: Grey, corners: Points) -> Points:
    """Return corners to a part of a picture element."""
    side = float(np.linalg.norm(corners - np.roll(corners, 1, axis=0), axis=1).min())
    near = max(2, min(12, round(side * _NEAR)))
    high, wide = grey.shape
    at = corners.astype(np.float32).reshape(-1, 1, 2)
    inside = ((corners > near) & (corners < (wide - near - 1, high - near - 1))).all()
    if inside:
        stop = (cv2.TERM_CRITERIA_EPS + cv2.TERM_CRITERIA_MAX_ITER, 20, 0.02)
        cv2.cornerSubPix(grey, at, (near, near), (-1, -1), stop)  # changes them where they stand
    moved = at.reshape(-1, 2).astype(np.float64)
    far = np.linalg.norm(moved - corners, axis=1) > 2 * near
    moved[far] = corners[far]
    return moved


@cache
def _finder(windows: tuple[int, int, int]) -> cv2.aruco.ArucoDetector:
    """Return what looks for marks. Two wrong squares are forgiven: places tell which marks are a page's."""
    how = cv2.aruco.DetectorParameters()
    how.adaptiveThreshWinSizeMin, how.adaptiveThreshWinSizeMax, how.adaptiveThreshWinSizeStep = windows
    how.minMarkerPerimeterRate = _LEAST
    how.errorCorrectionRate = 1.0
    how.perspectiveRemovePixelPerCell = 8
    how.cornerRefinementMethod = cv2.aruco.CORNER_REFINE_NONE
    known = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_5X5_1000)
    return cv2.aruco.ArucoDetector(known, how)
