"""What is damaged is taken back from the backups that have it right, and only what the digests prove."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest

from onewhole.store.answers import answers_of, history_of
from onewhole.store.classes import pupils_of
from onewhole.store.digest_check import DamageKind
from onewhole.store.digests import HEADS
from onewhole.store.keeping import backup
from onewhole.store.mending import accept, check_backup, check_store, find_right, mend
from onewhole.store.opening import Store
from tests.kit.kept import write


@pytest.fixture
def saved(full: Store) -> Iterator[Path]:
    """A backup of a full with rows in every table."""
    path = full.path.with_name("monday.backup")
    backup(full, path)
    yield path
    assert check_backup(path).damages == (), "what mends never writes into a backup"


def damage(store: Store, *lines: str) -> None:
    """Change the file as no function of the store would."""
    with closing(sqlite3.connect(store.path, isolation_level=None)) as file:
        for line in lines:
            file.execute(line)


def kinds(store: Store) -> list[tuple[DamageKind, str]]:
    """What a check names."""
    return [(one.kind, one.table) for one in check_store(store).damages]


def mended(store: Store, *backups: Path) -> list[tuple[DamageKind, str]]:
    """Mend from some backups; return what is damaged still."""
    left = mend(store, find_right(store, check_store(store).damages, backups))
    return [(one.kind, one.table) for one in left.damages]


@pytest.mark.parametrize(
    ("line", "kind", "table"),
    [
        ("UPDATE answers SET text = '5 7/8' WHERE number = 1", DamageKind.CHANGED, "answers"),
        ("UPDATE answers SET text = CAST(x'34FF' AS TEXT) WHERE number = 3", DamageKind.CHANGED, "answers"),
        ("UPDATE answers SET text = CAST(text AS BLOB) WHERE number = 3", DamageKind.CHANGED, "answers"),
        ("UPDATE answers SET number = 9 WHERE number = 4", DamageKind.CHANGED, "answers"),
        ("UPDATE answers SET digest = digest + 1 WHERE number = 1", DamageKind.CHECKSUM, "answers"),
        ("UPDATE answers SET digest = NULL WHERE number = 3", DamageKind.CHECKSUM, "answers"),
        ("DELETE FROM answers WHERE number = 4", DamageKind.LOST, "answers"),
        ("UPDATE corrections SET text = '' WHERE number = 2", DamageKind.CHANGED, "corrections"),
        ("DELETE FROM corrections WHERE number = 2", DamageKind.LOST, "corrections"),
        ("UPDATE asked_answers SET wrote = '6' WHERE number = 1", DamageKind.CHANGED, "asked_answers"),
        ("DELETE FROM asked_answers WHERE number = 2", DamageKind.LOST, "asked_answers"),
        ("UPDATE night_words SET said = 'absent' WHERE number = 3", DamageKind.CHANGED, "night_words"),
        ("DELETE FROM night_words WHERE number = 2", DamageKind.LOST, "night_words"),
        ("UPDATE pupil_days SET joined = '2026-09-02'", DamageKind.CHANGED, "pupil_days"),
        ("DELETE FROM pupil_days", DamageKind.LOST, "pupil_days"),
        ("UPDATE own_pages SET form = 'large print'", DamageKind.CHANGED, "own_pages"),
        ("UPDATE sheet_versions SET typed = '5' WHERE version = 1", DamageKind.CHANGED, "sheet_versions"),
        ("UPDATE pupils SET name = 'Wrem' WHERE number = 1", DamageKind.CHANGED, "pupils"),
        ("UPDATE classes SET name = 'Rook 13'", DamageKind.CHANGED, "classes"),
        ("UPDATE nights SET day = '2026-99-01' WHERE number = 1", DamageKind.CHANGED, "nights"),
        ("UPDATE recordings SET sound = x'1a44'", DamageKind.CHANGED, "recordings"),
        ("UPDATE settings SET text = '2028-06-30'", DamageKind.CHANGED, "settings"),
        ("DELETE FROM settings", DamageKind.LOST, "settings"),
        ("UPDATE given_out SET what = 'a page'", DamageKind.CHANGED, "given_out"),
        ("UPDATE reckonings SET text = 'what was compuded'", DamageKind.CHANGED, "reckonings"),
        ("UPDATE table_heads SET rows = rows + 1 WHERE name = 'answers'", DamageKind.TOLD, "answers"),
        ("DELETE FROM table_heads WHERE name = 'answers'", DamageKind.TOLD, "answers"),
        ("UPDATE sqlite_sequence SET seq = 1 WHERE name = 'answers'", DamageKind.COUNTING, "answers"),
    ],
)  # fmt: skip
def test_each_damage_is_named_and_mended(
    full: Store, saved: Path, line: str, kind: DamageKind, table: str
) -> None:
    """By its kind and table; afterwards every row is as it was, byte for byte."""
    before = _rows(full)
    damage(full, line)
    assert kinds(full) == [(kind, table)]
    assert mended(full, saved) == []
    after = _rows(full)
    if table == "reckonings":  # computed again when it is asked for
        assert after.pop(table) == []
        before.pop(table)
    assert after == before
    assert kinds(full) == []


def test_a_lost_writing_in_the_middle_of_a_chain(full: Store, saved: Path) -> None:
    """The one after it follows it still."""
    damage(full, "DELETE FROM answers WHERE number = 2")
    assert kinds(full) == [(DamageKind.LOST, "answers")]
    assert mended(full, saved) == []
    assert [one.text for one in history_of(full, 1, "K01", "1")] == ["4 7/8", "4 8/8", "4 7/8"]


@pytest.mark.parametrize("column", ["night_number", "pupil_number", "problem"])
@pytest.mark.parametrize("number", [1, 2])
def test_a_writing_that_stands_in_another_cell(full: Store, saved: Path, column: str, number: int) -> None:
    """It alone is named: not the writings that followed it in its own cell, nor those of the other."""
    write(full, 1, "3", code="K02", problem="1")
    write(full, 1, "3", code="K01", problem="2")
    damage(full, f"UPDATE answers SET {column} = '2' WHERE number = {number}")  # noqa: S608
    assert [one.row["number"] for one in check_store(full).damages] == [number]
    assert mended(full, saved) == []


def test_the_cache_may_be_emptied_at_any_moment(full: Store) -> None:
    """Nothing is lost then, and the checksum of all stays."""
    before = check_store(full).digest
    damage(full, "DELETE FROM reckonings")
    checked = check_store(full)
    assert (checked.digest, checked.damages) == (before, ())


def test_an_index_that_does_not_find_every_row_is_made_anew(full: Store, saved: Path) -> None:
    """Nothing is lost then, and no backup is asked: the index was made while another child had the answer."""
    before = _rows(full)
    damage(
        full,
        "PRAGMA writable_schema = ON",
        "UPDATE answers SET pupil_number = 2 WHERE number = 1",
        "CREATE TABLE aside AS SELECT * FROM sqlite_master WHERE name = 'answers_of_a_pupil'",
        "DELETE FROM sqlite_master WHERE name = 'answers_of_a_pupil'",
    )
    damage(
        full,
        "PRAGMA writable_schema = ON",
        "UPDATE answers SET pupil_number = 1 WHERE number = 1",
        "INSERT INTO sqlite_master SELECT * FROM aside",
        "DROP TABLE aside",
    )
    assert kinds(full) == [(DamageKind.FINDING, "")]
    assert mended(full) == []
    assert _rows(full) == before
    assert saved.exists()


def test_what_was_written_after_the_backup_stays(full: Store, saved: Path) -> None:
    """And a writing that no backup has is told until it is let stand, also beside what could be mended."""
    write(full, 1, "4 6/8", code="K02")
    damage(
        full,
        "UPDATE answers SET text = '4 0/8' WHERE number = 1",
        "UPDATE answers SET text = '4 9/8' WHERE number = 5",
    )
    assert mended(full, saved) == [(DamageKind.CHANGED, "answers")]
    write(full, 1, "4 5/8", code="K02")
    assert kinds(full) == [(DamageKind.CHANGED, "answers")]
    accept(full)
    assert kinds(full) == []
    assert [one.text for one in history_of(full, 1, "K02", "1")] == ["4 9/8", "4 5/8"]
    assert [one.text for one in answers_of(full, 1)] == ["4 7/8", "4 5/8", "5"]


def test_what_is_lost_and_in_no_backup_is_told_until_it_is_let_stand(full: Store, saved: Path) -> None:
    """Mending the rest does not hide it."""
    write(full, 1, "4 6/8", code="K02")
    damage(full, "DELETE FROM answers WHERE number = 5", "UPDATE classes SET name = 'Rook 13'")
    assert mended(full, saved) == [(DamageKind.LOST, "answers")]
    write(full, 1, "4 5/8", code="K02")
    assert kinds(full) == [(DamageKind.LOST, "answers")]
    accept(full)
    assert kinds(full) == []


def test_a_damaged_backup_gives_nothing(full: Store, saved: Path) -> None:
    """A row is taken from the one that proves it right, whichever is newer."""
    newer = full.path.with_name("tuesday.backup")
    backup(full, newer)
    with closing(sqlite3.connect(newer)) as file, file:
        file.execute("UPDATE pupils SET name = 'Wram'")
    torn = full.path.with_name("wednesday.backup")
    torn.write_bytes(b"torn")
    damage(full, "UPDATE pupils SET name = 'Wrem' WHERE number = 1")
    (found,) = find_right(full, check_store(full).damages, [torn, newer, saved])
    assert (found.backup, [row["name"] for row in found.right]) == (saved, ["Wren"])
    assert mended(full, torn, newer) == [(DamageKind.CHANGED, "pupils")]
    assert mended(full, torn, newer, saved) == []
    assert [pupil.name for pupil in pupils_of(full, 1)] == ["Wren", None]


def test_a_backup_carries_the_digest_of_all_it_holds(full: Store, saved: Path) -> None:
    """It is the file's own at that moment, and another one after the next writing."""
    assert check_backup(saved).digest == check_store(full).digest
    write(full, 1, "4 6/8", code="K02")
    assert check_backup(saved).digest != check_store(full).digest


def _rows(store: Store) -> dict[str, list[tuple[object, ...]]]:
    with store.reading() as connection:
        names = connection.exec_driver_sql(
            "SELECT name FROM main.sqlite_master WHERE type = 'table' AND name <> 'sqlite_sequence'"
        ).scalars()
        return {
            name: sorted(map(tuple, connection.exec_driver_sql(f"SELECT * FROM {name}")), key=repr)  # noqa: S608
            for name in names.all()
            if name not in {HEADS, "schema_version"}
        }
