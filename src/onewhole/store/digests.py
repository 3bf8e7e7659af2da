"""How a row becomes bytes and the bytes a digest, and how the rows of a file are read with their digests.

Every row carries the digest of its values. The digest of a writing (an answer, a correction, a row of a talk,
a word on a night, a version of a sheet) also covers the digest of the writing before it in the same cell, so
that the writings of a cell are a chain. `table_heads` tells of each table how many rows it has and the
exclusive or of their digests, so that a row that is gone is missed; a row that is erased is taken out of both
in the same transaction.

This finds accidents: a bit that a disk turned over, a row that another program changed. It finds no forger:
nothing here is secret, and who can write the file can write digests that fit. Of so many accidents as 2 to
the 64, one would go unnoticed.
"""

import sqlite3
from collections.abc import Collection, Iterator, Mapping
from contextlib import contextmanager
from functools import reduce
from hashlib import blake2b
from operator import itemgetter, xor

import msgspec
from msgspec import Struct, field

from onewhole.store import tables

#: A value as SQLite gives it. Bytes where a text should be are a text that cannot be read.
Value = str | bytes | int | float | None
#: The values of a row, as `columns_of` names them.
Values = tuple[Value, ...]

#: The table that tells of each table what it holds.
HEADS = str(tables.table_heads.name)
#: Every table whose rows carry digests, the ones that others point to first.
DIGESTED = tuple(str(table.name) for table in tables.METADATA.sorted_tables if table.name != HEADS)
#: The tables of what can be computed again: nothing of them is ever lost.
CACHES = frozenset(str(table.name) for table in tables.CACHES)

_BYTES = 8
#: After so many writings in a row that do not fit, more are not tried.
_MOST_LINKS = 16
_ENCODE = msgspec.msgpack.Encoder().encode


class WritingChain(Struct, frozen=True):
    """What makes a cell of a table, and the column by which its writings follow one another."""

    cell: tuple[str, ...]
    order: str


#: The tables whose rows are writings: they are added, never changed, and erased with the whole cell.
CHAINS = {
    "answers": WritingChain(("night_number", "pupil_number", "problem"), "number"),
    "corrections": WritingChain(("night_number", "pupil_number", "problem"), "number"),
    "asked_answers": WritingChain(("night_number", "pupil_number"), "number"),
    "night_words": WritingChain(("night_number", "pupil_number"), "number"),
    "sheet_versions": WritingChain(("sheet_number",), "version"),
}


class Doubts(Struct, frozen=True):
    """What is told as damaged and stays so: rows by table and their keys, and of a table what is lost.

    What is lost is how many rows, and the exclusive or of their digests.
    """

    rows: Mapping[str, Collection[Values]] = field(default_factory=dict)
    lost: Mapping[str, tuple[int, int]] = field(default_factory=dict)


def row_digest(*values: Value) -> int:
    """Digest some values: BLAKE2b of their MessagePack, 64 bits, as SQLite keeps a number.

    For a row they are the name of its table, in a chain the digest of the writing before (0 for none), and
    its values in the order of the columns' names. MessagePack keeps 1 apart from "1", and "ab", "c" from "a",
    "bc".

    >>> row_digest("settings", "keep until", "2027-06-30")
    -8326460445393120018
    """
    return int.from_bytes(blake2b(_ENCODE(values), digest_size=_BYTES).digest(), signed=True)


def has_digests(raw: sqlite3.Connection) -> bool:
    """Say whether the rows of a file carry digests: in a file of the first releases they do not."""
    return raw.execute("SELECT 1 FROM sqlite_master WHERE name = ?", (HEADS,)).fetchone() is not None


