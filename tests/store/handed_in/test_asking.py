"""The process that reads a file handed in can do nothing else, and is not believed either."""

import os
import shutil
from pathlib import Path

import msgspec
import pytest

from onewhole.store.handed_in import asking, child
from onewhole.store.handed_in.asking import asked
from onewhole.store.keeping import backup
from onewhole.store.opening import Store
from onewhole.store.refusals import BackupRefused
from tests.kit.whole_class import whole_class


@pytest.fixture
def saved(store: Store, tmp_path: Path) -> Path:
    """A good backup."""
    whole_class(store)
    backup(store, tmp_path / "a.backup")
    return tmp_path / "a.backup"


def _all(saved: Path, query: str) -> list[list[object]]:
    with asked(saved) as frames:
        return [
            row for held in frames(query) for row in msgspec.msgpack.decode(held, type=list[list[object]])
        ]


def test_it_answers_with_rows(saved: Path) -> None:
    """Texts, numbers, bytes, nothing."""
    assert _all(saved, "SELECT label, cues, sound FROM recordings") == [["1", "0 1200", b"RIFF" * 40]]
    assert _all(saved, "SELECT number, name FROM pupils") == [[1, None], [2, None]]


#: What a query may not do, whatever the file.
FORBIDDEN = (
    "UPDATE answers SET text = '9 9/9'",
    "DELETE FROM pupils",
    "CREATE TABLE songs (name)",
    "CREATE TEMP TABLE songs (name)",
    "ATTACH 'other.db' AS other",
    "ATTACH ':memory:' AS other",
    "VACUUM INTO 'other.db'",
    "PRAGMA writable_schema = ON",
    "PRAGMA query_only = OFF",
    "PRAGMA journal_mode = WAL",
    "SELECT load_extension('x')",
    "SELECT randomblob(9)",
    "SELECT * FROM pragma_table_info('pupils')",
    "WITH RECURSIVE r(x) AS (SELECT 1 UNION ALL SELECT x FROM r) SELECT x FROM r",
    "BEGIN EXCLUSIVE",
)


@pytest.mark.parametrize("query", FORBIDDEN)
def test_it_does_nothing_but_read(query: str, saved: Path) -> None:
    """Each is refused, and no file is changed or made."""
    before = {path.name: path.read_bytes() for path in saved.parent.iterdir() if path.suffix != ".class-shm"}
    connection = child.opened(saved)
    (frame,) = [frame for frame in child.answered(connection, query) if frame[0] != child.ROWS]
    connection.close()
    assert frame[0] == child.WRONG
    after = {path.name: path.read_bytes() for path in saved.parent.iterdir() if path.suffix != ".class-shm"}
    assert after == before


def _other(monkeypatch: pytest.MonkeyPatch, tmp_path: Path, code: str) -> None:
    """Let another script answer."""
    script = tmp_path / "other.py"
    script.write_text(code)
    monkeypatch.setattr(child, "__file__", str(script))


#: Scripts that do not answer as they should.
ODD = {
    "ends at once": "",
    "dies": "import os; os.kill(os.getpid(), 9)",
    "takes all memory": "import resource as r; r.setrlimit(r.RLIMIT_AS, (1 << 28,) * 2); b'x' * (1 << 30)",
    "sends half a frame": "import sys; sys.stdout.buffer.write(b'r\\0\\0\\1\\0half')",
    "sends too much": "import sys; sys.stdout.buffer.write((b'r\\0\\1\\0\\0' + b'x' * 65536) * 200)",
    "says a frame is endless": "import sys; sys.stdout.buffer.write(b'r\\xff\\xff\\xff\\xff' + b'x' * 9)",
}


@pytest.mark.parametrize("kind", ODD)
def test_what_it_sends_is_not_believed(
    kind: str, saved: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is refused, and the process is gone."""
    _other(monkeypatch, tmp_path, ODD[kind])
    with pytest.raises(BackupRefused, match="more time or memory"), asked(saved) as frames:
        for _ in frames("SELECT number FROM pupils"):
            pass


def test_one_that_never_answers_is_ended(
    saved: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """By the clock of the one that asks."""
    _other(monkeypatch, tmp_path, "import time\nwhile True:\n    time.sleep(60)")
    monkeypatch.setattr(asking, "SECONDS", 0.05)
    with pytest.raises(BackupRefused, match="more time or memory"):
        _all(saved, "SELECT number FROM pupils")


@pytest.mark.parametrize("kind", ["pipe", "folder", "link", "gone", "short"])
def test_what_is_no_file_is_never_opened(kind: str, tmp_path: Path) -> None:
    """It is told by its kind."""
    path = tmp_path / "a.backup"
    match kind:
        case "pipe":
            os.mkfifo(path)
        case "folder":
            path.mkdir()
        case "link":
            path.symlink_to(path)
        case "short":
            path.write_bytes(b"SQLite format 3\0")
        case _:
            shutil.rmtree(path, ignore_errors=True)
    with pytest.raises(BackupRefused, match="cannot be used"), asked(path):
        pass
