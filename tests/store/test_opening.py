"""A file is made whole, kept to its owner, brought forward, or refused and left as it is."""

import os
import re
import sqlite3
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory
from threading import Thread

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import event

from onewhole.store.answers import answers_of
from onewhole.store.classes import add_class, classes_with_pupils
from onewhole.store.migrations.env import VERSION_TABLE
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import StoreRefused
from onewhole.store.standing import MARK
from onewhole.store.tables import METADATA
from tests.kit.kept import NOW, first_round, write
from tests.kit.new_files import make_files_at_once, make_files_by_steps

NOBODY = 65534


@pytest.fixture(autouse=True)
def by_steps(monkeypatch: pytest.MonkeyPatch) -> None:
    """Make every file here as the program makes it."""
    make_files_by_steps(monkeypatch)


def _mode(path: Path) -> int:
    return path.stat().st_mode & 0o777


def _pragma(store: Store, name: str) -> object:
    with store.reading() as connection:
        return connection.exec_driver_sql(f"PRAGMA {name}").scalar()


def test_every_connection_is_safe(store: Store) -> None:
    """WAL, full sync (2), foreign keys, secure delete, a patient writer."""
    names = ("journal_mode", "synchronous", "foreign_keys", "secure_delete", "busy_timeout", "temp_store")
    assert [_pragma(store, name) for name in names] == ["wal", 2, 1, 1, 5000, 2]


@pytest.mark.asvs("V13.3.2", "V14.2.4")
def test_the_file_is_its_owners_alone(store: Store) -> None:
    """0600 for the file and what SQLite keeps beside it; nothing else is in the folder."""
    first_round(store)
    beside = sorted(store.path.parent.iterdir())
    assert [path.name for path in beside] == ["room12.class", "room12.class-shm", "room12.class-wal"]
    assert {_mode(path) for path in beside} == {0o600}


