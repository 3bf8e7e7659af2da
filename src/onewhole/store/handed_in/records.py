"""Typed records: a row of each table as it must be, and a row that is not told by table, row and column."""

import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from types import GenericAlias
from typing import Annotated, Any

import msgspec
from msgspec import Struct
from sqlalchemy import Table

from onewhole.store.column_types import MOST_NUMBER, held
from onewhole.store.handed_in.asking import Frames, refused
from onewhole.store.schema import columns_at
from onewhole.store.tables import CACHES, METADATA

#: What was computed of the nights is computed anew: it may tell of children what their answers do not.
LEFT_OUT = frozenset(str(table.name) for table in CACHES)

_PLACE = re.compile(r"\$\[(\d+)\](?:\[(\d+)\])?")
#: A row as it is kept.
Row = list[object]


class RecordType(Struct, frozen=True):
    """A table at a step: its columns in order, and what reads a frame of its rows."""

    table: str
    columns: tuple[str, ...]
    rows: msgspec.msgpack.Decoder[Any]

    @property
    def query(self) -> str:
        """Ask for every row, past every index."""
        return f"SELECT {self.named} FROM {_quoted(self.table)} NOT INDEXED"  # noqa: S608 - our own names

    @property
    def insert(self) -> str:
        """Write one row."""
        marks = ", ".join("?" for _ in self.columns)
        return f"INSERT INTO {_quoted(self.table)} ({self.named}) VALUES ({marks})"  # noqa: S608 - our own names

    @property
    def named(self) -> str:
        """The columns by name."""
        return ", ".join(map(_quoted, self.columns))


@cache
def record_types(step: str) -> tuple[RecordType, ...]:
    """The records of a file at a step: every table that is still there today, without what is computed.

    >>> [one.table for one in record_types("0001")][:2]
    ['classes', 'settings']
    """
    there = columns_at(step)
    return tuple(
        _record_type(table, there[table.name])
        for table in METADATA.sorted_tables
        if table.name in there and table.name not in LEFT_OUT
    )


def _record_type(table: Table, columns: tuple[str, ...]) -> RecordType:
    fields = [(f"f{at}", _held(table, name)) for at, name in enumerate(columns)]
    made = msgspec.defstruct(table.name, fields, array_like=True, forbid_unknown_fields=True)
    return RecordType(table.name, columns, msgspec.msgpack.Decoder(GenericAlias(list, (made,))))


def _held(table: Table, name: str) -> object:
    """What a column may hold."""
    column = table.columns[name]
    stored, _ = held(column.type)
    return stored | None if column.nullable else stored


def rows_of(frames: Frames, saved: Path, record: RecordType) -> Iterator[list[Row]]:
    """Read a table, some rows at a time, each checked. Raises `BackupRefused` with table, row and column."""
    came = 0
    for frame in frames(record.query, record.table):
        try:
            record.rows.decode(frame)
        except (msgspec.ValidationError, RecursionError) as error:
            raise refused(saved, _told(record, came, str(error))) from error
        except msgspec.DecodeError as error:
            raise refused(saved, f"after row {came} of {record.table} the rows cannot be read") from error
        rows = msgspec.msgpack.decode(frame, type=list[Row])
        yield rows
        came += len(rows)


def _told(record: RecordType, came: int, said: str) -> str:
    """Name the row and the column that a message of the decoder is about."""
    found = _PLACE.search(said)
    row = came + int(found[1]) + 1 if found else came + 1
    if not (found and found[2]):
        return f"{record.table}, row {row}: this is no row of a class"
    column = METADATA.tables[record.table].columns[record.columns[int(found[2])]]
    _, noun = held(column.type)
    return f"{record.table}, row {row}: “{column.name}” is not {noun}"


#: A row of SQLite's list of the highest number that each table has given.
Given = tuple[Annotated[str, msgspec.Meta(max_length=40)], Annotated[int, msgspec.Meta(ge=0, le=MOST_NUMBER)]]


def given_of(frames: Frames, saved: Path) -> dict[str, int]:
    """The highest number that each table has given, so that none is given twice. Raises `BackupRefused`."""
    found: dict[str, int] = {}
    table = "sqlite_sequence"
    for frame in frames(f"SELECT name, seq FROM {table}", table):  # noqa: S608 - SQLite's own name
        try:
            rows = msgspec.msgpack.decode(frame, type=list[Given])
        except msgspec.DecodeError as error:
            raise refused(saved, "the numbers that were given already cannot be read") from error
        for name, number in rows:
            if name not in METADATA.tables:
                raise refused(saved, "numbers were given in a table that is not there")
            found[name] = max(number, found.get(name, 0))
    return found


def _quoted(name: str) -> str:
    return f'"{name}"'
