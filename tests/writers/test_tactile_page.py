"""The amounts of a problem as raised lines with braille."""

from collections.abc import Iterator
from itertools import groupby, pairwise
from xml.etree.ElementTree import Element

import pytest
from defusedxml.ElementTree import fromstring

from onewhole.writers.tactile_page import SIDE, tactile_pages
from tests.kit.braille_reading import BLANK, line_read
from tests.kit.sheets import worked_sheet

SVG = "{http://www.w3.org/2000/svg}"
SHEET = "title: Kites\n{}\n1. 7 2/6 - 3 5/6\n2. 304 - 128\n3a. 9 4/12 - 6 7/12\n4. 1/2 + 1/3\n"


def _pages(setting: str = "whole: strip") -> list[Element]:
    return [fromstring(one.svg) for one in tactile_pages(worked_sheet(SHEET.format(f"{setting}\n")))]


def _lines(page: Element) -> Iterator[str]:
    """Every line of braille, put together from its dots: 2.5 mm apart, cells 6 mm, lines 10 mm."""
    dots = sorted((float(one.get("cy", "")), float(one.get("cx", ""))) for one in page.iter(f"{SVG}circle"))
    rows = [next(iter(group)) for _, group in groupby(dots, key=lambda dot: dot[0])]
    tops: list[float] = []
    for y, _ in rows:
        if not tops or y - tops[-1] > 5:
            tops.append(y)
    for top in tops:
        cells: dict[int, int] = {}
        for y, x in dots:
            if 0 <= y - top <= 5:
                at, across = divmod(x - float(SIDE), 6)
                cells[int(at)] = cells.get(int(at), 0) | 1 << round((y - top) / 2.5) + 3 * round(across / 2.5)
        yield "".join(chr(0x2800 + cells.get(at, 0)) for at in range(max(cells) + 1))


def _read(page: Element) -> str:
    return line_read(BLANK.join(_lines(page)))


def test_a_problem_whose_amounts_are_strips_has_a_page() -> None:
    """Whole numbers in columns have none."""
    assert [one.label for one in tactile_pages(worked_sheet(SHEET.format("")))] == ["1", "3a", "4"]


def test_the_words_on_it_are_braille_that_reads_back() -> None:
    """The problem above the picture, what it shows below, in dots as far apart as braille is."""
    first, second, _ = _pages()
    assert _read(first) == "1. 7 2/6 - 3 5/6 Shown: 7 strips and 2 sixths."
    assert _read(second) == "3a. 9 4/12 - 6 7/12 Shown: 9 strips and 4 twelfths."
    assert _read(_pages("languages: es\nwhole: tira")[0]) == "1. 7 2/6 - 3 5/6 Se ven 7 tiras y 2 sextos."


@pytest.mark.parametrize(("paper", "wide", "high"), [("letter", 215.9, 279.4), ("a4", 210.0, 297.0)])
def test_strips_are_as_many_and_as_long_as_the_amounts(paper: str, wide: float, high: float) -> None:
    """In true proportion, on the paper, no two strips nearer than a finger can tell (3 mm)."""
    page = _pages(f"whole: strip\npaper: {paper}")[0]
    boxes = [
        [float(one.get(side, "")) for side in ("x", "y", "width", "height")]
        for one in page.iter(f"{SVG}rect")
    ]
    wholes = [box for box in boxes if box[2] == max(one[2] for one in boxes)]
    pieces = [box for box in boxes if box not in wholes]
    assert (len(wholes), len(pieces)) == (7, 2)
    assert all(piece[2] * 6 == pytest.approx(wholes[0][2], abs=0.01) for piece in pieces)
    assert all(x > 5 and x + width < wide - 5 and y + height < high - 5 for x, y, width, height in boxes)
    rows = sorted({box[1] for box in boxes})
    assert all(below - above - wholes[0][3] >= 3 for above, below in pairwise(rows))
    left, right = sorted({box[0] for box in wholes})
    assert right - left - wholes[0][2] - 1 >= 3 - 0.1


def test_nothing_is_said_by_a_color_or_a_fill() -> None:
    """Black lines without a fill; a dot is the only thing that is filled; no letters of print."""
    for page in _pages():
        assert {one.get("fill") for one in page.iter() if one.tag != f"{SVG}circle"} <= {"none", None}
        assert {one.get("stroke") for one in page.iter()} <= {"#000", None}
        assert not list(page.iter(f"{SVG}text"))
        assert page.get("aria-label")
