"""Check again: a short page parallel to a night's sheet, and who reached the bar on it."""

from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from onewhole.desk.page.print_pages import Made, Ready, pressed, put
from onewhole.desk.page.sheets import sheet_in
from onewhole.marking.reading.answers_table import read_answers
from onewhole.marking.reading.mark import mark_class
from onewhole.marking.reading.pass_mark import OWN_CHOICE, USUAL, PassMark, PassStanding, Reach, mastery
from onewhole.presses.texts import read_text
from onewhole.sheets.document import Sheet
from onewhole.sheets.mastery import PROBLEMS
from onewhole.sheets.mastery import again as parallel_page
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.sheets.writing import write_sheet
from onewhole.writers.key_page import key_page
from onewhole.writers.pupil_page import pupil_page

Json = dict[str, object]

__all__ = [
    "PROBLEMS",
    "USUAL_PERCENT",
    "PassMark",
    "Passed",
    "as_object",
    "passed",
    "passed_files",
    "print_recheck",
    "recheck",
    "told",
]

USUAL_PERCENT = int(USUAL.share * 100)


@dataclass(frozen=True, slots=True)
class Passed:
    """The bar of a page and how each pupil stands to it."""

    bar: PassMark
    standings: tuple[PassStanding, ...]


def recheck(sheet: str, *, count: int = PROBLEMS, turn: int = 0) -> str:
    r"""Return a short page parallel to a typed sheet, typed; ``turn`` gives another page each time.

    Raises SheetError with every mistake of the sheet, NoParallelError when there are no other numbers.

    >>> recheck("1. 7 2/6 - 3 5/6", count=2)
    'title: Again\n\n1. 4 1/6 - 1 5/6\n2. 8 1/6 - 4 5/6\n'
    """
    return write_sheet(parallel_page(read_sheet(sheet), count=count, turn=turn))


def print_recheck(
    sheet: Path, folder: Path, *, when: datetime, count: int = PROBLEMS, turn: int = 0
) -> tuple[Made, ...]:
    """Print a page parallel to the sheet in a file, its key, and the typed sheet with which it is marked.

    Everything is pressed before anything is written. Raises as :func:`recheck` and
    :func:`onewhole.desk.page.print_pages.print_pages` do.
    """
    page = parallel_page(sheet_in(sheet), count=count, turn=turn)
    worked = WorkedSheet(page)
    pages = pressed((("again", pupil_page(worked)), ("again-key", key_page(worked))), when=when)
    return put((Ready("again", "txt", write_sheet(page).encode()), *pages), folder)


def passed(sheet: str, answers: str, *, percent: int = USUAL_PERCENT) -> Passed:
    r"""Mark typed answers against a typed sheet and the bar.

    Raises as :func:`onewhole.desk.marking.mark.mark` does, and InputError for a bar that is none.

    >>> found = passed("1. 52 - 27\n2. 9 5/8 - 4 6/8", "pupil,1,2\nK01,25,39/8\nK02,25,5 1/8")
    >>> [(one.pupil, one.share, one.reach.value) for one in found.standings]
    [('K01', Fraction(1, 1), 'reached'), ('K02', Fraction(1, 2), 'not yet')]
    """
    return _passed(read_sheet(sheet), answers, percent)


def passed_files(sheet: Path, answers: Path, *, percent: int = USUAL_PERCENT) -> Passed:
    """Mark a file of answers against the sheet in a file and the bar."""
    return _passed(sheet_in(sheet), read_text(answers), percent, str(answers))


def _passed(sheet: Sheet, answers: str, percent: int, file: str | None = None) -> Passed:
    bar = PassMark.percent(percent)
    return Passed(bar, mastery(mark_class(read_answers(answers, sheet.problems, file)), bar))


def told(found: Passed) -> tuple[str, ...]:
    """Return a line a pupil, how many reached the bar, and what the bar is."""
    width = max((len(one.pupil) for one in found.standings), default=0)
    enough = sum(one.reach is Reach.REACHED for one in found.standings)
    there = sum(one.reach is not Reach.ABSENT for one in found.standings)
    return (
        *(f"{one.pupil:{width}}  {one.right} of {one.asked}  {one.reach}" for one in found.standings),
        "",
        f"{enough} of {there} reached {found.bar.shown}. {OWN_CHOICE}",
    )


def as_object(found: Passed) -> Json:
    """Return the bar and each pupil's share as a JSON object; shares are Fractions."""
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
