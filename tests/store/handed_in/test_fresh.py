"""A file that is handed in is parsed: a fresh file holds what it held, or it is refused with its place."""

import shutil
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from onewhole.store.digests import CACHES, HEADS
from onewhole.store.handed_in import fresh
from onewhole.store.handed_in.fresh import fresh_file
from onewhole.store.keeping import backup
from onewhole.store.opening import open_store
from onewhole.store.refusals import BackupRefused
from onewhole.store.tables import METADATA
from tests.kit.hostile_backups import HARMLESS, HOSTILE
from tests.kit.in_process import asked_in_process
from tests.kit.whole_class import whole_class

EXAMPLES = Path(__file__).parents[1] / "examples"


@pytest.fixture(scope="module")
def good(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A good backup of a class with a row in every table."""
    folder = tmp_path_factory.mktemp("good")
    store = open_store(folder / "room12.class")
    whole_class(store)
    backup(store, folder / "good.backup")
    store.close()
    return folder / "good.backup"


@pytest.fixture
def saved(good: Path, tmp_path: Path) -> Path:
    """A copy of it, to be changed."""
    return Path(shutil.copy(good, tmp_path / "a.backup"))


def _rows(path: Path) -> dict[str, list[tuple[object, ...]]]:
    with closing(sqlite3.connect(path)) as file:
        names = [*METADATA.tables, "sqlite_sequence"]
        return {
            name: sorted(file.execute(f'SELECT * FROM "{name}"'), key=repr)  # noqa: S608 - our own names
            for name in names
            if name not in CACHES
        }


def test_every_row_comes_back(saved: Path, tmp_path: Path) -> None:
    """Each as it was, without what was computed; nothing is left beside, and the backup is as it was."""
    before = saved.read_bytes()
    with fresh_file(saved, tmp_path / "room12.class") as made:
        assert _rows(made) == _rows(saved)
        assert made.stat().st_mode & 0o777 == 0o600
        with closing(sqlite3.connect(made)) as file:
            assert file.execute("SELECT count(*) FROM reckonings").fetchone() == (0,)
    assert list(tmp_path.iterdir()) == [saved]
    assert saved.read_bytes() == before


@pytest.mark.parametrize("path", sorted(EXAMPLES.glob("*.class")), ids=lambda path: path.stem)
def test_a_file_of_an_earlier_release_comes_back(path: Path, tmp_path: Path) -> None:
    """At its own step, and then brought forward: as when it is opened."""
    opened = open_store(Path(shutil.copy(path, tmp_path / "a.class")))
    opened.close()
    with fresh_file(path, tmp_path / "b.class") as made:
        found, wanted = _rows(made), _rows(opened.path)
    for rows in (found, wanted):  # what was computed does not come back, and is not told of
        rows[HEADS] = [row for row in rows[HEADS] if row[0] not in CACHES]
    assert found == wanted


def test_the_log_beside_a_class_is_read_with_it(tmp_path: Path) -> None:
    """What was kept last stands in the log alone; neither file is changed, and none is made."""
    store = open_store(tmp_path / "room12.class")
    whole_class(store)
    copy = tmp_path / "copy"
    copy.mkdir()
    for end in ("", "-wal"):
        shutil.copy(f"{store.path}{end}", copy / f"a.class{end}")
    store.close()
    before = {path.name: path.read_bytes() for path in copy.iterdir()}
    with fresh_file(copy / "a.class", tmp_path / "b.class") as made:
        assert _rows(made) == _rows(store.path)
    assert {path.name: path.read_bytes() for path in copy.iterdir()} == before


@pytest.mark.parametrize("kind", HOSTILE)
def test_a_hostile_backup_is_refused(
    kind: str, saved: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With its place and what to do next; nothing of it is left."""
    monkeypatch.setattr(fresh, "asked", asked_in_process)
    HOSTILE[kind](saved)
    before = sorted(tmp_path.iterdir())
    with pytest.raises(BackupRefused) as refused, fresh_file(saved, tmp_path / "room12.class"):
        pass
    assert refused.value.what.startswith("This backup cannot be used: ")
    assert refused.value.where == str(saved)
    assert "nothing was changed" in (refused.value.remedy or "")
    assert sorted(tmp_path.iterdir()) == before


@pytest.mark.parametrize("kind", HARMLESS)
def test_an_odd_backup_comes_back_clean(kind: str, saved: Path, tmp_path: Path) -> None:
    """Its rows come back, and nothing that stood between them."""
    HARMLESS[kind](saved)
    with fresh_file(saved, tmp_path / "room12.class") as made:
        assert _rows(made) == _rows(saved)
        assert b"Wrenalinda" not in made.read_bytes()
        assert made.read_bytes()[18:20] == b"\1\1"
        assert int.from_bytes(made.read_bytes()[60:64]) == 0


#: A few of them in words: the table, the row, what is not right.
TOLD = {
    "a day that is none": "nights, row 1: “day” is not a day such as 2026-09-01",
    "a recording that is a page": "recordings, row 1: “kind” is not one of: audio/webm, audio/mp4, audio/wav",
    "text that is no text": "answers, row 1: a text cannot be read",
    "two pupils of one code": "pupils: two rows have one number or one name",
    "answers of a pupil who is not there": "row 1: what it belongs to in pupils is not there",
    "a code that was never given": "pupils, K02: this code was not given yet",
    "a trigger that changes answers": "it is not built as ours are: trigger t",
}


@pytest.mark.parametrize("kind", TOLD)
def test_a_refusal_names_its_place(kind: str, saved: Path, tmp_path: Path) -> None:
    """Also through the process that reads."""
    HOSTILE[kind](saved)
    with pytest.raises(BackupRefused) as refused, fresh_file(saved, tmp_path / "room12.class"):
        pass
    assert TOLD[kind] in refused.value.what
