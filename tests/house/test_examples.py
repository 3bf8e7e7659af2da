"""Room 12's night is what its script writes, and its page is one that a teacher would be glad to have."""

import runpy

from onewhole.desk.marking.mark import mark
from onewhole.desk.page.audit import audit, audit_sheet
from onewhole.desk.tomorrow.practice_pages import Tomorrow, practice_pages
from onewhole.findings.status import Status
from onewhole.sheets.worked import WorkedSheet
from tests.house.plan import ROOT

ROOM = ROOT / "examples" / "room12"
SHEET = (ROOM / "sheet.txt").read_text(encoding="utf-8")
ANSWERS = (ROOM / "answers.csv").read_text(encoding="utf-8")


def test_the_answers_are_what_the_script_writes() -> None:
    """After a change of the sheet or of a pattern: python examples/room12/make_answers.py."""
    made = runpy.run_path(str(ROOM / "make_answers.py"))["answers"](SHEET)
    assert made == ANSWERS


def test_the_page_has_nothing_to_change() -> None:
    """Twelve problems, with and without regrouping, from easy to hard, no twins, in time, no note."""
    found = audit(SHEET)
    assert found.findings == ()
    assert len(found.page.problems) == 12
    assert 0 < found.page.regrouping < 1


def test_no_trap_that_another_number_avoids() -> None:
    """Only a whole number on top hides which idea is behind an answer: there every choice of pieces does."""
    trapped = [
        seen.label
        for seen in audit(SHEET).page.problems
        if (seen.traps.core.alike or seen.traps.core.lucky) and not seen.needs.whole_first
    ]
    assert trapped == []


def test_the_night_shows_every_kind_of_finding() -> None:
    """24 pupils: some right, some with an idea, some with slips, some with none, one who was not there."""
    marked = mark(SHEET, ANSWERS)
    assert len(marked.marks.pupils) == 24
    assert {found.status for found in marked.findings} >= {Status.NONE, Status.LIKELY, Status.UNSTEADY}
    assert len({group.place for group in marked.groups}) == 5


def test_every_practice_page_has_nothing_to_change() -> None:
    """It climbs, holds no twins, and mixes problems with and without regrouping."""
    pages = tuple(practice_pages(mark(SHEET, ANSWERS), Tomorrow()))
    assert len(pages) == 7
    found = {page.whose: audit_sheet(WorkedSheet(page.practice.sheet)).findings for page in pages}
    assert not any(found.values())
