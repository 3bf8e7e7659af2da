"""Keep the file of a class safe: back it up, erase a child, know the last day."""

import os
from collections.abc import Iterable, Iterator
from contextlib import suppress
from datetime import date, datetime, timedelta
from pathlib import Path

from msgspec import Struct

from onewhole.desk.keep.erasing import erased_in_backups, taken_away
from onewhole.desk.keep.pupil_cache import clear_pupil_caches
from onewhole.desk.keep.way_back import damaged_of, make_folder, name_before
from onewhole.store.backups import Backup, backups_folder, backups_of, daily_name
from onewhole.store.classes import pupils_of
from onewhole.store.keeping import (
    backup,
    backup_bytes,
    clean,
    erase_pupil,
    is_over,
    keep_until,
    set_keep_until,
)
from onewhole.store.opening import Store, all_beside, disk_refusals
from onewhole.store.orphan_cleanup import orphans_of, remove_orphans
from onewhole.store.refusals import StoreRefused

__all__ = [
    "PRIVACY",
    "Erased",
    "back_up",
    "back_up_before",
    "back_up_daily",
    "backup_bytes",
    "backups_folder",
    "backups_of",
    "clean",
    "erase_everywhere",
    "is_over",
    "keep_until",
    "remove_kept",
    "set_keep_until",
]

#: So many daily backups are kept.
DAILY = 7
#: So long a backup stays that was made before another was brought back.
BEFORE_A_RESTORE = timedelta(weeks=8)

PRIVACY = (
    "Follow your school's and your state's or country's rules on what may be held on a child, for how long, "
    "and who may see it. FERPA in the United States and the GDPR in Europe are examples of such rules. "
    "Ask your school when in doubt: this program does not know them."
)


class Erased(Struct, frozen=True):
    """Where else a child was erased from: `cleaned` are backups; what is `left` may still hold the child.

    `traces` tells why traces may still be in the file itself, and is empty where there are none.
    """

    code: str
    cleaned: tuple[Path, ...]
    left: tuple[Path, ...]
    traces: str = ""


def back_up(book: Store, path: Path) -> None:
    """Write all that is kept into one new file. Raises StoreRefused, also where the name is taken."""
    check_free(path)
    backup(book, path)


def check_free(path: Path) -> None:
    """Refuse a name that is taken, by a link too: a backup replaces nothing. Raises StoreRefused."""
    if os.path.lexists(path):
        raise StoreRefused("There is a file of this name", where=str(path), remedy="Choose another name.")


def back_up_daily(book: Store, folder: Path, now: datetime) -> Path | None:
    """Make today's backup in a folder (made where there is none, mode 0700); None when there is one already.

    The newest 7 daily backups are kept, today's always, and those made before a restore for 8 weeks. What
    killed processes left half made is taken away. Raises StoreRefused; the book is as it was.
    """
    remove_orphans(book.path)
    today = now.astimezone().date()
    make_folder(folder)
    goal = folder / daily_name(book.path, today)
    if goal.exists() and not goal.is_symlink():
        return None
    backup(book, goal)
    for old in _expired(backups_of(book.path), today):
        with suppress(OSError):
            old.path.unlink()
    return goal


def _expired(there: Iterable[Backup], today: date) -> Iterator[Backup]:
    """Give the backups that have served their time, of those there are, the newest first.

    Of the daily ones the newest 7 stay. One that is dated after today was made by a wrong clock, before
    today's: it counts as older than all others. One that was made before a restore stays for 8 weeks, and
    the newest 7 of these stay in any case, whatever the clock says.
    """
    daily: list[Backup] = []
    before: list[Backup] = []
    for one in sorted(there, key=lambda one: one.day > today):
        (daily if one.at is None else before).append(one)
    yield from daily[DAILY:]
    yield from (one for one in before[DAILY:] if one.day < today - BEFORE_A_RESTORE)


def back_up_before(book: Store, now: datetime) -> Path:
    """Make a backup of what stands before it is changed as a whole, under a name with day and time.

    Raises StoreRefused; the book is as it was.
    """
    before = name_before(book.path, now)
    backup(book, before)
    return before


def remove_kept(file: Path) -> None:
    """Take a backup or a damaged file off the disk, with its logs. Raises StoreRefused."""
    with disk_refusals(file):
        for one in (*all_beside(file), file):
            one.unlink(missing_ok=True)


def erase_everywhere(
    book: Store, room: int, code: str, *, backups: bool = True, made: Path | None = None
) -> Erased:
    """Erase a child from the file, from memory and, if asked, from its automatic backups; say what is left.

    `made` is the folder of what the program made of this file: tomorrow's pages, which tell of children, are
    taken away there, and can be made again. Backups that were put elsewhere, and pages on paper, are the
    teacher's to find. Raises NotThere when the child is not in the file, and StoreRefused when nothing was
    erased; where the child is out of the file and only traces may be left in it, the answer tells so.
    """
    traces = ""
    try:
        erase_pupil(book, room, code)
    except StoreRefused as refusal:
        if any(pupil.code == code for pupil in pupils_of(book, room)):
            raise
        traces = refusal.what
    clear_pupil_caches()
    remove_orphans(book.path)
    pages = tuple(_pages_left(made)) if made else ()
    cleaned, left = erased_in_backups(
        book.path, lambda saved: erase_pupil(saved, room, code), backups=backups
    )
    return Erased(code, cleaned, (*pages, *left, *damaged_of(book.path), *orphans_of(book.path)), traces)


def _pages_left(made: Path) -> Iterator[Path]:
    """Take tomorrow's pages of every night away, also where a killed run hid them; yield what did not go."""
    for night in sorted(made.glob("*night-*")):
        pages = night / "tomorrow"
        if not taken_away(pages):
            yield pages
