"""Cells of a night's grid, changed by compare-and-set: each only if it still has the text its writer saw."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import Connection, insert, select

from onewhole.store import tables
from onewhole.store.classes import find_pupil
from onewhole.store.nights import find_night
from onewhole.store.opening import Store


@dataclass(frozen=True, slots=True)
class Change:
    """A cell to be written: `was` is the text its writer saw there (empty for none), None for any."""

    code: str
    problem: str
    text: str
    was: str | None = None


def change_answers(
    store: Store, night: int, changes: Sequence[Change], written: datetime, by: str
) -> tuple[str, ...]:
    """Compare-and-set in one transaction; return the text of each cell once it is on the disk.

    On conflict (the cell has neither the text its writer saw nor the new one) the stored text wins and is
    returned. A cell that has the new text already is not written again. Raises as
    `onewhole.store.answers.keep_answer`, and then nothing was written.
    """
    with store.writing() as connection:
        found = find_night(connection, night)
        codes = {change.code for change in changes}
        pupils = {code: find_pupil(connection, found.class_number, code).number for code in codes}
        stands: list[str] = []
        for change in changes:
            now = _text(connection, night, pupils[change.code], change.problem)
            if now == change.text or change.was not in {None, now}:
                stands.append(now)
                continue
            connection.execute(
                insert(tables.answers).values(
                    night_number=night,
                    pupil_number=pupils[change.code],
                    problem=change.problem,
                    text=change.text,
                    written=written,
                    by=by,
                )
            )
            stands.append(change.text)
    return tuple(stands)


def _text(connection: Connection, night: int, pupil: int, problem: str) -> str:
    columns = tables.answers.c
    asked = (
        select(columns.text)
        .where(columns.night_number == night, columns.pupil_number == pupil, columns.problem == problem)
        .order_by(columns.number.desc())
        .limit(1)
    )
    return connection.scalar(asked) or ""
