"""Plan the morning: one page for the teacher, practice pages with their key."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from datetime import datetime
from pathlib import Path

from onewhole.desk.marking.findings import most_useful
from onewhole.desk.marking.mark import Marked
from onewhole.desk.page.fitting import fitted
from onewhole.desk.page.print_pages import pressed
from onewhole.desk.page.put_pages import Made, MadeFrom, NightPart, put
from onewhole.desk.page.sheets import sheet_in
from onewhole.desk.pupil.report import reports
from onewhole.desk.tomorrow.papers import TomorrowPage
from onewhole.desk.tomorrow.practice_pages import PracticePage, Tomorrow, practice_pages, unpractised
from onewhole.findings.paper import MorningPaper, PracticeKey, TalksPaper
from onewhole.marking.grouping.see_first import see_first
from onewhole.sheets.practice import Practice
from onewhole.writers.morning_page import morning_page
from onewhole.writers.practice_key import practice_key
from onewhole.writers.printed import Printed
from onewhole.writers.pupil_page import practice_page
from onewhole.writers.talks_page import talks_page

NOTHING_MORE = Tomorrow()


def tomorrow(
    marked: Marked,
    *,
    pupils: Sequence[str] = (),
    every_pupil: bool = False,
    earlier: Iterable[Path] = (),
    find_slip: bool | None = None,
    fit: str = "",
) -> Tomorrow:
    """Return what is asked of the practice pages, the earlier sheets read from their files."""
    codes = tuple(pupil.pupil for pupil in marked.marks.pupils) if every_pupil else tuple(pupils)
    return Tomorrow(codes, tuple(sheet_in(path) for path in earlier), find_slip, fit=fit)


def plan(marked: Marked, folder: Path, *, when: datetime, asked: Tomorrow = NOTHING_MORE) -> tuple[Made, ...]:
    """Print the morning page, the practice pages and their key into a folder.

    A practice page holds problems parallel to those that its group (or pupil) missed most, one to come back
    to, and after the first night a wrong answer to mend; it carries a group's name or a pupil's code and
    never a pattern's. Raises UnknownPupilError for a code that is not in the class.
    """
    ready = pressed(by_file(plan_pages(marked, asked)), when=when)
    return put({NightPart.MORNING: ready}, folder, MadeFrom(marked.sheet, when, marked.marks))


def no_practice(marked: Marked, made: Iterable[Made]) -> str:
    """Return in words which groups have no practice page among what was made; empty where all have one."""
    return unpractised([group.name for group in marked.groups], marked.sheet, {one.page for one in made})


def by_file(pages: Iterable[tuple[TomorrowPage, Printed]]) -> Iterator[tuple[str, Printed]]:
    """Yield pages by the names of their files."""
    return ((paper.file, page) for paper, page in pages)


def _fitted(page: PracticePage) -> Printed:
    """Return a practice page, on as many pages as its sheet says where it says that."""

    def made(fit: int | None) -> Printed:
        return practice_page(page.practice, page.whose, page.kite, fit)

    return fitted(made, page.practice.sheet.header.fit).page


def plan_pages(
    marked: Marked, asked: Tomorrow = NOTHING_MORE, shown: Callable[[str], str] = str
) -> Iterator[tuple[TomorrowPage, Printed]]:
    """Yield the morning page, the talks, the practice pages and their key, not pressed, as each is made.

    ``shown`` is how the teacher knows a pupil, by the code: it stands on the teacher's own pages and on no
    page that is handed out.
    """
    first = see_first(marked.marks.pupils, marked.findings, marked.groups)
    morning = morning_page(
        marked.worked,
        marked.marks,
        marked.findings,
        marked.groups,
        items=marked.items,
        first=first,
        told=most_useful(marked),
        meets=marked.settings.meets,
        shown=shown,
    )
    until = marked.tonight.until if marked.tonight else None
    told = reports(marked, tuple(one.pupil for one in first))
    yield TomorrowPage("morning", MorningPaper()), morning
    if told:
        yield TomorrowPage("talks", TalksPaper()), talks_page(marked.sheet.header, told, until, shown)
    answered: list[tuple[str, Practice]] = []
    for page in practice_pages(marked, asked):
        answered.append((page.whose, page.practice))
        yield TomorrowPage(page.file, page.which), _fitted(page)
    if answered:
        yield TomorrowPage("practice-key", PracticeKey()), practice_key(marked.sheet.header, answered)
