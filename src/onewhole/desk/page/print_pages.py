"""Print a sheet: pupil page, answer key, workings and the page for home, each a PDF."""

from collections.abc import Iterable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from datetime import datetime
from pathlib import Path
from typing import assert_never

from msgspec import Struct

from onewhole.desk.page.braille_files import braille_where_asked
from onewhole.desk.page.fitting import Fitted, fitted
from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.desk.page.put_pages import Made, MadeFrom, NightPart, Ready, put
from onewhole.languages.table import code_of, spoken_by
from onewhole.presses.pdf import press
from onewhole.sheets.document import Sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.writers.family_page import family_page
from onewhole.writers.frame import UNTITLED
from onewhole.writers.joined import joined
from onewhole.writers.key_page import key_page
from onewhole.writers.marked import of_pupil
from onewhole.writers.printed import Json, Printed
from onewhole.writers.pupil_page import pupil_page
from onewhole.writers.workings_page import workings_page

#: The file that holds several pages of a sheet.
TOGETHER = "together"


def print_pages(
    sheet: Sheet,
    folder: Path,
    *,
    when: datetime,
    pupils: Sequence[str] = (),
    pupil: Printed | None = None,
    own: tuple[Ready, ...] = (),
) -> tuple[Made, ...]:
    """Print the pages of a sheet into a folder, which is made if it is not there.

    The pupils' page has a copy for each of ``pupils``, by code, where there are any; ``pupil`` is that page
    where it is made already (:func:`fitted_pupil_page`). All pages are pressed
    before anything is written, and they come into the folder together, with their list
    (:func:`~.put_pages.put`). A sheet that asks for braille has its files too, and ``own`` are the pages of
    single pupils, which are ready. ``when`` is the date written
    into the PDFs, with its time zone. Raises RoomError when a working does not fit the paper,
    NoBrailleError, PressError and FileRefused.
    """
    worked = WorkedSheet(sheet)
    ready = pressed(sheet_pages(worked, pupils, pupil), when=when) + braille_where_asked(worked)
    return put({NightPart.PAGES: ready + own}, folder, MadeFrom(sheet, when))


def print_together(
    sheet: Sheet,
    folder: Path,
    *,
    choice: PrintChoice,
    when: datetime,
    pupils: Sequence[str] = (),
    pupil: Printed | None = None,
    own: tuple[Ready, ...] = (),
) -> tuple[Made, ...]:
    """Print the chosen pages of a sheet as one file into a folder; otherwise as :func:`print_pages`."""
    worked = WorkedSheet(sheet)
    ready = pressed([(TOGETHER, together(worked, choice, pupil, pupils))], when=when)
    ready += braille_where_asked(worked)
    return put({NightPart.PAGES: ready + own}, folder, MadeFrom(sheet, when))


def together(
    worked: WorkedSheet, choice: PrintChoice, pupil: Printed | None = None, pupils: Sequence[str] = ()
) -> Printed:
    """Return the chosen pages of a sheet in one file, not pressed yet; ``pupil`` where it is made already.

    For each of ``pupils``, by code, there is a copy of the pupils' page instead of so many of all alike.
    """
    each = _for_each(pupils)
    pages: list[tuple[Printed, int | Sequence[Json]]] = []
    for part in choice.parts:
        copies = each if each and part.page is SheetPage.PUPIL else part.copies
        pages.append((sheet_page(part.page, worked, pupil), copies))
        if part.page is SheetPage.FAMILY:
            pages += [(made, part.copies) for _, made in _in_other_languages(worked)]
    title = f"{worked.header.title or UNTITLED}, to print"
    return joined(pages, worked.header, title=title, both_sides=choice.both_sides)


def _for_each(pupils: Sequence[str]) -> list[Json]:
    return [{"pupil": of_pupil(code)} for code in pupils]


def sheet_pages(
    worked: WorkedSheet, pupils: Sequence[str] = (), pupil: Printed | None = None
) -> Iterator[tuple[str, Printed]]:
    """Yield every page of a sheet by its name, not pressed yet; the pupils' with a copy for each of them."""
    for page in SheetPage:
        made = sheet_page(page, worked, pupil)
        copied = pupils and page is SheetPage.PUPIL
        yield page.value, for_pupils(made, worked, pupils) if copied else made
    yield from _in_other_languages(worked)


def for_pupils(page: Printed, worked: WorkedSheet, pupils: Sequence[str]) -> Printed:
    """Return the pupils' page with a copy for each of them, the code at its foot."""
    title = worked.header.title or UNTITLED
    return joined([(page, _for_each(pupils))], worked.header, title=title)


def _in_other_languages(worked: WorkedSheet) -> tuple[tuple[str, Printed], ...]:
    """Return the page for home in each further language, named after it: family-es."""
    others = worked.header.spoken_at_home[1:]
    return tuple(
        (f"{SheetPage.FAMILY.value}-{code_of(spoken_by(words))}", family_page(worked, words))
        for words in others
    )


def one_kind(page: SheetPage, worked: WorkedSheet, pupil: Printed | None = None) -> Printed:
    """Return one page of a sheet, not pressed yet; for home it is in every language of the sheet."""
    if page is SheetPage.FAMILY and worked.header.home:
        return together(worked, PrintChoice((PrintPart(page),)))
    return sheet_page(page, worked, pupil)


def sheet_page(page: SheetPage, worked: WorkedSheet, pupil: Printed | None = None) -> Printed:
    """Return one page of a sheet, not pressed yet; ``pupil`` is the pupils' page where it is made already."""
    match page:
        case SheetPage.PUPIL:
            return pupil or fitted_pupil_page(worked).page
        case SheetPage.KEY:
            return key_page(worked)
        case SheetPage.WORKINGS:
            return workings_page(worked)
        case SheetPage.FAMILY:
            return family_page(worked)
        case _:
            assert_never(page)


def fitted_where_asked(sheet: Sheet) -> Fitted | None:
    """Return the pupils' page of a sheet that says on how many pages it is fitted; None for another one."""
    return fitted_pupil_page(WorkedSheet(sheet)) if sheet.header.fit else None


def fitted_pupil_page(worked: WorkedSheet) -> Fitted:
    """Return the pupils' page, on as many pages as the sheet says where it says that; the press is asked."""
    return fitted(lambda fit: pupil_page(worked, fit), worked.header.fit)


class Pressing(Struct, frozen=True):
    """Pages that are being pressed, in order, beside other work: the press needs no turn of Python's."""

    turns: tuple[tuple[str, Future[bytes]], ...]

    def ready(self) -> tuple[Ready, ...]:
        """Wait for every page. Raises PressError."""
        return tuple(Ready(name, "pdf", turn.result()) for name, turn in self.turns)


def press_beside(pages: Iterable[tuple[str, Printed]], *, when: datetime) -> Pressing:
    """Begin to press every page, each as soon as it is made; nothing is written."""
    hand = ThreadPoolExecutor(1, "press")
    try:
        return Pressing(
            tuple(
                (name, hand.submit(press, page.source, data=page.content, when=when)) for name, page in pages
            )
        )
    finally:
        hand.shutdown(wait=False)


def pressed(pages: Iterable[tuple[str, Printed]], *, when: datetime) -> tuple[Ready, ...]:
    """Press every page; nothing is written. Raises PressError."""
    return press_beside(pages, when=when).ready()
