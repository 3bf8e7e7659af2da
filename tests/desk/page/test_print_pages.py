"""A sheet printed."""

from datetime import UTC, datetime
from pathlib import Path

from onewhole.desk.page.print_pages import Ready, print_pages, put, sheet_pages
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet

WHEN = datetime(2025, 3, 6, 20, 0, tzinfo=UTC)
SHEET = read_sheet("title: Kite tails\n\n1. 7 2/6 - 3 5/6\n")


def test_four_pages_into_a_new_folder(tmp_path: Path) -> None:
    """The folder is made with those above it; each page lies where it is said to lie."""
    made = print_pages(SHEET, tmp_path / "out" / "monday", when=WHEN)
    assert [one.page for one in made] == ["pupil", "key", "workings", "family"]
    assert [one.page for one in made] == [name for name, _ in sheet_pages(WorkedSheet(SHEET))]
    assert all(one.path.read_bytes().startswith(b"%PDF-") for one in made)
    assert {one.path for one in made} == set((tmp_path / "out" / "monday").iterdir())


def test_only_the_files_named_are_written(tmp_path: Path) -> None:
    """A page of the same name is replaced; every other file in the folder stays."""
    (tmp_path / "pupil.pdf").write_bytes(b"yesterday")
    (tmp_path / "letter.txt").write_text("mine")
    put([Ready("pupil", "pdf", b"today")], tmp_path)
    assert (tmp_path / "pupil.pdf").read_bytes() == b"today"
    assert (tmp_path / "letter.txt").read_text() == "mine"
    assert len(list(tmp_path.iterdir())) == 2
