"""What is damaged in a file, and what the backups have of it: a row is right where its digest says so."""

import sqlite3
from collections.abc import Iterable, Iterator, Sequence
from contextlib import closing, suppress
from functools import reduce
from operator import xor
from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from onewhole.store.digest_check import CheckedFile, Damage, DamageKind, check_rows
from onewhole.store.digests import (
    CACHES,
    CHAINS,
    Doubts,
    Value,
    any_text,
    columns_of,
    digested_rows,
    fill_digests,
    keys_of,
    number_of,
    where_key,
)
from onewhole.store.opening import Store, connected
from onewhole.store.transaction import driver_of, translate_errors

Row = dict[str, Value]


class Found(Struct, frozen=True):
    """A damage, and the rows as they were written: that which is damaged, or all that are lost.

    ``backup`` is the one that has them; None where none has.
    """

    damage: Damage
    backup: Path | None = None
    right: tuple[Row, ...] = ()

    @property
    def mends(self) -> bool:
        """Say whether :func:`mend` makes it as it was written."""
        lost = self.damage.kind in {DamageKind.CHANGED, DamageKind.LOST} and self.damage.table not in CACHES
        return self.backup is not None or not lost


def check_store(store: Store) -> CheckedFile:
    """Check the file of an open store as it is at one moment. Raises `StoreRefused`."""
    with store.reading() as connection:
        return check_rows(driver_of(connection))


def check_backup(path: Path) -> CheckedFile:
    """Check a backup; nothing is written. Raises `StoreRefused` where it cannot be read whole."""
    with translate_errors(path), closing(connected(path, "ro")) as raw:
        return check_rows(raw)


def find_right(store: Store, damages: Iterable[Damage], backups: Sequence[Path]) -> tuple[Found, ...]:
    """Look for what was damaged in the backups, the first one first. Raises `StoreRefused`."""
    found = [Found(one) for one in damages]
    for path in backups:
        if all(one.mends for one in found):
            break
        # A backup that cannot be read has nothing; what is wrong with it is told when it is checked itself.
        with (
            store.reading() as connection,
            suppress(sqlite3.Error, UnicodeDecodeError),
            closing(connected(path, "ro")) as saved,
        ):
            raw = driver_of(connection)
            with any_text(raw), any_text(saved):
                found = [one if one.mends else _found_in(raw, saved, one, path) for one in found]
    return tuple(found)


def mend(store: Store, found: Iterable[Found]) -> CheckedFile:
    """Make what was damaged as it was written, as far as it was found, and check again.

    What was not found is told as before. All in one transaction. Raises `StoreRefused`.
    """
    told = tuple(found)
    with store.writing() as connection, translate_errors(store.path):
        raw = driver_of(connection)
        raw.execute("PRAGMA defer_foreign_keys = ON")
        if any(one.damage.kind is DamageKind.FINDING for one in told):
            raw.execute("REINDEX")
        for one in told:
            _put_right(raw, one)
        lost = CheckedFile(0, None, tuple(one.damage for one in told if not one.mends)).doubts.lost
        right = {(one.damage.table, one.damage.key) for one in told if one.damage.kind is DamageKind.CHECKSUM}
        with any_text(raw):
            left = check_rows(raw).doubts.rows
            doubted = {
                table: [row for row in rows if (table, row) not in right] for table, rows in left.items()
            }
            fill_digests(raw, Doubts(doubted, lost))
    return check_store(store)


def accept(store: Store) -> None:
    """Let everything stand as it is now: nothing of it is told as damaged any more. Raises `StoreRefused`."""
    with store.writing() as connection:
        raw = driver_of(connection)
        with any_text(raw):
            fill_digests(raw, Doubts())


def _put_right(raw: sqlite3.Connection, found: Found) -> None:
    damage, table = found.damage, found.damage.table
    if damage.kind is DamageKind.COUNTING:
        raw.execute("UPDATE sqlite_sequence SET seq = ? WHERE name = ?", (damage.count, table))
    if not found.mends or damage.kind not in {DamageKind.CHANGED, DamageKind.LOST}:
        return
    if damage.row:
        raw.execute(f"DELETE FROM {table} WHERE {where_key(table)}", damage.key)  # noqa: S608 - our own names
    for row in found.right:
        names, places = ", ".join(f'"{name}"' for name in row), ", ".join("?" * len(row))
        raw.execute(f"INSERT INTO {table} ({names}) VALUES ({places})", tuple(row.values()))  # noqa: S608 - our own names


def _found_in(raw: sqlite3.Connection, saved: sqlite3.Connection, found: Found, path: Path) -> Found:
    """What a backup has of a damage."""
    damage, table = found.damage, found.damage.table
    columns = columns_of(raw, table)
    if columns_of(saved, table) != columns:
        return found
    if damage.kind is DamageKind.LOST:
        right = tuple(_lost(raw, saved, damage, columns))
    else:
        right = tuple(_as_written(saved, damage, columns))
    if right and right[0] == damage.row:
        return Found(replace(damage, kind=DamageKind.CHECKSUM))
    return replace(found, backup=path, right=right) if right else found


def _as_written(saved: sqlite3.Connection, damage: Damage, columns: tuple[str, ...]) -> Iterator[Row]:
    """The row of a backup with the digest of a damaged one; in a chain else that with its number.

    A writing is never changed, so that its number tells which one it is.
    """
    chain, by_number = CHAINS.get(damage.table), None
    for values, stands, fits in digested_rows(saved, damage.table):
        if stands in fits:
            row = dict(zip(columns, values, strict=True))
            if stands == damage.stands:
                yield row
                return
            if chain and all(row[name] == damage.row[name] for name in keys_of(damage.table)):
                by_number = row
    if by_number:
        yield by_number


def _lost(
    raw: sqlite3.Connection, saved: sqlite3.Connection, damage: Damage, columns: tuple[str, ...]
) -> list[Row]:
    """All the rows that are lost; none where the backup has not all of them, or where they do not fit."""
    keys = [columns.index(name) for name in keys_of(damage.table)]
    there = {tuple(values[at] for at in keys) for values, _, _ in digested_rows(raw, damage.table)}
    gone = {
        stands: dict(zip(columns, values, strict=True))
        for values, stands, fits in digested_rows(saved, damage.table)
        if stands in fits and tuple(values[at] for at in keys) not in there
    }
    if damage.count == 1 and damage.mark in gone:
        return [gone[damage.mark]]
    if damage.table in CHAINS:  # a writing goes with its child, its night or its page
        for column, table in (
            ("pupil_number", "pupils"),
            ("night_number", "nights"),
            ("sheet_number", "sheets"),
        ):
            there_of = {None, *(number for (number,) in raw.execute(f"SELECT number FROM {table}"))}  # noqa: S608 - our own names
            gone = {mark: row for mark, row in gone.items() if row.get(column) in there_of}
        fits = True
    else:
        fits = reduce(xor, map(number_of, gone), 0) == damage.mark
    return list(gone.values()) if fits and len(gone) == damage.count else []
