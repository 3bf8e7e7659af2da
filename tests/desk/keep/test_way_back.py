"""Whatever stands where the class should be can be moved aside, and the newest good backup is offered."""

import os
import socket
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from datetime import timedelta
from pathlib import Path
from stat import S_IFCHR

import pytest

from onewhole.desk.keep.backups import back_up, back_up_daily, backups_folder
from onewhole.desk.keep.checking import mend_book
from onewhole.desk.keep.restoring import restore_backup
from onewhole.desk.keep.way_back import damaged_of, open_kept, open_or_tell, put_aside, way_back
from onewhole.errors import InputError
from onewhole.store.answers import answers_of
from onewhole.store.handed_in import fresh
from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import Damaged, NotThere, StoreRefused
from tests.kit.in_process import asked_in_process
from tests.kit.kept import NOW, first_round, write


@pytest.fixture
def book(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Store]:
    """A class file with an answer; the test stands in its folder: the name of a socket may not be long."""
    monkeypatch.setattr(fresh, "asked", asked_in_process)
    monkeypatch.chdir(tmp_path)
    opened = open_store(Path("room12.class"))
    write(opened, first_round(opened).night, "early")
    yield opened
    opened.close()


def _texts(path: Path) -> list[str]:
    opened = open_store(path)
    texts = [one.text for one in answers_of(opened, 1)]
    opened.close()
    return texts


#: What may stand where the class should be.
KINDS = (
    "bytes",
    "empty",
    "other",
    "newer",
    "folder",
    "pipe",
    "device",
    "socket",
    "link to nothing",
    "link to a pipe",
    "link to a folder",
    "link in a circle",
    "only a log",
)


def _let_stand(path: Path, kind: str) -> None:
    path.unlink()
    match kind:
        case "bytes":
            path.write_bytes(b"torn" * 5000)
        case "empty":
            path.touch()
        case "other":
            path.write_text("pupil,1\nK01,2 4/8\n")
        case "newer":
            opened = open_store(path)
            with opened.writing() as connection:
                connection.exec_driver_sql("UPDATE schema_version SET version_num = '9999'")
            opened.close()
        case "folder":
            path.mkdir()
            (path / "note").write_text("kites")
        case "pipe":
            os.mkfifo(path)
        case "device":
            try:
                os.mknod(path, S_IFCHR | 0o600, os.makedev(1, 5))  # one of its own, that may be moved
            except PermissionError:
                pytest.skip("a device of its own cannot be made by this user")
        case "socket":
            with socket.socket(socket.AF_UNIX) as made:
                made.bind(path.name)
        case "link to nothing":
            path.symlink_to(path.parent / "gone")
        case "link to a pipe":
            os.mkfifo(path.with_name("pipe"))
            path.symlink_to(path.with_name("pipe"))
        case "link to a folder":
            path.with_name("folder").mkdir()
            path.symlink_to(path.with_name("folder"))
        case "link in a circle":
            path.symlink_to(path)
        case _:
            path.with_name(f"{path.name}-wal").write_bytes(b"log")


@pytest.mark.parametrize("kind", KINDS)
def test_it_is_moved_aside_and_a_backup_takes_its_place(book: Store, kind: str) -> None:
    """Told with the newest good backup by name; moved by one act, then brought back from that backup."""
    path = Path(book.path)
    saved = back_up_daily(book, backups_folder(path), NOW)
    assert saved is not None
    book.close()
    _let_stand(path, kind)
    with pytest.raises(Damaged, match=f"newest good backup, {saved.name}"):
        open_or_tell(path)
    aside = put_aside(path, NOW)
    log_aside = aside.with_name(f"{aside.name}-wal")
    assert (damaged_of(path) == (aside,)) == (kind != "only a log")
    assert log_aside.exists() == (kind == "only a log")
    assert not os.path.lexists(path)
    with pytest.raises(NotThere):
        put_aside(path, NOW)
    assert way_back(path).good is not None
    restore_backup(saved, path, NOW)
    assert _texts(path) == ["early"]


