"""Pages made by the real writers from real sheets, and the same pages pressed."""

import dataclasses
import datetime as dt
import os
import re
from datetime import date
from functools import cache
from itertools import product

from msgspec.structs import replace

from onewhole.desk.marking.findings import most_useful
from onewhole.desk.marking.mark import Marked, mark
from onewhole.desk.page.print_choice import SheetPage
from onewhole.desk.page.print_pages import sheet_pages
from onewhole.desk.pupil.report import reports
from onewhole.desk.tomorrow.practice_pages import PracticePage, Tomorrow, practice_pages
from onewhole.marking.diagnosis.report import Report
from onewhole.marking.grouping.see_first import see_first
from onewhole.presses.pdf import press
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.morning_page import morning_page
from onewhole.writers.practice_key import practice_key
from onewhole.writers.printed import Printed
from onewhole.writers.pupil_page import practice_page
from onewhole.writers.talks_page import talks_page
from tests.kit.once import once
from tests.kit.sessions import ROOT

WHEN = dt.datetime(2025, 3, 6, 7, 30, tzinfo=dt.UTC)
ROOM12 = ROOT / "examples" / "room12"

#: Every kind of problem: comparisons, missing numbers, measures, decimals, places, unlike pieces, a story,
#: more than two numbers, and a product, which is answered and not worked.
SORTS = """title: All sorts
class: Room 12
whole: strip
wholes: strips
say: regroup

# Which is more?
1. 5/6 ? 7/8
2. 3 1/2 ? 7/2
# Find the number.
3. 7 2/6 = 6 ?/6
4. ? + 2 1/3 = 5
5. 3/4 = ?/12
# Measures and decimals.
6. 5 ft 2 in - 2 ft 7 in
7. 3 h 10 min - 1 h 45 min
8. 5.2 - 2.7
9. 12.3 - 4.56
10. 403 - 178
# Unlike pieces and more.
11. 5 1/2 - 2 2/3
12a) 3 1/4 + 2 5/6
12b) 8 - 8/3
13. 5 1/3 - 2 2/3 | Room 12 has 5 1/3 strips of kite paper. A kite takes 2 2/3 strips. How much is left?
14. 2 1/2 + 3 1/2 + 4 1/2 - 1 1/2
15. 9 11/12 - 3 5/12 - 2 7/12
16. 3 x 2/5
17. 12 99/100 - 9 37/100
"""
DRAWN = "picture: strip\n" + SORTS
JUMPED = "picture: number line\ncolumns: 1\n" + SORTS
#: With marks in the corners, and windows for answers.
MARKED = "corner marks: windows\n" + SORTS

#: Two problems that leave open which pattern was followed.
OPEN = "1. 5 1/8 - 2 5/8\n2. 7 1/4 - 3 3/4\n"

PAPERS = ("letter", "a4")
MILLIMETRES = {"letter": (215.9, 279.4), "a4": (210.0, 297.0)}
PRINTS = ("ordinary", "large")
#: The usual page, and the other paper with the other print; `make walk` presses all four.
COMBINED = (
    tuple(product(PAPERS, PRINTS))
    if os.environ.get("ONEWHOLE_WHOLE_WALK")
    else tuple(zip(PAPERS, PRINTS, strict=True))
)
HOME = ("pupil", "family")


@cache
def text_of(name: str) -> str:
    """The text of a sheet by its name here."""
    if name == "room12":
        return (ROOM12 / "sheet.txt").read_text(encoding="utf-8")
    return {"sorts": SORTS, "drawn": DRAWN, "jumped": JUMPED, "marked": MARKED}[name]


def _set(text: str, paper: str, size: str) -> str:
    return f"paper: {paper}\nprint: {size}\n{text}"


@cache
def sheet(name: str, paper: str = "letter", size: str = "ordinary") -> Sheet:
    """A sheet by its name here."""
    return read_sheet(_set(text_of(name), paper, size))


@cache
def night(name: str, paper: str, size: str) -> dict[str, Printed]:
    """The pages of a sheet by their names."""
    return dict(sheet_pages(WorkedSheet(sheet(name, paper, size))))


@cache
def marked(paper: str = "letter", size: str = "ordinary") -> Marked:
    """Room 12's night with its answers; marks are the same on any paper."""
    if (paper, size) != ("letter", "ordinary"):
        return replace(marked(), worked=WorkedSheet(sheet("room12", paper, size)))
    return mark(text_of("room12"), (ROOM12 / "answers.csv").read_text(encoding="utf-8"))


