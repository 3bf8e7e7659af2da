"""Deleting a night, a page or a class with all that hangs on it, and what would go, counted first.

What hangs on a night, a pupil, a page or a class names it by its number in a column of one name, in whatever
table: a new table is covered by that.
"""

from collections.abc import Callable, Collection
from contextlib import closing
from datetime import datetime
from pathlib import Path

from msgspec import Struct
from sqlalchemy import Connection, delete, func, select

from onewhole.errors import Fault
from onewhole.store import tables
from onewhole.store.classes import no_class
from onewhole.store.copying import copy_beside
from onewhole.store.keeping import check_alone, clean
from onewhole.store.nights import find_night
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere, StoreRefused
from onewhole.store.transaction import driver_of, translate_errors


class Holding(Struct, frozen=True):
    """What hangs on a night, a page or a class: so many nights, answers, talks and recordings go with it.

    ``answers`` counts the cells in which something stands now; ``pupils`` are those who wrote them, or, of a
    class, all of its pupils.
    """

    nights: int
    answers: int
    pupils: int
    talks: int
    recordings: int


def night_holding(store: Store, number: int) -> Holding:
    """Count what hangs on a night. Raises `NotThere`."""
    with store.reading() as connection:
        find_night(connection, number)
        return _holding(connection, (number,))


def sheet_holding(store: Store, number: int) -> Holding:
    """Count what hangs on a page, in whatever class it was set. Raises `NotThere`."""
    with store.reading() as connection:
        _find_sheet(connection, number)
        return _holding(connection, _nights(connection, "sheet_number", number))


def class_holding(store: Store, number: int) -> Holding:
    """Count what hangs on a class. Raises `NotThere`."""
    with store.reading() as connection:
        _made_at(connection, number)
        pupils = select(func.count()).where(tables.pupils.c.class_number == number)
        nights = _nights(connection, "class_number", number)
        return _holding(connection, nights, connection.scalar(pupils))


def nights_of_sheet(store: Store, number: int) -> tuple[int, ...]:
    """The numbers of the nights on which a page went home, in whatever class."""
    with store.reading() as connection:
        return _nights(connection, "sheet_number", number)


def back_up_first(store: Store, before: Callable[[], Path]) -> Path:
    """Copy all that is kept to a new file before a transaction changes it; return where.

    Nobody else writes from then until the transaction ends: whatever was told as kept before it is in that
    file, and whatever comes later is written into what the transaction leaves. Raises `StoreRefused`.
    """
    if store.shared is None or not store.shared.writes:
        msg = "a backup is made first within the transaction that changes something"
        raise Fault(msg)
    store.connection()
    goal = before()
    with translate_errors(store.path), closing(store.engine.raw_connection()) as raw:
        copy_beside(driver_of(raw), goal)
    return goal


def delete_night(store: Store, number: int) -> None:
    """Take a night out of the file with all that hangs on it. Raises `NotThere`, `StoreRefused`."""
    with store.writing() as connection:
        find_night(connection, number)
        _delete_nights(connection, (number,))


def delete_sheet(store: Store, number: int) -> None:
    """Take a page out with all its versions and every night of it. Raises `NotThere`, `StoreRefused`."""
    with store.writing() as connection:
        _find_sheet(connection, number)
        _delete_nights(connection, _nights(connection, "sheet_number", number))
        _delete(connection, "sheet_number", (number,))
        connection.execute(delete(tables.sheets).where(tables.sheets.c.number == number))


def delete_class(store: Store, number: int) -> None:
    """Take a class out with its pupils and its nights; its pages stay. Raises `NotThere`, `StoreRefused`."""
    with store.writing() as connection:
        _made_at(connection, number)
        _delete_class(connection, number)


def erase_class(store: Store, number: int, made: datetime | None = None) -> None:
    """Take a class out as :func:`delete_class`, so that no byte of it stays in the file.

    With ``made`` only a class that was made at that moment is the one that is meant: in a backup another one
    may have had its number. Raises as :func:`onewhole.store.keeping.erase_pupil`, and `NotThere`.
    """
    check_alone(store)
    with store.writing() as connection:
        if made not in {None, _made_at(connection, number)}:
            raise no_class(number)
        _delete_class(connection, number)
    store.engine.clear_compiled_cache()  # a statement remembers the values of its first use
    try:
        clean(store)
    except StoreRefused as refusal:
        raise StoreRefused(
            f"The class is erased, but traces may still be in the file. {refusal.what}",
            where=refusal.where,
            remedy=f"{refusal.remedy} Then clean the file.",
        ) from refusal


def class_made(store: Store, number: int) -> datetime:
    """Return when a class was made. Raises `NotThere`."""
    with store.reading() as connection:
        return _made_at(connection, number)


def _made_at(connection: Connection, number: int) -> datetime:
    found: datetime | None = connection.scalar(
        select(tables.classes.c.made).where(tables.classes.c.number == number)
    )
    if found is None:
        raise no_class(number)
    return found


def _holding(connection: Connection, nights: Collection[int], pupils: int | None = None) -> Holding:
    answers = tables.answers.c
    last = (
        select(func.max(answers.number))
        .where(answers.night_number.in_(nights))
        .group_by(answers.night_number, answers.pupil_number, answers.problem)
    )
    stands = select(func.count(), func.count(answers.pupil_number.distinct())).where(
        answers.number.in_(last), answers.text != ""
    )
    cells, wrote = connection.execute(stands).one()
    talks, recordings = (
        connection.scalar(select(func.count()).where(table.c.night_number.in_(nights))) or 0
        for table in (tables.asked_answers, tables.recordings)
    )
    return Holding(len(nights), cells, wrote if pupils is None else pupils, talks, recordings)


def _nights(connection: Connection, column: str, number: int) -> tuple[int, ...]:
    nights = tables.nights.c
    asked = select(nights.number).where(nights[column] == number).order_by(nights.number)
    return tuple(connection.scalars(asked))


def _find_sheet(connection: Connection, number: int) -> None:
    if connection.scalar(select(tables.sheets.c.number).where(tables.sheets.c.number == number)) is None:
        raise NotThere("There is no such sheet", where=f"sheet {number}", remedy="Choose one, or add it.")


def _delete_class(connection: Connection, number: int) -> None:
    pupils = select(tables.pupils.c.number).where(tables.pupils.c.class_number == number)
    _delete_nights(connection, _nights(connection, "class_number", number))
    _delete(connection, "pupil_number", tuple(connection.scalars(pupils)))
    _delete(connection, "class_number", (number,))
    _forget_settings(connection, f"class {number}")
    connection.execute(delete(tables.classes).where(tables.classes.c.number == number))


def _delete_nights(connection: Connection, numbers: Collection[int]) -> None:
    _delete(connection, "night_number", numbers)
    for number in numbers:
        _forget_settings(connection, f"night {number}")
    connection.execute(delete(tables.nights).where(tables.nights.c.number.in_(numbers)))


def _delete(connection: Connection, column: str, numbers: Collection[int]) -> None:
    """Delete what hangs on these numbers in every table that has the column, what hangs on others first."""
    for table in reversed(tables.METADATA.sorted_tables):
        if column in table.c:
            connection.execute(delete(table).where(table.c[column].in_(numbers)))


def _forget_settings(connection: Connection, of: str) -> None:
    """Delete the settings of a night or a class: their names end with it."""
    connection.execute(delete(tables.settings).where(tables.settings.c.name.like(f"% {of}")))
