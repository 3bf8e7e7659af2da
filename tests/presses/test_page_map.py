"""The map of a page is what the printer prints."""

from collections.abc import Iterator

import numpy as np
import pytest
from numpy.typing import NDArray

from onewhole.errors import Fault
from onewhole.presses.page_map import page_map
from onewhole.sheets.page_map import AnswerBox, MappedPage, PageBox
from onewhole.sheets.page_marks import PageMarks, corner_marks, read_corners
from onewhole.sheets.reading import read_sheet
from tests.kit.papers import LINE_UP, mapped, page, printed, seen, texts

#: Pixels a millimetre: a pixel is a tenth.
FINE = 10
#: The middle of a printed line may be so many pixels from where it is said to be.
TENTH = 1.0
#: Its ink is looked for so many pixels up and down; no other line is as near.
NEAR = 5
#: A drawn line is darker than this.
INKED = 200

each = pytest.mark.parametrize("name", texts())


def _across(pixels: NDArray[np.uint8], left: int, right: int, at: int) -> float:
    """Where a line stands that crosses about row ``at``: its middle, in hundredths of a millimetre."""
    rows = np.arange(at // FINE - NEAR, at // FINE + NEAR + 1)
    part = 255.0 - pixels[rows, left // FINE : right // FINE].mean(axis=1)
    return float((part * (rows + 0.5)).sum() / part.sum()) * FINE


def _edges(box: PageBox) -> Iterator[tuple[bool, int, int, int]]:
    """The four edges: across or down, where its middle part begins and ends, where it stands."""
    right, low = box.left + box.width, box.top + box.height
    inset_x, inset_y = box.width // 3, box.height // 3
    for at in (box.top, low):
        yield True, box.left + inset_x, right - inset_x, at
    for at in (box.left, right):
        yield False, box.top + inset_y, low - inset_y, at


def _framed(pixels: NDArray[np.uint8], box: PageBox, who: str) -> None:
    for across, begins, ends, at in _edges(box):
        seen_at = _across(pixels if across else pixels.T, begins, ends, at)
        assert abs(seen_at - at) <= TENTH * FINE, (who, across, at, seen_at)


def _on_its_line(pixels: NDArray[np.uint8], cell: AnswerBox) -> None:
    box = cell.box
    line = box.top + round(box.height * (1 - LINE_UP))
    assert abs(_across(pixels, box.left + 100, box.left + box.width - 100, line) - line) <= TENTH * FINE
    inked = np.flatnonzero(pixels[line // FINE, : (box.left + box.width) // FINE + 30] < INKED)
    inked = inked[inked >= box.left // FINE - 10]
    assert abs(int(inked[0]) * FINE - box.left) <= TENTH * FINE, cell
    assert abs((int(inked[-1]) + 1) * FINE - box.left - box.width) <= TENTH * FINE, cell


@each
def test_every_box_stands_where_the_printer_puts_it(name: str) -> None:
    """Each line, window, hole and box for a letter of three sheets, to a tenth of a millimetre, in pixels."""
    text = texts()[name]
    pages = mapped(text).pages
    drawn = seen(printed(text), FINE)
    assert len(drawn) == len(pages)
    for one, pixels in zip(pages, drawn, strict=True):
        assert abs(pixels.shape[1] * FINE - one.width) <= FINE
        for cell in one.cells:
            if cell.line:
                _on_its_line(pixels, cell)
            for box in cell.windows or (() if cell.line or _is_ring(text, cell) else (cell.box,)):
                _framed(pixels, box, cell.label)
        for letter in one.letters:
            _framed(pixels, letter, "letter")


def _is_ring(text: str, cell: AnswerBox) -> bool:
    """A ring has no straight edges; its four outermost points are looked at with the marks' test."""
    asked = next(problem for problem in read_sheet(text).problems if problem.label == cell.label)
    return " ? " in asked.typed and "=" not in asked.typed and "?" in asked.typed.split()


@each
def test_every_problem_has_one_box_and_none_meets_another(name: str) -> None:
    """In the order of the page; everything lies on the paper, and apart from marks and code."""
    text = texts()[name]
    found = mapped(text)
    labels = [cell.label for one in found.pages for cell in one.cells]
    assert labels == [problem.label for problem in read_sheet(text).problems]
    for one in found.pages:
        boxes = [cell.box for cell in one.cells] + [one.pupil, *one.marks]
        assert all(box.left + box.width < one.width and box.top + box.height < one.height for box in boxes)
        assert not [(a, b) for at, a in enumerate(boxes) for b in boxes[:at] if _meet(a, b)]
        for inner in (*one.letters, *one.pupil_marks):
            assert _inside(inner, one.pupil)
        for cell in one.cells:
            assert all(_inside(window, cell.box) for window in cell.windows)


def _meet(one: PageBox, two: PageBox) -> bool:
    across = one.left < two.left + two.width and two.left < one.left + one.width
    return across and one.top < two.top + two.height and two.top < one.top + one.height


def _inside(one: PageBox, two: PageBox) -> bool:
    across = two.left <= one.left and one.left + one.width <= two.left + two.width
    return across and two.top <= one.top and one.top + one.height <= two.top + two.height


@each
@pytest.mark.parametrize("dots", [100, 150, 200, 300])
def test_a_camera_finds_the_marks(name: str, dots: int) -> None:
    """OpenCV finds the four of each page, in grey and in black and white, as they are meant."""
    aruco = pytest.importorskip("cv2").aruco
    finder = aruco.ArucoDetector(aruco.getPredefinedDictionary(aruco.DICT_5X5_1000))
    text = texts()[name]
    found = mapped(text)
    for one, grey in zip(found.pages, seen(printed(text), dots / 25.4), strict=True):
        says = PageMarks(found.key, one.number)
        for pixels in (grey, np.where(grey < 128, 0, 255).astype(np.uint8)):
            corners, ids, _ = finder.detectMarkers(pixels)
            by_mark = {int(mark): spot[0] for mark, spot in zip(ids.ravel(), corners, strict=True)}
            assert set(by_mark) == set(corner_marks(says))
            assert read_corners(list(by_mark)) == says
            _where_they_stand(one, [by_mark[mark] for mark in corner_marks(says)], dots / 2540)


def _where_they_stand(one: MappedPage, spots: list[NDArray[np.float32]], pixels: float) -> None:
    """Within two pixels: the corners found are whole pixels of ink, the last one and not its end."""
    for box, spot in zip(one.marks, spots, strict=True):
        right, low = box.left + box.width, box.top + box.height
        meant = np.array([(box.left, box.top), (right, box.top), (right, low), (box.left, low)]) * pixels
        assert np.abs(spot - meant).max() <= 2


def test_answers_in_wholes_and_pieces_have_windows_and_others_a_line() -> None:
    """A difference of decimals or feet is over a line, a missing number in its own box; 2 has windows too."""
    cells = {
        cell.label: cell for one in mapped("corner marks: windows\n" + _SORTED).pages for cell in one.cells
    }
    assert [len(cells[label].windows) for label in "123456"] == [3, 0, 0, 0, 0, 3]
    assert [cells[label].line for label in "123456"] == [False, True, True, True, False, False]
    assert [cells[label].unit for label in "123456"] == ["", "", "", "ft", "", ""]


_SORTED = """1. 7 2/6 - 3 5/6
2. 5.2 - 2.7
3. 5 ft 2 in - 2 ft 7 in
4. 9 ft - 2 ft
5. 3/4 = ?/12
6. 4 1/2 - 2 1/2
"""


def test_a_place_is_60_by_24_millimetres_where_there_is_room() -> None:
    """And larger in the same shape in large print, whose readers write larger."""
    boxes = [cell.box for one in mapped("corner marks: lines\n1. 7 2/6 - 3 5/6").pages for cell in one.cells]
    large = mapped("corner marks: lines\ncolumns: 1\nprint: large\n1. 7 2/6 - 3 5/6")
    boxes += [cell.box for one in large.pages for cell in one.cells]
    assert [(box.width, box.height) for box in boxes] == [(6000, 2400), (8000, 3200)]


def test_a_page_to_hang_up_has_no_map() -> None:
    """Without marks nothing on it says where it stands."""
    with pytest.raises(Fault, match="without marks"):
        page_map(page("1. 52 - 27"), 1)
