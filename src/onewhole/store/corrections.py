"""A teacher's corrections: how an answer was read, a finding, a pupil's place in a group."""

from collections.abc import Sequence
from datetime import datetime

from msgspec import Struct
from sqlalchemy import insert, select

from onewhole.store import tables
from onewhole.store.correction_rows import TeacherWord, row_of, word_of
from onewhole.store.nights import pupil_numbers
from onewhole.store.opening import Store


class Correction(Struct, frozen=True):
    """What the teacher says instead of a pupil's night, when, and who wrote it."""

    night: int
    code: str
    word: TeacherWord
    written: datetime
    by: str


def keep_correction(store: Store, correction: Correction) -> Correction:
    """Keep a correction in a transaction. Raises as `answers.keep_answers`."""
    keep_corrections(store, (correction,))
    return correction


def keep_corrections(store: Store, corrections: Sequence[Correction]) -> None:
    """Keep corrections of one night, all or none. Raises as `answers.keep_answers`."""
    if not corrections:
        return
    night = corrections[0].night
    with store.writing() as connection:
        pupils = pupil_numbers(connection, night, {one.code for one in corrections})
        for one in corrections:
            problem, of, text = row_of(one.word)
            connection.execute(
                insert(tables.corrections).values(
                    night_number=night,
                    pupil_number=pupils[one.code],
                    problem=problem,
                    of=of,
                    text=text,
                    written=one.written,
                    by=one.by,
                )
            )


def corrections_of(store: Store, night: int) -> tuple[Correction, ...]:
    """Every correction of a night in the order they were written; the last one of a kind counts."""
    columns = tables.corrections.c
    asked = (
        select(
            columns.night_number,
            tables.pupils.c.code,
            columns.problem,
            columns.of,
            columns.text,
            columns.written,
            columns.by,
        )
        .join(tables.pupils, tables.pupils.c.number == columns.pupil_number)
        .where(columns.night_number == night)
        .order_by(columns.number)
    )
    with store.reading() as connection:
        return tuple(
            Correction(night, code, word_of(problem, of, text), written, by)
            for night, code, problem, of, text, written, by in connection.execute(asked)
        )
