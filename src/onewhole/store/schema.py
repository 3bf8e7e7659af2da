"""The schema of a file, compared exactly with that which our own steps make: nothing less, nothing more."""

import re
from collections.abc import Callable, Iterable, Sequence
from functools import cache

from msgspec import Struct
from sqlalchemy import create_engine

from onewhole.store.migrating import bring_forward, known_steps
from onewhole.store.migrations.env import VERSION_TABLE
from onewhole.store.refusals import Damaged, Newer, plain
from onewhole.store.transaction import driver_of

_ASKED = "SELECT type, name, tbl_name, sql FROM sqlite_schema"
#: What parts two words in SQLite's language.
_BLANKS = re.compile(r"[ \t\n\f\r]+")


class SchemaPart(Struct, frozen=True):
    """A row of SQLite's list of what is in a file: a table, an index, a trigger or a view."""

    kind: str
    name: str
    table: str
    sql: str


Schema = frozenset[SchemaPart]


#: Answers a query with rows.
Ask = Callable[[str], Iterable[Sequence[object]]]


def schema_of(ask: Ask, where: str) -> Schema:
    """Read what a file says that it holds; blanks and line ends count as one blank. Raises `Damaged`."""
    found: list[SchemaPart] = []
    for kind, name, table, sql in ask(_ASKED):
        if not (isinstance(kind, str) and isinstance(name, str)):
            raise _foreign(where, "the list of its tables cannot be read")
        if not (isinstance(table, str) and isinstance(sql, str | None)):
            raise _foreign(where, "the list of its tables cannot be read")
        found.append(SchemaPart(kind, name, table, _BLANKS.sub(" ", sql or "")))
    if len(set(found)) != len(found):
        raise _foreign(where, "the list of its tables has one twice")
    return frozenset(found)


@cache
def schema_at(step: str) -> Schema:
    """The schema of a file at a step, by making one in memory.

    >>> sorted(part.name for part in schema_at("0001") if part.kind == "index" and part.sql)[0]
    'answers_of_a_night'
    """
    return _made(step)[0]


@cache
def columns_at(step: str) -> dict[str, tuple[str, ...]]:
    """The columns of every table of ours at a step, in their order.

    >>> columns_at("0001")["settings"]
    ('name', 'text')
    """
    return _made(step)[1]


@cache
def _made(step: str) -> tuple[Schema, dict[str, tuple[str, ...]]]:
    engine = create_engine("sqlite://")
    try:
        with engine.begin() as connection:
            bring_forward(connection, step)
            raw = driver_of(connection)
            schema = schema_of(raw.execute, "a file in memory")
            asked = "SELECT name FROM pragma_table_info(?) ORDER BY cid"
            return schema, {
                part.name: tuple(name for (name,) in raw.execute(asked, (part.name,)))
                for part in schema
                if part.kind == "table"
            }
    finally:
        engine.dispose()


def step_of(ask: Ask, where: str) -> str:
    """The step that a file is at, once all that it holds is exactly what that step makes.

    Nothing that the file defines is used before it is known to be ours. Raises `Newer` for a step to come,
    and `Damaged`.
    """
    found = schema_of(ask, where)
    release = {part for part in schema_at(known_steps()[-1]) if part.table == VERSION_TABLE}
    if {part for part in found if VERSION_TABLE in {part.table, part.name}} != release:
        raise _foreign(where, "the table of its release is not ours")
    steps = [step for (step,) in ask(f"SELECT version_num FROM {VERSION_TABLE} NOT INDEXED LIMIT 2")]  # noqa: S608 - our own name
    step = steps[0] if len(steps) == 1 else None
    if not isinstance(step, str) or not re.fullmatch("[0-9]{4}", step):
        raise _foreign(where, "it does not say which release wrote it")
    if step > known_steps()[-1]:
        raise Newer(
            "This file was written by a newer release",
            where=where,
            remedy="Open it with that release, or move it aside and restore a backup; it was not changed.",
        )
    if step not in known_steps():
        raise _foreign(where, "no release wrote such a file")
    differ = sorted({f"{part.kind} {part.name}" for part in found ^ schema_at(step)})
    if differ:
        raise _foreign(where, f"it is not built as ours are: {plain(differ[0][:60])}")
    return step


def _foreign(where: str, why: str) -> Damaged:
    return Damaged(
        f"This is not the file of a class, or it is damaged: {why}",
        where=where,
        remedy="Restore a backup; this file is then kept aside.",
    )
