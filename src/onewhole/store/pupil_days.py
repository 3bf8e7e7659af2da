"""The days on which pupils joined and left a class."""

from datetime import date

from msgspec import Struct
from sqlalchemy import delete, insert, select

from onewhole.store import tables
from onewhole.store.classes import find_pupil
from onewhole.store.opening import Store


class PupilDays(Struct, frozen=True):
    """The first day on which a pupil got pages, and the first on which none any more; None where not said."""

    joined: date | None = None
    left: date | None = None

    def in_class(self, day: date) -> bool:
        """Say whether the pupil is in the class on a day.

        >>> days = PupilDays(date(2026, 10, 1), date(2026, 12, 1))
        >>> [days.in_class(date(2026, month, 1)) for month in (9, 10, 11, 12)]
        [False, True, True, False]
        """
        return (self.joined is None or self.joined <= day) and (self.left is None or day < self.left)


#: Of one of whom nothing is said.
ALL_YEAR = PupilDays()


def keep_pupil_days(store: Store, class_number: int, code: str, days: PupilDays) -> None:
    """Keep the days of a pupil instead of those that stand. Raises `NotThere`."""
    rows = tables.pupil_days
    with store.writing() as connection:
        number = find_pupil(connection, class_number, code).number
        connection.execute(delete(rows).where(rows.c.pupil_number == number))
        if days != ALL_YEAR:
            made = insert(rows).values(pupil_number=number, joined=days.joined, left=days.left)
            connection.execute(made)


def pupil_days_of(store: Store, class_number: int) -> dict[str, PupilDays]:
    """The days of the pupils of a class by code, of those of whom any is said."""
    rows, pupils = tables.pupil_days.c, tables.pupils.c
    asked = (
        select(pupils.code, rows.joined, rows.left)
        .join(tables.pupils, pupils.number == rows.pupil_number)
        .where(pupils.class_number == class_number)
        .order_by(pupils.number)
    )
    with store.reading() as connection:
        return {code: PupilDays(joined, left) for code, joined, left in connection.execute(asked)}
