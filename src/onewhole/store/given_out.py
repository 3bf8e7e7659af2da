"""A record of what was given out on a pupil, to whom, what for and on which day: typed by the teacher."""

from datetime import date, datetime

from msgspec import Struct
from sqlalchemy import delete, insert, select

from onewhole.store import tables
from onewhole.store.classes import find_pupil
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere


class GivenOut(Struct, frozen=True):
    """One line: `what` was given `to` whom, `why` and on which day; `number` is 0 before it is kept."""

    code: str
    what: str
    to: str
    why: str
    day: date
    written: datetime
    by: str
    number: int = 0


def keep_given_out(store: Store, class_number: int, given: GivenOut) -> None:
    """Keep a line. Raises `NotThere` for a pupil who is not in the class, and `StoreRefused`."""
    with store.writing() as connection:
        connection.execute(
            insert(tables.given_out).values(
                pupil_number=find_pupil(connection, class_number, given.code).number,
                what=given.what,
                to=given.to,
                why=given.why,
                day=given.day,
                written=given.written,
                by=given.by,
            )
        )


def given_out_of(store: Store, class_number: int, code: str | None = None) -> tuple[GivenOut, ...]:
    """The lines of a class, or of one of its pupils, by day; none where nothing was noted."""
    lines, pupils = tables.given_out.c, tables.pupils.c
    asked = (
        select(pupils.code, lines.what, lines.to, lines.why, lines.day, lines.written, lines.by, lines.number)
        .join(tables.pupils, pupils.number == lines.pupil_number)
        .where(pupils.class_number == class_number)
        .order_by(lines.day, lines.number)
    )
    if code is not None:
        asked = asked.where(pupils.code == code)
    with store.reading() as connection:
        return tuple(GivenOut(*row) for row in connection.execute(asked))


def forget_given_out(store: Store, class_number: int, code: str, number: int) -> None:
    """Take away a line that was typed wrongly. Raises `NotThere` for one that is not this pupil's."""
    lines = tables.given_out.c
    with store.writing() as connection:
        pupil = find_pupil(connection, class_number, code).number
        mine = (lines.number == number) & (lines.pupil_number == pupil)
        if connection.execute(delete(tables.given_out).where(mine)).rowcount != 1:
            raise NotThere(
                "This line is not there any more", where=f"pupil {code[:20]!r}", remedy="Load the page again."
            )
