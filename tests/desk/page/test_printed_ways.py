"""A printed page is known again by the key of its marks."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from msgspec.structs import replace

from onewhole.desk.classes.class_records import Store, open_book, start_room
from onewhole.desk.page.class_prints import USUAL, printed_night, set_prints
from onewhole.desk.page.kept_pages import set_page
from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.desk.page.printed_ways import (
    blank_printed,
    class_ways,
    map_printed,
    night_printed,
    printed_ways,
)
from onewhole.sheets.header import CornerMarks
from onewhole.sheets.page_marks import page_key, read_corners
from onewhole.sheets.pupil_marks import pupil_marked
from onewhole.sheets.reading import read_sheet
from tests.kit.papers import seen

NOW = datetime(2026, 11, 24, 16, tzinfo=UTC)
KITES = "title: Kites\n\n1. 5 3/8 - 2 5/8\n2. 5 - 2\n"
TAILS = "title: Tails\ncorner marks: windows\n\n1. 7 2/6 - 3 5/6\n"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two pupils with two nights."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    for at, typed in enumerate((KITES, TAILS)):
        set_page(made, 1, None, typed, day=date(2026, 11, 24) + timedelta(at), now=NOW)
    yield made
    made.close()


def test_a_night_that_is_printed_is_known_by_its_marks(book: Store) -> None:
    """Printed as its class prints, found by OpenCV: whose copy it is, which page, which night."""
    aruco = pytest.importorskip("cv2").aruco
    choice = PrintChoice(
        (PrintPart(SheetPage.PUPIL), PrintPart(SheetPage.KEY)), fit="1", marks="lines", each_pupil=True
    )
    set_prints(book, 1, choice)
    pages = seen(printed_night(book, 1, 1, NOW).content, 6)
    finder = aruco.ArucoDetector(aruco.getPredefinedDictionary(aruco.DICT_5X5_1000))
    owners = []
    for pixels in pages[:2]:
        spots, marks, _ = finder.detectMarkers(pixels)
        middles = {
            int(mark): spot[0].mean(axis=0) / 6 * 100 for mark, spot in zip(marks.ravel(), spots, strict=True)
        }
        foot = [mark for mark, (x, _) in middles.items() if 2000 < x < 19000]
        says = read_corners([mark for mark in middles if mark not in foot])
        found = night_printed(book, 1, says.key)
        assert found is not None
        night, way = found
        assert (night.night.number, way.sheet.header.fit, way.sheet.header.marks) == (1, 1, CornerMarks.LINES)
        stands = map_printed(way).pages[says.page - 1]
        assert [cell.label for cell in stands.cells] == ["1", "2"]
        for box in stands.pupil_marks:
            middle = (box.left + box.width / 2, box.top + box.height / 2)
            assert any(abs(middles[mark] - middle).max() < 40 for mark in foot)
        owners.append(pupil_marked(sorted(foot, key=lambda mark: middles[mark][0]), ["K01", "K02", "K03"]))
        assert blank_printed(way)[says.page - 1].shape[0] == -(-stands.height // 25)
    assert owners == ["K01", "K02"]
    assert finder.detectMarkers(pages[2])[1] is None, "the answers have no marks"


def test_a_page_that_was_changed_after_it_was_printed_is_known(book: Store) -> None:
    """Papers of the version before are that night's; another class's and a stranger's are nobody's."""
    before = page_key(read_sheet(TAILS))
    kept = night_printed(book, 1, before)
    assert kept is not None
    assert kept[0].night.number == 2
    sheet = kept[0].kept
    changed = TAILS.replace("3 5/6", "4 5/6")
    set_page(book, 1, sheet.number, changed, day=date(2026, 11, 25), now=NOW)
    for key in (before, page_key(read_sheet(changed))):
        found = night_printed(book, 1, key)
        assert found is not None
        assert found[0].night.number == 2
    assert night_printed(book, 1, page_key(read_sheet(TAILS.replace("7", "8")))) is None


def test_every_way_of_printing_has_a_key_of_its_own() -> None:
    """What a class may choose is among what the terminal may, in every language; without marks no key."""
    sheet = read_sheet("fit: 3\n" + KITES)
    every, of_class = printed_ways(sheet), class_ways(sheet)
    assert (len(every), len(of_class)) == (3 * 56, 3 * 8)
    assert set(of_class) < set(every)
    assert page_key(sheet) not in every
    for fit in ("", "room", "1", "2"):
        for marks in ("lines", "windows"):
            header = replace(USUAL, fit=fit, marks=marks).of(sheet.header)
            assert of_class[page_key(replace(sheet, header=header))].sheet.header == header
