"""Check again: the page, its key, its typed sheet, and who reached the bar."""

from datetime import UTC, datetime
from fractions import Fraction
from pathlib import Path

import pytest

from onewhole.desk.page.recheck import Passed, as_object, passed_files, print_recheck, told
from onewhole.errors import InputError
from onewhole.findings.reach import Reach
from onewhole.marking.reading.pass_mark import OWN_CHOICE
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.sheets.document import SheetError
from onewhole.sheets.mastery import again
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.writing import write_sheet

WHEN = datetime(2025, 3, 6, 7, 30, tzinfo=UTC)
SHEET = "title: Kite tails\n\n1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n"
ANSWERS = "pupil,1,2\nK01,3 5/8,4 7/8\nK02,3 5/8,5 1/8\nK03,,\n"


def test_what_is_printed_is_what_is_marked(tmp_path: Path) -> None:
    """The typed sheet beside the page is the page; a pupil with its right answers reaches the bar."""
    sheet = tmp_path / "night.txt"
    sheet.write_text(SHEET)
    made = print_recheck(sheet, tmp_path / "out", when=WHEN)
    assert [one.path.name for one in made] == ["again.txt", "again.pdf", "again-key.pdf"]
    assert made[0].path.read_text() == write_sheet(again(read_sheet(SHEET)))
    assert all(one.path.read_bytes().startswith(b"%PDF-") for one in made[1:])
    problems = read_sheet(made[0].path.read_text()).problems
    rows = [
        ["pupil", *(one.label for one in problems)],
        ["K01", *(text(answer(one.statement)) for one in problems)],
    ]
    answers = tmp_path / "answers.csv"
    answers.write_text("\n".join(",".join(row) for row in rows))
    (found,) = passed_files(made[0].path, answers, percent=100).standings
    assert (found.right, found.asked, found.reach) == (5, 5, Reach.REACHED)


def test_a_page_that_cannot_be_made_leaves_nothing(tmp_path: Path) -> None:
    """The folder is not even made."""
    sheet = tmp_path / "night.txt"
    sheet.write_text("1. 1/2 + 1/2\n")
    with pytest.raises(InputError, match="no other numbers"):
        print_recheck(sheet, tmp_path / "out", when=WHEN)
    assert not (tmp_path / "out").exists()


def test_the_same_bytes(tmp_path: Path) -> None:
    """The same sheet, turn and time give the same files."""
    sheet = tmp_path / "night.txt"
    sheet.write_text(SHEET)
    one, two = (print_recheck(sheet, tmp_path / name, when=WHEN, turn=1) for name in ("one", "two"))
    assert [made.path.read_bytes() for made in one] == [made.path.read_bytes() for made in two]


def _passed(folder: Path, percent: int = 80) -> Passed:
    sheet, answers = folder / "night.txt", folder / "answers.csv"
    sheet.write_text(SHEET)
    answers.write_text(ANSWERS)
    return passed_files(sheet, answers, percent=percent)


def test_told_and_as_an_object(tmp_path: Path) -> None:
    """A line a pupil, who reached the bar of those who were there, and that the bar is a choice."""
    found = _passed(tmp_path)
    assert told(found) == (
        "K01  2 of 2  reached",
        "K02  1 of 2  not yet",
        "K03  0 of 2  nothing written",
        "",
        f"1 of 2 reached 80 %. {OWN_CHOICE}",
    )
    data = as_object(found)
    assert list(data) == ["bar", "pupils", "caution"]
    assert data["bar"] == Fraction(4, 5)
    pupils = data["pupils"]
    assert isinstance(pupils, list)
    assert pupils[1] == {
        "pupil": "K02",
        "right": 1,
        "asked": 2,
        "unread": 0,
        "share": Fraction(1, 2),
        "reach": "not yet",
    }


def test_refusals(tmp_path: Path) -> None:
    """A mistaken sheet and a bar that is none."""
    mistaken = tmp_path / "mistaken.txt"
    mistaken.write_text("nothing")
    with pytest.raises(SheetError):
        print_recheck(mistaken, tmp_path / "out", when=WHEN)
    with pytest.raises(InputError, match="no bar"):
        _passed(tmp_path, percent=0)
