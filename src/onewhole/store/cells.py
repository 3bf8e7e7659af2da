"""Cells of a night's grid, changed by compare-and-set: each only if it still has the text its writer saw."""

from collections.abc import Collection, Sequence
from datetime import datetime

from msgspec import Struct
from sqlalchemy import Connection, func, insert, select

from onewhole.store import tables
from onewhole.store.nights import pupil_numbers
from onewhole.store.opening import Store


class Change(Struct, frozen=True):
    """A cell to be written: `was` is the text its writer saw there (empty for none), None for any."""

    code: str
    problem: str
    text: str
    was: str | None = None


def change_answers(
    store: Store, night: int, changes: Sequence[Change], written: datetime, by: str
) -> tuple[str, ...]:
    """Compare-and-set in one transaction, in three statements; return the text that each cell has then.

    On conflict (the cell has neither the text its writer saw nor the new one) the stored text wins and is
    returned. A cell that has the new text already is not written again. Raises as
    `onewhole.store.answers.keep_answers`, and then nothing was written.
    """
    with store.writing() as connection:
        pupils = pupil_numbers(connection, night, {change.code for change in changes})
        texts = _texts(connection, night, pupils.values())
        stands: list[str] = []
        rows: list[dict[str, object]] = []
        for change in changes:
            cell = pupils[change.code], change.problem
            now = texts.get(cell, "")
            if now == change.text or change.was not in {None, now}:
                stands.append(now)
                continue
            texts[cell] = change.text
            stands.append(change.text)
            rows.append(
                {
                    "night_number": night,
                    "pupil_number": cell[0],
                    "problem": change.problem,
                    "text": change.text,
                    "written": written,
                    "by": by,
                }
            )
        if rows:
            connection.execute(insert(tables.answers), rows)
    return tuple(stands)


def _texts(connection: Connection, night: int, pupils: Collection[int]) -> dict[tuple[int, str], str]:
    """The text of every cell of some pupils that has any, by pupil's number and problem."""
    columns = tables.answers.c
    newest = (
        select(func.max(columns.number))
        .where(columns.night_number == night, columns.pupil_number.in_(pupils))
        .group_by(columns.pupil_number, columns.problem)
    )
    asked = select(columns.pupil_number, columns.problem, columns.text).where(columns.number.in_(newest))
    return {(pupil, problem): text for pupil, problem, text in connection.execute(asked)}
