"""A file of an earlier release is backed up before a newer program brings it forward."""

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import open_book
from onewhole.desk.keep.backups import backups_folder, backups_of
from onewhole.store.keeping import backup
from onewhole.store.refusals import StoreRefused

EARLIER = Path(__file__).parents[2] / "store" / "examples"


@pytest.fixture(params=sorted(EARLIER.glob("*.class")), ids=lambda path: path.stem)
def earlier(request: pytest.FixtureRequest, tmp_path: Path) -> Path:
    """A file as one of the releases before made it."""
    return Path(shutil.copy(request.param, tmp_path / "room12.class"))


def _dump(path: Path) -> list[str]:
    with closing(sqlite3.connect(f"file:{path}?mode=ro", uri=True)) as file:
        return list(file.iterdump())


def test_what_stood_is_in_a_backup_to_the_row(earlier: Path) -> None:
    """With the tables of before, private, and once: a file of today is not backed up by being opened."""
    stood = _dump(earlier)
    open_book(earlier).close()
    (made,) = backups_of(earlier)
    assert _dump(made.path) == stood
    assert made.path.stat().st_mode & 0o777 == 0o600
    assert _dump(earlier) != stood
    open_book(earlier).close()
    assert backups_of(earlier) == (made,)


def test_what_stands_only_in_the_log_is_backed_up_too(earlier: Path) -> None:
    """The program before may have been killed: then the last rows are not in the file itself yet."""
    shutil.copy(earlier, earlier.with_name("killed.class"))
    killed = earlier.with_name("killed.class")
    with closing(sqlite3.connect(earlier, isolation_level=None)) as file:
        file.execute("PRAGMA journal_mode = WAL")
        file.execute("UPDATE pupils SET name = 'Heron' WHERE number = 1")
        for one in (earlier, earlier.with_name(f"{earlier.name}-wal")):
            shutil.copy(one, one.with_name(one.name.replace("room12", "killed")))
    open_book(killed).close()
    (made,) = backups_of(killed)
    assert any("'Heron'" in line for line in _dump(made.path))


def test_without_room_for_a_backup_the_file_stays_as_it_is(earlier: Path) -> None:
    """It is refused, to the byte as it was."""
    stood = earlier.read_bytes()
    backups_folder(earlier).write_text("a file where the folder should be")
    with pytest.raises(StoreRefused):
        open_book(earlier)
    assert earlier.read_bytes() == stood


def test_a_file_of_today_is_not_backed_up(tmp_path: Path) -> None:
    """A new one neither; and a backup that is opened leaves no other backup."""
    book = open_book(tmp_path / "room12.class")
    backup(book, tmp_path / "stick.class")
    book.close()
    open_book(tmp_path / "stick.class").close()
    assert not backups_folder(tmp_path / "room12.class").exists()
