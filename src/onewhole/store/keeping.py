"""Keeping: a backup in one file and back, all that is held on one pupil, a pupil erased, a last day."""

import os
import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import date
from itertools import count
from pathlib import Path

from sqlalchemy import delete, select

from onewhole.errors import Fault
from onewhole.store import tables
from onewhole.store.classes import find_pupil
from onewhole.store.column_types import day_kept
from onewhole.store.opening import (
    Store,
    check_file,
    logs_of,
    make_beside,
    open_store,
    refused,
    sync_folder,
    take_beside_away,
)
from onewhole.store.refusals import StoreRefused
from onewhole.store.settings import set_setting, setting
from onewhole.store.transaction import translate_errors

_KEEP_UNTIL = "keep until"


def backup(store: Store, path: Path) -> None:
    """Write all that is kept to one file (mode 0600), beside first, then under its name.

    The store may be in use: the copy is of one moment. A pupil erased later stays in a backup made earlier.
    A link under the name is replaced, and what it leads to stays as it is. Raises `StoreRefused`; a file that
    stood under the name is then as it was.
    """
    goal = Path(os.path.realpath(path.parent)) / path.name
    if store.path in {goal, Path(os.path.realpath(path))}:
        raise StoreRefused("A backup needs a name of its own", where=str(path), remedy="Choose another name.")
    with closing(store.engine.raw_connection()) as raw:
        source = raw.driver_connection
        assert isinstance(source, sqlite3.Connection)
        _copy_beside(source, goal)


def backup_bytes(store: Store) -> bytes:
    """Return a backup as the bytes of its file; nothing of it stays on the disk. Raises `StoreRefused`."""
    handle, beside = make_beside(store.path)
    try:
        with translate_errors(store.path), closing(store.engine.raw_connection()) as raw:
            source = raw.driver_connection
            assert isinstance(source, sqlite3.Connection)
            _copy_into(source, beside)
        return beside.read_bytes()
    except OSError as error:
        raise error if isinstance(error, StoreRefused) else refused(store.path, error) from error
    finally:
        take_beside_away(handle, beside)


def restore(saved: Path, path: Path) -> Store:
    """Bring a backup back under a name and open it: what was kept there is replaced, all of it or nothing.

    A damaged or foreign file under the name is refused, never written over: keep it aside first. Raises
    `StoreRefused`.
    """
    check_file(saved)
    goal = Path(os.path.realpath(path))
    with translate_errors(goal), closing(sqlite3.connect(saved)) as source:
        if not goal.exists():
            _copy_beside(source, goal)
            return open_store(goal)
        open_store(goal).close()
        with closing(sqlite3.connect(goal, timeout=5)) as target:
            target.execute("PRAGMA synchronous = FULL")
            source.backup(target, progress=_give_up_when_busy())
    return open_store(goal)


def _copy_beside(source: sqlite3.Connection, goal: Path) -> None:
    """Copy to a new file beside a name, put it on the disk, give it the name; or leave nothing."""
    if any(log.exists() for log in logs_of(goal)):
        raise StoreRefused(
            "Beside this name lies the log of another file",
            where=str(goal),
            remedy="Choose another name, or take the log away first.",
        )
    handle, beside = make_beside(goal)
    try:
        with translate_errors(goal):
            _copy_into(source, beside)
        os.fsync(handle)
        beside.replace(goal)
    except OSError as error:
        raise error if isinstance(error, StoreRefused) else refused(goal, error) from error
    finally:
        take_beside_away(handle, beside)
    sync_folder(goal.parent)


def _copy_into(source: sqlite3.Connection, file: Path) -> None:
    """Copy into an empty file, which wants no log beside it."""
    with closing(sqlite3.connect(file, isolation_level=None)) as target:
        source.backup(target, progress=_give_up_when_busy())
        target.execute("PRAGMA journal_mode = DELETE")


def _give_up_when_busy() -> Callable[[int, int, int], None]:
    """The progress callback of a copy: it gives up after 20 busy tries, a quarter of a second apart."""
    tries = count(1)

    def ask(status: int, _left: int, _all: int) -> None:
        if status in {sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED} and next(tries) >= 20:
            raise sqlite3.OperationalError("database is locked")

    return ask


