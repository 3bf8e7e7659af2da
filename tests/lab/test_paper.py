"""Papers of the laboratory: what hands write is read, from the printer to the answer."""

from importlib.resources import files
from pathlib import Path
from random import Random

import numpy as np
import pytest

from lab.paper.hands import DIGITS, FontHand, Pen, RealHand, can_be_written, parts
from lab.paper.trial import Sheet, papers
from onewhole.marking.paper.verdict import PaperVerdict
from tests.kit.photos import EASY

#: The public set of real digits, where it lies beside the project.
FOLDER = Path(__file__).parents[3] / "shared" / "data" / "handwriting"
FONT = Path(str(files("fontpkg_lexend").joinpath("files", "Lexend[wght].ttf")))
SHEET = Sheet("two", ("7 2/6 - 3 5/6", "5 1/8 - 2 5/8"), "corner marks: lines")


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("7 2/6", ("7", "2", "6")),
        ("11/6", ("", "11", "6")),
        ("27", ("27", "", "")),
        ("-3 1/2", ("-3", "1", "2")),
        ("", ("", "", "")),
    ],
)
def test_an_answer_has_parts(text: str, found: tuple[str, str, str]) -> None:
    """The whole, the number over the line and the one under it."""
    assert parts(text) == found
    assert can_be_written(text)


def test_units_are_not_written() -> None:
    """A hand of the laboratory knows digits only."""
    assert not can_be_written("2 ft 7 in")


def test_a_hand_stays_in_its_place() -> None:
    """Whatever is written, the paper around the place is as it was; in windows each part is in its own."""
    paper = np.full((340, 700), 255, np.uint8)
    place = paper[50:290, 50:650]
    pen = Pen(FontHand(FONT, Random(1)), Random(1), 10)
    pen.write(place, "88 88/88")
    assert place.min() < 100
    paper[50:290, 50:650] = 255
    assert paper.min() == 255
    pen.write(place, "8 8/8", windows=((5, 4, 23, 20), (29, 0.6, 55, 10.8), (29, 13.2, 55, 23.4)))
    dark = place < 128
    for part in (dark[:, :240], dark[:108, 280:], dark[130:, 280:]):
        assert part.any()
    assert not dark[:, 240:280].any()


@pytest.mark.more("presses/paper/test_reading_pages.py")
def test_papers_are_read_from_the_printer_to_the_answer() -> None:
    """Printed, written on, photographed, found, cut and read: every cell is there, none read wrongly."""
    cells = papers(SHEET, lambda chance: FontHand(FONT, chance), EASY, 2, "test")
    assert len(cells) == 4
    assert all(cell.ink is not None for cell in cells)
    judged = [(cell.wrote, cell.judged(60_000)) for cell in cells]
    assert [text for text, read in judged if read.verdict is PaperVerdict.READ and read.text != text] == []
    assert any(read.verdict is PaperVerdict.READ for _, read in judged)


@pytest.mark.skipif(
    not (FOLDER / DIGITS[0]).is_file(), reason="the real digits do not lie beside the project"
)
def test_a_real_hand_writes_each_digit_its_own_way() -> None:
    """Three samples of a digit at most, and always ink."""
    hand = RealHand(FOLDER, Random(2))
    seen = {hand.sign("4").tobytes() for _ in range(40)}
    assert 1 < len(seen) <= 3
