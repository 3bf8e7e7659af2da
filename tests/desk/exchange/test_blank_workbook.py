"""The workbook to fill in: every cell a text, and what is typed comes back, answered or not."""

from datetime import UTC, date, datetime
from io import BytesIO
from pathlib import Path

import pytest
from openpyxl import load_workbook

from onewhole.desk.classes.class_list import new_class
from onewhole.desk.classes.class_records import open_book, set_night
from onewhole.desk.exchange.blank_workbook import class_of, classes_in, workbook_of_night, workbook_of_sheet
from onewhole.desk.marking.answers_file import answers_in
from onewhole.desk.marking.handed_table import table_in_file
from onewhole.desk.marking.pasting import lay_table
from onewhole.errors import InputError
from onewhole.presses.answer_workbook import ClassSheet
from onewhole.sheets.reading import read_sheet

WHEN = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)
TYPED = "title: Kites\n\n1. 5 1/8 - 2 5/8\n2. 3/4 - 1/4\n3. 3/4 ? 2/3\n4. 4 1/4 - 1 3/4 | Maya has 4 1/4 m.\n"
SHEET = read_sheet(TYPED)
WROTE = {"C3": "3/8", "C4": "2 4/8", "E4": ">", "F4": "=1+1"}


def _filled(content: bytes, name: str) -> bytes:
    book = load_workbook(BytesIO(content))
    for cell, text in WROTE.items():
        book[name][cell].value = text
        book[name][cell].data_type = "s"
    book.active = book[name]
    held = BytesIO()
    book.save(held)
    return held.getvalue()


def test_what_is_typed_comes_back(tmp_path: Path) -> None:
    """Of each class its own; a problem that nobody answered is empty for all."""
    path = tmp_path / "answers.xlsx"
    classes = [ClassSheet("Room 12", [("K01", "Ada"), ("K02", "")]), ClassSheet("Room 7", [("K05", "")])]
    path.write_bytes(_filled(workbook_of_sheet(SHEET, classes, WHEN), "Room 12"))
    found = answers_in(path, SHEET.problems).pupils
    assert [(one.pupil, [written.text for written in one.written]) for one in found] == [
        ("K01", ["3/8", "", "", ""]),
        ("K02", ["2 4/8", "", ">", "=1+1"]),
    ]
    path.write_bytes(workbook_of_sheet(SHEET, classes[1:], WHEN))
    assert [one.pupil for one in answers_in(path, SHEET.problems).pupils] == ["K05"]


def test_every_cell_is_a_text_with_a_hint() -> None:
    """The labels stay in sight; black lines and a light ground come through a copier."""
    book = load_workbook(BytesIO(workbook_of_sheet(SHEET, [class_of(3)], WHEN)))
    page = book["Answers"]
    assert {cell.number_format for row in page.iter_rows(min_row=3) for cell in row} == {"@"}
    assert page.freeze_panes == "C3"
    hints = page.data_validations.dataValidation
    assert [str(one.sqref) for one in hints] == ["C3:C5", "D3:D5", "E3:E5", "F3:F5"]
    assert hints[0].prompt.startswith("5 1/8 - 2 5/8")
    assert all(len(one.prompt) <= 255 and len(one.promptTitle) <= 32 for one in hints)
    assert page["C3"].border.left.style == "thin"


def test_a_sheet_is_called_as_a_sheet_may_be() -> None:
    """Signs that a name may not have, one name twice, an endless one, and one that begins as a formula."""
    names = ["Room 12/A", "room 12 a", "k" * 80, "k" * 81, "'[]'", "=cmd|' /C calc'!A0", "a\0b"]
    made = workbook_of_sheet(SHEET, [ClassSheet(name, [("K01", "=cmd")]) for name in names], WHEN)
    book = load_workbook(BytesIO(made))
    assert len({name.casefold() for name in book.sheetnames}) == len(names)
    assert all(0 < len(name) <= 31 and not set(name) & set("[]:*?/\\\0") for name in book.sheetnames)
    assert {(book[name]["B3"].value, book[name]["B3"].data_type) for name in book.sheetnames} == {
        ("=cmd", "s")
    }


def test_a_night_takes_its_workbook_back(tmp_path: Path) -> None:
    """With the class's codes and names, and no question asked."""
    book = open_book(tmp_path / "room12.class")
    new_class(book, "Room 12", 0, ("Ada", "Bo", "Ada"), WHEN)
    night = set_night(book, 1, TYPED, date(2026, 9, 1), WHEN).night.number
    blank = workbook_of_night(book, 1, night, WHEN)
    laid = lay_table(
        book, 1, night, table_in_file(_filled(blank, "Room 12"), "a.xlsx"), {}, code="", label=""
    )
    assert not laid.open
    kept = {(one.code, one.label, one.text) for one in laid.placing.cells}
    assert kept == {("K01", "1", "3/8"), ("K02", "1", "2 4/8"), ("K02", "3", ">"), ("K02", "4", "=1+1")}
    assert [one.name for one in classes_in(book, None)] == ["Room 12"]
    book.close()


@pytest.mark.parametrize("pupils", [0, 61])
def test_a_class_has_pupils(pupils: int) -> None:
    """One at least, and as many as a class has at most."""
    with pytest.raises(InputError, match="from 1 to 60"):
        class_of(pupils)
