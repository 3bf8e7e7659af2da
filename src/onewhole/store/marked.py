"""How far the marking of some nights has come: which pupils have an answer."""

from collections.abc import Collection

from sqlalchemy import exists, func, select

from onewhole.store import tables
from onewhole.store.opening import Store


def answered(store: Store, nights: Collection[int]) -> dict[int, frozenset[str]]:
    """Of each night, the codes of the pupils who have an answer now; a night without any is not in it.

    An answer that was cleared, or holds only blanks, is none. One answer of a pupil is looked for, and not
    all of them.
    """
    of, pupils = tables.nights.c, tables.pupils.c
    one, later = tables.answers.alias("one"), tables.answers.alias("later")
    same_cell = [one.c[name] == later.c[name] for name in ("night_number", "pupil_number", "problem")]
    newest = select(func.max(later.c.number)).where(*same_cell).scalar_subquery()
    has_one = exists().where(
        one.c.night_number == of.number,
        one.c.pupil_number == pupils.number,
        func.trim(one.c.text) != "",
        one.c.number == newest,
    )
    asked = (
        select(of.number, pupils.code)
        .join(tables.pupils, pupils.class_number == of.class_number)
        .where(of.number.in_(nights), has_one)
    )
    found: dict[int, set[str]] = {}
    with store.reading() as connection:
        for night, code in connection.execute(asked):
            found.setdefault(night, set()).add(code)
    return {night: frozenset(codes) for night, codes in found.items()}