def tables_there(raw: sqlite3.Connection) -> tuple[str, ...]:
    """The tables whose rows carry digests, as far as a file has them: an earlier release lacks some."""
    there = {name for (name,) in raw.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
    return tuple(name for name in DIGESTED if name in there)


def columns_of(raw: sqlite3.Connection, table: str) -> tuple[str, ...]:
    """The columns of a table, as this file has them, that a digest covers: all but itself, by name.

    A name that cannot be read is given all the same: SQLite then finds no such column.
    """
    names = [str(name) for _, name, *_ in raw.execute(f"PRAGMA table_info({table})")]
    return tuple(sorted(name for name in names if name != "digest"))


def keys_of(table: str) -> tuple[str, ...]:
    """The columns that tell a row of a table from every other one."""
    return tuple(str(column.name) for column in tables.METADATA.tables[table].primary_key)


def where_key(table: str) -> str:
    """The condition for the one row whose key is given, as `keys_of` names it."""
    return " AND ".join(f'"{name}" IS ?' for name in keys_of(table))


def number_of(value: Value) -> int:
    """A value where a number should be: 0 for what is none."""
    return value if type(value) is int else 0


def last_number(raw: sqlite3.Connection, table: str) -> int:
    """The highest number that SQLite remembers to have given in a table; 0 where it does not."""
    row = raw.execute("SELECT seq FROM sqlite_sequence WHERE name = ?", (table,)).fetchone()
    return number_of(row[0]) if row else 0


@contextmanager
def any_text(raw: sqlite3.Connection) -> Iterator[None]:
    """Let a connection give a text that is no UTF-8 as bytes: else it raises `sqlite3.OperationalError`."""
    usual, raw.text_factory = raw.text_factory, _text_or_bytes
    try:
        yield
    finally:
        raw.text_factory = usual


def _text_or_bytes(content: bytes) -> str | bytes:
    try:
        return content.decode()
    except UnicodeDecodeError:
        return content


def digested_rows(raw: sqlite3.Connection, table: str) -> Iterator[tuple[Values, Value, tuple[int, ...]]]:
    """Read every row of a table, each chain in its order: its values, its digest, the digests that would fit.

    A writing may follow the digest that stands at the writing before; where that one does not fit, also the
    one that should stand there, and those that it may follow itself, as it may not belong there at all.
    Raises `sqlite3.Error`.
    """
    chain, columns = CHAINS.get(table), columns_of(raw, table)
    rows = raw.execute(_all_of(table, columns))
    if chain is None:
        for row in rows:
            values = row[:-1]
            yield values, row[-1], (row_digest(table, *values),)
        return
    cell_of = itemgetter(*(columns.index(name) for name in chain.cell))
    before: dict[object, tuple[int, ...]] = {}
    for row in rows:
        cell, values, stands = cell_of(row), row[:-1], row[-1]
        links = before.get(cell, (0,))
        fits = tuple([row_digest(table, link, *values) for link in links])
        yield values, stands, fits
        before[cell] = (stands,) if stands in fits else (number_of(stands), *fits, *links)[:_MOST_LINKS]


def fill_digests(raw: sqlite3.Connection, doubts: Doubts) -> None:
    """Write the digests of all rows as they stand now, within the caller's transaction.

    What is in doubt gets a digest that does not fit: it is told as damaged as before.
    """
    raw.execute(f"DELETE FROM {HEADS}")  # noqa: S608 - our own name
    for table in DIGESTED:
        keys = keys_of(table)
        changed: list[Values] = []
        marks: list[int] = []
        for key, stands, digest in _digested_anew(raw, table, keys, frozenset(doubts.rows.get(table, ()))):
            marks.append(digest)
            if digest != stands:
                changed.append((digest, *key))
        raw.executemany(f"UPDATE {table} SET digest = ? WHERE {where_key(table)}", changed)  # noqa: S608 - our own names
        rows, mark = doubts.lost.get(table, (0, 0))
        head = table, rows + len(marks), reduce(xor, marks, mark), last_number(raw, table)
        raw.execute(f"INSERT INTO {HEADS} VALUES (?, ?, ?, ?, ?)", (*head, row_digest(*head)))  # noqa: S608 - our own name


def _digested_anew(
    raw: sqlite3.Connection, table: str, keys: tuple[str, ...], doubted: frozenset[Values]
) -> Iterator[tuple[Values, Value, int]]:
    """The key of each row, the digest that stands beside it, and the one that is to stand there."""
    chain, columns = CHAINS.get(table), columns_of(raw, table)
    cell_at = [columns.index(name) for name in chain.cell] if chain else []
    key_at = [columns.index(name) for name in keys]
    before: dict[Values, int] = {}
    for values, stands, _ in digested_rows(raw, table):
        cell, key = tuple([values[at] for at in cell_at]), tuple([values[at] for at in key_at])
        links = (before.get(cell, 0),) if chain else ()
        digest = row_digest(table, *links, *values)
        if key in doubted:  # what stands may fit again once the writing before is back
            digest = ~digest if stands == digest else number_of(stands)
        before[cell] = digest
        yield key, stands, digest


def _all_of(table: str, columns: tuple[str, ...]) -> str:
    """Ask for every row of a table without the help of an index, which may be damaged too."""
    chain = CHAINS.get(table)
    order = f" ORDER BY {chain.order}" if chain else ""
    names = ", ".join(f'"{name}"' for name in columns)
    return f"SELECT {names}, digest FROM {table} NOT INDEXED{order}"  # noqa: S608 - our own names
