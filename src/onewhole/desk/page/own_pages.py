"""The own pages of pupils who do not read the print of the class: in braille, or in large print."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import datetime
from typing import assert_never

from onewhole.desk.classes.class_records import spoken_night
from onewhole.desk.classes.own_forms import Forms
from onewhole.desk.classes.rosters import roster_of
from onewhole.desk.page.braille_files import BrailleFile, braille_ready
from onewhole.desk.page.class_prints import PagePaper
from onewhole.desk.page.print_pages import fitted_pupil_page
from onewhole.desk.page.put_pages import Ready
from onewhole.errors import InputError
from onewhole.findings.own_page import OwnPage
from onewhole.presses.pdf import press
from onewhole.presses.zipped import zipped
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Print
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.opening import Store
from onewhole.store.own_pages import own_pages_of
from onewhole.writers.frame import UNTITLED
from onewhole.writers.joined import joined
from onewhole.writers.marked import of_pupil
from onewhole.writers.printed import Json
from onewhole.writers.tactile_page import tactile_paper


def own_pages(sheet: Sheet, forms: Forms, when: datetime) -> tuple[Ready, ...]:
    """Return the own pages of pupils by code, ready for a folder: K07-pupil.brf, K09-pupil-large.pdf.

    In braille there are the page and the answers, each as BRF and as Unicode, and the amounts as raised
    lines where a problem has some that are drawn as strips. Raises NoBrailleError, RoomError, PressError.
    """
    return tuple(one for code, form in forms.items() for one in _of_pupil(sheet, code, form, when))


def _of_pupil(sheet: Sheet, code: str, form: OwnPage, when: datetime) -> Iterator[Ready]:
    match form:
        case OwnPage.BRAILLE:
            worked = WorkedSheet(sheet)
            for one in braille_ready(worked, BrailleFile):
                yield replace(one, page=f"{code}-{one.page}")
            raised = tactile_paper(worked)
            if raised is not None:
                content = press(raised.source, data=raised.content, when=when)
                yield Ready(f"{code}-raised-lines", "pdf", content)
        case OwnPage.LARGE:
            large = WorkedSheet(replace(sheet, header=replace(sheet.header, print=Print.LARGE, fit=None)))
            title = sheet.header.title or UNTITLED
            copies: list[Json] = [{"pupil": of_pupil(code)}]
            page = joined([(fitted_pupil_page(large).page, copies)], large.header, title=title)
            yield Ready(f"{code}-pupil-large", "pdf", press(page.source, data=page.content, when=when))
        case _:
            assert_never(form)


def own_pages_of_night(book: Store, room_number: int, night_number: int, now: datetime) -> PagePaper:
    """Return the own pages of everybody who got a night's page and reads another form, as one ZIP file.

    Raises InputError where nobody does, NotThere, NoBrailleError, RoomError and PressError.
    """
    page = spoken_night(book, room_number, night_number)
    got = roster_of(book, page.night).got
    forms = {code: form for code, form in own_pages_of(book, room_number).items() if code in got}
    if not forms:
        raise InputError(
            "Nobody who got this page reads it in braille or in large print",
            remedy="Say who does on the page Class, under braille and large print.",
        )
    ready = own_pages(page.sheet, forms, now)
    name = f"{page.sheet.header.title or UNTITLED}, own pages".replace("/", "-")
    content = zipped({f"{one.page}.{one.ending}": one.content for one in ready})
    return PagePaper(f"{name}.zip", content, "application/zip")