def all_on_pupil(store: Store, class_number: int, code: str) -> dict[str, object]:
    """A pupil's name, answers and corrections, as plain text and lists; every writing is in it.

    What was given out is in `given_out`; what was found in a night is in `night_cache`, and what that text
    means is the caller's business. Raises `NotThere`.
    """
    with store.reading() as connection:
        pupil = find_pupil(connection, class_number, code)
        of_class = tables.classes.c
        name = connection.scalar(select(of_class.name).where(of_class.number == class_number))
        rows = {
            table.name: [
                {key: str(value) for key, value in row.items() if key not in {"pupil_number", "number"}}
                for row in connection.execute(
                    select(table, tables.nights.c.day)
                    .join(tables.nights, tables.nights.c.number == table.c.night_number)
                    .where(table.c.pupil_number == pupil.number)
                    .order_by(table.c.number)
                ).mappings()
            ]
            for table in (tables.answers, tables.corrections)
        }
    return {"class": name, "code": pupil.code, "name": pupil.name, **rows}


def erase_pupil(store: Store, class_number: int, code: str) -> None:
    """Take a pupil and all that is held on it out of the file, so that no byte of it stays there.

    Cached results of the class are deleted too. The code is not given again. Backups made earlier still hold
    the pupil. Raises `NotThere`; raises `StoreRefused` when another window is reading or the disk is full: it
    says whether the pupil is gone, and then traces may stay until `clean` has run. A shared store raises
    `Fault`.
    """
    _check_alone(store)
    with store.writing() as connection:
        number = find_pupil(connection, class_number, code).number
        for table in (tables.answers, tables.corrections, tables.given_out):
            connection.execute(delete(table).where(table.c.pupil_number == number))
        nights = select(tables.nights.c.number).where(tables.nights.c.class_number == class_number)
        connection.execute(delete(tables.night_cache).where(tables.night_cache.c.night_number.in_(nights)))
        connection.execute(delete(tables.pupils).where(tables.pupils.c.number == number))
    try:
        clean(store)
    except StoreRefused as refusal:
        raise StoreRefused(
            f"The pupil is erased, but traces may still be in the file. {refusal.what}",
            where=refusal.where,
            remedy=f"{refusal.remedy} Then clean the file.",
        ) from refusal


def clean(store: Store) -> None:
    """Rewrite the file without what was erased (VACUUM), and truncate the log. Raises `StoreRefused`.

    A file cannot be written anew within a transaction: a shared store raises `Fault`.
    """
    _check_alone(store)
    with translate_errors(store.path), closing(store.engine.raw_connection()) as raw:
        cursor = raw.cursor()
        cursor.execute("VACUUM")
        busy, *_ = cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
    if busy:
        raise StoreRefused(
            "Another window is reading the file",
            where=str(store.path),
            remedy="Close the other windows.",
        )


def _check_alone(store: Store) -> None:
    if store.shared is not None:
        msg = "a file is not cleaned within a transaction"
        raise Fault(msg)


def settle(store: Store) -> None:
    """Merge the write-ahead log into a file that nobody else has open. Raises `StoreRefused`."""
    store.close()
    with translate_errors(store.path), closing(sqlite3.connect(store.path, isolation_level=None)) as file:
        file.execute("PRAGMA journal_mode = DELETE")


def set_keep_until(store: Store, day: date | None) -> None:
    """Keep the last day on which this file may be held, or with None that there is none."""
    set_setting(store, _KEEP_UNTIL, None if day is None else day.isoformat())


def keep_until(store: Store) -> date | None:
    """The last day on which this file may be held; None where none was set."""
    text = setting(store, _KEEP_UNTIL)
    with translate_errors(store.path):
        return None if text is None else day_kept(text)


def is_over(store: Store, today: date) -> bool:
    """Say whether the last day has passed. Nothing is erased by itself: a teacher is asked."""
    last = keep_until(store)
    return last is not None and today > last
