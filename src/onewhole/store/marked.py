"""How far the marking of some nights has come: how many pupils have an answer."""

from collections.abc import Collection

from sqlalchemy import func, select

from onewhole.store import tables
from onewhole.store.opening import Store


def answered(store: Store, nights: Collection[int]) -> dict[int, int]:
    """Of each night, how many pupils have an answer that stands now; a night without any is not in it.

    An answer that was cleared, or holds only blanks, is none.
    """
    columns = tables.answers.c
    cell = (columns.night_number, columns.pupil_number, columns.problem)
    newest = select(func.max(columns.number)).where(columns.night_number.in_(nights)).group_by(*cell)
    asked = (
        select(columns.night_number, func.count(columns.pupil_number.distinct()))
        .where(columns.number.in_(newest), func.trim(columns.text) != "")
        .group_by(columns.night_number)
    )
    with store.reading() as connection:
        return {night: pupils for night, pupils in connection.execute(asked)}  # noqa: C416 - rows are no pairs for mypy
