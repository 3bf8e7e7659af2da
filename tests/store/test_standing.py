"""What stands where a class should be is told by its kind; a pipe and a device are never opened."""

import os
import socket
from pathlib import Path

import pytest

from onewhole.store.opening import Store, open_store
from onewhole.store.refusals import Damaged, NotAFile
from onewhole.store.standing import Standing, standing
from tests.kit.kept import first_round


def _stands(path: Path, what: Standing) -> None:
    match what:
        case Standing.FOLDER:
            path.mkdir()
        case Standing.PIPE:
            os.mkfifo(path)
        case Standing.LINK:
            path.symlink_to(path.parent / "gone")
        case Standing.SOCKET:
            with socket.socket(socket.AF_UNIX) as made:
                made.bind(str(path))
        case Standing.DEVICE:
            path.symlink_to("/dev/zero")
        case _:
            raise AssertionError(what)


@pytest.mark.parametrize("what", [one for one in Standing if one not in {Standing.FILE, Standing.NOTHING}])
def test_what_is_no_file_is_told(tmp_path: Path, what: Standing, monkeypatch: pytest.MonkeyPatch) -> None:
    """By its kind, and that it may be moved aside; nothing is opened, nothing is made."""
    monkeypatch.chdir(tmp_path)  # a socket's name may not be long
    path = Path("a.class")
    _stands(path, what)
    assert standing(path) is what
    with pytest.raises(NotAFile, match=what.value) as refused:
        open_store(path)
    assert "aside" in (refused.value.remedy or "")
    assert [one.name for one in tmp_path.iterdir()] == ["a.class"]


def test_a_link_that_turns_in_a_circle_is_told(tmp_path: Path) -> None:
    """It leads to no file."""
    (tmp_path / "a.class").symlink_to(tmp_path / "b.class")
    (tmp_path / "b.class").symlink_to(tmp_path / "a.class")
    with pytest.raises(NotAFile, match="a link"):
        open_store(tmp_path / "a.class")


#: Bytes that once closed every way back: where they stand, and what they become.
HEADS = [(18, 3), (19, 3), (47, 0x60), (59, 2), (21, 65), (16, 0), (70, 0)]


@pytest.mark.parametrize(("at", "byte"), HEADS)
def test_a_byte_of_the_head_is_told_as_damage(store: Store, at: int, byte: int) -> None:
    """Whichever it is, a backup may take the place of the file; the file is as it was."""
    first_round(store)
    store.close()
    content = bytearray(store.path.read_bytes())
    content[at] = byte
    store.path.write_bytes(content)
    with pytest.raises(Damaged):
        open_store(store.path)
    assert store.path.read_bytes() == content


def test_a_byte_of_the_list_of_tables_is_told_as_damage(store: Store) -> None:
    """SQLite's own words are no text then."""
    first_round(store)
    store.close()
    content = store.path.read_bytes()
    store.path.write_bytes(content.replace(b"AUTOINCREMENT", b"\xceUTOINCREMENT", 1))
    with pytest.raises(Damaged):
        open_store(store.path)
