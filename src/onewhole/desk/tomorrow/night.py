"""One night, whole: from a folder with a sheet and answers to pages, marks and a morning plan."""

import json
from datetime import datetime
from pathlib import Path

from msgspec import Struct, field

from onewhole.desk.classes.forms import Forms
from onewhole.desk.marking.answers_file import answers_in, answers_of_night
from onewhole.desk.marking.findings import most_useful
from onewhole.desk.marking.mark import Marked, as_object, asked_of_class, mark_sheet
from onewhole.desk.page import audit as audits
from onewhole.desk.page.braille_files import braille_where_asked
from onewhole.desk.page.own_pages import own_pages
from onewhole.desk.page.print_pages import press_beside, pressed, sheet_pages
from onewhole.desk.page.put_pages import Made, MadeFrom, NightPart, Ready, put
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.tomorrow.group_wishes import NO_WISHES, GroupWishes, with_wishes
from onewhole.desk.tomorrow.plan import by_file, plan_pages
from onewhole.marking.diagnosis.notebook import Tonight
from onewhole.marking.diagnosis.prior import NOTHING, Learnt
from onewhole.marking.grouping.group_settings import USUAL, GroupSettings
from onewhole.presses.texts import read_text
from onewhole.sheets.worked import WorkedSheet

SHEET = "sheet.txt"
ASKED = "asked.csv"
#: A folder with photos or scans of the papers, which are read where there are no answers.
PHOTOS = "photos"


class NightFiles(Struct, frozen=True):
    """What a night made: files in order, the most useful findings in sentences, and the night marked."""

    made: tuple[Made, ...]
    findings: tuple[str, ...]
    marked: Marked | None = None


class NightPrints(Struct, frozen=True):
    """How the pages of a night are printed: the class's ``languages``, and whether in braille too.

    ``forms`` are those of pupils, by code, who have pages of their own.
    """

    languages: str = ""
    braille: bool = False
    forms: Forms = field(default_factory=dict)


USUAL_PRINTS = NightPrints()


def night(
    folder: Path,
    to: Path,
    *,
    when: datetime,
    settings: GroupSettings = USUAL,
    tonight: Tonight | None = None,
    wishes: GroupWishes = NO_WISHES,
    prints: NightPrints = USUAL_PRINTS,
    elsewhere: Learnt = NOTHING,
) -> NightFiles:
    """Do one night of a folder: ``sheet.txt``, and ``answers.csv``, ``.xlsx`` or ``.ods`` once they are back.

    What pupils were asked since is read from ``asked.csv``, where it is there.

    Prints the pages of the sheet and its audit; with answers also the marks and the morning plan. ``tonight``
    is the notebook, whose groups of this night are kept, and ``wishes`` what the teacher typed about the
    groups; ``prints`` stands where the sheet says nothing; ``elsewhere`` is what a district learnt.
    Everything is read, marked and pressed before anything is written, and comes into the folder together: it
    then holds this night and no other. Raises as
    :func:`print_pages` and :func:`mark_sheet` do.
    """
    braille = "yes" if prints.braille else None
    sheet = WorkedSheet(sheet_in(folder / SHEET, languages=prints.languages, braille=braille))
    answers = answers_of_night(folder)
    pressing = press_beside(sheet_pages(sheet), when=when)
    own = braille_where_asked(sheet) + own_pages(sheet.sheet, prints.forms, when)
    audit = (_audit(sheet),)
    if not answers.exists():
        pages = pressing.ready() + own
        files = {NightPart.PAGES: pages, NightPart.AUDIT: audit, NightPart.MARKS: (), NightPart.MORNING: ()}
        return NightFiles(put(files, to, MadeFrom(sheet.sheet, when)), ())
    read = answers_in(answers, sheet.sheet.problems)
    asked = folder / ASKED
    rows = asked_of_class(read_text(asked), read, str(asked)) if asked.exists() else ()
    found = mark_sheet(sheet, read, settings=settings, tonight=tonight, asked=rows, elsewhere=elsewhere)
    marked = with_wishes(found, wishes)
    morning = pressed(by_file(plan_pages(marked)), when=when)
    files = {
        NightPart.PAGES: pressing.ready() + own,
        NightPart.AUDIT: audit,
        NightPart.MARKS: (_marks(marked),),
        NightPart.MORNING: morning,
    }
    return NightFiles(put(files, to, MadeFrom(sheet.sheet, when, marked.marks)), most_useful(marked), marked)


def _audit(sheet: WorkedSheet) -> Ready:
    return Ready("audit", "txt", "\n".join((*audits.told(audits.audit_sheet(sheet)), "")).encode())


def _marks(marked: Marked) -> Ready:
    return Ready(
        "marks",
        "json",
        (json.dumps(as_object(marked), indent=2, ensure_ascii=False, default=float) + "\n").encode(),
    )
