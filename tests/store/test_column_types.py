"""A value that is not what its column holds is refused when it is read, and never gets further."""

import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy import Column, select

from onewhole.store import tables
from onewhole.store.answers import answers_of
from onewhole.store.classes import classes_with_pupils
from onewhole.store.column_types import (
    Cues,
    Day,
    Digest,
    ExactText,
    Moment,
    Number,
    OneOf,
    PictureBytes,
    PupilCode,
    SoundBytes,
)
from onewhole.store.corrections import corrections_of
from onewhole.store.keeping import keep_until, set_keep_until, settle
from onewhole.store.nights import nights_of
from onewhole.store.opening import Store, open_store
from onewhole.store.recordings import recordings_of
from onewhole.store.refusals import Damaged
from onewhole.store.steps import NightStep, steps_of
from onewhole.store.tables import METADATA, STEPS
from tests.kit.kept import DAY
from tests.kit.whole_class import whole_class

COLUMNS = [column for table in METADATA.sorted_tables for column in table.columns]
#: What is wrong in a column, by its type.
WRONG: dict[type, tuple[object, ...]] = {
    Number: ("kites", b"7", 1.5),
    ExactText: (b"kites", b"\xff"),
    PupilCode: (b"K01",),
    OneOf: ("later", b"shown"),
    Cues: ("1 x", "1  2", b"1"),
    Moment: ("soon", "2026-09-01", "2026-09-01T18:30:00", 7, "2026-13-01T00:00:00+00:00"),
    Day: ("soon", "2026-02-30", 20260901),
    SoundBytes: ("kites",),
    PictureBytes: ("kites",),
    Digest: (),  # a wrong one is told by the check, which compares it and nothing else
}
WRONGS = [
    pytest.param(column, wrong, id=f"{column}-{wrong!r}")
    for column in COLUMNS
    for wrong in WRONG[type(column.type)]
    if not (column.primary_key and type(column.type) is Number and len(column.table.primary_key) == 1)
]


@pytest.fixture(scope="module")
def whole_file(tmp_path_factory: pytest.TempPathFactory) -> bytes:
    """The bytes of a file with a row in every table."""
    made = open_store(tmp_path_factory.mktemp("whole") / "room12.class")
    whole_class(made)
    with made.reading() as connection:
        for table in METADATA.sorted_tables:
            assert connection.execute(select(table)).all(), "every table has a row"
    settle(made)
    return made.path.read_bytes()


@pytest.fixture
def whole(whole_file: bytes, tmp_path: Path) -> Iterator[Store]:
    """A store with a row in every table."""
    path = tmp_path / "room12.class"
    path.write_bytes(whole_file)
    opened = open_store(path)
    yield opened
    opened.close()


def _put(store: Store, column: "Column[object]", value: object) -> None:
    """Write past the code, as damage would."""
    store.close()
    with closing(sqlite3.connect(store.path)) as raw:
        raw.execute("PRAGMA writable_schema = ON")
        last = f'SELECT max(rowid) FROM "{column.table.name}"'  # noqa: S608 - our own names
        raw.execute(
            f'UPDATE "{column.table.name}" SET "{column.name}" = ? WHERE rowid = ({last})',  # noqa: S608 - our own names
            (value,),
        )
        raw.commit()


@pytest.mark.parametrize(("column", "wrong"), WRONGS)
def test_a_wrong_value_is_told_as_damage(whole: Store, column: "Column[object]", wrong: object) -> None:
    """Whatever stands in a column: what reads it says that the file is damaged."""
    _put(whole, column, wrong)
    with pytest.raises(Damaged), whole.reading() as connection:
        connection.execute(select(column.table)).all()


READERS: dict[str, Callable[[Store], object]] = {
    "classes.made": classes_with_pupils,
    "nights.day": lambda store: nights_of(store, 1),
    "answers.written": lambda store: answers_of(store, 1),
    "corrections.of": lambda store: corrections_of(store, 1),
    "steps.step": lambda store: steps_of(store, 1),
    "recordings.cues": lambda store: recordings_of(store, 1),
}


@pytest.mark.parametrize("name", READERS)
def test_the_ordinary_readers_tell_it_too(whole: Store, name: str) -> None:
    """And none of them lets another fault through."""
    READERS[name](whole)
    table, column = name.split(".")
    _put(whole, METADATA.tables[table].c[column], "kites")
    with pytest.raises(Damaged):
        READERS[name](whole)


def test_a_last_day_that_is_none_is_told(store: Store) -> None:
    """A setting is text for the file and a day for its reader."""
    set_keep_until(store, DAY)
    _put(store, tables.settings.c.text, "soon")
    with pytest.raises(Damaged, match="a day"):
        keep_until(store)


def test_the_steps_of_a_night_are_those_that_are_known() -> None:
    """The column takes each step of the round and no other."""
    assert tuple(step.value for step in NightStep) == STEPS
