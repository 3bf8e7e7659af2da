"""Check what is kept, and take back what was damaged: told by class, night, the child's code and problem."""

from collections.abc import Sequence
from datetime import datetime
from pathlib import Path

from msgspec import Struct

from onewhole.desk.keep.backups import back_up_before
from onewhole.desk.keep.damage_told import ToldDamage, damage_told
from onewhole.store.backups import backups_of
from onewhole.store.digest_check import CheckedFile
from onewhole.store.mending import Found, accept, check_backup, check_store, find_right, mend
from onewhole.store.opening import Store, check_file
from onewhole.store.refusals import StoreRefused
from onewhole.store.row_places import places_of

#: So often at most is looked again: with a child back, its answers can be found.
_TURNS = 3


class CheckedBook(Struct, frozen=True):
    """What a check found: how many rows were read, the checksum of all, what is damaged."""

    rows: int
    checksum: str
    damages: tuple[ToldDamage, ...]

    @property
    def mends(self) -> bool:
        """Say whether something of it can be made as it was written."""
        return any(one.mends for one in self.damages)


class CheckedBackup(Struct, frozen=True):
    """What the check of a backup found: how many damages (0: all is as written), or why it cannot be read."""

    path: Path
    checksum: str
    damages: int
    refused: str = ""


def check_book(book: Store) -> CheckedBook:
    """Check every row of a file; look in its automatic backups for what was damaged. Raises StoreRefused."""
    checked = check_store(book)
    return _told(book, checked, _found(book, checked))


def damages_in(book: Store) -> int:
    """Return how many damages a check of every row finds. Raises StoreRefused."""
    return len(check_store(book).damages)


def check_backups(path: Path) -> tuple[CheckedBackup, ...]:
    """Check every automatic backup of a file, the newest first; nothing is written."""
    return tuple(_checked(one.path) for one in backups_of(path))


def check_copy(path: Path) -> CheckedBackup:
    """Check a backup wherever it lies; nothing is written. Raises StoreRefused for what is none."""
    check_file(path)
    return _checked(path)


def mend_book(book: Store, now: datetime) -> tuple[CheckedBook, Path | None]:
    """Make what was damaged as it was written, as far as the backups have it; return what is damaged still.

    A backup of the file as it stands is made first, and its path returned; None where nothing can be mended.
    Raises StoreRefused: then the file is as it was.
    """
    checked = check_store(book)
    found = _found(book, checked)
    if not any(one.mends for one in found):
        return _told(book, checked, found), None
    before = back_up_before(book, now)
    for _ in range(_TURNS):
        checked = mend(book, found)
        found = _found(book, checked)
        if not any(one.mends for one in found):
            break
    return _told(book, checked, found), before


def let_stand(book: Store, now: datetime) -> Path:
    """Let all stand as it is now, so that it is not told any more. Return the backup made before."""
    before = back_up_before(book, now)
    accept(book)
    return before


def checksum_told(digest: int | None) -> str:
    """A checksum in four groups of four signs; empty for a file of an earlier release, which has none.

    >>> checksum_told(-2)
    'ffff ffff ffff fffe'
    """
    if digest is None:
        return ""
    signs = f"{digest % 2**64:016x}"
    return " ".join(signs[at : at + 4] for at in range(0, 16, 4))


def _checked(path: Path) -> CheckedBackup:
    try:
        checked = check_backup(path)
    except StoreRefused as refused:
        return CheckedBackup(path, "", 0, refused.what)
    return CheckedBackup(path, checksum_told(checked.digest), len(checked.damages))


def _found(book: Store, checked: CheckedFile) -> tuple[Found, ...]:
    return find_right(book, checked.damages, [one.path for one in backups_of(book.path)])


def _told(book: Store, checked: CheckedFile, found: Sequence[Found]) -> CheckedBook:
    damages: tuple[ToldDamage, ...] = ()
    if found:
        places, days = places_of(book), {one.path: one.day for one in backups_of(book.path)}
        damages = tuple(damage_told(one, places, days) for one in found)
    return CheckedBook(checked.rows, checksum_told(checked.digest), damages)
