"""One night, whole: from a folder with a sheet and answers to pages, marks and a morning plan."""

import json
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from onewhole.desk import audit as audits
from onewhole.desk.findings import most_useful
from onewhole.desk.mark import MEETS, Marked, as_object, mark_sheet
from onewhole.desk.plan import plan
from onewhole.desk.print_pages import Made, print_pages
from onewhole.desk.sheets import sheet_in
from onewhole.presses.files import write
from onewhole.presses.texts import read_text
from onewhole.sheets.document import Sheet

SHEET = "sheet.txt"
ANSWERS = "answers.csv"


@dataclass(frozen=True, slots=True)
class Night:
    """What a night made: files in order, and the most useful findings in sentences."""

    made: tuple[Made, ...]
    findings: tuple[str, ...]


def night(folder: Path, to: Path, *, when: datetime, meets: int = MEETS) -> Night:
    """Do one night of a folder that holds ``sheet.txt`` and, once they are back, ``answers.csv``.

    Prints the pages of the sheet and its audit; with answers also the marks and the morning plan. Everything
    is read and marked before anything is written. Raises as :func:`print_pages` and :func:`mark_sheet` do.
    """
    sheet = sheet_in(folder / SHEET)
    answers = folder / ANSWERS
    marked = (
        mark_sheet(sheet, read_text(answers), file=str(answers), meets=meets) if answers.exists() else None
    )
    made = (*print_pages(sheet, to, when=when), _audit(sheet, to))
    if marked is None:
        return Night(made, ())
    made = (*made, _marks(marked, to), *plan(marked, to, when=when))
    return Night(made, most_useful(marked))


def _audit(sheet: Sheet, to: Path) -> Made:
    path = to / "audit.txt"
    write(path, "\n".join((*audits.told(audits.audit_sheet(sheet)), "")).encode())
    return Made("audit", path)


def _marks(marked: Marked, to: Path) -> Made:
    path = to / "marks.json"
    write(path, (json.dumps(as_object(marked), indent=2, ensure_ascii=False) + "\n").encode())
    return Made("marks", path)
