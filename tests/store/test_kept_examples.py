"""A file that an earlier release made opens, moves forward and loses nothing."""

import shutil
import sqlite3
from contextlib import closing
from datetime import date
from pathlib import Path

import pytest

from onewhole.store.answers import answers_of, history_of
from onewhole.store.classes import pupils_of
from onewhole.store.correction_rows import (
    CellReadAs,
)
from onewhole.store.corrections import corrections_of
from onewhole.store.digest_check import DamageKind
from onewhole.store.digests import HEADS
from onewhole.store.keeping import keep_until
from onewhole.store.mending import check_store
from onewhole.store.migrations.env import VERSION_TABLE
from onewhole.store.opening import open_store
from onewhole.store.steps import NightStep, keep_step, steps_of
from tests.kit.kept import NOW

EXAMPLES = Path(__file__).parent / "examples"


def _rows(path: Path) -> dict[str, list[tuple[object, ...]]]:
    """Every row of every table of ours."""
    with closing(sqlite3.connect(path)) as file:
        tables = [name for (name,) in file.execute("SELECT name FROM sqlite_master WHERE type = 'table'")]
        return {
            name: sorted(file.execute(f"SELECT * FROM {name}"), key=repr)  # noqa: S608 - our own names
            for name in tables
            if name != VERSION_TABLE
        }


@pytest.mark.parametrize("path", sorted(EXAMPLES.glob("*.class")), ids=lambda path: path.stem)
def test_an_earlier_file_loses_nothing(path: Path, tmp_path: Path) -> None:
    """Every row of every table is there after opening, and the step is today's."""
    mine = Path(shutil.copy(path, tmp_path / "a.class"))
    before = _rows(path)
    assert all(before.values()), "every table of the example has a row"
    opened = open_store(mine)
    with opened.reading() as connection:
        step = connection.exec_driver_sql(f"SELECT version_num FROM {VERSION_TABLE}").scalar()  # noqa: S608 - our own name
    opened.close()
    after = _rows(mine)
    told = {name: rows for name, *rows in map(tuple, before.pop(HEADS, []))}
    assert {name: rows for name, *rows in map(tuple, after[HEADS]) if name in told} == told
    known = {name: [row[: len(before[name][0])] for row in after[name]] for name in before}
    assert known == before, "a digest stands last in a row, and nothing else is new"
    assert step == "0012"
    assert set(after) > set(before)


def test_the_first_release_s_file_reads_as_it_was_written(tmp_path: Path) -> None:
    """Through the code of today: pupils, answers with their history, corrections, the last day; and it is
    written on.
    """
    store = open_store(Path(shutil.copy(EXAMPLES / "v0001.class", tmp_path / "a.class")))
    assert [pupil.name for pupil in pupils_of(store, 1)] == ["Wren", None, "<script>", None]
    assert [(one.code, one.text, one.by) for one in answers_of(store, 4)] == [("K02", "5/8", "aide")]
    assert [one.text for one in history_of(store, 1, "K02", "2")] == ["3 4/8", "a\0b", "3 4/8"]
    assert [one.text for one in answers_of(store, 1)] == ["2 1/2", "3 4/8", "\u202e2", " 2  4/8 "]
    assert [type(one.word) for one in corrections_of(store, 1)] == [CellReadAs]
    assert keep_until(store) == date(2027, 6, 30)
    keep_step(store, 1, NightStep.MARKED, NOW)
    assert steps_of(store, 1) == {1: {NightStep.MARKED: NOW}}
    store.close()


def test_a_file_of_the_release_before_is_whole_and_what_was_damaged_in_it_is_told(tmp_path: Path) -> None:
    """A table that it does not have yet is no damage; a row that was changed outside is one, also then."""
    whole, damaged = (Path(shutil.copy(EXAMPLES / "v0004.class", tmp_path / name)) for name in ("a", "b"))
    with closing(sqlite3.connect(damaged, isolation_level=None)) as file:
        file.execute("UPDATE answers SET text = '7' WHERE number = 1")
    found = []
    for path in (whole, damaged):
        store = open_store(path)
        found.append([(one.table, one.kind) for one in check_store(store).damages])
        store.close()
    assert found == [[], [("answers", DamageKind.CHANGED)]]
