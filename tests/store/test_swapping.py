"""A file is put in the place of another: nothing that was told as kept falls between."""

import os
import signal
import sqlite3
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from itertools import count
from pathlib import Path

import pytest

from onewhole.store import copying, swapping
from onewhole.store.answers import answers_of
from onewhole.store.classes import add_pupil, pupils_of
from onewhole.store.keeping import backup, erase_pupil
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import Damaged, StoreRefused
from onewhole.store.swapping import swap_in
from tests.kit.kept import first_round, write


def _fresh(store: Store, name: str = "fresh") -> Path:
    """A whole file with what the store holds now."""
    made = store.path.with_name(name)
    backup(store, made)
    return made


def _names(folder: Path) -> Callable[[], Path]:
    numbers = count()
    return lambda: folder / f"before{next(numbers)}"


def _texts(path: Path) -> list[str]:
    with closing(open_store(path)) as store:
        return [one.text for one in answers_of(store, 1)]


def test_what_stood_is_in_the_backup_that_is_named(store: Store) -> None:
    """And the new content is seen by the store that was open all the while: it is the same file."""
    write(store, first_round(store).night, "early")
    fresh = _fresh(store)
    write(store, 1, "late")
    inode = store.path.stat().st_ino
    before = swap_in(fresh, store.path, _names(store.path.parent))
    assert before == store.path.with_name("before0")
    assert _texts(before) == ["late"]
    assert [one.text for one in answers_of(store, 1)] == ["early"]
    assert (store.path.stat().st_ino, store.place.is_there()) == (inode, True)
    write(store, 1, "later")
    assert _texts(store.path) == ["later"]


