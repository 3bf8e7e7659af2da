"""Small writing is looked at closely: where a cell is written on, that part of it, and what that is worth."""

import cv2
import numpy as np
import pytest

from onewhole.errors import Fault
from onewhole.marking.paper.ink_reading import SURE
from onewhole.presses.paper.closer import FINE, CloserPart, closer, written
from onewhole.presses.paper.ink import HIGH, WIDE, Grey, read_ink

WHITE = 245


def _typed(text: str, tall: float, left: int = 90, low: int = 60) -> tuple[Grey, Grey]:
    """Return a cell with a number in OpenCV's own plain strokes, digits so high, and its finer picture."""
    finer = np.full((HIGH * FINE, WIDE * FINE), WHITE, np.uint8)
    plain = cv2.FONT_HERSHEY_SIMPLEX
    (_, high), _ = cv2.getTextSize("0", plain, 1, 1)
    place = (left * FINE, low * FINE)
    cv2.putText(finer, text, place, plain, tall * FINE / high, 60, 2, cv2.LINE_AA)
    cell = cv2.resize(finer, (WIDE, HIGH), interpolation=cv2.INTER_AREA)
    return np.asarray(cell, np.uint8), finer


@pytest.mark.parametrize("tall", [12, 16, 20])
def test_what_is_looked_at_holds_all_that_is_written(tall: int) -> None:
    """The part that is shown larger leaves no ink out, is inside the cell, and no larger than twice."""
    cell, _ = _typed("27", tall)
    part = written(cell)
    assert part is not None
    assert 1.1 <= part.zoom <= 2
    rows, columns = np.nonzero(cell < 200)
    assert part.left <= columns.min() < columns.max() < part.left + WIDE / part.zoom
    assert part.top <= rows.min() < rows.max() < part.top + HIGH / part.zoom
    assert part.left >= 0 <= part.top
    assert part.left + WIDE / part.zoom <= WIDE
    assert part.top + HIGH / part.zoom <= HIGH


def test_writing_that_fills_its_place_is_not_looked_at_again() -> None:
    """Large digits, writing from edge to edge, and an empty cell have no closer look."""
    assert written(_typed("4", 60, low=80)[0]) is None
    wide = np.full((HIGH, WIDE), WHITE, np.uint8)
    wide[40:56, 8:12] = wide[40:56, 228:232] = 40
    assert written(wide) is None
    assert written(np.full((HIGH, WIDE), WHITE, np.uint8)) is None


def test_a_printed_line_is_not_writing() -> None:
    """A line across the cell changes nothing of what is looked at."""
    cell, _ = _typed("36", 16)
    lined = cell.copy()
    lined[80:82] = 90
    assert written(lined) == written(cell) is not None


def test_a_second_number_is_always_in_the_picture() -> None:
    """What is written far from the first number, fainter, is in the part that is looked at."""
    cell, _ = _typed("36", 14, left=60)
    cell[40:54, 190:193] = WHITE - 40
    part = written(cell)
    assert part is None or part.left + WIDE / part.zoom >= 193


def test_the_part_is_taken_from_the_finer_picture() -> None:
    """The whole cell is the finer picture made smaller; a part twice as large is that part of it."""
    _, finer = _typed("58", 14)
    whole = closer(finer, CloserPart(0, 0, 1))
    mean = finer.reshape(HIGH, FINE, WIDE, FINE).mean((1, 3))
    assert np.abs(whole - mean).max() <= 2
    part = closer(finer, CloserPart(70, 30, 2))
    assert np.abs(part[2:-2, 2:-2] - finer[62:154, 142:378].astype(float)).max() <= 60
    assert np.abs(part - finer[60:156, 140:380].astype(float)).mean() < 2


def test_small_numbers_are_read_more_surely_when_they_are_looked_at_closely() -> None:
    """Of small plain numbers none is read otherwise than it is written, and the doubt about them falls."""
    texts = [str(number) for number in range(13, 97, 7)]
    cells = [_typed(text, 11) for text in texts]
    once = read_ink([cell for cell, _ in cells])
    twice = read_ink([cell for cell, _ in cells], [finer for _, finer in cells])
    doubt = [[SURE - one.likelihood for one in several] for several in (once, twice)]
    assert sum(doubt[1]) < sum(doubt[0])
    assert [one.text for one in twice if one.likelihood > SURE // 2] == [
        text for text, one in zip(texts, twice, strict=True) if one.likelihood > SURE // 2
    ]


def test_the_kind_of_cell_is_what_the_first_look_says() -> None:
    """Whether a cell is empty or no answer never comes from the closer look, which may leave a part out."""
    for text in ("13", "47", "88"):
        cell, finer = _typed(text, 11)
        (once,), (twice,) = read_ink([cell]), read_ink([cell], [finer])
        assert (once.empty, once.not_an_answer) == (twice.empty, twice.not_an_answer)


def test_a_finer_picture_of_another_shape_is_refused() -> None:
    """A finer picture that is none is a mistake of ours, and is told."""
    cell, finer = _typed("88", 14)
    for wrong in (cell, finer[1:], finer[..., None]):
        with pytest.raises(Fault, match="192 x 480"):
            read_ink([cell], [wrong])
