"""Reads a file that was handed in, within a process of its own that can do nothing else; run as a script.

It is asked one query after another on its standard input and answers in frames on its standard output. It
writes no file, opens no other, starts no process, and memory, time and processor time have limits. Nothing of
ours is imported: what misuses a fault of SQLite finds here neither the class nor anything else.
"""

import os
import sqlite3
import struct
import sys
from collections.abc import Iterable, Iterator
from contextlib import suppress
from pathlib import Path
from typing import BinaryIO
from urllib.parse import quote

import msgspec

if sys.platform != "win32":
    import resource

#: A frame is its kind, the length of what follows, and that.
HEAD = struct.Struct(">cI")
#: Some rows, the end of an answer, and an error: its words, how many rows came before.
ROWS, END, WRONG = b"r", b"e", b"w"
#: A frame holds so many rows at most, or one row more than so many bytes; no value is longer.
ROWS_A_FRAME, BYTES_A_FRAME, LONGEST = 500, 1_000_000, 64 * 1024 * 1024
#: The memory that the process may take.
MEMORY = 1024 * 1024 * 1024

_SETTINGS = (
    "PRAGMA locking_mode = EXCLUSIVE",
    "PRAGMA trusted_schema = OFF",
    "PRAGMA cell_size_check = ON",
    "PRAGMA query_only = ON",
    "PRAGMA temp_store = MEMORY",
    "PRAGMA mmap_size = 0",
)
_LIMITS = (
    (sqlite3.SQLITE_LIMIT_LENGTH, LONGEST),
    (sqlite3.SQLITE_LIMIT_SQL_LENGTH, 10_000),
    (sqlite3.SQLITE_LIMIT_COLUMN, 64),
    (sqlite3.SQLITE_LIMIT_EXPR_DEPTH, 20),
    (sqlite3.SQLITE_LIMIT_COMPOUND_SELECT, 2),
    (sqlite3.SQLITE_LIMIT_VDBE_OP, 25_000),
    (sqlite3.SQLITE_LIMIT_FUNCTION_ARG, 8),
    (sqlite3.SQLITE_LIMIT_ATTACHED, 0),
    (sqlite3.SQLITE_LIMIT_VARIABLE_NUMBER, 1),
    (sqlite3.SQLITE_LIMIT_TRIGGER_DEPTH, 1),
    (sqlite3.SQLITE_LIMIT_WORKER_THREADS, 0),
)
#: Frames of an answer: a kind and what it holds.
Frame = tuple[bytes, bytes]


def opened(path: Path) -> sqlite3.Connection:
    """Open a file to read it and nothing else; a log beside it is read with it. No file is made or written.

    Raises `sqlite3.Error`.
    """
    # Nothing is locked: a lock that is not there is none to wait for, and the index of a log stays in memory.
    way = "vfs=unix-none" if sys.platform != "win32" else "immutable=1"
    place = f"file:{quote(os.fsencode(path))}?mode=ro&{way}"
    connection = sqlite3.connect(place, uri=True, isolation_level=None)
    for which, most in _LIMITS:
        connection.setlimit(which, most)
    if sys.version_info >= (3, 12):
        connection.setconfig(sqlite3.SQLITE_DBCONFIG_DEFENSIVE, True)  # noqa: FBT003 - its own shape
        connection.setconfig(sqlite3.SQLITE_DBCONFIG_ENABLE_TRIGGER, False)  # noqa: FBT003 - its own shape
        connection.setconfig(sqlite3.SQLITE_DBCONFIG_ENABLE_VIEW, False)  # noqa: FBT003 - its own shape
    for line in _SETTINGS:
        connection.execute(line)
    connection.set_authorizer(_allowed)
    return connection


def _allowed(act: int, one: str | None, _two: str | None, _base: str | None, within: str | None) -> int:
    """Allow to read tables, and one check; within a trigger or a view nothing."""
    may_do = act == sqlite3.SQLITE_SELECT or (act == sqlite3.SQLITE_READ and within is None)
    if may_do or (act == sqlite3.SQLITE_PRAGMA and one == "quick_check"):
        return sqlite3.SQLITE_OK
    return sqlite3.SQLITE_DENY


def answered(connection: sqlite3.Connection, query: str) -> Iterator[Frame]:
    """Answer a query in frames."""
    came = 0
    try:
        for rows in _batches(connection.execute(query)):
            yield ROWS, msgspec.msgpack.encode(rows)
            came += len(rows)
    except (sqlite3.Error, UnicodeDecodeError, MemoryError) as error:
        said = str(error) if isinstance(error, sqlite3.Error) else type(error).__name__
        yield WRONG, msgspec.msgpack.encode((said.encode(errors="replace").decode(), came))
    else:
        yield END, b""


def _batches(rows: Iterable[tuple[object, ...]]) -> Iterator[list[tuple[object, ...]]]:
    batch: list[tuple[object, ...]] = []
    size = 0
    try:
        for row in rows:
            batch.append(row)
            size += sum(len(value) for value in row if isinstance(value, str | bytes))
            if len(batch) >= ROWS_A_FRAME or size >= BYTES_A_FRAME:
                yield batch
                batch, size = [], 0
    except (sqlite3.Error, UnicodeDecodeError):
        yield batch  # so that the row with the error can be told
        raise
    yield batch


def limit(seconds: int) -> None:
    """Take away from this process what it does not need: files, processes, memory, time."""
    if sys.platform == "win32":
        return
    for which, most in (
        (resource.RLIMIT_FSIZE, 0),
        (resource.RLIMIT_CORE, 0),
        (resource.RLIMIT_NOFILE, 16),
        (resource.RLIMIT_CPU, seconds),
        (resource.RLIMIT_AS, MEMORY),
    ):
        with suppress(OSError, ValueError):  # a system that lacks a limit has the others
            resource.setrlimit(which, (most, most))


def serve(path: Path, asked: Iterable[bytes], out: BinaryIO) -> None:
    """Answer each line of `asked`."""
    connection: sqlite3.Connection | None = None
    for line in asked:
        query = line.decode().strip()
        try:
            connection = connection or opened(path)
        except sqlite3.Error as error:
            frames: Iterable[Frame] = [(WRONG, msgspec.msgpack.encode((str(error), 0)))]
        else:
            frames = answered(connection, query)
        for kind, held in frames:
            out.write(HEAD.pack(kind, len(held)))
            out.write(held)
        out.flush()


if __name__ == "__main__":
    limit(int(sys.argv[2]))
    serve(Path(sys.argv[1]), sys.stdin.buffer, sys.stdout.buffer)
