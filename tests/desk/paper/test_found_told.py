"""What was found in papers is told with the teacher's own names: of pupils, and of other nights."""

from datetime import timedelta
from pathlib import Path

from onewhole.desk.classes.class_records import set_night
from onewhole.desk.paper.found_told import found_told
from onewhole.findings.in_papers import PaperMissing, StrangeCell
from onewhole.findings.in_pictures import NoPage, OtherPage, PageMissing
from onewhole.sheets.page_marks import page_key
from onewhole.sheets.reading import read_sheet
from onewhole.store.classes import name_pupil
from onewhole.store.sheets import change_sheet
from tests.kit.kept import DAY, NOW
from tests.kit.seen_papers import TYPED, paper_class

OTHER = "title: Wind\n\n1. 52 - 27"
MARKED = "corner marks: lines\n"


def test_pages_of_other_nights_are_named(tmp_path: Path) -> None:
    """By the night's name and day; this page as it was before; a stranger's page is not."""
    book = paper_class(tmp_path / "room12.class")
    set_night(book, 1, OTHER, DAY + timedelta(days=1), NOW)
    name_pupil(book, 1, "K02", "Wren")
    change_sheet(book, 1, TYPED.replace("5 4/6", "5 5/6"), NOW)
    keys = [page_key(read_sheet(f"{MARKED}{typed}")) for typed in (OTHER, TYPED.replace("5 4/6", "5 5/6"))]
    found = [OtherPage("a.jpg", key, 1) for key in keys]
    wind, unknown = found_told(book, 1, 1, [found[0], OtherPage("b.jpg", 7, 1)])
    assert wind.startswith("In a.jpg: this was printed from another page: page 1 of “Wind” of 2 September.")
    assert unknown.startswith("In b.jpg: this was printed from another page. ")
    told = found_told(
        book, 1, 1, [PaperMissing("K02"), PageMissing("K02", (2,)), StrangeCell("K09", "1"), NoPage("c")]
    )
    assert told[0].startswith("The paper of K02 Wren is in none of these pictures.")
    assert told[1].startswith("Of K02 Wren page 2 is not there.")
    assert told[2].startswith("An answer of K09 to 1")
    assert told[3].startswith("In c: no page with marks")
    (before,) = found_told(book, 1, 1, [found[1]])
    assert "as it was before it was changed" in before
    book.close()
