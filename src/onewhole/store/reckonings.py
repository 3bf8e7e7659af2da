"""Reckonings: what was computed of a night, put by so that a page need not compute it again. Never truth."""

from sqlalchemy import select
from sqlalchemy.dialects.sqlite import insert

from onewhole.store import tables
from onewhole.store.nights import find_night
from onewhole.store.opening import Store


def keep_reckoning(store: Store, night: int, stamp: str, text: str) -> None:
    """Put by what was computed; `stamp` says from what, and whoever reads it throws away another stamp's.

    Erasing a pupil throws away every reckoning of the class. Raises `NotThere`, `StoreRefused`.
    """
    values = {"stamp": stamp, "text": text}
    with store.writing() as connection:
        find_night(connection, night)
        kept = insert(tables.reckonings).values(night_number=night, **values)
        connection.execute(kept.on_conflict_do_update(index_elements=["night_number"], set_=values))


def reckonings_of(store: Store, class_number: int) -> dict[int, tuple[str, str]]:
    """Stamp and text of every night of a class that has one."""
    columns = tables.reckonings.c
    asked = (
        select(columns.night_number, columns.stamp, columns.text)
        .join(tables.nights, tables.nights.c.number == columns.night_number)
        .where(tables.nights.c.class_number == class_number)
    )
    with store.reading() as connection:
        return {night: (stamp, text) for night, stamp, text in connection.execute(asked)}
