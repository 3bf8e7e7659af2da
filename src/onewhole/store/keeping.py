"""Keeping: a backup in one file and back, all that is held on one pupil, a pupil erased, a last day."""

import os
import sqlite3
from base64 import b64encode
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from datetime import date
from pathlib import Path

from sqlalchemy import Connection, delete, select

from onewhole.errors import Fault
from onewhole.store import tables
from onewhole.store.classes import find_pupil
from onewhole.store.column_types import day_kept
from onewhole.store.copying import copy_beside, copy_into
from onewhole.store.opening import (
    Store,
    disk_refusals,
    make_beside,
    take_beside_away,
)
from onewhole.store.refusals import StoreRefused
from onewhole.store.settings import set_setting, setting
from onewhole.store.transaction import driver_of, translate_errors

_KEEP_UNTIL = "keep until"
#: The tables whose rows are one pupil's and go with the pupil.
_OF_A_PUPIL = (
    tables.answers,
    tables.corrections,
    tables.asked_answers,
    tables.night_words,
    tables.pupil_days,
    tables.own_pages,
    tables.given_out,
    tables.paper_cells,
)
#: So often a backup is begun again because pupils were erased meanwhile.
_TRIES = 20


def backup(store: Store, path: Path) -> None:
    """Write all that is kept to one file (mode 0600), beside first, then under its name.

    The store may be in use: the copy is of one moment. It is read back from the disk and compared before it
    takes its name. A pupil erased later stays in a backup made earlier; one that is erased while the copy is
    made is not in it. A link under the name is replaced, and what it leads to stays as it is. Raises
    `StoreRefused`; a file that stood under the name is then as it was.
    """
    goal = Path(os.path.realpath(path.parent)) / path.name
    if store.path in {goal, Path(os.path.realpath(path))}:
        raise StoreRefused("A backup needs a name of its own", where=str(path), remedy="Choose another name.")
    store.place.check()
    for _ in range(_TRIES):
        with (
            suppress(_Outdated),
            translate_errors(store.path),
            closing(store.engine.raw_connection()) as raw,
        ):
            return copy_beside(driver_of(raw), goal, lambda copy: _none_erased(store, copy))
    raise StoreRefused("Children are being erased", where=str(store.path), remedy="Do it again afterwards.")


class _Outdated(Exception):
    """A pupil is in a copy and no longer in the file."""


@contextmanager
def _none_erased(store: Store, copy: Path) -> Iterator[None]:
    """Let nobody write, and so nobody erase, while a copy takes its name; `_Outdated` for an old copy."""
    asked = select(tables.pupils.c.number)
    with translate_errors(store.path), closing(sqlite3.connect(copy)) as copied:
        then = {number for (number,) in copied.execute(str(asked))}
    with store.writing() as connection:
        if not then <= set(connection.scalars(asked)):
            raise _Outdated
        yield


def backup_bytes(store: Store) -> bytes:
    """Return a backup as the bytes of its file; nothing of it stays on the disk. Raises `StoreRefused`."""
    handle, beside = make_beside(store.path)
    try:
        with disk_refusals(store.path):
            with translate_errors(store.path), closing(store.engine.raw_connection()) as raw:
                copy_into(driver_of(raw), beside)
            return beside.read_bytes()
    finally:
        take_beside_away(handle, beside)


def all_on_pupil(store: Store, class_number: int, code: str) -> dict[str, object]:
    """A pupil's name, days, answers, corrections, talks, words on nights, and cells of papers, as plain text.

    Every writing is in it, and of cells that were read from a paper the picture, as base64.
    What was given out is in `given_out`; what was found in a night is in `night_cache`, and what that text
    means is the caller's business. Raises `NotThere`.
    """
    with store.reading() as connection:
        pupil = find_pupil(connection, class_number, code)
        of_class = tables.classes.c
        name = connection.scalar(select(of_class.name).where(of_class.number == class_number))
        hidden = {"pupil_number", "digest"}  # what takes back a row of a talk names it by its number
        rows = {
            table.name: [
                {
                    key: str(value)
                    for key, value in row.items()
                    if key not in hidden | ({"number"} if table is not tables.asked_answers else set())
                }
                for row in connection.execute(
                    select(table, tables.nights.c.day)
                    .join(tables.nights, tables.nights.c.number == table.c.night_number)
                    .where(table.c.pupil_number == pupil.number)
                    .order_by(table.c.number)
                ).mappings()
            ]
            for table in (tables.answers, tables.corrections, tables.asked_answers, tables.night_words)
        }
        rows["paper_cells"] = _paper_cells(connection, pupil.number)
        of_days = tables.pupil_days.c
        asked = select(of_days.joined, of_days.left).where(of_days.pupil_number == pupil.number)
        days = connection.execute(asked).one_or_none() or (None, None)
        of_forms = tables.own_pages.c
        form = connection.scalar(select(of_forms.form).where(of_forms.pupil_number == pupil.number))
    joined, left = ("" if day is None else day.isoformat() for day in days)
    return {
        "class": name,
        "code": pupil.code,
        "name": pupil.name,
        "joined": joined,
        "left": left,
        "reads": form or "",
        **rows,
    }


def _paper_cells(connection: Connection, pupil: int) -> list[dict[str, str]]:
    cells = tables.paper_cells
    asked = (
        select(cells, tables.nights.c.day)
        .join(tables.nights, tables.nights.c.number == cells.c.night_number)
        .where(cells.c.pupil_number == pupil)
        .order_by(cells.c.night_number, cells.c.problem)
    )
    return [
        {
            key: b64encode(value).decode() if isinstance(value, bytes) else str(value)
            for key, value in row.items()
            if key not in {"pupil_number", "digest"}
        }
        for row in connection.execute(asked).mappings()
    ]


def erase_pupil(store: Store, class_number: int, code: str) -> None:
    """Take a pupil and all that is held on it out of the file, so that no byte of it stays there.

    Cached results of the class are deleted too. The code is not given again. Backups made earlier still hold
    the pupil. Raises `NotThere`; raises `StoreRefused` when another window is reading or the disk is full: it
    says whether the pupil is gone, and then traces may stay until `clean` has run. A shared store raises
    `Fault`.
    """
    check_alone(store)
    with store.writing() as connection:
        number = find_pupil(connection, class_number, code).number
        for table in _OF_A_PUPIL:
            connection.execute(delete(table).where(table.c.pupil_number == number))
        nights = select(tables.nights.c.number).where(tables.nights.c.class_number == class_number)
        for cache in tables.CACHES:
            connection.execute(delete(cache).where(cache.c.night_number.in_(nights)))
        connection.execute(delete(tables.pupils).where(tables.pupils.c.number == number))
    store.engine.clear_compiled_cache()  # a statement remembers the values of its first use
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
    check_alone(store)
    store.place.check()
    with translate_errors(store.path), closing(store.engine.raw_connection()) as raw:
        cursor = raw.cursor()
        cursor.execute("VACUUM")
        busy, *_ = cursor.execute("PRAGMA wal_checkpoint(TRUNCATE)").fetchone()
    store.place.check()
    if busy:
        raise StoreRefused(
            "Another window is reading the file",
            where=str(store.path),
            remedy="Close the other windows.",
        )


def check_alone(store: Store) -> None:
    """Refuse a store that is within a transaction: a file is written anew by nobody but itself."""
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
