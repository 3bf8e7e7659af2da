"""The inputs of a night's cache key: numbers that change when anything the night is computed from does."""

from dataclasses import dataclass

from sqlalchemy import func, select

from onewhole.store import tables
from onewhole.store.opening import Store


@dataclass(frozen=True, slots=True)
class CacheInputs:
    """A night's sheet and version, and the numbers of its last answer, correction and talk (0: none)."""

    night: int
    day: str
    sheet: int
    version: int
    answer: int
    correction: int
    asked: int


def cache_inputs_of(store: Store, class_number: int) -> tuple[CacheInputs, ...]:
    """The cache inputs of every night of a class, by day, in one query; none for an unknown class."""
    columns = tables.nights.c
    last = [
        select(func.max(table.c.number)).where(table.c.night_number == columns.number).scalar_subquery()
        for table in (tables.answers, tables.corrections, tables.asked_answers)
    ]
    asked = (
        select(columns.number, columns.day, columns.sheet_number, columns.version, *last)
        .where(columns.class_number == class_number)
        .order_by(columns.day, columns.number)
    )
    with store.reading() as connection:
        return tuple(
            CacheInputs(night, day.isoformat(), sheet, version, answer or 0, correction or 0, talk or 0)
            for night, day, sheet, version, answer, correction, talk in connection.execute(asked)
        )
