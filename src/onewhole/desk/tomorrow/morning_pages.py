"""Tomorrow's pages on paper: the morning page, the talks, practice pages with their key."""

from collections.abc import Callable, Iterable, Mapping
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from shutil import rmtree
from typing import assert_never

from onewhole.desk.classes.class_languages import languages_of
from onewhole.desk.classes.class_records import night_pages, room
from onewhole.desk.classes.pupils_due import pupils_due
from onewhole.desk.page.class_prints import prints_of
from onewhole.desk.page.print_pages import TOGETHER, pressed
from onewhole.desk.page.put_pages import Made, MadeFrom, NightPart, Ready, put
from onewhole.desk.tomorrow.keeping_groups import kept_as_shown
from onewhole.desk.tomorrow.morning import fingerprint
from onewhole.desk.tomorrow.papers import TomorrowPage, papers_text, read_papers
from onewhole.desk.tomorrow.plan import plan_pages
from onewhole.desk.tomorrow.practice_pages import Tomorrow
from onewhole.desk.tomorrow.printed_names import printed_names
from onewhole.findings.paper import (
    EveryPaper,
    GroupPractice,
    MorningPaper,
    PracticeKey,
    PupilPractice,
    TalksPaper,
)
from onewhole.languages.english.papers import paper_called
from onewhole.notations.sentences.text import text_of
from onewhole.presses.folders import made as made_folder
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere
from onewhole.store.steps import NightStep, keep_step
from onewhole.writers.frame import UNTITLED
from onewhole.writers.joined import joined
from onewhole.writers.printed import Printed

#: A problem comes back from so many nights before; our own.
COME_BACK_FROM = 5
#: The list of the pages, beside them.
_LIST = "pages"

Progress = Callable[[int, int], None]


def print_morning(
    book: Store,
    room_number: int,
    night_number: int,
    *,
    folder: Path,
    when: datetime,
    progress: Progress,
    every_pupil: bool = False,
    copies: bool = True,
) -> tuple[Made, ...]:
    """Print tomorrow's pages, the teacher's moves in them, into a folder of their own under ``folder``.

    The first file holds them all: the teacher's own, with the names of the class, then the practice pages,
    which carry no name; with ``copies`` each as often as its group has pupils.

    The folder's name is the night's :func:`~.morning.fingerprint`; it is written whole. The night is then
    kept as regrouped. ``progress`` is told the pages done, of how many. Raises PressError, FileRefused,
    NotThere.
    """
    found = kept_as_shown(book, room_number, night_number, when)
    codes = tuple(one.pupil for one in found.marked.findings) if every_pupil else ()
    progress(0, 0)
    earlier, due = _earlier(book, room_number, night_number), pupils_due(book, room_number, night_number)
    prints = prints_of(book, room_number)
    languages = languages_of(book, room_number)
    asked = Tomorrow(codes, earlier, due=due, fit=prints.fit, languages=languages)
    pages = tuple(plan_pages(found.marked, asked, printed_names(room(book, room_number), when)))
    many = {group.name: len(group.pupils) for group in found.marked.groups} if copies else {}
    whole = _together(pages, many, found.page.sheet.header, both_sides=prints.both_sides)
    pages = ((TomorrowPage(TOGETHER, EveryPaper()), whole), *pages)
    ready: list[Ready] = []
    for at, (paper, page) in enumerate(pages):
        progress(at, len(pages))
        ready += pressed(((paper.file, page),), when=when)
    made_folder(folder, private=True)
    there = folder / fingerprint(found)
    listed = Ready(_LIST, "json", papers_text(paper for paper, _ in pages).encode())
    made_from = MadeFrom(found.page.sheet, when, found.marked.marks)
    *printed, _ = put({NightPart.MORNING: (*ready, listed)}, there, made_from, own=True)
    _put_away(folder, there)
    keep_step(book, night_number, NightStep.REGROUPED, when)
    return tuple(printed)


def _together(
    pages: Iterable[tuple[TomorrowPage, Printed]],
    many: Mapping[str, int],
    header: Header,
    *,
    both_sides: bool,
) -> Printed:
    """Return all pages in one file, the teacher's first; ``many`` says how many copies a group needs."""
    own: list[tuple[Printed, int]] = []
    handed_out: list[tuple[Printed, int]] = []
    for paper, page in pages:
        match paper.which:
            case GroupPractice(group):
                handed_out.append((page, many.get(group, 1)))
            case PupilPractice():
                handed_out.append((page, 1))
            case EveryPaper() | MorningPaper() | TalksPaper() | PracticeKey():
                own.append((page, 1))
            case _:
                assert_never(paper.which)
    title = f"{header.title or UNTITLED}, for tomorrow"
    return joined([*own, *handed_out], header, title=title, both_sides=both_sides)


def printed_pages(folder: Path, named: str) -> tuple[tuple[str, str], ...]:
    """Return the pages printed under a stamp: the name of each file and what the page is called."""
    listed = folder / named / f"{_LIST}.json"
    papers = read_papers(listed.read_text(encoding="utf-8")) if listed.exists() else ()
    return tuple(
        (one.file, text_of(paper_called(one.which)))
        for one in papers
        if (folder / named / f"{one.file}.pdf").exists()
    )


def printed_page(folder: Path, named: str, page: str) -> Path:
    """Return the file of a page printed under a stamp. Raises NotThere."""
    if page not in {name for name, _ in printed_pages(folder, named)}:
        raise NotThere("This page is not printed any more", remedy="Make the pages again.")
    return folder / named / f"{page}.pdf"


def _earlier(book: Store, room_number: int, night_number: int) -> tuple[Sheet, ...]:
    """Return the sheets of the last nights before this one, the latest first."""
    pages = night_pages(book, room_number)
    at = [page.night.number for page in pages].index(night_number)
    return tuple(page.sheet for page in reversed(pages[max(0, at - COME_BACK_FROM) : at]))


def _put_away(folder: Path, there: Path) -> None:
    """Take away the pages that were printed under other stamps: they are out of date."""
    for other in folder.iterdir():
        if other != there:
            with suppress(OSError):  # the next time takes it away
                rmtree(other, ignore_errors=True)
