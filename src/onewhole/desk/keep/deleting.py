"""Delete a night, a page or a class, a backup made first; or erase a class for good, from the backups too."""

from collections.abc import Callable, Collection, Iterator
from datetime import datetime
from pathlib import Path

from msgspec import Struct

from onewhole.desk.classes.class_records import night_page, room
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.keep.erasing import erased_in_backups, taken_away
from onewhole.desk.keep.pupil_cache import clear_pupil_caches
from onewhole.desk.keep.way_back import damaged_of, name_before
from onewhole.desk.page.kept_pages import kept_versions
from onewhole.store import deleting
from onewhole.store.classes import class_names
from onewhole.store.deleting import Holding, class_holding, night_holding, sheet_holding
from onewhole.store.keeping import set_keep_until
from onewhole.store.nights import nights_of
from onewhole.store.opening import Store
from onewhole.store.orphan_cleanup import orphans_of, remove_orphans
from onewhole.store.refusals import StoreRefused

__all__ = [
    "Deleted",
    "ErasedClass",
    "Holding",
    "class_holding",
    "delete_class",
    "delete_night",
    "delete_page",
    "erase_class",
    "holding_text",
    "night_holding",
    "sheet_holding",
]


class Deleted(Struct, frozen=True):
    """What was deleted, by name; ``before`` is the backup that has all of it, ``left`` are files made of it.

    What is left could not be taken off the disk.
    """

    called: str
    went: Holding
    before: Path
    left: tuple[Path, ...]


class ErasedClass(Struct, frozen=True):
    """A class that is erased: ``cleaned`` are backups that had it; what is ``left`` may still hold it.

    ``traces`` tells why traces may still be in the file itself, and is empty where there are none.
    """

    called: str
    cleaned: tuple[Path, ...]
    left: tuple[Path, ...]
    traces: str = ""


def holding_text(holding: Holding) -> str:
    """Return what a form saw that names how much goes.

    >>> holding_text(Holding(1, 41, 23, 0, 2))
    '1 41 23 0 2'
    """
    counts = (holding.nights, holding.answers, holding.pupils, holding.talks, holding.recordings)
    return " ".join(map(str, counts))


def delete_night(
    book: Store,
    room_number: int,
    night: int,
    now: datetime,
    *,
    saw: str | None = None,
    made: Path | None = None,
) -> Deleted:
    """Delete a night with its answers, once a backup of all is made; all of it, or nothing.

    ``saw`` is how much the window named (:func:`holding_text`); ``made`` is the folder of what the program
    made of this file: its pages and films of the night are taken away. Raises NotThere, ChangedMeanwhile and
    StoreRefused.
    """

    def delete(within: Store) -> tuple[str, Holding, tuple[int, ...]]:
        page = night_page(within, room_number, night)
        went = _as_seen(night_holding(within, night), saw)
        deleting.delete_night(within, night)
        return page.name, went, (night,)

    return _deleted(book, now, delete, made)


def delete_page(
    book: Store, sheet: int, now: datetime, *, saw: str | None = None, made: Path | None = None
) -> Deleted:
    """Delete a page with its versions and every night of it, in whatever class, as :func:`delete_night`."""

    def delete(within: Store) -> tuple[str, Holding, tuple[int, ...]]:
        called = kept_versions(within, sheet)[0].title
        went, nights = _as_seen(sheet_holding(within, sheet), saw), deleting.nights_of_sheet(within, sheet)
        deleting.delete_sheet(within, sheet)
        return called, went, nights

    return _deleted(book, now, delete, made)


def delete_class(
    book: Store, room_number: int, now: datetime, *, saw: str | None = None, made: Path | None = None
) -> Deleted:
    """Delete a class with its pupils and nights, as :func:`delete_night`; its pages stay.

    The children are still in the backups: that is what the backup is for. :func:`erase_class` is for good.
    """

    def delete(within: Store) -> tuple[str, Holding, tuple[int, ...]]:
        called = room(within, room_number).name
        went = _as_seen(class_holding(within, room_number), saw)
        nights = tuple(night.number for night in nights_of(within, room_number))
        deleting.delete_class(within, room_number)
        return called, went, nights

    return _deleted(book, now, delete, made)


def erase_class(
    book: Store, room_number: int, *, saw: str | None = None, backups: bool = True, made: Path | None = None
) -> ErasedClass:
    """Erase a class at once: its children, nights and answers, from the file and, if asked, its backups.

    With the last class the last day goes, too. What was put elsewhere, and what is on paper, is the teacher's
    to find. Raises NotThere, ChangedMeanwhile, and StoreRefused when nothing was erased; where the class is
    out of the file and only traces may be left in it, the answer tells so.
    """
    with book.snapshot() as seen:
        called = room(seen, room_number).name
        _as_seen(class_holding(seen, room_number), saw)
        nights = tuple(night.number for night in nights_of(seen, room_number))
        born = deleting.class_made(seen, room_number)
    traces = ""
    try:
        deleting.erase_class(book, room_number, born)
    except StoreRefused as refusal:
        if any(number == room_number for number, _ in class_names(book)):
            raise
        traces = refusal.what
    if not class_names(book):
        set_keep_until(book, None)
    clear_pupil_caches()
    remove_orphans(book.path)
    pages = tuple(_made_left(made, nights))
    cleaned, left = erased_in_backups(
        book.path, lambda saved: deleting.erase_class(saved, room_number, born), backups=backups
    )
    unsure = (*pages, *left, *damaged_of(book.path), *orphans_of(book.path))
    return ErasedClass(called, cleaned, unsure, traces)


def _deleted(
    book: Store,
    now: datetime,
    delete: Callable[[Store], tuple[str, Holding, tuple[int, ...]]],
    made: Path | None,
) -> Deleted:
    """Make a backup and delete within one transaction, so that no answer falls between the two."""
    with book.transaction() as within:
        before = deleting.back_up_first(within, lambda: name_before(within.path, now))
        called, went, nights = delete(within)
    clear_pupil_caches()
    return Deleted(called, went, before, tuple(_made_left(made, nights)))


def _as_seen(holding: Holding, saw: str | None) -> Holding:
    """Return how much goes; ChangedMeanwhile where a window named another amount."""
    if saw in {None, holding_text(holding)}:
        return holding
    raise ChangedMeanwhile(
        "Something was written or taken away in another window since this one named what goes",
        stands=holding_text(holding),
        remedy="Nothing was deleted. Look at what goes now, and delete it then.",
    )


def _made_left(made: Path | None, nights: Collection[int]) -> Iterator[Path]:
    """Take away what was made of nights, also where a killed run hid it; yield what did not go."""
    if made is None:
        return
    for night in nights:
        for path in (*made.glob(f"night-{night}"), *made.glob(f".night-{night}.*")):
            if not taken_away(path):
                yield path
