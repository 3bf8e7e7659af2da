"""How a connection keeps the digests of whatever it writes: by triggers of its own, not of the file.

No function that writes can forget them. Nothing of them is in the file, so a file can bring none.
"""

import sqlite3
from collections.abc import Iterator
from functools import cache
from operator import xor

from sqlalchemy import Table

from onewhole.store import tables
from onewhole.store.digests import CHAINS, DIGESTED, HEADS, WritingChain, row_digest


def keep_digests(raw: sqlite3.Connection) -> None:
    """Let a connection to a file of today's tables keep the digests of what it writes, as it writes it."""
    raw.create_function("row_digest", -1, row_digest, deterministic=True)
    raw.create_function("sealed_if", 2, _sealed_if, deterministic=True)
    raw.create_function("xor", 2, xor, deterministic=True)
    for line in _triggers():
        raw.execute(line)


def _sealed_if(was_right: int, digest: int) -> int:
    """A digest that fits, or for what was wrong before one that does not."""
    return digest if was_right else ~digest


@cache
def _triggers() -> tuple[str, ...]:
    return tuple(line for name in DIGESTED for line in _triggers_of(tables.METADATA.tables[name]))


def _triggers_of(table: Table) -> Iterator[str]:
    """What is done after a row of a table was added, erased or changed.

    A writing is never changed, so nothing seals a change of one. What was damaged when it is changed gets a
    digest that does not fit: it is told as damaged as before.
    """
    name, chain = str(table.name), CHAINS.get(table.name)
    columns = sorted(column.name for column in table.columns if column.name != "digest")
    links = [repr(name)] if chain is None else [repr(name), _link(name, chain)]
    here = " AND ".join(f'"{key.name}" IS new."{key.name}"' for key in table.primary_key)
    stands = f"(SELECT digest FROM {name} WHERE {here})"  # noqa: S608 - our own names
    before = "ifnull(old.digest, 0)"
    number = "new.number" if table.dialect_options["sqlite"]["autoincrement"] else "0"

    def of(row: str) -> str:
        return f"row_digest({', '.join((*links, *(f'{row}.{_quoted(column)}' for column in columns)))})"

    yield _trigger(
        name,
        "INSERT",
        f"UPDATE {name} SET digest = {of('new')} WHERE {here}",  # noqa: S608 - our own names
        _head(name, "rows + 1", f"xor(mark, {stands})", f"max(last, {number})"),
    )
    yield _trigger(name, "DELETE", _head(name, "rows - 1", f"xor(mark, {before})", "last"))
    if chain is None:
        yield _trigger(
            name,
            f"UPDATE OF {', '.join(map(_quoted, columns))}",
            f"UPDATE {name} SET digest = sealed_if({of('old')} IS old.digest, {of('new')}) WHERE {here}",  # noqa: S608 - our own names
            _head(name, "rows", f"xor(xor(mark, {before}), {stands})", "last"),
        )


def _link(name: str, chain: WritingChain) -> str:
    """The digest of the writing before a new one in its cell, 0 for none."""
    cell = " AND ".join(f'"{column}" IS new."{column}"' for column in chain.cell)
    before = f"{cell} AND {chain.order} < new.{chain.order} ORDER BY {chain.order} DESC LIMIT 1"
    return f"ifnull((SELECT digest FROM {name} WHERE {before}), 0)"  # noqa: S608 - our own names


def _head(name: str, rows: str, mark: str, last: str) -> str:
    """Tell what a table holds now; the digest of what was told wrongly before does not fit then either."""
    sealed = (
        f"sealed_if(row_digest(name, rows, mark, last) IS digest, row_digest(name, {rows}, {mark}, {last}))"
    )
    values = f"rows = {rows}, mark = {mark}, last = {last}, digest = {sealed}"
    return f"UPDATE {HEADS} SET {values} WHERE name = {name!r}"  # noqa: S608 - our own names


def _trigger(name: str, act: str, *lines: str) -> str:
    word = act.partition(" ")[0].lower()
    body = "".join(f"{line}; " for line in lines)
    return f"CREATE TEMP TRIGGER {name}_{word} AFTER {act} ON main.{name} BEGIN {body}END"


def _quoted(column: str) -> str:
    return f'"{column}"'
