"""Every way that a page may have been printed with marks in its corners, by the key that those marks say."""

from collections.abc import Iterable, Iterator, Mapping
from itertools import product

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.class_records import NightPage, night_pages, sheet_typed
from onewhole.desk.page.print_pages import fitted_pupil_page
from onewhole.presses.blank_pages import GreyPixels, blank_pages
from onewhole.presses.page_map import page_map
from onewhole.sheets.class_languages import other_languages
from onewhole.sheets.document import Sheet, SheetError
from onewhole.sheets.header import MOST_FIT, CornerMarks, Paper, Print
from onewhole.sheets.page_map import PageMap
from onewhole.sheets.page_marks import page_key
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.opening import Store
from onewhole.store.sheets import versions_of

_MARKED = (CornerMarks.LINES, CornerMarks.WINDOWS)
#: On how many pages a class may have its problems fitted (:data:`~.class_prints.FITS`).
_CLASS_FITS = (None, 1, 2)


class PrintedWay(Struct, frozen=True):
    """A page as it was printed: its key, and the sheet with the settings that it was printed by."""

    key: int
    sheet: Sheet


def map_printed(way: PrintedWay) -> PageMap:
    """Return where everything stands on a page as it was printed. Raises RoomError and PressError."""
    return page_map(fitted_pupil_page(WorkedSheet(way.sheet)).page, way.key)


def blank_printed(way: PrintedWay) -> tuple[GreyPixels, ...]:
    """Return its pages before anybody wrote on them. Raises RoomError and PressError."""
    return blank_pages(fitted_pupil_page(WorkedSheet(way.sheet)).page)


def printed_ways(sheet: Sheet) -> Mapping[int, PrintedWay]:
    r"""Return every way that a sheet may have been printed at the terminal, on any paper, by its key.

    >>> from onewhole.sheets.reading import read_sheet
    >>> sheet = read_sheet("corner marks: lines\n\n1. 52 - 27")
    >>> page_key(sheet) in printed_ways(sheet)
    True
    """
    fits = dict.fromkeys((sheet.header.fit, None, *range(1, MOST_FIT + 1)))
    return dict(_ways(sheet, product(Paper, Print, fits, _MARKED)))


def class_ways(sheet: Sheet) -> Mapping[int, PrintedWay]:
    """Return every way that a class may have printed a sheet, by its key: on the sheet's own paper."""
    header = sheet.header
    fits = dict.fromkeys((header.fit, *_CLASS_FITS))
    return dict(_ways(sheet, product([header.paper], [header.print], fits, _MARKED)))


def night_printed(book: Store, room_number: int, key: int) -> tuple[NightPage, PrintedWay] | None:
    """Return the night of a class whose page has a key, and how it was printed; None where there is none.

    The latest night of several. Where a page was changed after it was printed, its earlier versions are
    looked at too, after every newest one.
    """
    nights = night_pages(book, room_number)[::-1]
    for night in nights:
        if way := class_ways(night.sheet).get(key):
            return night, way
    for night in nights:
        for sheet in _earlier(book, night):
            if way := class_ways(sheet).get(key):
                return night, way
    return None


def _earlier(book: Store, night: NightPage) -> Iterator[Sheet]:
    """The other versions of a night's page that can be read, the newest first."""
    for kept in versions_of(book, night.kept.number)[::-1]:
        if kept.version != night.kept.version:
            try:
                yield sheet_typed(kept.typed)
            except SheetError:
                continue


def _ways(
    sheet: Sheet, settings: Iterable[tuple[Paper, Print, int | None, CornerMarks]]
) -> Iterator[tuple[int, PrintedWay]]:
    for spoken, (paper, size, fit, marks) in product(other_languages(sheet), settings):
        header = replace(spoken.header, paper=paper, print=size, fit=fit, marks=marks)
        printed = replace(spoken, header=header)
        key = page_key(printed)
        yield key, PrintedWay(key, printed)
