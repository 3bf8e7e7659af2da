"""The morning page, and a practice page for every group."""

from datetime import UTC, datetime
from pathlib import Path

import pytest

from onewhole.desk.mark import Marked, mark
from onewhole.desk.plan import plan, plan_pages, practice_sheets
from onewhole.problems.needs import needs
from onewhole.sheets.writing import write_sheet

WHEN = datetime(2025, 3, 6, 7, 30, tzinfo=UTC)
SHEET = "title: Kite tails\n\n1. 6 7/8 - 3 2/8\n2. 9 5/8 - 4 6/8\n3. 8 3/6 - 4 4/6\n"
ANSWERS = "pupil,1,2,3\nK01,3 5/8,5 1/8,4 1/6\nK02,3 5/8,4 7/8,3 5/6\n"


@pytest.fixture
def marked() -> Marked:
    """A night with one pupil who fits an idea and one who is right."""
    return mark(SHEET, ANSWERS)


def test_a_plan_holds_the_morning_and_practice(marked: Marked, tmp_path: Path) -> None:
    """One practice page a group, named after the group; each is a PDF."""
    made = plan(marked, tmp_path / "plan", when=WHEN)
    assert [one.path.name for one in made] == ["morning.pdf", "practice-swifts.pdf", "practice-larks.pdf"]
    assert all(one.path.read_bytes().startswith(b"%PDF-") for one in made)


def test_practice_is_new_and_mixed(marked: Marked) -> None:
    """None of the night's problems; some with regrouping and some without."""
    tonight = {problem.statement for problem in marked.sheet.problems}
    for _, sheet in practice_sheets(marked):
        practised = [problem.statement for problem in sheet.problems]
        assert not tonight & set(practised)
        assert {needs(statement).regrouping for statement in practised} == {True, False}


def test_two_groups_practise_on_different_numbers() -> None:
    """Even when they missed the same problems."""
    rows = [f"K{at:02},3 5/8,5 1/8,4 1/6" for at in range(1, 13)]
    sheets = practice_sheets(mark(SHEET, "\n".join(["pupil,1,2,3", *rows])))
    first, second = (write_sheet(sheet) for _, sheet in sheets)
    assert first != second


def test_a_page_for_a_child_names_no_pattern(marked: Marked) -> None:
    """Neither id nor name, nor what was thought, stands in the data of a practice page."""
    pages = dict(plan_pages(marked))
    for name, page in pages.items():
        said = page.content.decode().lower()
        if name != "morning":
            assert "a01" not in said
            assert "smaller number" not in said
            assert "k01" not in said
