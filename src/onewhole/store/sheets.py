"""Sheets with every earlier version: what was typed, and the recipe it was composed by."""

from datetime import datetime

from msgspec import Struct
from sqlalchemy import Connection, Select, func, insert, select

from onewhole.store import tables
from onewhole.store.numbers import next_number
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere


class KeptSheet(Struct, frozen=True):
    """One version of a sheet: `version` counts from 1, `recipe` is None for a page typed by hand."""

    number: int
    version: int
    name: str
    typed: str
    recipe: str | None
    written: datetime


def add_sheet(store: Store, name: str, typed: str, now: datetime, recipe: str | None = None) -> KeptSheet:
    """Keep a new sheet as its first version."""
    with store.writing() as connection:
        number = next_number(connection, tables.sheets)
        connection.execute(insert(tables.sheets).values(number=number, name=name))
        return _write(connection, KeptSheet(number, 1, name, typed, recipe, now))


def change_sheet(
    store: Store, number: int, typed: str, now: datetime, recipe: str | None = None
) -> KeptSheet:
    """Keep a new version of a sheet; every earlier one stays. Raises `NotThere`."""
    with store.writing() as connection:
        last = _versions(connection, number)[-1]
        return _write(connection, KeptSheet(number, last.version + 1, last.name, typed, recipe, now))


def versions_of(store: Store, number: int) -> tuple[KeptSheet, ...]:
    """Every version of a sheet, the first one first. Raises `NotThere`."""
    with store.reading() as connection:
        return _versions(connection, number)


def newest_sheets(store: Store) -> tuple[KeptSheet, ...]:
    """The newest version of every sheet, in the order the sheets were made."""
    columns = tables.sheet_versions.c
    newest = select(columns.sheet_number, func.max(columns.version)).group_by(columns.sheet_number).subquery()
    asked = _asked().join(newest, (newest.c[0] == columns.sheet_number) & (newest.c[1] == columns.version))
    with store.reading() as connection:
        return tuple(KeptSheet(*row) for row in connection.execute(asked.order_by(columns.sheet_number)))


def _asked() -> Select[int, int, str, str, str | None, datetime]:
    columns = tables.sheet_versions.c
    return select(
        columns.sheet_number,
        columns.version,
        tables.sheets.c.name,
        columns.typed,
        columns.recipe,
        columns.written,
    ).join(tables.sheets, tables.sheets.c.number == columns.sheet_number)


def _write(connection: Connection, sheet: KeptSheet) -> KeptSheet:
    connection.execute(
        insert(tables.sheet_versions).values(
            sheet_number=sheet.number,
            version=sheet.version,
            typed=sheet.typed,
            recipe=sheet.recipe,
            written=sheet.written,
        )
    )
    return sheet


def _versions(connection: Connection, number: int) -> tuple[KeptSheet, ...]:
    columns = tables.sheet_versions.c
    asked = _asked().where(columns.sheet_number == number).order_by(columns.version)
    found = tuple(KeptSheet(*row) for row in connection.execute(asked))
    if not found:
        raise NotThere("There is no such sheet", where=f"sheet {number}", remedy="Choose one, or add it.")
    return found
