"""Answers as they are written, each writing kept: the last is the answer, the earlier ones its history."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import ColumnElement, Select, func, insert, select

from onewhole.store import tables
from onewhole.store.classes import find_pupil
from onewhole.store.nights import pupil_numbers
from onewhole.store.opening import Store


@dataclass(frozen=True, slots=True)
class KeptAnswer:
    """One writing of one answer: `text` exactly as typed (empty when cleared), `by` says who wrote it."""

    night: int
    code: str
    problem: str
    text: str
    written: datetime
    by: str


def keep_answer(store: Store, answer: KeptAnswer) -> KeptAnswer:
    """Keep one writing in a transaction of its own; when this returns, it is on the disk.

    Order of writing is the order of calls, whatever the clock says. Raises `NotThere` for a night, or for a
    code that is not in the night's class, `NotStorable` and `StoreRefused`.
    """
    (kept,) = keep_answers(store, (answer,))
    return kept


def keep_answers(store: Store, answers: Sequence[KeptAnswer]) -> tuple[KeptAnswer, ...]:
    """Keep writings, in their order, all of them or none: a column filled at once, or a paste.

    Raises as `keep_answer`.
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
    return _standing(store, tables.answers.c.night_number == night)


def answers_by(store: Store, class_number: int, code: str) -> tuple[KeptAnswer, ...]:
    """The answers of a pupil as they stand now, by night in the order of adding. Raises `NotThere`."""
    with store.reading() as connection:
        pupil = find_pupil(connection, class_number, code)
    return _standing(store, tables.answers.c.pupil_number == pupil.number)


def history_of(store: Store, night: int, code: str, problem: str) -> tuple[KeptAnswer, ...]:
    """Every writing of one answer, the first one first; none for an answer never written."""
    columns = tables.answers.c
    asked = _asked().where(
        columns.night_number == night, tables.pupils.c.code == code, columns.problem == problem
    )
    with store.reading() as connection:
        return tuple(KeptAnswer(*row) for row in connection.execute(asked.order_by(columns.number)))


def last_writing(store: Store, night: int) -> int:
    """The number of a night's last writing: it grows with each and never comes twice; 0 for none."""
    newest = select(func.max(tables.answers.c.number)).where(tables.answers.c.night_number == night)
    with store.reading() as connection:
        return connection.scalar(newest) or 0


def last_writings(store: Store, class_number: int) -> dict[int, int]:
    """`last_writing` of every night of a class that has any, asked at once."""
    columns = tables.nights.c
    newest = (
        select(func.max(tables.answers.c.number))
        .where(tables.answers.c.night_number == columns.number)
        .scalar_subquery()
    )
    asked = select(columns.number, newest).where(columns.class_number == class_number)
    with store.reading() as connection:
        return {night: number for night, number in connection.execute(asked) if number is not None}


def _standing(store: Store, which: ColumnElement[bool]) -> tuple[KeptAnswer, ...]:
    """The last writing of every answer among some."""
    columns = tables.answers.c
    cell = (columns.night_number, columns.pupil_number, columns.problem)
    newest = select(func.max(columns.number)).where(which).group_by(*cell)
    asked = _asked().where(columns.number.in_(newest)).order_by(*cell)
    with store.reading() as connection:
        return tuple(KeptAnswer(*row) for row in connection.execute(asked))


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
