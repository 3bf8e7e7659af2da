"""What the digests cost: an answer kept, a class of 180 nights opened, backed up and checked.

Run: `python bench/digests.py`. 180 nights x 25 pupils x 12 answers in a file. What is compared takes turns
in one process, so that a busy moment hits both: an answer kept, and kept by a store that keeps no digests;
the file opened and its classes read, by both; the backup, which is read back, and SQLite's own copy with a
synced journal, as backups were made before. Told are medians. Goal: at most 1.3 times each.
"""

import os
import shutil
import sqlite3
import tempfile
from collections.abc import Callable
from contextlib import closing
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from statistics import median
from time import perf_counter, process_time
from unittest.mock import patch

from onewhole.store import opening
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.classes import add_class, add_pupil, classes_with_pupils
from onewhole.store.keeping import backup, settle
from onewhole.store.mending import check_store
from onewhole.store.nights import add_night
from onewhole.store.opening import Store, open_store
from onewhole.store.sheets import add_sheet

NIGHTS, PUPILS, PROBLEMS = 180, 25, 12
NOW = datetime(2026, 5, 11, 18, 0, tzinfo=UTC)
TURNS = 21


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        path, other = Path(folder) / "room.class", Path(folder) / "other.class"
        book = open_store(path)
        night = fill(book)
        settle(book)
        shutil.copyfile(path, other)
        print(f"{'':30}{'wall ms':>9}{'before':>8}{'ratio':>7}{'CPU ms':>9}{'before':>8}{'ratio':>7}")
        turns("a class of 180 nights opened", lambda: opened(path), lambda: opened_before(other))
        book, before = open_store(path), without_digests(other)
        turns("an answer kept", lambda: keep(book, night), lambda: keep(before, night), 10)
        copy = path.with_name("a.backup")
        turns("a backup", lambda: backup(book, copy), lambda: backed_up_before(book, copy))
        began, cpu = perf_counter(), process_time()
        rows = check_store(book).rows
        print(f"\n{rows} rows checked: {1000 * (perf_counter() - began):.0f} ms,", end=" ")
        print(f"of them work: {1000 * (process_time() - cpu):.0f} ms; it runs beside the first page")
        print(f"the file: {path.stat().st_size / 1e6:.1f} MB")
        book.close()
        before.close()


def fill(book: Store) -> int:
    """Keep a year; return its last night."""
    room = add_class(book, "Room 12", NOW)
    codes = [add_pupil(book, room.number).code for _ in range(PUPILS)]
    sheet = add_sheet(book, "Kites", "1. 5 1/8 - 2 5/8", NOW).number
    night = 0
    for later in range(NIGHTS):
        night = add_night(book, room.number, sheet, 1, date(2025, 9, 1) + timedelta(days=later)).number
        written = [
            KeptAnswer(night, code, f"{problem}", f"{problem} {later % 7}/8", NOW, "teacher")
            for problem in range(1, PROBLEMS + 1)
            for code in codes
        ]
        keep_answers(book, written)
    return night


def keep(book: Store, night: int) -> None:
    """Keep one answer."""
    keep_answers(book, (KeptAnswer(night, "K07", "3", "4 7/8", NOW, "teacher"),))


def without_digests(path: Path) -> Store:
    """Open a file by a store whose connections keep no digests."""
    with patch.object(opening, "keep_digests", lambda _raw: None):
        book = open_store(path)
        classes_with_pupils(book)  # its connection is made now
    return book


def opened(path: Path) -> None:
    """Open a file, and read its classes."""
    book = open_store(path)
    classes_with_pupils(book)
    book.close()


def opened_before(path: Path) -> None:
    """Do the same without digests."""
    without_digests(path).close()


def backed_up_before(book: Store, copy: Path) -> None:
    """Copy a file as backups were made before: with a journal, not read back."""
    with closing(book.engine.raw_connection()) as raw, closing(sqlite3.connect(copy)) as target:
        source = raw.driver_connection
        assert isinstance(source, sqlite3.Connection)
        source.backup(target)
        target.execute("PRAGMA journal_mode = DELETE")
    handle = os.open(copy, os.O_RDONLY)
    os.fsync(handle)
    os.close(handle)


def turns(name: str, now: Callable[[], None], before: Callable[[], None], times: int = 1) -> None:
    """Print how long two ways take, in turns."""
    wall: list[list[float]] = [[], []]
    cpu: list[list[float]] = [[], []]
    for _ in range(TURNS * times):
        for at, act in enumerate((now, before)):
            began, worked = perf_counter(), process_time()
            act()
            cpu[at].append(1000 * (process_time() - worked))
            wall[at].append(1000 * (perf_counter() - began))
    (one, other), (work, worked) = map(median, wall), map(median, cpu)
    print(
        f"{name:30}{one:9.2f}{other:8.2f}{one / other:7.2f}{work:9.2f}{worked:8.2f}{work / worked:7.2f}",
        flush=True,
    )


if __name__ == "__main__":
    main()
