"""What marks in the corners add to a page, and what they leave alone."""

import re
from collections import Counter

import pytest

from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.desk.page.print_pages import sheet_pages, together
from onewhole.presses.pdf import PressError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.pupil_page import pupil_page
from tests.kit import pdf
from tests.kit.pages import made
from tests.kit.papers import LINES, printed

PLAIN = LINES.replace("corner marks: lines\n", "title: Kites\n")
MARKED = "corner marks: lines\n" + PLAIN


def test_nothing_more_is_read_aloud() -> None:
    """A screen reader hears the page as it is, "Answer" where a line came under a box, and one unit."""
    marks, plain = (Counter(pdf.tags(printed(text))) for text in (MARKED, PLAIN))
    more = marks - plain
    answers = [sum(text.count("Answer") for text in pdf.words(printed(text))) for text in (MARKED, PLAIN)]
    words = answers[0] - answers[1] + 1
    assert plain - marks == Counter()
    assert more == Counter({("/Div", ""): words, ("/Span", ""): words})


def test_the_other_pages_have_no_marks() -> None:
    """Key, workings and the page for home are the same, with marks or without."""
    pages = [dict(sheet_pages(WorkedSheet(read_sheet(text)))) for text in (PLAIN, MARKED)]
    for name in ("key", "workings", "family"):
        assert pages[0][name] == pages[1][name]
    assert "marks" not in pages[0]["pupil"].data


def test_the_foot_tells_what_to_do_with_a_mistake() -> None:
    """On every page, with the place for the code."""
    for text in pdf.words(printed(MARKED)):
        assert "A mistake? Cross it out and write beside it." in " ".join(text.split())
        assert "Code" in text


@pytest.mark.parametrize("marks", ["", "corner marks: lines\n"])
def test_a_copy_for_a_pupil_has_the_code_on_every_page(marks: str) -> None:
    """With marks or without; every copy is the same but for the code, and stands where it stood."""
    text = marks + PLAIN
    copies = dict(sheet_pages(WorkedSheet(read_sheet(text)), ["K01", "K02"]))["pupil"]
    pages = pdf.words(made(copies))
    half = len(pages) // 2
    assert half == len(pdf.words(printed(text)))
    for first, second in zip(pages[:half], pages[half:], strict=True):
        assert re.sub(r"\s+", " ", first.replace("K01", "K02")) == re.sub(r"\s+", " ", second)
        assert "K01" in first
        assert "page 1 of" in first or "page 2 of" in first or half > 2


def test_on_both_sides_each_copy_begins_on_a_new_sheet() -> None:
    """The back of a copy that stays empty has neither words nor marks."""
    worked = WorkedSheet(read_sheet("corner marks: lines\n\n1. 52 - 27\n"))
    choice = PrintChoice((PrintPart(SheetPage.PUPIL),), both_sides=True)
    copies = made(together(worked, choice, pupils=["K01", "K02"]))
    assert ["Code" not in text and text.count("K0") for text in pdf.words(copies)] == [1, 0, 1]
    assert [sum(box.page == page for box in pdf.drawings(copies)) > 0 for page in range(3)] == [
        True,
        False,
        True,
    ]


def test_more_pages_than_marks_tell_apart_are_refused() -> None:
    """In words, with what to do."""
    many = "\n".join(f"{at}. {at + 9} 1/12 - 3 5/12" for at in range(1, 61))
    page = pupil_page(WorkedSheet(read_sheet(f"print: large\ncolumns: 1\ncorner marks: lines\n\n{many}")))
    with pytest.raises(
        PressError, match=r"more than 25 pages.*Print fewer problems, or without corner marks"
    ):
        made(page)