def test_no_writer_comes_between_backup_and_change(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    """One who tries while the backup is made waits, and is refused where that takes too long."""
    write(store, first_round(store).night, "early")
    fresh, tried = _fresh(store), list[str]()

    def copied(source: sqlite3.Connection, goal: Path) -> None:
        copying.copy_beside(source, goal)
        with closing(sqlite3.connect(store.path, timeout=0)) as other:
            try:
                other.execute("UPDATE answers SET text = 'between'")
            except sqlite3.OperationalError as error:
                tried.append(str(error))

    monkeypatch.setattr(swapping, "copy_beside", copied)
    assert swap_in(fresh, store.path, _names(store.path.parent)) is not None
    assert tried == ["database is locked"]


def test_nothing_stands_and_nothing_is_backed_up(store: Store, tmp_path: Path) -> None:
    """The file is there under its name; where another window makes one meanwhile, that one is backed up."""
    write(store, first_round(store).night, "early")
    fresh = _fresh(store)
    assert swap_in(fresh, tmp_path / "new.class", _names(tmp_path)) is None
    assert _texts(tmp_path / "new.class") == ["early"]


def test_one_made_meanwhile_is_not_written_over(
    store: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Another window makes a class under the free name at the last moment: it is in the backup."""
    write(store, first_round(store).night, "early")
    fresh, link = _fresh(store), Path.hardlink_to

    def linked(goal: Path, target: Path) -> None:
        monkeypatch.setattr(Path, "hardlink_to", link)
        with closing(open_store(goal)) as other:
            write(other, first_round(other).night, "meanwhile")
        link(goal, target)

    monkeypatch.setattr(Path, "hardlink_to", linked)
    before = swap_in(fresh, tmp_path / "new.class", _names(tmp_path))
    assert before is not None
    assert (_texts(before), _texts(tmp_path / "new.class")) == (["meanwhile"], ["early"])


def test_one_that_was_replaced_meanwhile_is_done_again(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    """Somebody puts another file under the name before the lock is held: that one is backed up."""
    write(store, first_round(store).night, "early")
    fresh, other = _fresh(store), _fresh(store, "other")
    with closing(open_store(other)) as changed:
        write(changed, 1, "other")
    opened = open_store
    store.close()

    def then_replaced(path: Path) -> Store:
        monkeypatch.setattr(swapping, "open_store", opened)
        found = opened(path)
        other.replace(path)
        return found

    monkeypatch.setattr(swapping, "open_store", then_replaced)
    before = swap_in(fresh, store.path, _names(store.path.parent))
    assert before is not None
    assert (_texts(before), _texts(store.path)) == (["other"], ["early"])


def test_a_damaged_file_is_not_written_over(store: Store) -> None:
    """It is told; the damaged bytes stay."""
    first_round(store)
    fresh = _fresh(store)
    store.close()
    store.path.write_bytes(b"torn")
    with pytest.raises(Damaged):
        swap_in(fresh, store.path, _names(store.path.parent))
    assert store.path.read_bytes() == b"torn"


def test_a_backup_that_cannot_be_made_stops_it(store: Store, tmp_path: Path) -> None:
    """What stands is as it was, and can be written."""
    write(store, first_round(store).night, "early")
    fresh = _fresh(store)
    write(store, 1, "late")
    with pytest.raises(StoreRefused):
        swap_in(fresh, store.path, lambda: tmp_path / "no" / "folder")
    assert [one.text for one in answers_of(store, 1)] == ["late"]
    write(store, 1, "later")
    assert [one.text for one in answers_of(store, 1)] == ["later"]


@pytest.mark.parametrize("size", [512, 1024, 8192, 65536])
def test_a_file_with_pages_of_another_size(store: Store, tmp_path: Path, size: int) -> None:
    """One that an earlier SQLite made, say: it takes what is brought back all the same."""
    write(store, first_round(store).night, "early")
    fresh, other = _fresh(store), _fresh(store, "other.class")
    with closing(sqlite3.connect(other, isolation_level=None)) as made:
        made.execute(f"PRAGMA page_size = {size}")
        made.execute("VACUUM")
    before = swap_in(fresh, other, _names(tmp_path))
    assert before is not None
    assert (_texts(before), _texts(other)) == (["early"], ["early"])


def test_many_at_once_lose_none(store: Store) -> None:
    """Twelve restores of four files in four threads: every file that stood is in a backup of its own."""
    write(store, first_round(store).night, "0")
    made = [_fresh(store)]
    for number in range(1, 12):
        write(store, 1, f"{number}")
        made.append(_fresh(store, f"fresh{number}"))
    write(store, 1, "last")
    names = _names(store.path.parent)
    with ThreadPoolExecutor(4) as threads:
        before = list(threads.map(lambda fresh: swap_in(fresh, store.path, names), made))
    assert None not in before
    kept = [text for path in {*before, store.path} if path for text in _texts(path)]
    assert sorted(kept) == sorted([*map(str, range(12)), "last"])


def test_killed_at_any_step_it_leaves_what_stood(store: Store, tmp_path: Path) -> None:
    """A child process dies while the backup is made, and after it: the file is whole, as it was."""
    write(store, first_round(store).night, "early")
    fresh = _fresh(store)
    write(store, 1, "late")
    store.close()
    copied = copying.copy_beside
    for step in ("before", "after"):
        child = os.fork()
        if child == 0:  # pragma: no cover - the child is killed

            def killed(source: sqlite3.Connection, goal: Path, step: str = step) -> None:
                if step == "after":
                    copied(source, goal)
                os.kill(os.getpid(), signal.SIGKILL)

            setattr(swapping, "copy_beside", killed)  # noqa: B010 - the child's own
            swap_in(fresh, store.path, lambda: tmp_path / "of a killed process")
            os._exit(1)
        assert os.WTERMSIG(os.waitpid(child, 0)[1]) == signal.SIGKILL
        assert _texts(store.path) == ["late"]
    assert _texts(tmp_path / "of a killed process") == ["late"]
    assert swap_in(fresh, store.path, _names(tmp_path)) == tmp_path / "before0"
    assert _texts(store.path) == ["early"]


def test_a_child_erased_while_a_backup_is_made_is_not_in_it(
    store: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Erasing names the backups that are there: none that holds the child comes to them afterwards."""
    first_round(store)
    add_pupil(store, 1, "Wrenalinda")
    copied = copying.copy_into

    def then_erased(source: sqlite3.Connection, file: Path) -> None:
        copied(source, file)
        if "K03" in [pupil.code for pupil in pupils_of(store, 1)]:
            erase_pupil(store, 1, "K03")

    monkeypatch.setattr(copying, "copy_into", then_erased)
    backup(store, tmp_path / "a.backup")
    assert b"Wrenalinda" not in (tmp_path / "a.backup").read_bytes()
    monkeypatch.setattr(copying, "copy_into", copied)
    with closing(open_store(tmp_path / "a.backup")) as saved:
        assert [pupil.code for pupil in pupils_of(saved, 1)] == ["K01", "K02"]


def test_a_backup_gives_up_where_children_are_erased_without_end(
    store: Store, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is told, and nothing is left."""
    first_round(store)
    copied = copying.copy_into

    def then_erased(source: sqlite3.Connection, file: Path) -> None:
        copied(source, file)
        add_pupil(store, 1)
        erase_pupil(store, 1, pupils_of(store, 1)[0].code)

    monkeypatch.setattr(copying, "copy_into", then_erased)
    with pytest.raises(StoreRefused, match="being erased"):
        backup(store, tmp_path / "a.backup")
    assert not (tmp_path / "a.backup").exists()
