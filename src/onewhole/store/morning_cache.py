"""A cache of what was computed for the morning after a night, so that the page is there at once.

It is never the truth, and small: the nights that are looked at are the last ones.
"""

from sqlalchemy import delete, insert, select

from onewhole.store import tables
from onewhole.store.nights import find_night
from onewhole.store.opening import Store

#: Of so many nights of a class, the last ones by day, it is held.
HELD = 3


def cache_morning(store: Store, night: int, stamp: str, text: str) -> None:
    """Cache what was computed under the fingerprint of its inputs; readers ignore an entry with another one.

    Only the last nights of a class are held: of an earlier one nothing is. Erasing a pupil empties the cache
    of the class. Raises `NotThere`, `StoreRefused`.
    """
    columns, nights = tables.morning_cache.c, tables.nights.c
    with store.writing() as connection:
        of_class = find_night(connection, night).class_number
        last = tuple(
            connection.scalars(
                select(nights.number)
                .where(nights.class_number == of_class)
                .where((nights.number == night) | nights.number.in_(select(columns.night_number)))
                .order_by(nights.day.desc(), nights.number.desc())
                .limit(HELD)
            )
        )
        others = select(nights.number).where(nights.class_number == of_class, nights.number.not_in(last))
        gone = columns.night_number.in_(others) | (columns.night_number == night)
        connection.execute(delete(tables.morning_cache).where(gone))
        if night in last:
            connection.execute(
                insert(tables.morning_cache).values(night_number=night, stamp=stamp, text=text)
            )


def cached_morning(store: Store, night: int) -> tuple[str, str] | None:
    """Cache key and text of a night; None where it has no entry."""
    columns = tables.morning_cache.c
    with store.reading() as connection:
        row = connection.execute(
            select(columns.stamp, columns.text).where(columns.night_number == night)
        ).one_or_none()
    return None if row is None else (row.stamp, row.text)