@cache
def practised(night: str = "first") -> tuple[PracticePage, ...]:
    """The practice of every group of Room 12, found once; on a later night each ends with a slip to find."""
    return tuple(practice_pages(marked(), Tomorrow(find_slip=night == "later")))


@cache
def practice(paper: str, size: str, night: str = "first") -> tuple[Printed, ...]:
    """The practice page of every group of Room 12."""
    return tuple(practice_page(page.practice, page.whose, page.kite) for page in _papered(paper, size, night))


def _papered(paper: str, size: str, night: str) -> list[PracticePage]:
    """Practice on other paper: the problems are the same."""
    header = sheet("room12", paper, size).header
    found = []
    for page in practised(night):
        own = page.practice.sheet
        papered = replace(own, header=replace(own.header, paper=header.paper, print=header.print))
        found.append(replace(page, practice=dataclasses.replace(page.practice, sheet=papered)))
    return found


@cache
def key_to_practice(paper: str, size: str) -> Printed:
    """The key of a later night's practice pages."""
    header = sheet("room12", paper, size).header
    return practice_key(header, [(page.whose, page.practice) for page in _papered(paper, size, "later")])


@cache
def morning(paper: str, size: str) -> Printed:
    """The morning page of Room 12."""
    found = marked(paper, size)
    first = see_first(found.marks.pupils, found.findings, found.groups)
    return morning_page(
        found.worked,
        found.marks,
        found.findings,
        found.groups,
        items=found.items,
        first=first,
        told=most_useful(found),
    )


@cache
def talks(paper: str, size: str) -> Printed:
    """The talks of Room 12's morning."""
    found = marked(paper, size)
    first = see_first(found.marks.pupils, found.findings, found.groups)
    return talks_page(found.sheet.header, told(tuple(one.pupil for one in first)), date(2026, 12, 8))


@cache
def told(pupils: tuple[str, ...]) -> tuple[Report, ...]:
    """The reports of some pupils of Room 12, and of one whose answers leave something open."""
    open_night = mark(OPEN, "pupil,1,2\nK25,5 9/8 - 2 5/8 = 3 4/8,4 2/4\nK26,3 4/8,4 2/4")
    return (*reports(marked(), pupils), *reports(open_night, ("K25", "K26")))


@cache
def every_page(paper: str, size: str) -> dict[str, Printed]:
    """Every kind of page of Room 12 and of the sheet with all sorts of problems, by sheet and name."""
    pages = {f"room12/{name}": page for name, page in night("room12", paper, size).items()}
    pages |= {"room12/morning": morning(paper, size), "room12/talks": talks(paper, size)}
    pages |= {"room12/practice": practice(paper, size)[0]}
    pages |= {"room12/mend": practice(paper, size, "later")[0], "room12/keys": key_to_practice(paper, size)}
    pages |= {f"sorts/{name}": page for name, page in night("sorts", paper, size).items()}
    return pages | {
        f"{name}/pupil": night(name, paper, size)["pupil"] for name in ("drawn", "jumped", "marked")
    }


#: The pages of a night's sheet.
NIGHT = tuple(page.value for page in SheetPage)
#: The names of those pages, told without making one: `tests/writers/test_look.py` holds them together.
EVERY = (
    *(f"room12/{name}" for name in (*NIGHT, "morning", "talks", "practice", "mend", "keys")),
    *(f"sorts/{name}" for name in NIGHT),
    "drawn/pupil",
    "jumped/pupil",
    "marked/pupil",
)


@cache
def pressed(name: str, paper: str, size: str) -> bytes:
    """One of every page, pressed."""
    return once(f"page {name} {paper} {size}", lambda: made(every_page(paper, size)[name]))


def made(page: Printed) -> bytes:
    """A page pressed at one moment."""
    return press(page.source, data=page.content, when=WHEN)


def spoken(data: object) -> list[str]:
    """The spoken words of every formula in a page's data."""
    if isinstance(data, list):
        return [words for part in data for words in spoken(part)]
    if not isinstance(data, dict):
        return []
    if set(data) == {"math", "alt"}:
        return [data["alt"]]
    return [words for part in data.values() for words in spoken(part)]


def plain(text: str) -> str:
    """Text on one line with single blanks."""
    return re.sub(r"\s+", " ", text)
