"""How a class prints, kept in its file; and a page or a night printed that way."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import assert_never

import msgspec
from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.class_languages import languages_of
from onewhole.desk.classes.class_records import room, sheet_typed, spoken_night
from onewhole.desk.classes.rosters import in_class_on, roster_of
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.desk.page.braille_files import BrailleFile, braille_ready
from onewhole.desk.page.file_name import file_name
from onewhole.desk.page.fitting import PageFit
from onewhole.desk.page.print_choice import PrintChoice, PrintPart, SheetPage
from onewhole.desk.page.print_pages import TOGETHER, fitted_pupil_page, one_kind, together
from onewhole.desk.page.printed_before import note_printed
from onewhole.errors import InputError
from onewhole.presses.pdf import press
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import CornerMarks
from onewhole.sheets.settings import WHOLE_ROOM
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.opening import Store
from onewhole.store.settings import set_setting, setting
from onewhole.store.steps import NightStep, keep_step
from onewhole.writers.frame import UNTITLED
from onewhole.writers.printed import Printed
from onewhole.writers.tactile_page import tactile_paper

USUAL = PrintChoice()
#: The pictures of the problems as raised lines, by themselves.
TACTILE = "tactile"


#: How close the problems may stand, by the setting of a sheet that says so.
FITS = {
    "": "as each page says",
    WHOLE_ROOM: "with room to write",
    "1": "fitted on 1 page",
    "2": "fitted on 2 pages",
}


#: Marks in the corners, by the setting of a sheet that says so.
MARKED = {
    "": "as each page says",
    CornerMarks.NONE.value: "no marks: a page to hang up",
    CornerMarks.LINES.value: "marks, and a line for each answer",
    CornerMarks.WINDOWS.value: "marks, and windows for whole and fraction",
}


class DoesNotFit(InputError):
    """The problems take more pages than were chosen; ``fit`` is the nearest."""

    def __init__(self, fit: PageFit) -> None:
        super().__init__(fit.told.partition(":")[0], remedy=f"The nearest is {fit.pages} pages.")
        self.fit = fit


class PagePaper(Struct, frozen=True):
    """A PDF or a file in braille, the name that it has when it is saved, and its media type."""

    name: str
    content: bytes
    media: str = "application/pdf"


def prints_of(book: Store, room_number: int) -> PrintChoice:
    """Return how a class prints; the usual way where nothing is kept or can be read."""
    text = setting(book, _name(room_number))
    try:
        return USUAL if text is None else msgspec.json.decode(text, type=PrintChoice)
    except (msgspec.DecodeError, InputError, RecursionError):
        return USUAL


def set_prints(book: Store, room_number: int, choice: PrintChoice, *, saw: str | None = None) -> None:
    """Keep how a class prints. ``saw`` is what the window that changes it was shown (:func:`prints_text`).

    Raises NotThere and ChangedMeanwhile.
    """
    with book.transaction() as within:
        room(within, room_number)
        stands, typed = prints_text(prints_of(within, room_number)), prints_text(choice)
        if is_to_be_written("What is printed", typed, saw, stands):
            set_setting(within, _name(room_number), msgspec.json.encode(choice).decode())


def prints_text(choice: PrintChoice) -> str:
    """Return a choice in a few words.

    >>> prints_text(PrintChoice((PrintPart(SheetPage.PUPIL, 27), PrintPart(SheetPage.KEY))))
    '27 copies of the pupils’ page, the answers'
    """
    pages = ", ".join(_told(part, choice) for part in choice.parts)
    more = (
        "each on a new sheet" if choice.both_sides else "",
        FITS[choice.fit] if choice.fit else "",
        MARKED[choice.marks] if choice.marks else "",
    )
    return "; ".join((pages, *filter(None, more)))


def _told(part: PrintPart, choice: PrintChoice) -> str:
    if choice.each_pupil and part.page is SheetPage.PUPIL:
        return f"{_called(part.page)} for each pupil"
    return f"{part.copies} copies of {_called(part.page)}" if part.copies > 1 else _called(part.page)


def chosen(
    places: Mapping[SheetPage, str],
    copies: Mapping[SheetPage, int],
    *,
    both_sides: bool,
    fit: str = "",
    marks: str = "",
    each_pupil: bool = False,
) -> PrintChoice:
    """Return a choice from the place of each page in the order: 1 for the first; empty: not printed.

    Two pages in one place come in the usual order. Raises InputError as PrintChoice does.

    >>> places = {SheetPage.KEY: "1", SheetPage.PUPIL: "2", SheetPage.FAMILY: ""}
    >>> chosen(places, {page: 1 for page in SheetPage}, both_sides=False).told
    'key, pupil'
    """
    wanted = [page for page in SheetPage if places.get(page)]
    in_order = sorted(wanted, key=lambda page: places[page])
    parts = tuple(PrintPart(page, copies[page]) for page in in_order)
    return PrintChoice(parts, both_sides, fit, marks, each_pupil)


def printable() -> dict[str, str]:
    """Return what can be printed, in the order in which it is used, and what each page is called."""
    return {page.value: _called(page) for page in SheetPage}


def printable_alone() -> dict[str, str]:
    """Return what can be had by itself: each page, and those in braille by the names of their files."""
    braille = {one.value: _in_braille(one) for one in BrailleFile}
    return printable() | braille | {TACTILE: "the amounts as raised lines, for swell paper"}


def _in_braille(file: BrailleFile) -> str:
    match file:
        case BrailleFile.PUPIL:
            return "the pupils’ page in braille, for an embosser or a display"
        case BrailleFile.PUPIL_UNICODE:
            return "the pupils’ page in braille, as Unicode"
        case BrailleFile.KEY:
            return "the answers in braille, for an embosser or a display"
        case BrailleFile.KEY_UNICODE:
            return "the answers in braille, as Unicode"
        case _:
            assert_never(file)


def _called(page: SheetPage) -> str:
    match page:
        case SheetPage.PUPIL:
            return "the pupils’ page"
        case SheetPage.KEY:
            return "the answers"
        case SheetPage.WORKINGS:
            return "the workings"
        case SheetPage.FAMILY:
            return "the page for home"
        case _:
            assert_never(page)


def printed_night(
    book: Store, room_number: int, night_number: int, now: datetime, *, nearest: bool = False
) -> PagePaper:
    """Press a night's page as its class prints it, and keep that the night is printed.

    It is pressed before the class's file is written to. Where it does not fit on the pages that were chosen,
    the ``nearest`` is printed, or nothing. Raises DoesNotFit, NotThere, RoomError, PressError.
    """
    page, choice = spoken_night(book, room_number, night_number), prints_of(book, room_number)
    pupils: tuple[str, ...] = ()
    if choice.each_pupil:
        roster = roster_of(book, page.night)
        pupils = tuple(code for code in roster.everyone if code in roster.got)
    made = _together(page.sheet, choice, now, pupils, nearest=nearest)
    if choice.copies(SheetPage.PUPIL):
        keep_step(book, night_number, NightStep.PRINTED, now)
    return made


def printed_typed(
    book: Store, room_number: int, typed: str, kind: str, now: datetime, *, nearest: bool = False
) -> PagePaper:
    """Press what is typed: one page of it, or together what its class prints.

    Nights of the class that have just this page are printed then; one that is set later is too. ``kind`` is
    the value of a SheetPage or of a BrailleFile, tactile or together; ``nearest`` is as for
    :func:`printed_night`. Raises InputError, DoesNotFit, SheetError, RoomError, NoBrailleError, PressError
    and NotThere.
    """
    names = printable_alone()
    room(book, room_number)
    sheet = sheet_typed(typed, languages_of(book, room_number))
    if kind in {one.value for one in BrailleFile}:
        return _brailled(sheet, BrailleFile(kind))
    if kind == TACTILE:
        return _raised(sheet, now)
    if kind == TOGETHER:
        choice = prints_of(book, room_number)
        pupils = in_class_on(book, room_number, now.date()) if choice.each_pupil else ()
        made = _together(sheet, choice, now, pupils, nearest=nearest)
    elif kind in names:
        choice = replace(prints_of(book, room_number), parts=(PrintPart(SheetPage(kind)),))
        worked, pupil = _worked(sheet, choice, nearest=nearest)
        page = one_kind(SheetPage(kind), worked, pupil)
        made = _made(page, f"{_titled(worked.sheet)}, {names[kind]}", now)
    else:
        msg = "there is no such page to print"
        raise InputError(msg, remedy=f"Print one of: {', '.join(names)}, {TOGETHER}.")
    if choice.copies(SheetPage.PUPIL):
        note_printed(book, room_number, typed, now)
    return made


def _together(
    sheet: Sheet, choice: PrintChoice, now: datetime, pupils: Sequence[str], *, nearest: bool
) -> PagePaper:
    worked, pupil = _worked(sheet, choice, nearest=nearest)
    return _made(together(worked, choice, pupil, pupils), f"{_titled(sheet)}, to print", now)


def _worked(sheet: Sheet, choice: PrintChoice, *, nearest: bool) -> tuple[WorkedSheet, Printed | None]:
    """Return a sheet with the settings that it is printed by, and the pupils' page. Raises DoesNotFit."""
    worked = WorkedSheet(replace(sheet, header=choice.of(sheet.header)))
    if not choice.copies(SheetPage.PUPIL):
        return worked, None
    found = fitted_pupil_page(worked)
    if found.fit and not found.fit.fits and not nearest:
        raise DoesNotFit(found.fit)
    return worked, found.page


def _brailled(sheet: Sheet, file: BrailleFile) -> PagePaper:
    (ready,) = braille_ready(WorkedSheet(sheet), (file,))
    media = "text/plain; charset=utf-8" if ready.ending == "txt" else "application/x-brf"
    name = file_name(f"{_titled(sheet)}, {ready.page}", ready.ending)
    return PagePaper(name, ready.content, media)


def _raised(sheet: Sheet, now: datetime) -> PagePaper:
    page = tactile_paper(WorkedSheet(sheet))
    if page is None:
        msg = "no problem of this page has amounts that are drawn as strips"
        raise InputError(msg, remedy="Write one with a mixed number, a fraction or a measure.")
    return _made(page, f"{_titled(sheet)}, raised lines", now)


def _made(page: Printed, name: str, now: datetime) -> PagePaper:
    return PagePaper(file_name(name, "pdf"), press(page.source, data=page.content, when=now))


def _titled(sheet: Sheet) -> str:
    return sheet.header.title or UNTITLED


def _name(room_number: int) -> str:
    return f"prints of class {room_number}"
