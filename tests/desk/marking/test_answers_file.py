"""A file of answers is CSV or a workbook; both give the same, and so does a night's folder."""

from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from onewhole.desk.marking.answers_file import answers_in, answers_of_night
from onewhole.desk.marking.mark import mark_files
from onewhole.desk.page.recheck import passed_files
from onewhole.desk.tomorrow.night import night
from onewhole.errors import InputError
from onewhole.sheets.reading import read_sheet
from tests.kit.open_documents import OpenValue, open_document, sheet_xml
from tests.kit.workbooks import workbook

WHEN = datetime(2025, 3, 6, 7, 30, tzinfo=UTC)
TYPED = "title: Kite tails\n\n1. 7 2/6 - 3 5/6\n2. 9 5/8 - 4 6/8\n"
CSV = "pupil,1,2\nK01,3 3/6,5 1/8\nK02,3.5,4 7/8\n"
BOOK = workbook([("pupil", "1", "2"), ("K01", (3.5, "# ?/6"), "5 1/8"), ("K02", 3.5, "4 7/8")])


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with a sheet and its answers as CSV and, under a name that says nothing, as a workbook."""
    (tmp_path / "sheet.txt").write_text(TYPED)
    (tmp_path / "answers.csv").write_text(CSV)
    (tmp_path / "workbook").write_bytes(BOOK)
    return tmp_path


def test_a_workbook_is_marked_as_the_same_answers_in_csv(folder: Path) -> None:
    """What a file is says its content."""
    sheet = folder / "sheet.txt"
    problems = read_sheet(TYPED).problems
    assert answers_in(folder / "workbook", problems) == answers_in(folder / "answers.csv", problems)
    marked = [mark_files(sheet, folder / name) for name in ("workbook", "answers.csv")]
    assert marked[0].findings == marked[1].findings
    assert passed_files(sheet, folder / "workbook") == passed_files(sheet, folder / "answers.csv")


def test_a_night_is_done_from_a_workbook(folder: Path) -> None:
    """From one file of answers: where there are two, nobody knows which counts."""
    (folder / "answers.xlsx").write_bytes(BOOK)
    with pytest.raises(InputError, match="2 files of answers"):
        answers_of_night(folder)
    (folder / "answers.csv").unlink()
    assert answers_of_night(folder).name == "answers.xlsx"
    done = night(folder, folder / "out", when=WHEN)
    assert done.marked is not None
    assert [one.pupil for one in done.marked.findings] == ["K01", "K02"]


def test_a_date_is_refused_with_its_cell(folder: Path) -> None:
    """In the sheet that was open last."""
    (folder / "dated.xlsx").write_bytes(
        workbook([("pupil", "1", "2"), ("K01", (date(2026, 3, 8), "d-mmm"), "4 7/8")])
    )
    with pytest.raises(InputError, match=r"K01, 1 \(cell B2\): the sheet made a date of this answer") as told:
        mark_files(folder / "sheet.txt", folder / "dated.xlsx")
    assert (told.value.line, told.value.column) == (2, 2)
    assert "Format the column as text" in str(told.value.remedy)


@pytest.mark.parametrize("content", [b"PK\x03\x04 torn", b"\xd0\xcf\x11\xe0 old"])
def test_a_workbook_that_cannot_be_read_is_refused(folder: Path, content: bytes) -> None:
    """Damaged, or of the old kind; what to do is said."""
    (folder / "torn.xlsx").write_bytes(content)
    with pytest.raises(InputError) as told:
        mark_files(folder / "sheet.txt", folder / "torn.xlsx")
    assert "CSV" in str(told.value.remedy)


@pytest.mark.parametrize("cell", ["=7/2", "=cmd|' /C calc'!A0"])
def test_a_formula_is_refused_with_its_cell(folder: Path, cell: str) -> None:
    """What the sheet showed last may be old, and nothing is worked here."""
    for name, content in (
        ("formula.xlsx", workbook([("pupil", "1", "2"), ("K01", cell, "4 7/8")])),
        ("formula.ods", open_document(sheet_xml("a", [["pupil", "1", "2"], ["K01", cell, "4 7/8"]]))),
    ):
        (folder / name).write_bytes(content)
        with pytest.raises(InputError, match=r"K01, 1 \(cell B2\): this cell is a formula"):
            mark_files(folder / "sheet.txt", folder / name)


def test_a_night_of_ods_is_the_same(folder: Path) -> None:
    """As the same answers in CSV; a fraction that shows another form is asked about."""
    rows: list[list[OpenValue]] = [
        ["pupil", "1", "2"],
        ["K01", (3.5, "3 3/6"), "5 1/8"],
        ["K02", 3.5, "4 7/8"],
    ]
    (folder / "answers.ods").write_bytes(open_document(sheet_xml("a", rows)))
    problems = read_sheet(TYPED).problems
    assert answers_in(folder / "answers.ods", problems) == answers_in(folder / "answers.csv", problems)
    rows[1][1] = (3.5, "3 1/2")
    (folder / "answers.ods").write_bytes(open_document(sheet_xml("a", rows) + sheet_xml("b", [])))
    with pytest.raises(InputError, match=r"cell B2.*lowest terms") as told:
        answers_in(folder / "answers.ods", problems)
    assert str(told.value.file).endswith("answers.ods, sheet a")
