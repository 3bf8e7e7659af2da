"""Classes and their pupils. A pupil is an opaque code; a name stands beside it only where one was typed."""

from datetime import datetime

from msgspec import Struct
from sqlalchemy import Connection, Select, insert, select, update

from onewhole.store import tables
from onewhole.store.numbers import next_number
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere


class SchoolClass(Struct, frozen=True):
    """A class as it is kept."""

    number: int
    name: str
    made: datetime


class Pupil(Struct, frozen=True):
    """A pupil as kept: `code` is unique in the class and never given twice; `name` is None unless typed."""

    number: int
    class_number: int
    code: str
    name: str | None


def add_class(store: Store, name: str, now: datetime) -> SchoolClass:
    """Keep a new class.

    >>> from datetime import UTC
    >>> from pathlib import Path
    >>> from tempfile import TemporaryDirectory
    >>> from onewhole.store.opening import open_store
    >>> with TemporaryDirectory() as folder:
    ...     store = open_store(Path(folder) / "room12.class")
    ...     kites = add_class(store, "Room 12", datetime(2026, 9, 1, tzinfo=UTC))
    ...     [add_pupil(store, kites.number).code for _ in range(2)]
    ...     store.close()
    ['K01', 'K02']
    """
    with store.writing() as connection:
        number = next_number(connection, tables.classes)
        made = insert(tables.classes).values(number=number, name=name, codes_given=0, made=now)
        connection.execute(made)
    return SchoolClass(number, name, now)


def classes_with_pupils(
    store: Store, number: int | None = None
) -> tuple[tuple[SchoolClass, tuple[Pupil, ...]], ...]:
    """Every class in the order they were made, or only one, each with its pupils in the order of adding.

    One statement; none for a number that is not there.
    """
    classes, pupils = tables.classes.c, tables.pupils.c
    asked = (
        select(classes.number, classes.name, classes.made, pupils.number, pupils.code, pupils.name)
        .join(tables.pupils, pupils.class_number == classes.number, isouter=True)
        .order_by(classes.number, pupils.number)
    )
    if number is not None:
        asked = asked.where(classes.number == number)
    found: dict[SchoolClass, list[Pupil]] = {}
    with store.reading() as connection:
        for mine, name, made, pupil, code, called in connection.execute(asked):
            among = found.setdefault(SchoolClass(mine, name, made), [])
            if pupil is not None:
                among.append(Pupil(pupil, mine, code, called))
    return tuple((one, tuple(among)) for one, among in found.items())


def class_names(store: Store) -> tuple[tuple[int, str], ...]:
    """The number and the name of every class, in the order they were made."""
    columns = tables.classes.c
    asked = select(columns.number, columns.name).order_by(columns.number)
    with store.reading() as connection:
        return tuple((number, name) for number, name in connection.execute(asked))


def rename_class(store: Store, number: int, name: str) -> None:
    """Give a class another name. Raises `NotThere`."""
    columns = tables.classes.c
    with store.writing() as connection:
        changed = connection.execute(update(tables.classes).where(columns.number == number).values(name=name))
        if changed.rowcount != 1:
            raise no_class(number)


def add_pupil(store: Store, class_number: int, name: str | None = None) -> Pupil:
    """Keep a new pupil under the next code of the class (K01, K02, ...). Raises `NotThere`."""
    columns = tables.classes.c
    with store.writing() as connection:
        given = connection.scalar(select(columns.codes_given).where(columns.number == class_number))
        if given is None:
            raise no_class(class_number)
        code = f"K{given + 1:02d}"
        connection.execute(
            update(tables.classes).where(columns.number == class_number).values(codes_given=given + 1)
        )
        made = insert(tables.pupils).values(class_number=class_number, code=code, name=name)
        number: int = connection.execute(made.returning(tables.pupils.c.number)).scalar_one()
    return Pupil(number, class_number, code, name)


def pupils_of(store: Store, class_number: int) -> tuple[Pupil, ...]:
    """The pupils of a class, in the order they were added; none for a class that is not there."""
    columns = tables.pupils.c
    asked = _pupils().where(columns.class_number == class_number).order_by(columns.number)
    with store.reading() as connection:
        return tuple(Pupil(*row) for row in connection.execute(asked))


def name_pupil(store: Store, class_number: int, code: str, name: str | None) -> Pupil:
    """Give a pupil a name, another one, or none. Raises `NotThere`."""
    with store.writing() as connection:
        found = find_pupil(connection, class_number, code)
        connection.execute(
            update(tables.pupils).where(tables.pupils.c.number == found.number).values(name=name)
        )
    return Pupil(found.number, class_number, code, name)


def find_pupil(connection: Connection, class_number: int, code: str) -> Pupil:
    """Find a pupil by code. Raises `NotThere`."""
    columns = tables.pupils.c
    asked = _pupils().where(columns.class_number == class_number, columns.code == code)
    row = connection.execute(asked).one_or_none()
    if row is None:
        raise no_pupil(class_number, code)
    return Pupil(*row)


def _pupils() -> Select[int, int, str, str | None]:
    columns = tables.pupils.c
    return select(columns.number, columns.class_number, columns.code, columns.name)


def no_pupil(class_number: int, code: str) -> NotThere:
    """Say that a code is not in a class."""
    return NotThere(
        "There is no such pupil in this class",
        where=f"class {class_number}, pupil {code[:20]!r}",
        remedy="Choose a code of the class, or add the pupil.",
    )


def no_class(number: int) -> NotThere:
    """Say that a class is not there."""
    return NotThere("There is no such class", where=f"class {number}", remedy="Choose one, or add it.")
