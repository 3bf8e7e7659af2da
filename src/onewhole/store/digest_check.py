"""The check of a file: rows against their digests, tables against what is told of them, and SQLite's own."""

import sqlite3
from enum import Enum

from msgspec import Struct, field

from onewhole.store.digests import (
    CACHES,
    CHAINS,
    HEADS,
    Doubts,
    Value,
    Values,
    any_text,
    columns_of,
    digested_rows,
    has_digests,
    keys_of,
    last_number,
    number_of,
    row_digest,
    tables_there,
)

#: A row that does not fit: its values, the digest that stands beside it, those that would fit.
_Row = tuple[Values, Value, tuple[int, ...]]
#: Of more rows than this that do not fit, it is not asked which follow which.
_MOST_WRONG = 100


class DamageKind(Enum):
    """What happened to what was written."""

    CHANGED = "a row is not as it was written"
    CHECKSUM = "a row is as it was written, and its digest is not"
    LOST = "rows are gone, or older than they should be"
    TOLD = "the rows are as they were written, and what is told of their table is not"
    COUNTING = "SQLite does not remember the highest number given in a table"
    FINDING = "SQLite does not find every row by its indexes"


class Damage(Struct, frozen=True):
    """One thing that is not as it was written.

    Of a row that is not: its values as they stand, by column, and the digest beside them. Of what is lost:
    how many rows (below 0: too many), and the exclusive or of their digests. Of the counting: the number.
    """

    kind: DamageKind
    table: str = ""
    row: dict[str, Value] = field(default_factory=dict)
    stands: Value = None
    count: int = 0
    mark: int = 0

    @property
    def key(self) -> Values:
        """Return what tells the row from every other one of its table."""
        return tuple(self.row[name] for name in keys_of(self.table))


class CheckedFile(Struct, frozen=True):
    """What a check found: how many rows there are, the digest of all (None: they carry none), the damages.

    The digest leaves out the cache, which may be emptied at any moment.
    """

    rows: int
    digest: int | None
    damages: tuple[Damage, ...]

    @property
    def doubts(self) -> Doubts:
        """Return what is still to be told when the digests are written anew."""
        rows: dict[str, list[Values]] = {}
        for one in self.damages:
            if one.kind is DamageKind.CHANGED:
                rows.setdefault(one.table, []).append(one.key)
        lost = {one.table: (one.count, one.mark) for one in self.damages if one.kind is DamageKind.LOST}
        return Doubts(rows, lost)


class _Head(Struct, frozen=True):
    """What is told of a table; ``fits`` says that this was not damaged."""

    rows: int
    mark: int
    last: int
    fits: bool


def check_rows(raw: sqlite3.Connection) -> CheckedFile:
    """Check every row that a connection sees, and that SQLite finds each. Raises `sqlite3.Error`.

    A text that cannot be read is a damaged row like another one. In a file whose rows carry no digests only
    SQLite's own check is made, and a table that a file of an earlier release does not have is passed over.
    """
    ((found, *_), *_) = raw.execute("PRAGMA integrity_check(1)").fetchall()
    damages = [] if found == "ok" else [Damage(DamageKind.FINDING)]
    if not has_digests(raw):
        return CheckedFile(0, None, tuple(damages))
    count, heads = 0, _heads(raw)
    for table in tables_there(raw):
        head = heads.get(table)
        try:
            rows, of_table = _check_table(raw, table, head)
        except sqlite3.OperationalError:  # a text that is no UTF-8: it is read as bytes, which fit no digest
            with any_text(raw):
                rows, of_table = _check_table(raw, table, head)
        count += rows
        damages.extend(of_table)
    told = [(name, head.rows, head.mark) for name, head in sorted(heads.items()) if name not in CACHES]
    return CheckedFile(count, row_digest(*(value for head in told for value in head)), tuple(damages))


def _check_table(raw: sqlite3.Connection, table: str, head: _Head | None) -> tuple[int, list[Damage]]:
    """Check every row of a table; return how many there are, and what is damaged."""
    columns, damages = columns_of(raw, table), []
    rows = mark = 0
    wrong: list[_Row] = []
    for values, stands, fits in digested_rows(raw, table):
        rows += 1
        mark ^= number_of(stands)
        if stands not in fits:
            wrong.append((values, stands, fits))
    if head is None or not head.fits:
        damages.append(Damage(DamageKind.TOLD, table))
        head = None
    left = mark ^ head.mark if head else 0
    if table in CHAINS:
        wrong = _without_followers(table, wrong, left)
    for values, stands, fits in wrong:
        kind = DamageKind.CHANGED
        if left and any(left == number_of(stands) ^ one for one in fits):
            kind, left = DamageKind.CHECKSUM, 0
        damages.append(Damage(kind, table, dict(zip(columns, values, strict=True)), stands))
    if head and table not in CACHES and (head.rows != rows or (left and not wrong)):
        damages.append(Damage(DamageKind.LOST, table, count=head.rows - rows, mark=left))
    if head and last_number(raw, table) != head.last:
        damages.append(Damage(DamageKind.COUNTING, table, count=head.last))
    return rows, damages


def _without_followers(table: str, wrong: list[_Row], left: int) -> list[_Row]:
    """Leave out the rows that are right, and follow one that stands elsewhere now or is lost."""
    links = {number_of(stands) for _, stands, _ in wrong} | {left}
    if len(links) > _MOST_WRONG:
        return wrong
    return [row for row in wrong if not any(row[1] == row_digest(table, link, *row[0]) for link in links)]


def _heads(raw: sqlite3.Connection) -> dict[str, _Head]:
    found = {}
    asked = f"SELECT name, rows, mark, last, digest FROM {HEADS} NOT INDEXED"  # noqa: S608 - our own name
    for name, *values, digest in raw.execute(asked):
        rows, mark, last = map(number_of, values)
        found[str(name)] = _Head(rows, mark, last, fits=digest == row_digest(name, *values))
    return found