@pytest.mark.parametrize("kind", KINDS)
def test_a_restore_moves_it_aside_by_itself(book: Store, kind: str) -> None:
    """And says where it lies."""
    path = Path(book.path)
    back_up(book, path.with_name("a.backup"))
    book.close()
    _let_stand(path, kind)
    done = restore_backup(path.with_name("a.backup"), path, NOW)
    assert done.before is None
    assert (done.aside is None) == (kind == "link to nothing"), "the class stands again where the link leads"
    assert done.aside is None or os.path.lexists(done.aside) == (kind != "only a log")
    assert _texts(path) == ["early"]
    if kind.startswith("link to a "):
        assert done.aside is not None
        assert done.aside.is_symlink(), "only the link is moved, never what it leads to"
        assert path.with_name(kind.removeprefix("link to a ")).exists()


def test_a_bad_newest_backup_is_passed_over_and_told(book: Store) -> None:
    """The one before it is offered; what is wrong with the newest is said."""
    folder = backups_folder(book.path)
    saved = back_up_daily(book, folder, NOW)
    assert saved is not None
    torn = back_up_daily(book, folder, NOW + timedelta(days=1))
    assert torn is not None
    content = torn.read_bytes()
    torn.write_bytes(content.replace(b"early", b"\xff\xff\xff\xff\xff"))
    found = way_back(book.path)
    assert found.good is not None
    assert found.good.path == saved
    ((bad, why),) = found.bad
    assert bad.path == torn
    assert "answers, row 1: a text cannot be read" in why
    assert saved.name in found.told
    assert torn.name in found.told
    torn.write_bytes(content)
    mended = way_back(book.path).good
    assert mended is not None
    assert mended.path == torn


def test_a_damaged_newest_backup_is_passed_over_for_a_whole_one(book: Store) -> None:
    """That made before a damage was taken back has it still: an older one without it is named."""
    folder, path = backups_folder(book.path), book.path
    whole = back_up_daily(book, folder, NOW - timedelta(days=1))
    with closing(sqlite3.connect(path)) as file, file:
        file.execute("UPDATE answers SET text = 'late'")
    _, before = mend_book(book, NOW)
    assert before is not None
    book.close()
    found = way_back(path)
    assert found.good is not None
    assert found.good.path == whole
    assert [(one.path, why) for one, why in found.bad] == [(before, "One place in it is not as written")]
    assert whole is not None
    whole.unlink()
    alone = way_back(path)
    assert alone.good is not None
    assert (alone.good.path, alone.bad) == (before, ())


def test_where_no_backup_is_good_a_new_class_may_be_started(book: Store) -> None:
    """That is said, with what is wrong with each."""
    torn = back_up_daily(book, backups_folder(book.path), NOW)
    assert torn is not None
    torn.write_bytes(b"torn")
    book.close()
    book.path.write_bytes(b"torn")
    with pytest.raises(Damaged, match="There is no good backup: move aside"):
        open_or_tell(book.path)
    put_aside(book.path, NOW)
    open_or_tell(book.path).close()
    assert book.path.exists()


def test_a_whole_class_stays_where_it_is(book: Store) -> None:
    """Nobody means to move it away."""
    with pytest.raises(InputError, match="whole class"):
        put_aside(book.path, NOW)
    assert _texts(book.path) == ["early"]


def test_what_cannot_be_moved_offers_another_name(book: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    """As where a disk is mounted in place of the file."""
    path = Path(book.path)
    book.close()
    _let_stand(path, "folder")
    path.with_name("room12-2.class").touch()

    def busy(_self: Path, _target: Path) -> Path:
        raise OSError(16, "Device or resource busy")

    monkeypatch.setattr(Path, "rename", busy)
    with pytest.raises(StoreRefused, match="cannot be moved aside: Device or resource busy") as refused:
        put_aside(path, NOW)
    assert "room12-3.class" in (refused.value.remedy or "")
    assert (path / "note").read_text() == "kites"


def test_a_device_of_the_machine_is_never_moved(book: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    """Whoever names one by mistake is told; nothing is renamed."""
    monkeypatch.setattr(Path, "rename", lambda one, _: pytest.fail(f"{one} was moved"))
    assert book.path.exists()
    with pytest.raises(StoreRefused, match="device of the machine"):
        put_aside(Path("/dev/null"), NOW)


def test_nothing_is_not_opened(tmp_path: Path) -> None:
    """Keeping looks after what is there."""
    with pytest.raises(NotThere, match="no such file"):
        open_kept(tmp_path / "a.class")
    assert list(tmp_path.iterdir()) == []
