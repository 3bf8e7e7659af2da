"""A cache of what was computed of a night, so that a page need not compute it again. Never the truth."""

from sqlalchemy import delete, insert, select

from onewhole.store import tables
from onewhole.store.nights import find_night
from onewhole.store.opening import Store


def cache_night(store: Store, night: int, stamp: str, text: str) -> None:
    """Cache what was computed under the fingerprint of its inputs; readers ignore an entry with another one.

    Erasing a pupil empties the cache of the class. Raises `NotThere`, `StoreRefused`.
    """
    with store.writing() as connection:
        find_night(connection, night)
        connection.execute(delete(tables.night_cache).where(tables.night_cache.c.night_number == night))
        connection.execute(insert(tables.night_cache).values(night_number=night, stamp=stamp, text=text))


def cached_nights(store: Store, class_number: int) -> dict[int, tuple[str, str]]:
    """Cache key and text of every night of a class that has an entry."""
    columns = tables.night_cache.c
    asked = (
        select(columns.night_number, columns.stamp, columns.text)
        .join(tables.nights, tables.nights.c.number == columns.night_number)
        .where(tables.nights.c.class_number == class_number)
    )
    with store.reading() as connection:
        return {night: (stamp, text) for night, stamp, text in connection.execute(asked)}
