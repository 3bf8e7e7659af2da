"""Papers from the printer through a camera into the class's file, with the real machine."""

from io import BytesIO
from pathlib import Path

import cv2
import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from onewhole.desk.paper.checking_papers import papers_to_check
from onewhole.desk.paper.keep_papers import read_papers
from onewhole.desk.paper.press_reading import sees_papers
from onewhole.findings.in_papers import PaperMissing
from onewhole.findings.in_pictures import Nobody, OtherPage
from onewhole.sheets.page_map import AnswerBox
from onewhole.store.answers import answers_of
from tests.kit.kept import NOW
from tests.kit.papers import mapped
from tests.kit.seen_papers import paper_class
from tests.kit.written_papers import paper

TYPED = "title: Kite tails\n\n1. 7 2/6 - 3 5/6\n2. 52 - 27\n3. 9 5/8 - 4 6/8\n4. 5 1/8 - 2 5/8\n"
MARKED = f"corner marks: lines\n{TYPED}"
#: What K01 writes, as text and as it stands; nothing for 4.
WRITES = {"1": "3 3/6", "2": "25", "3": "4 7/8"}
Grey = NDArray[np.uint8]


def _pen(place: Grey, text: str, left: int, low: int, size: float) -> int:
    """Write with a round pen, in strokes; return where it ends."""
    cv2.putText(place, text, (left, low), cv2.FONT_HERSHEY_SIMPLEX, size, 40, 5, cv2.LINE_AA)
    return left + cv2.getTextSize(text, cv2.FONT_HERSHEY_SIMPLEX, size, 5)[0][0]


def _writes(place: Grey, cell: AnswerBox) -> None:
    """Write an answer: the whole, and the fraction over its own line."""
    whole, _, fraction = WRITES.get(cell.label, "").partition(" ")
    high = place.shape[0]
    left = _pen(place, whole, 90, high * 5 // 8, 2.4) + 30
    if fraction:
        top, below = fraction.split("/")
        _pen(place, top, left, high * 3 // 8, 1.9)
        cv2.line(place, (left - 6, high * 15 // 32), (left + 56, high * 15 // 32), 40, 5, cv2.LINE_AA)
        _pen(place, below, left, high * 27 // 32, 1.9)


def _file(grey: Grey) -> bytes:
    made = BytesIO()
    Image.fromarray(grey).save(made, "png")
    return made.getvalue()


def _pages(typed: str, pupil: str) -> list[tuple[str, bytes]]:
    """Return the pages of a pupil's paper, written on."""
    numbers = [page.number for page in mapped(typed).pages]
    return [(f"{pupil}-{at}.png", _file(paper(typed, at, pupil, _writes))) for at in numbers]


def test_what_a_pen_wrote_is_read_and_kept(tmp_path: Path) -> None:
    """Whose page it is, each answer, the empty cell; who is missing; a page of another night is named."""
    book = paper_class(tmp_path / "room12.class", 2, TYPED)
    other = f"corner marks: lines\n{TYPED.replace('52 - 27', '52 - 28')}"
    pictures = [*_pages(MARKED, "K01"), ("other.png", _file(paper(other, 1, "K02")))]
    kept = read_papers(book, 1, 1, pictures, sees_papers(book, 1, 1), now=NOW)
    assert [type(one) for one in kept.found] == [OtherPage, PaperMissing]
    cells = papers_to_check(book, 1, 1).cells
    assert {key: cell.text for key, cell in cells.items()} == {
        ("K01", label): text for label, text in {**WRITES, "4": ""}.items()
    }
    assert kept.empty == 1
    assert {one.problem: one.text for one in answers_of(book, 1) if one.text}.items() <= WRITES.items()
    book.close()


@pytest.mark.more("presses/paper/test_reading_pages.py")
def test_pages_that_were_printed_in_other_ways_are_read_too(tmp_path: Path) -> None:
    """With windows, where the class prints with lines by now; and some one way, some the other."""
    book = paper_class(tmp_path / "room12.class", 2, TYPED)
    windows = f"corner marks: windows\n{TYPED}"
    one, other = (
        (f"{code}.png", _file(paper(typed, 1, code))) for typed, code in ((windows, "K01"), (MARKED, "K02"))
    )
    for pictures, pupils in (([one], {"K01"}), ([one, other], {"K01", "K02"})):
        kept = read_papers(book, 1, 1, pictures, sees_papers(book, 1, 1), now=NOW)
        assert {code for code, _ in papers_to_check(book, 1, 1).cells} == pupils
        assert not any(isinstance(found, OtherPage) for found in kept.found)
    book.close()


def test_a_page_without_a_code_is_nobody_s(tmp_path: Path) -> None:
    """Nor is one of another class: it is told once, and nothing of it is kept for anyone."""
    book = paper_class(tmp_path / "room12.class", 1, TYPED)
    pictures = [(f"{code or 'none'}.png", _file(paper(MARKED, 1, code, _writes))) for code in ("", "K44")]
    kept = read_papers(book, 1, 1, pictures, sees_papers(book, 1, 1), now=NOW)
    assert set(kept.found) == {
        Nobody("none.png", 1, stranger=False),
        Nobody("K44.png", 1, stranger=True),
        PaperMissing("K01"),
    }
    assert len(kept.found) == 3
    assert papers_to_check(book, 1, 1).cells == {}
    book.close()
