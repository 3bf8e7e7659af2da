"""Check again: a short page parallel to a night's sheet, and who reached the pass mark on it."""

from datetime import datetime
from pathlib import Path

from msgspec import Struct

from onewhole.desk.marking.answers_file import answers_in
from onewhole.desk.page.print_choice import SheetPage
from onewhole.desk.page.print_pages import pressed, sheet_page
from onewhole.desk.page.put_pages import Made, MadeFrom, NightPart, Ready, put
from onewhole.desk.page.sheets import sheet_in
from onewhole.findings.reach import Reach
from onewhole.languages.english.in_answer import reach_called
from onewhole.marking.reading.mark import mark_class
from onewhole.marking.reading.pass_mark import OWN_CHOICE, USUAL, PassMark, PassStanding, mastery
from onewhole.sheets.mastery import PROBLEMS
from onewhole.sheets.mastery import again as parallel_page
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet
from onewhole.writers.key_page import key_page

Json = dict[str, object]

__all__ = ["PROBLEMS", "USUAL_PERCENT", "Passed", "as_object", "passed_files", "print_recheck", "told"]

USUAL_PERCENT = int(USUAL.share * 100)


class Passed(Struct, frozen=True):
    """The pass mark of a page and each pupil's result."""

    bar: PassMark
    standings: tuple[PassStanding, ...]


def print_recheck(
    sheet: Path, folder: Path, *, when: datetime, count: int = PROBLEMS, turn: int = 0
) -> tuple[Made, ...]:
    """Print a page parallel to the sheet in a file, its key, and the typed sheet with which it is marked.

    ``turn`` gives another page each time. Everything is pressed before anything is written. Raises SheetError
    with every mistake of the sheet, NoParallelError when there are no other numbers, and otherwise as
    :func:`onewhole.desk.page.print_pages.print_pages` does.
    """
    night = sheet_in(sheet)
    page = parallel_page(night, count=count, turn=turn)
    worked = WorkedSheet(page)
    pages = pressed(
        (("again", sheet_page(SheetPage.PUPIL, worked)), ("again-key", key_page(worked))), when=when
    )
    ready = (Ready("again", "txt", write_sheet(page).encode()), *pages)
    return put({NightPart.AGAIN: ready}, folder, MadeFrom(night, when))


def passed_files(sheet: Path, answers: Path, *, percent: int = USUAL_PERCENT) -> Passed:
    """Mark a file of answers against the sheet in a file and the pass mark.

    Raises as :func:`onewhole.desk.marking.mark.mark_files` does, and InputError for a pass mark that is none.
    """
    bar = PassMark.percent(percent)
    marks = mark_class(answers_in(answers, sheet_in(sheet).problems))
    return Passed(bar, mastery(marks, bar))


def told(found: Passed) -> tuple[str, ...]:
    """Return a line a pupil, how many reached the pass mark, and what it is."""
    width = max((len(one.pupil) for one in found.standings), default=0)
    enough = sum(one.reach is Reach.REACHED for one in found.standings)
    there = sum(one.reach is not Reach.ABSENT for one in found.standings)
    return (
        *(
            f"{one.pupil:{width}}  {one.right} of {one.asked}  {reach_called(one.reach)}"
            for one in found.standings
        ),
        "",
        f"{enough} of {there} reached {found.bar.shown}. {OWN_CHOICE}",
    )


def as_object(found: Passed) -> Json:
    """Return the pass mark and each pupil's share as a JSON object; shares are Fractions."""
    return {
        "bar": found.bar.share,
        "pupils": [
            {
                "pupil": one.pupil,
                "right": one.right,
                "asked": one.asked,
                "unread": one.unread,
                "share": one.share,
                "reach": one.reach.value,
            }
            for one in found.standings
        ],
        "caution": OWN_CHOICE,
    }
