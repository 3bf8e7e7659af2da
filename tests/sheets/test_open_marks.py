"""The thousand marks are those of the library that finds them."""

import pytest

from onewhole.sheets.open_marks import COUNT, SIDE, squares


def test_each_is_the_mark_of_the_library() -> None:
    """Source: OpenCV, `aruco.DICT_5X5_1000`, drawn by the library at a pixel a square."""
    aruco = pytest.importorskip("cv2").aruco
    theirs = aruco.getPredefinedDictionary(aruco.DICT_5X5_1000)
    assert theirs.markerSize == SIDE
    assert len(theirs.bytesList) == COUNT
    for mark in range(COUNT):
        drawn = aruco.generateImageMarker(theirs, mark, SIDE + 2)
        assert squares(mark) == tuple("".join("1" if white else "0" for white in row) for row in drawn)


def test_no_such_mark() -> None:
    """There are a thousand."""
    with pytest.raises(ValueError, match="no mark 1000"):
        squares(COUNT)
