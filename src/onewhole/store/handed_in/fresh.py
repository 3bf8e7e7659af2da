"""A fresh file made of a file that was handed in: every row read and checked, today's tables, read whole."""

import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import msgspec

from onewhole.store.handed_in.asking import Frames, asked, refused
from onewhole.store.handed_in.records import RecordType, Row, given_of, record_types, rows_of
from onewhole.store.migrating import bring_forward, known_steps
from onewhole.store.opening import Store, disk_refusals, engine_for, make_beside, take_beside_away
from onewhole.store.place import FilePlace
from onewhole.store.refusals import Damaged, NotStorable
from onewhole.store.schema import step_of
from onewhole.store.standing import MARK
from onewhole.store.transaction import translate_errors
from onewhole.store.whole import read_whole

#: While it is made nobody else reads it, and what is not finished is thrown away.
_IN_THE_MAKING = ("PRAGMA journal_mode = OFF", "PRAGMA synchronous = OFF", "PRAGMA foreign_keys = OFF")
#: A code that was given is never given again: no pupil's number is higher than the class has given.
_CODES = (
    "SELECT code FROM pupils JOIN classes ON classes.number = class_number "
    "WHERE CAST(substr(code, 2) AS INTEGER) > codes_given LIMIT 1"
)


@contextmanager
def fresh_file(saved: Path, goal: Path) -> Iterator[Path]:
    """Give a file beside `goal` that holds what a backup holds, on the disk and checked; take it away then.

    The backup is read by a process that can do nothing else, its rows are read as typed records and written
    into a new file of the backup's own step, and that is brought forward to today's. Raises `BackupRefused`,
    which says what is wrong and where, and `StoreRefused` where no file can be made.
    """
    handle, beside = make_beside(goal)
    try:
        with disk_refusals(goal):
            with translate_errors(goal):
                with asked(saved) as frames:
                    step = fill(frames, saved, beside)
                _finish(step, saved, beside)
            os.fsync(handle)
        yield beside
    finally:
        take_beside_away(handle, beside)


def fill(frames: Frames, saved: Path, beside: Path) -> str:
    """Write the rows of a backup into an empty file, at the backup's own step; return that step."""
    step = step_checked(frames, saved)
    engine = engine_for(FilePlace.of(beside))
    try:
        with engine.begin() as connection:
            connection.exec_driver_sql(f"PRAGMA application_id = {int.from_bytes(MARK)}")
            bring_forward(connection, step)
    finally:
        engine.dispose()
    with closing(sqlite3.connect(beside, isolation_level=None)) as file:
        for line in _IN_THE_MAKING:
            file.execute(line)
        file.execute("BEGIN")
        for record in record_types(step):
            for rows in rows_of(frames, saved, record):
                _insert(file, saved, record, rows)
        for name, number in given_of(frames, saved).items():
            file.execute("UPDATE sqlite_sequence SET seq = max(seq, ?) WHERE name = ?", (number, name))
            missing = (
                "INSERT INTO sqlite_sequence SELECT ?1, ?2 WHERE ?1 NOT IN (SELECT name FROM sqlite_sequence)"
            )
            file.execute(missing, (name, number))
        _check_belonging(file, saved)
        file.execute("COMMIT")
    return step


def step_checked(frames: Frames, saved: Path) -> str:
    """The step of a backup that is whole and built exactly as ours are."""

    def ask(query: str) -> Iterator[Row]:
        for held in frames(query):
            yield from msgspec.msgpack.decode(held, type=list[Row])

    try:
        step = step_of(ask, str(saved))
    except Damaged as damaged:
        raise refused(saved, damaged.what) from damaged
    found = [value for (value,) in ask("PRAGMA quick_check(1)")]
    if found != ["ok"]:
        raise refused(saved, "it is damaged")
    return step


def _insert(file: sqlite3.Connection, saved: Path, record: RecordType, rows: list[Row]) -> None:
    try:
        file.executemany(record.insert, rows)
    except sqlite3.IntegrityError as error:
        raise refused(saved, f"{record.table}: two rows have one number or one name") from error


def _check_belonging(file: sqlite3.Connection, saved: Path) -> None:
    """Refuse a row that belongs to one that is not there, and a code that was never given."""
    for table, row, parent, _ in file.execute("PRAGMA foreign_key_check"):
        raise refused(saved, f"{table}, row {row}: what it belongs to in {parent} is not there")
    for (code,) in file.execute(_CODES):
        raise refused(saved, f"pupils, {code}: this code was not given yet")


def _finish(step: str, saved: Path, beside: Path) -> None:
    """Bring the file forward, check it and read it whole."""
    engine = engine_for(FilePlace.of(beside))
    try:
        if step != known_steps()[-1]:
            with engine.execution_options(writing=True).begin() as connection:
                bring_forward(connection)
        with closing(engine.raw_connection()) as raw:
            if raw.cursor().execute("PRAGMA integrity_check").fetchall() != [("ok",)]:
                raise refused(saved, "it cannot be brought to this release")
        read_whole(Store(FilePlace.of(beside), engine))
    except (Damaged, NotStorable) as error:
        raise refused(saved, error.what) from error
    finally:
        engine.dispose()
