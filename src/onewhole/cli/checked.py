"""What `keep check` and `keep mend` say."""

from collections.abc import Iterator
from datetime import datetime
from pathlib import Path

from onewhole.desk.classes.class_records import Store
from onewhole.desk.keep.checking import (
    CheckedBackup,
    CheckedBook,
    check_backups,
    check_book,
    check_copy,
    damages_in,
    let_stand,
    mend_book,
)
from onewhole.desk.keep.way_back import not_as_written, open_kept

#: What a script is told where something is damaged.
DAMAGED = 2


def checked(book: Store) -> tuple[int, tuple[str, ...]]:
    """Check a file and its automatic backups; return what a script is told, and what is said.

    A script is told of the file alone: a backup made before something was taken back has the damage still.
    """
    found, backups = check_book(book), check_backups(book.path)
    lines = (*_book(found, book.path), *(f"   {_backup(one, book.path)}" for one in backups))
    return DAMAGED if found.damages else 0, lines


def checked_copy(file: Path) -> tuple[int, tuple[str, ...]]:
    """Check a backup wherever it lies; nothing in it or beside it is changed. Raises StoreRefused."""
    copy = check_copy(file)
    return DAMAGED if copy.damages else 0, (f"{file.name}: {_found(copy)}", *_checksum(copy.checksum))


def checked_after_restoring(path: Path) -> Iterator[str]:
    """Say where what was brought back is not as it was written."""
    book = open_kept(path)
    try:
        count = damages_in(book)
    finally:
        book.close()
    if told := not_as_written(count):
        yield f"{told}. See what: onewhole keep check {path.name}"


def mended(book: Store, now: datetime, *, as_it_stands: bool) -> tuple[int, tuple[str, ...]]:
    """Take back what was damaged, or let it stand; return what a script is told, and what is said."""
    if as_it_stands:
        before = let_stand(book, now)
        return 0, (_before(before), "All stands as it is now, and is not told as damaged any more.")
    left, backup = mend_book(book, now)
    lines = (_before(backup),) if backup else ("There is nothing that can be taken back.",)
    return DAMAGED if left.damages else 0, (*lines, *_book(left, book.path))


def _book(found: CheckedBook, path: Path) -> Iterator[str]:
    if not found.damages:
        yield f"{found.rows} rows were read, and all are as they were written."
        yield from _checksum(found.checksum)
        return
    for one in found.damages:
        yield one.said
    if found.mends:
        yield f"Take back what can be: onewhole keep mend {path.name}"
    else:
        yield (
            "Look at each and type it anew. Then let the rest stand: "
            f"onewhole keep mend {path.name} --as-it-stands"
        )


def _backup(one: CheckedBackup, path: Path) -> str:
    return f"{one.path.relative_to(path.parent).as_posix()}: {_found(one)}"


def _found(one: CheckedBackup) -> str:
    if one.refused:
        return f"{one.refused}."
    if one.damages:
        return f"damaged in {one.damages} place{'s' * (one.damages > 1)}."
    if not one.checksum:
        return "it can be read whole; an earlier release wrote it without checksums."
    return "as it was written."


def _checksum(told: str) -> Iterator[str]:
    if told:
        yield f"Checksum: {told}"


def _before(backup: Path) -> str:
    return f"What stood there is kept in {backup.parent.name}/{backup.name}."
