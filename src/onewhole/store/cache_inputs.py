"""The inputs of a night's cache key: numbers that change when anything the night is computed from does."""

from msgspec import Struct
from sqlalchemy import func, select

from onewhole.store import tables
from onewhole.store.opening import Store
from onewhole.store.pupil_days import PupilDays


class CacheInputs(Struct, frozen=True):
    """A night's sheet and version, and the numbers of its last answer, correction, talk and word (0: none).

    ``not_here`` are the numbers of the pupils who are not in the class on its day.
    """

    night: int
    day: str
    sheet: int
    version: int
    answer: int
    correction: int
    asked: int
    word: int
    not_here: tuple[int, ...]


def cache_inputs_of(store: Store, class_number: int) -> tuple[CacheInputs, ...]:
    """The cache inputs of every night of a class, by day, in two queries; none for an unknown class."""
    columns = tables.nights.c
    last = [
        select(func.max(table.c.number)).where(table.c.night_number == columns.number).scalar_subquery()
        for table in (tables.answers, tables.corrections, tables.asked_answers, tables.night_words)
    ]
    asked = (
        select(columns.number, columns.day, columns.sheet_number, columns.version, *last)
        .where(columns.class_number == class_number)
        .order_by(columns.day, columns.number)
    )
    days, pupils = tables.pupil_days.c, tables.pupils.c
    said = (
        select(days.pupil_number, days.joined, days.left)
        .join(tables.pupils, pupils.number == days.pupil_number)
        .where(pupils.class_number == class_number)
        .order_by(days.pupil_number)
    )
    with store.reading() as connection:
        here = [(number, PupilDays(joined, left)) for number, joined, left in connection.execute(said)]
        return tuple(
            CacheInputs(
                night,
                day.isoformat(),
                sheet,
                version,
                answer or 0,
                correction or 0,
                talk or 0,
                word or 0,
                tuple(number for number, one in here if not one.in_class(day)),
            )
            for night, day, sheet, version, answer, correction, talk, word in connection.execute(asked)
        )
