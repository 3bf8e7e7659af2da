"""How far the marking of some nights has come: which pupils have an answer."""

from collections.abc import Collection

from sqlalchemy import func, select

from onewhole.store import tables
from onewhole.store.opening import Store


def answered(store: Store, nights: Collection[int]) -> dict[int, frozenset[str]]:
    """Of each night, the codes of the pupils who have an answer now; a night without any is not in it.

    An answer that was cleared, or holds only blanks, is none.
    """
    columns, pupils = tables.answers.c, tables.pupils.c
    cell = (columns.night_number, columns.pupil_number, columns.problem)
    newest = select(func.max(columns.number)).where(columns.night_number.in_(nights)).group_by(*cell)
    asked = (
        select(columns.night_number, pupils.code)
        .join(tables.pupils, pupils.number == columns.pupil_number)
        .where(columns.number.in_(newest), func.trim(columns.text) != "")
        .distinct()
    )
    found: dict[int, set[str]] = {}
    with store.reading() as connection:
        for night, code in connection.execute(asked):
            found.setdefault(night, set()).add(code)
    return {night: frozenset(codes) for night, codes in found.items()}
