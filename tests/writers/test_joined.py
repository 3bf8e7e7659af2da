"""Several pages in one file."""

import io
from collections import Counter

import pikepdf
import pytest

from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.desk.page.print_pages import together
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.printed import Printed
from tests.kit import pdf
from tests.kit.pages import made, night, plain, pressed, sheet

PARTS = (
    PrintPart(SheetPage.FAMILY),
    PrintPart(SheetPage.PUPIL, 2),
    PrintPart(SheetPage.KEY),
    PrintPart(SheetPage.WORKINGS),
)


@pytest.fixture(scope="module")
def room12() -> bytes:
    """All pages of Room 12's night, the pupils' page twice."""
    return made(together(WorkedSheet(sheet("room12")), PrintChoice(PARTS)))


def test_it_holds_each_page_whole_and_in_order(room12: bytes) -> None:
    """Every part is what it is alone, its own page numbers too: "page 1 of 2" in the middle of the file."""
    alone = {
        part.page: pdf.words(pressed(f"room12/{part.page.value}", "letter", "ordinary")) for part in PARTS
    }
    expected = [text for part in PARTS for _ in range(part.copies) for text in alone[part.page]]
    assert [plain(text) for text in pdf.words(room12)] == [plain(text) for text in expected]
    assert "page 2 of 2" in pdf.words(room12)[2]


def test_its_structure_is_that_of_its_pages(room12: bytes) -> None:
    """Tags, spoken formulas, language and title: it calls itself PDF/UA-1 (ISO 14289-1, from memory)."""
    alone = {part: pdf.tags(pressed(f"room12/{part.page.value}", "letter", "ordinary")) for part in PARTS}
    expected = Counter(tag for part in PARTS for tag in alone[part] * part.copies)
    whole = Counter(pdf.tags(room12))
    expected["/Document", ""] = 1
    assert whole == expected
    with pikepdf.open(io.BytesIO(room12)) as found:
        assert found.open_metadata()["pdfuaid:part"] == "1"
        assert (str(found.Root.Lang), str(found.docinfo["/Title"])) == (
            "en-US",
            "Kite tails, night one, to print",
        )
        assert found.Root.ViewerPreferences.DisplayDocTitle
        assert [str(one.title) for one in found.open_outline().root] == [
            *("A page for home", "Kite tails, night one", "Answer key", "Every line, with its reason"),
        ]


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_on_both_sides_each_page_begins_on_a_new_sheet(paper: str) -> None:
    """Nobody's page stands on the back of another's; an empty side is as large as the others."""
    choice = PrintChoice((PrintPart(SheetPage.KEY, 2), PrintPart(SheetPage.FAMILY)), both_sides=True)
    page = made(together(WorkedSheet(sheet("room12", paper)), choice))
    texts = [plain(text).strip() for text in pdf.words(page)]
    assert [bool(text) for text in texts] == [True, False, True, False, True]
    assert "of 1" not in " ".join(texts)
    assert len(set(pdf.sizes(page))) == 1


def test_every_kind_of_page_of_a_file_is_known() -> None:
    """What the look does not know is a fault of ours and no page without words."""
    key = night("room12", "letter", "ordinary")["key"].data
    kite = Printed("joined", {"title": "K", "lang": "en", "paper": "a4", "both_sides": False, "pages": []})
    kite.data["pages"] = [{"kind": "kite", "data": key, "copies": [{}]}]
    with pytest.raises(RuntimeError, match="kite"):
        made(kite)