def test_a_new_file_is_never_open_to_others(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """At the moment it takes its name it is whole and has mode 0600, also under a mask that allows all."""
    seen = []
    link = Path.hardlink_to

    def watched(self: Path, target: Path) -> None:
        seen.append((_mode(target), target.read_bytes()[68:72]))
        link(self, target)

    monkeypatch.setattr(Path, "hardlink_to", watched)
    mask = os.umask(0)
    try:
        open_store(tmp_path / "a.class").close()
    finally:
        os.umask(mask)
    assert seen == [(0o600, MARK)]


def test_a_file_that_was_opened_to_others_is_closed_to_them(store: Store) -> None:
    """Opening brings the mode back to 0600."""
    store.close()
    store.path.chmod(0o644)
    open_store(store.path).close()
    assert _mode(store.path) == 0o600


def test_it_is_there_again(store: Store) -> None:
    """What was kept before closing is read after opening."""
    room = add_class(store, "Room 12", NOW)
    store.close()
    again = open_store(store.path)
    assert classes_with_pupils(again) == ((room, ()),)
    again.close()


def test_the_steps_lead_to_the_tables_of_today(store: Store) -> None:
    """A file brought forward has the tables, columns and indexes that the code expects."""
    with store.reading() as connection:
        context = MigrationContext.configure(
            connection, opts={"version_table": VERSION_TABLE, "compare_type": True}
        )
        assert compare_metadata(context, METADATA) == []


def test_the_files_of_other_tests_are_as_the_program_makes_them(
    store: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """To the last column, index and row, and with the same mark; the steps themselves vary their order."""
    make_files_at_once(monkeypatch)
    quick = open_store(tmp_path / "quick.class")
    for one in (store, quick):
        one.close()
    with closing(sqlite3.connect(store.path)) as steps, closing(sqlite3.connect(quick.path)) as at_once:
        assert sorted(at_once.iterdump()) == sorted(steps.iterdump())
        for asked in ("PRAGMA application_id", "PRAGMA user_version", "PRAGMA page_size", "PRAGMA encoding"):
            assert at_once.execute(asked).fetchone() == steps.execute(asked).fetchone()


def _refused_and_unchanged(path: Path) -> str:
    before = path.read_bytes(), sorted(path.parent.iterdir())
    with pytest.raises(StoreRefused) as refused:
        open_store(path)
    assert (path.read_bytes(), sorted(path.parent.iterdir())) == before
    assert refused.value.where == str(path)
    assert re.search("backup|newer|that release", refused.value.remedy or "")
    return refused.value.what


def test_a_newer_file_is_refused(store: Store) -> None:
    """It is told to be newer, and no byte of it changes."""
    with store.writing() as connection:
        connection.exec_driver_sql(f"UPDATE {VERSION_TABLE} SET version_num = '9999'")  # noqa: S608 - our own name
    store.close()
    assert "newer" in _refused_and_unchanged(store.path)


@pytest.mark.parametrize("content", [b"", b"pupil,1\nK01,2 4/8\n", b"SQLite format 3\0", bytes(4096)])
def test_a_foreign_file_is_refused(tmp_path: Path, content: bytes) -> None:
    """An empty one, a table of answers, a torn head, zeros: none is ours."""
    path = tmp_path / "a.class"
    path.write_bytes(content)
    assert "not the file of a class" in _refused_and_unchanged(path)


def test_another_program_s_database_is_refused(tmp_path: Path) -> None:
    """SQLite could read it; it does not bear our mark."""
    path = tmp_path / "a.class"
    with closing(sqlite3.connect(path)) as other:
        other.execute("CREATE TABLE songs (name)")
    assert "not the file of a class" in _refused_and_unchanged(path)


@pytest.mark.parametrize("page", [1, 3, 6])
def test_a_damaged_file_is_refused(store: Store, page: int) -> None:
    """A page of nonsense: told as damaged, and nothing changes."""
    first_round(store)
    store.close()
    whole = store.path.read_bytes()
    store.path.write_bytes(whole[: page * 4096] + bytes(b ^ 0xA5 for b in whole[page * 4096 :][:4096]))
    assert "damaged" in _refused_and_unchanged(store.path)


@contextmanager
def _plain_user() -> Iterator[None]:
    """For the root user no folder is read-only: be somebody else for a while."""
    if root := os.geteuid() == 0:
        os.seteuid(NOBODY)
    try:
        yield
    finally:
        if root:
            os.seteuid(0)


@pytest.mark.parametrize("there", [False, True])
def test_a_read_only_folder_is_told(there: bool) -> None:
    """With the file in it or without: refused with the place and the remedy, and the file is as it was."""
    with TemporaryDirectory() as name:
        folder, path = Path(name), Path(name) / "a.class"
        if there:
            store = open_store(path)
            first_round(store)
            store.close()
            if os.geteuid() == 0:
                os.chown(path, NOBODY, NOBODY)
        before = path.read_bytes() if there else None
        folder.chmod(0o555)
        with _plain_user(), pytest.raises(StoreRefused, match="you may write") as refused:
            open_store(path)
        folder.chmod(0o755)
        assert refused.value.where == str(path)
        assert (path.read_bytes() if path.exists() else None) == before


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    """And it is not made."""
    with pytest.raises(StoreRefused, match="folder is there"):
        open_store(tmp_path / "none" / "a.class")
    assert list(tmp_path.iterdir()) == []


def test_a_full_disk_loses_nothing_that_was_kept(tmp_path: Path) -> None:
    """SQLite's own "full" is told; all that was kept before stays, and with room again writing goes on."""
    store = open_store(tmp_path / "a.class")
    kept = first_round(store)
    write(store, kept.night, "2 4/8")

    def no_room(raw: sqlite3.Connection, _: object) -> None:
        raw.execute("PRAGMA max_page_count = 1")

    store.engine.dispose()
    event.listen(store.engine, "connect", no_room)
    with pytest.raises(StoreRefused, match="disk is full"):
        write(store, kept.night, "x" * 100_000)
    event.remove(store.engine, "connect", no_room)
    store.engine.dispose()
    assert [answer.text for answer in answers_of(store, kept.night)] == ["2 4/8"]
    write(store, kept.night, "3")
    store.close()


def test_two_windows_write_at_once(store: Store) -> None:
    """Two open stores, 60 answers each: all 120 are kept."""
    night = first_round(store).night
    other = open_store(store.path)

    def fill(opened: Store, code: str) -> None:
        for problem in range(60):
            write(opened, night, f"{problem}", code=code, problem=f"{problem}")

    threads = [Thread(target=fill, args=pair) for pair in ((store, "K01"), (other, "K02"))]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(answers_of(other, night)) == 120
    other.close()


def test_a_block_that_fails_keeps_nothing(store: Store) -> None:
    """All of a transaction or none of it."""
    first_round(store)

    def half() -> None:
        with store.writing() as connection:
            connection.exec_driver_sql("UPDATE classes SET name = 'Room 13'")
            raise KeyError

    with pytest.raises(KeyError):
        half()
    assert [room.name for room, _ in classes_with_pupils(store)] == ["Room 12"]


def test_a_file_taken_away_while_it_is_open_is_not_made_anew(tmp_path: Path) -> None:
    """What is asked of it then is refused, and no empty file stands in its place."""
    path = tmp_path / "a b%20c?#.class"
    store = open_store(path)
    store.close()
    path.unlink()
    with pytest.raises(StoreRefused), store.reading() as connection:
        connection.exec_driver_sql("SELECT 1 FROM classes")
    assert not path.exists()
