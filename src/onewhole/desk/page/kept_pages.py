"""Pages kept, with every earlier version, and set for a night."""

from datetime import date, datetime

from msgspec import Struct

from onewhole.desk.classes.class_records import NightPage, night_page, room
from onewhole.desk.classes.page_for import give_page_to, groups_now, meant
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.page.live_page import LONGEST_TYPED, laid
from onewhole.desk.page.printed_before import keep_printed_before
from onewhole.errors import InputError
from onewhole.sheets.recipe import read_recipe
from onewhole.sheets.sheet_editor import SheetEditor
from onewhole.sheets.typed_lines import lines_of
from onewhole.store.nights import add_night, change_version, nights_of
from onewhole.store.opening import Store
from onewhole.store.set_pages import set_pages
from onewhole.store.sheets import KeptSheet, add_sheet, change_sheet, newest_sheets, versions_of
from onewhole.writers.frame import UNTITLED

#: So many nights back problems are not asked again by a page that is composed.
NIGHTS_BACK = 10


class KeptPage(Struct, frozen=True):
    """A version of a page: its title is the one typed in its header."""

    sheet: int
    version: int
    title: str
    typed: str
    written: datetime


def kept_pages(book: Store) -> tuple[KeptPage, ...]:
    """Return the newest version of every page, the one written last first."""
    return tuple(sorted(map(_page, newest_sheets(book)), key=lambda one: one.written, reverse=True))


def kept_versions(book: Store, sheet: int) -> tuple[KeptPage, ...]:
    """Return every version of a page, the newest first. Raises NotThere."""
    return tuple(map(_page, reversed(versions_of(book, sheet))))


def keep_page(
    book: Store,
    sheet: int | None,
    typed: str,
    now: datetime,
    *,
    recipe: str = "",
    saw: int | None = None,
) -> KeptPage:
    r"""Keep what is typed as a new page, or as the next version of a page; every earlier version stays.

    It need not be readable. What is kept already is not kept twice. ``recipe`` is what a page was composed
    by that stands there as it was composed. ``saw`` is the version that the window began with. Raises
    NotThere, ChangedMeanwhile where another window kept a later one, and InputError for more than a page can
    hold and for what is no recipe.

    >>> from datetime import UTC
    >>> from pathlib import Path
    >>> from tempfile import TemporaryDirectory
    >>> from onewhole.desk.classes.class_records import open_book
    >>> now = datetime(2026, 9, 1, tzinfo=UTC)
    >>> with TemporaryDirectory() as folder:
    ...     book = open_book(Path(folder) / "room12.class")
    ...     first = keep_page(book, None, "title: Kites\n\n1. 5 - 2", now)
    ...     second = keep_page(book, first.sheet, "1. 6 - 2", now)
    ...     book.close()
    >>> (first.title, first.version), (second.title, second.version)
    (('Kites', 1), ('Fractions', 2))
    """
    if len(typed) > LONGEST_TYPED:
        msg = f"there are {len(typed)} characters, and a page has {LONGEST_TYPED} at most"
        raise InputError(msg, remedy="Take some out; nothing is lost, and nothing was kept yet.")
    if recipe:
        read_recipe(recipe)
    made = recipe or _setting(typed, "recipe") or None
    if sheet is None:
        return _page(add_sheet(book, _title(typed), typed, now, made))
    with book.transaction() as within:
        newest = versions_of(within, sheet)[-1]
        if saw not in {None, newest.version} and newest.typed != typed:
            raise ChangedMeanwhile(
                f"Another window saved version {newest.version} of this page since this one was loaded",
                stands=f"{newest.version}",
                remedy="Yours is not saved yet. The other one stands in the list of versions: look at it, "
                "and save yours again to keep it as the next one.",
            )
        return _page(newest if newest.typed == typed else change_sheet(within, sheet, typed, now, made))


def set_page(
    book: Store,
    room_number: int,
    sheet: int | None,
    typed: str,
    *,
    day: date,
    now: datetime,
    recipe: str = "",
    saw: int | None = None,
    whom: str = "",
    by: str = "teacher",
) -> NightPage:
    """Keep a page and that a class takes it home on a day.

    Set again for the same day, that night gets the newest version, as long as no answer is written. A page
    that was printed before it was set is printed. ``whom`` is for whom it is, as typed
    (:func:`~onewhole.desk.classes.page_for.meant`); nothing typed changes nothing of that. All of it is kept,
    or none. Raises InputError for a page that cannot be printed and for a word of nobody, ChangedMeanwhile as
    :func:`keep_page`, NotThere and StoreRefused.
    """
    for mistake in laid(typed, now).mistakes:
        raise InputError(mistake.what, line=mistake.line, column=mistake.column, remedy=mistake.remedy)
    with book.transaction() as within:
        here = room(within, room_number)
        codes = meant(here, whom, groups_now(within, room_number) if whom.strip() else ())
        kept = keep_page(within, sheet, typed, now, recipe=recipe, saw=saw)
        nights = nights_of(within, room_number)
        there = next((one for one in nights if (one.sheet_number, one.day) == (kept.sheet, day)), None)
        if there is None:
            there = add_night(within, room_number, kept.sheet, kept.version, day)
        elif there.version != kept.version:
            there = change_version(within, there.number, kept.version)
        keep_printed_before(within, room_number, there.number, typed)
        if whom.strip():
            give_page_to(within, room_number, there.number, codes, now=now, by=by)
        return night_page(within, room_number, there.number)


def last_typed(book: Store, room_number: int) -> tuple[str, ...]:
    """Return what the class took home on its last nights, as typed."""
    return tuple(kept.typed for _, kept in set_pages(book, room_number)[-NIGHTS_BACK:])


def _page(kept: KeptSheet) -> KeptPage:
    return KeptPage(kept.number, kept.version, _title(kept.typed), kept.typed, kept.written)


def _title(typed: str) -> str:
    return _setting(typed, "title") or UNTITLED


def _setting(typed: str, name: str) -> str:
    """Return what a setting of the header says, readable or not; nothing where it is not set."""
    at = SheetEditor.of(typed).settings.get(name)
    return "" if at is None else " ".join(lines_of(typed)[at].partition(":")[2].split())
