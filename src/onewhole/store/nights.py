"""Nights: which version of which sheet a class took home, and on which day."""

from collections.abc import Collection
from datetime import date

from msgspec import Struct
from msgspec.structs import replace
from sqlalchemy import Connection, Select, delete, insert, select, update

from onewhole.store import tables
from onewhole.store.classes import no_pupil
from onewhole.store.numbers import next_number
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere, StoreRefused


class KeptNight(Struct, frozen=True):
    """A night as it is kept; `name` is its own, None where it is called as its page is."""

    number: int
    class_number: int
    sheet_number: int
    version: int
    day: date
    name: str | None = None


#: The columns of a night, as `KeptNight` takes them, and where they are.
NIGHT = (
    tables.nights.c.number,
    tables.nights.c.class_number,
    tables.nights.c.sheet_number,
    tables.nights.c.version,
    tables.nights.c.day,
    tables.night_names.c.name.label("own_name"),
)
WITH_NAMES = tables.nights.outerjoin(
    tables.night_names, tables.night_names.c.night_number == tables.nights.c.number
)


def add_night(store: Store, class_number: int, sheet_number: int, version: int, day: date) -> KeptNight:
    """Keep that a class takes a sheet home. Raises `NotThere` for a class or version that is not there."""
    sheets = tables.sheet_versions.c
    with store.writing() as connection:
        there = (
            connection.scalar(select(tables.classes.c.number).where(tables.classes.c.number == class_number)),
            connection.scalar(
                select(sheets.version).where(sheets.sheet_number == sheet_number, sheets.version == version)
            ),
        )
        if None in there:
            raise NotThere(
                "There is no such class or no such version of the sheet",
                where=f"class {class_number}, sheet {sheet_number}, version {version}",
                remedy="Choose a class and a sheet that are kept.",
            )
        number = next_number(connection, tables.nights)
        made = insert(tables.nights).values(
            number=number, class_number=class_number, sheet_number=sheet_number, version=version, day=day
        )
        connection.execute(made)
    return KeptNight(number, class_number, sheet_number, version, day)


def nights_of(store: Store, class_number: int) -> tuple[KeptNight, ...]:
    """The nights of a class by day; none for a class that is not there."""
    columns = tables.nights.c
    asked = _nights().where(columns.class_number == class_number)
    with store.reading() as connection:
        return tuple(
            KeptNight(*row) for row in connection.execute(asked.order_by(columns.day, columns.number))
        )


def change_version(store: Store, number: int, version: int) -> KeptNight:
    """Let a night have another version of its sheet, as long as no answer is written.

    Raises `NotThere` for a night or version that is not there, and `StoreRefused` where answers stand.
    """
    columns = tables.nights.c
    with store.writing() as connection:
        found = find_night(connection, number)
        sheets = tables.sheet_versions.c
        there = select(sheets.version).where(
            sheets.sheet_number == found.sheet_number, sheets.version == version
        )
        if connection.scalar(there) is None:
            raise NotThere("There is no such version", where=f"version {version}", remedy="Save it first.")
        written = select(tables.answers.c.number).where(tables.answers.c.night_number == number).limit(1)
        if connection.scalar(written) is not None:
            raise StoreRefused(
                "Answers to the earlier version are kept for that night",
                where=f"night {number}",
                remedy="Choose another day: the answers stay with the page they were written on.",
            )
        connection.execute(update(tables.nights).where(columns.number == number).values(version=version))
    return replace(found, version=version)


def change_day(store: Store, number: int, day: date) -> None:
    """Let a night be another day's; what was written stays with it. Raises `NotThere`, `StoreRefused`."""
    with store.writing() as connection:
        find_night(connection, number)
        connection.execute(update(tables.nights).where(tables.nights.c.number == number).values(day=day))


def name_night(store: Store, number: int, name: str | None) -> None:
    """Give a night a name of its own, or with None that of its page. Raises `NotThere`, `StoreRefused`."""
    names = tables.night_names
    with store.writing() as connection:
        find_night(connection, number)
        connection.execute(delete(names).where(names.c.night_number == number))
        if name is not None:
            connection.execute(insert(names).values(night_number=number, name=name))


def pupil_numbers(connection: Connection, number: int, codes: Collection[str]) -> dict[str, int]:
    """Find pupils of a night's class by their codes, in one statement. Raises `NotThere`."""
    pupils = tables.pupils.c
    mine = (pupils.class_number == tables.nights.c.class_number) & pupils.code.in_(codes)
    asked = (
        select(tables.nights.c.class_number, pupils.code, pupils.number)
        .join(tables.pupils, mine, isouter=True)
        .where(tables.nights.c.number == number)
    )
    rows = connection.execute(asked).all()
    if not rows:
        raise _no_night(number)
    found = {code: pupil for _, code, pupil in rows if code is not None}
    for code in sorted(set(codes) - set(found)):
        raise no_pupil(rows[0].class_number, code)
    return found


def _nights() -> Select[int, int, int, int, date, str]:
    return select(*NIGHT).select_from(WITH_NAMES)


def find_night(connection: Connection, number: int) -> KeptNight:
    """Find a night by number. Raises `NotThere`."""
    row = connection.execute(_nights().where(tables.nights.c.number == number)).one_or_none()
    if row is None:
        raise _no_night(number)
    return KeptNight(*row)


def _no_night(number: int) -> NotThere:
    return NotThere("There is no such night", where=f"night {number}", remedy="Choose one, or add it.")
