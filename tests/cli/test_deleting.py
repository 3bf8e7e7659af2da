"""`onewhole keep nights, delete, erase --whole-class`: asked first, named, and brought back."""

from contextlib import closing
from io import StringIO
from pathlib import Path

import pytest

from onewhole.store.classes import add_class, class_names
from onewhole.store.nights import nights_of
from onewhole.store.opening import open_store
from onewhole.store.sheets import newest_sheets
from tests.kit.kept import NOW, first_round, write
from tests.kit.terminal import Terminal


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A class with a night and two answers, and another class whose name would command the terminal."""
    made = tmp_path / "room12.class"
    with closing(open_store(made)) as store:
        kept = first_round(store)
        for code in ("K01", "K02"):
            write(store, kept.night, "2 4/8", code=code)
        add_class(store, "Room \x1b[2J13", NOW)
    return made


def test_a_night_a_page_and_a_class_are_deleted_once_that_is_meant(
    onewhole: Terminal, path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What goes is told first; something else than yes deletes nothing; the backup brings all of it back."""
    assert onewhole("keep", "nights", path).out == "1  2026-09-01  page 1  Kite paper, 2 answers\n"
    monkeypatch.setattr("sys.stdin", StringIO("no\n"))
    shown = onewhole("keep", "delete", path, "--night", "1")
    assert (shown.code, "Nothing was deleted" in shown.err) == (2, True)
    assert "With the night 1, Kite paper, 2026-09-01, goes: 1 night, 2 answers. A backup" in shown.out
    monkeypatch.setattr("sys.stdin", StringIO("yes\n"))
    shown = onewhole("keep", "delete", path, "--night", "1")
    assert (shown.code, "Kite paper is deleted, with 1 night, 2 answers." in shown.out) == (0, True)
    (backup,) = (path.parent / "backups").iterdir()
    assert f"All of it is in backups/{backup.name}." in shown.out
    with closing(open_store(path)) as store:
        assert nights_of(store, 1) == ()
    assert onewhole("keep", "restore", path, "--from", backup).code == 0
    assert "Fractions is deleted" in onewhole("keep", "delete", path, "--page", "1", "--yes").out
    with closing(open_store(path)) as store:
        assert (newest_sheets(store), nights_of(store, 1)) == ((), ())
    assert (
        "Room ?[2J13 is deleted, with nothing else."
        in onewhole("keep", "delete", path, "--room", "2", "--yes").out
    )
    assert onewhole("keep", "delete", path, "--night", "9", "--yes").code == 2


def test_a_whole_class_is_erased_by_its_name(
    onewhole: Terminal, path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Another name erases nothing; the right one, however it is written, erases it from the backups too."""
    assert "Room ?[2J13 is deleted" in onewhole("keep", "delete", path, "--room", "2", "--yes").out
    monkeypatch.setattr("sys.stdin", StringIO("Room 13\n"))
    shown = onewhole("keep", "erase", path, "--whole-class")
    assert (shown.code, "Nothing was erased" in shown.err) == (2, True)
    monkeypatch.setattr("sys.stdin", StringIO("room 12\n"))
    shown = onewhole("keep", "erase", path, "--whole-class")
    assert "With it goes: 1 night, 2 answers. It cannot be undone." in shown.out
    assert (shown.code, "Room 12 is erased.\nErased from backups/" in shown.out) == (0, True)
    with closing(open_store(path)) as store:
        assert class_names(store) == ()
