"""The year of a class as its teacher typed it; what it plans is worked out anew."""

from datetime import datetime

from msgspec import Struct
from sqlalchemy import delete, insert, select

from onewhole.store import tables
from onewhole.store.classes import no_class
from onewhole.store.opening import Store


class KeptYear(Struct, frozen=True):
    """A year as typed, and when it was written."""

    typed: str
    written: datetime


def keep_year(store: Store, class_number: int, typed: str, now: datetime) -> None:
    """Keep the year of a class instead of the one that stands. Raises `NotThere`."""
    rows = tables.years
    with store.writing() as connection:
        classes = tables.classes.c
        if connection.scalar(select(classes.number).where(classes.number == class_number)) is None:
            raise no_class(class_number)
        connection.execute(delete(rows).where(rows.c.class_number == class_number))
        connection.execute(insert(rows).values(class_number=class_number, typed=typed, written=now))


def year_of(store: Store, class_number: int) -> KeptYear | None:
    """The year of a class; None where none is kept."""
    rows = tables.years.c
    with store.reading() as connection:
        asked = select(rows.typed, rows.written).where(rows.class_number == class_number)
        found = connection.execute(asked).first()
    return KeptYear(found.typed, found.written) if found else None
