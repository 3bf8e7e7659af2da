"""What everything computed of a night rests on, in a few numbers: they change when anything under it does."""

from dataclasses import dataclass

from sqlalchemy import func, select

from onewhole.store import tables
from onewhole.store.opening import Store


@dataclass(frozen=True, slots=True)
class Basis:
    """A night's sheet and version, and the numbers of its last answer and its last correction (0: none)."""

    night: int
    day: str
    sheet: int
    version: int
    answer: int
    correction: int


def bases_of(store: Store, class_number: int) -> tuple[Basis, ...]:
    """What every night of a class rests on, by day, asked at once; none for a class that is not there."""
    columns = tables.nights.c
    last = [
        select(func.max(table.c.number)).where(table.c.night_number == columns.number).scalar_subquery()
        for table in (tables.answers, tables.corrections)
    ]
    asked = (
        select(columns.number, columns.day, columns.sheet_number, columns.version, *last)
        .where(columns.class_number == class_number)
        .order_by(columns.day, columns.number)
    )
    with store.reading() as connection:
        return tuple(
            Basis(night, day.isoformat(), sheet, version, answer or 0, correction or 0)
            for night, day, sheet, version, answer, correction in connection.execute(asked)
        )
