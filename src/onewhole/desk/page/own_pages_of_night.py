"""The own pages of everybody who got a night's page and reads another form, as one file."""

from datetime import datetime

from onewhole.desk.classes.class_records import spoken_night
from onewhole.desk.classes.rosters import roster_of
from onewhole.desk.page.class_prints import PagePaper
from onewhole.desk.page.own_pages import own_pages
from onewhole.errors import InputError
from onewhole.presses.zipped import zipped
from onewhole.store.opening import Store
from onewhole.store.own_pages import own_pages_of
from onewhole.writers.frame import UNTITLED


def own_pages_of_night(book: Store, room_number: int, night_number: int, now: datetime) -> PagePaper:
    """Return the own pages of a night as a ZIP file.

    Raises InputError where nobody reads another form, NotThere, NoBrailleError, RoomError and PressError.
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
