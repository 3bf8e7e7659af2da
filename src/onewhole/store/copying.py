"""A file of ours copied by SQLite, whole and of one moment: into an empty file, or under a new name."""

import os
import sqlite3
import sys
from collections.abc import Callable
from contextlib import AbstractContextManager, closing, nullcontext
from itertools import count
from pathlib import Path

from onewhole.store.opening import disk_refusals, logs_of, make_beside, sync_folder, take_beside_away
from onewhole.store.reading_back import digest_of, read_back
from onewhole.store.refusals import StoreRefused
from onewhole.store.transaction import translate_errors

#: On Windows an open file takes no other name.
CLOSES_FIRST = sys.platform == "win32"


def copy_beside(
    source: sqlite3.Connection,
    goal: Path,
    turn: Callable[[Path], AbstractContextManager[None]] = lambda _copy: nullcontext(),
) -> None:
    """Copy to a new file beside a name, put it on the disk, give it the name; or leave nothing.

    The copy is read back from the disk and compared. It takes its name within ``turn``, which is given the
    copy and may refuse it. Raises `StoreRefused`.
    """
    if any(log.exists() for log in logs_of(goal)):
        raise StoreRefused(
            "Beside this name lies the log of another file",
            where=str(goal),
            remedy="Choose another name, or take the log away first.",
        )
    handle: int | None
    handle, beside = make_beside(goal)
    try:
        with disk_refusals(goal):
            with translate_errors(goal):
                copy_into(source, beside)
            written = digest_of(handle)
            os.fsync(handle)
            if read_back(handle) != written:
                raise StoreRefused(
                    "The disk does not give back what was written",
                    where=str(goal),
                    remedy="Put the backup on another disk.",
                )
            with turn(beside):
                if CLOSES_FIRST:
                    os.close(handle)
                    handle = None
                beside.replace(goal)
    finally:
        take_beside_away(handle, beside)
    sync_folder(goal.parent)


def copy_into(source: sqlite3.Connection, file: Path) -> None:
    """Copy into an empty file, which wants no log beside it: a half of it is thrown away."""
    with closing(sqlite3.connect(file, isolation_level=None)) as target:
        target.execute("PRAGMA journal_mode = OFF")
        target.execute("PRAGMA synchronous = OFF")
        source.backup(target, progress=give_up_when_busy())
        target.execute("PRAGMA journal_mode = DELETE")


def give_up_when_busy(held: Callable[[], None] = lambda: None) -> Callable[[int, int, int], None]:
    """Return the progress callback of a copy: it gives up after 20 busy tries, a quarter of a second apart.

    ``held`` is called once, after the first step that was done: from then on nobody else writes the target.
    """
    tries, done = count(1), count()

    def ask(status: int, _left: int, _all: int) -> None:
        if status in {sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED}:
            if next(tries) >= 20:
                raise sqlite3.OperationalError("database is locked")
        elif not next(done):
            held()

    return ask
