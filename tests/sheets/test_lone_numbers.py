"""A number that stands alone: worked where it gets another name, refused with its place elsewhere."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from onewhole.desk.page.print_pages import print_pages
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.sheets.document import SheetError
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet


@pytest.mark.parametrize("typed", ["6/8", "12/18 = ?", "0.75 = ?", "26 in = ?", "5", "2 3/4"])
def test_refused_where_nothing_is_asked(typed: str) -> None:
    """The answer would be the number itself: the reader says so with line and column."""
    with pytest.raises(SheetError, match="this number stands alone") as caught:
        read_sheet(f"1. 7 2/6 - 3 5/6\n2.  {typed}")
    (mistake,) = caught.value.mistakes
    assert (mistake.line, mistake.column) == (2, 5)


@pytest.mark.parametrize(
    ("setting", "typed", "answer"),
    [
        ("simplest form: yes", "6/8", "3/4"),
        ("simplest form: yes", "12/18 = ?", "2/3"),
        ("simplest form: yes", "2 6/8", "2 3/4"),
        ("grade: 4", "11/4", "2 3/4"),
        ("grade: 4", "1 5/4 = ?", "2 1/4"),
    ],
)
def test_worked_where_it_has_another_name(setting: str, typed: str, answer: str) -> None:
    """A number that is to be written another way is worked line by line, from itself to its other name."""
    (entry,) = WorkedSheet(read_sheet(f"{setting}\n\n1. {typed}")).problems
    assert entry.working is not None
    assert isinstance(entry.working.answer, Quantity)
    assert len(entry.working.lines) > 1
    assert text(entry.working.answer) == answer


def test_its_pages_print(tmp_path: Path) -> None:
    """Every page of a sheet with lone numbers is set."""
    sheet = read_sheet("simplest form: yes\n\n1. 6/8\n2. 12/18 = ?\n3. 11/4\n")
    made = print_pages(sheet, tmp_path, when=datetime(2026, 3, 5, tzinfo=UTC))
    assert {one.path.suffix for one in made} == {".pdf"}
    assert all(one.path.stat().st_size > 0 for one in made)
