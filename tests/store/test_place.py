"""Nothing is told as kept in a file that its name does not lead to."""

import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from onewhole.store.answers import answers_of
from onewhole.store.keeping import backup, clean, erase_pupil
from onewhole.store.opening import Store, open_store
from onewhole.store.place import FilePlace
from onewhole.store.refusals import FileMoved, StoreRefused
from tests.kit.kept import first_round, write


def _moved(path: Path) -> None:
    path.rename(path.with_name("elsewhere.class"))


def _moved_with_its_log(path: Path) -> None:
    for end in ("", "-wal", "-shm"):
        path.with_name(path.name + end).rename(path.with_name(f"elsewhere.class{end}"))


def _replaced(path: Path) -> None:
    backup = path.with_name("other.class")
    shutil.copy(path, backup)
    backup.replace(path)


def _log_taken_away(path: Path) -> None:
    path.with_name(path.name + "-wal").unlink()


def _folder_moved(path: Path) -> None:
    path.parent.rename(path.parent.with_name("elsewhere"))
    path.parent.mkdir()


FAULTS: list[Callable[[Path], None]] = [
    _moved, _moved_with_its_log, _replaced, _log_taken_away, _folder_moved, Path.unlink,
]  # fmt: skip


@pytest.fixture
def store(tmp_path: Path) -> Store:
    """A store in a folder that can be moved; a test closes it."""
    (tmp_path / "school").mkdir()
    return open_store(tmp_path / "school" / "room12.class")


@pytest.mark.parametrize("fault", FAULTS, ids=lambda fault: fault.__name__)
def test_a_file_that_was_moved_keeps_nothing(store: Store, fault: Callable[[Path], None]) -> None:
    """Before the writing, and between its statements and its end: refused both times, nothing is written."""
    night = first_round(store).night
    write(store, night, "before")

    def moved_meanwhile() -> None:
        with store.transaction() as within:
            write(within, night, "meanwhile")
            fault(store.path)

    with pytest.raises(FileMoved, match="moved or replaced"):
        moved_meanwhile()
    with pytest.raises(FileMoved):
        write(store, night, "after")
    assert [one.text for one in answers_of(store, night)] == ["before"], "the open file, wherever it is"
    store.close()


def test_moved_at_the_last_moment(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    """While the disk takes what was written: it is in the moved file, and nobody was told."""
    night = first_round(store).night
    write(store, night, "before")
    checks, check = list[FilePlace](), FilePlace.check

    def checked(place: FilePlace) -> None:
        checks.append(place)
        if len(checks) == 2:
            _moved_with_its_log(store.path)
        check(place)

    monkeypatch.setattr(FilePlace, "check", checked)
    with pytest.raises(FileMoved):
        write(store, night, "meanwhile")
    assert len(checks) == 2, "before the end of the transaction, and after it"
    store.close()
    moved = open_store(store.path.with_name("elsewhere.class"))
    assert [one.text for one in answers_of(moved, night)] == ["meanwhile"]
    moved.close()


def test_a_new_connection_does_not_go_to_another_file(store: Store) -> None:
    """Also to read: a page would show half of one class and half of another."""
    first_round(store)
    with store.snapshot() as busy:
        assert answers_of(busy, 1) == ()
        with store.snapshot() as pooled:
            assert answers_of(pooled, 1) == ()
        _moved_with_its_log(store.path)
        open_store(store.path).close()
        store.engine.dispose()
        with pytest.raises(FileMoved):
            answers_of(store, 1)
    store.close()


@pytest.mark.parametrize("act", [clean, lambda store: erase_pupil(store, 1, "K01")], ids=["clean", "erase"])
def test_nothing_is_told_as_erased_from_a_file_that_was_moved(
    store: Store, act: Callable[[Store], None]
) -> None:
    """Nor as cleaned."""
    first_round(store)
    _moved_with_its_log(store.path)
    with pytest.raises(StoreRefused, match="moved or replaced"):
        act(store)
    store.close()


def test_a_backup_of_a_moved_file_is_none(store: Store, tmp_path: Path) -> None:
    """It would be of another class than the name says."""
    first_round(store)
    _moved_with_its_log(store.path)
    with pytest.raises(FileMoved):
        backup(store, tmp_path / "a.backup")
    assert [path.name for path in tmp_path.iterdir()] == ["school"]
    store.close()


def test_two_doors_know_one_log(store: Store) -> None:
    """The log is the same for a second store on the file, as long as one of them is open."""
    first_round(store)
    other = open_store(store.path)
    store.close()
    third = open_store(other.path)
    assert (other.place.is_there(), third.place.is_there()) == (True, True)
    assert other.place == third.place
    assert other.place.log == (os.stat(f"{other.path}-wal").st_dev, os.stat(f"{other.path}-wal").st_ino)  # noqa: PTH116 - a name
    other.close()
    third.close()
