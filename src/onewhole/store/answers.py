"""Answers as they are written, each writing kept: the last is the answer, the earlier ones its history."""

from collections.abc import Sequence
from datetime import datetime

from msgspec import Struct
from sqlalchemy import Select, func, insert, select

from onewhole.store import tables
from onewhole.store.nights import pupil_numbers
from onewhole.store.opening import Store


class KeptAnswer(Struct, frozen=True):
    """One writing of one answer: `text` exactly as typed (empty when cleared), `by` says who wrote it."""

    night: int
    code: str
    problem: str
    text: str
    written: datetime
    by: str


def keep_answers(store: Store, answers: Sequence[KeptAnswer]) -> tuple[KeptAnswer, ...]:
    """Keep writings in one transaction, all of them or none; when this returns, they are on the disk.

    The order of writing is the order given, whatever the clock says. Raises `NotThere` for a night, or for a
    code that is not in the night's class, `NotStorable` and `StoreRefused`.
    """
    with store.writing() as connection:
        pupils = {
            number: pupil_numbers(connection, number, {one.code for one in answers if one.night == number})
            for number in {one.night for one in answers}
        }
        rows = [
            {
                "night_number": one.night,
                "pupil_number": pupils[one.night][one.code],
                "problem": one.problem,
                "text": one.text,
                "written": one.written,
                "by": one.by,
            }
            for one in answers
        ]
        if rows:
            connection.execute(insert(tables.answers), rows)
    return tuple(answers)


def answers_of(store: Store, night: int) -> tuple[KeptAnswer, ...]:
    """The answers of a night as they stand now, by pupil, then by problem label."""
    columns = tables.answers.c
    cell = (columns.night_number, columns.pupil_number, columns.problem)
    newest = select(func.max(columns.number)).where(columns.night_number == night).group_by(*cell)
    asked = _asked().where(columns.number.in_(newest)).order_by(*cell)
    with store.reading() as connection:
        return tuple(KeptAnswer(*row) for row in connection.execute(asked))


def history_of(store: Store, night: int, code: str, problem: str) -> tuple[KeptAnswer, ...]:
    """Every writing of one answer, the first one first; none for an answer never written."""
    columns = tables.answers.c
    asked = _asked().where(
        columns.night_number == night, tables.pupils.c.code == code, columns.problem == problem
    )
    with store.reading() as connection:
        return tuple(KeptAnswer(*row) for row in connection.execute(asked.order_by(columns.number)))


def writings_of(store: Store, night: int) -> tuple[KeptAnswer, ...]:
    """Every writing of every answer of a night, in the order they were written."""
    columns = tables.answers.c
    asked = _asked().where(columns.night_number == night).order_by(columns.number)
    with store.reading() as connection:
        return tuple(KeptAnswer(*row) for row in connection.execute(asked))


def last_writing(store: Store, night: int) -> int:
    """The number of a night's last writing: it grows with each and never comes twice; 0 for none."""
    newest = select(func.max(tables.answers.c.number)).where(tables.answers.c.night_number == night)
    with store.reading() as connection:
        return connection.scalar(newest) or 0


def _asked() -> Select[int, str, str, str, datetime, str]:
    columns = tables.answers.c
    return select(
        columns.night_number,
        tables.pupils.c.code,
        columns.problem,
        columns.text,
        columns.written,
        columns.by,
    ).join(tables.pupils, tables.pupils.c.number == columns.pupil_number)
