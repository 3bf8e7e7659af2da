import os
import stat
from pathlib import Path

import pytest

from onewhole.errors import OnewholeError
from onewhole.presses.files import FileRefused, write


def test_write_and_write_again(tmp_path: Path) -> None:
    """A new file holds the bytes; written again it holds the new ones, and nothing else is in the folder."""
    path = tmp_path / "page.pdf"
    write(path, b"six kites")
    assert path.read_bytes() == b"six kites"
    write(path, b"")
    assert path.read_bytes() == b""
    assert list(tmp_path.iterdir()) == [path]


def test_a_long_name(tmp_path: Path) -> None:
    """A name as long as the system allows can be written."""
    path = tmp_path / ("k" * 251 + ".pdf")
    write(path, b"six kites")
    assert path.read_bytes() == b"six kites"


def test_a_new_file_has_the_usual_permissions(tmp_path: Path) -> None:
    """A new file may be read by whom any new file may be read by."""
    usual = tmp_path / "usual"
    usual.write_bytes(b"")
    write(tmp_path / "page.pdf", b"six kites")
    assert (tmp_path / "page.pdf").stat().st_mode == usual.stat().st_mode


def test_permissions_stay(tmp_path: Path) -> None:
    """A file that only its owner may read stays so."""
    path = tmp_path / "names.csv"
    path.write_bytes(b"old")
    path.chmod(0o600)
    write(path, b"new")
    assert stat.S_IMODE(path.stat().st_mode) == 0o600


@pytest.mark.parametrize("points_to", ["a file", "a folder", "nothing"])
def test_a_link_is_replaced_and_never_followed(tmp_path: Path, points_to: str) -> None:
    """What it points to stays as it is; the folder itself may be found through a link."""
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    goal = elsewhere / "page.pdf"
    if points_to == "a file":
        goal.write_bytes(b"old")
    elif points_to == "a folder":
        goal.mkdir()
    (tmp_path / "here").mkdir()
    (tmp_path / "folder").symlink_to(tmp_path / "here")
    link = tmp_path / "folder" / "link.pdf"
    link.symlink_to(goal)
    write(link, b"new")
    assert not link.is_symlink()
    assert (tmp_path / "here" / "link.pdf").read_bytes() == b"new"
    assert [path.name for path in elsewhere.iterdir()] == ([] if points_to == "nothing" else ["page.pdf"])
    assert points_to != "a file" or goal.read_bytes() == b"old"


@pytest.mark.parametrize("before", [None, 0o644, 0o666])
def test_a_private_file_is_its_owners_alone(tmp_path: Path, before: int | None) -> None:
    """Whatever is usual, and whatever stood there."""
    path = tmp_path / "marks.json"
    if before is not None:
        path.write_bytes(b"old")
        path.chmod(before)
    usual = os.umask(0)
    try:
        write(path, b"new", private=True)
    finally:
        os.umask(usual)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600


@pytest.mark.parametrize("moment", ["fsync", "replace"])
def test_never_half_written(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, moment: str) -> None:
    """When the disk is full or the file is held open, the old bytes stay and nothing is left beside them."""
    path = tmp_path / "page.pdf"
    path.write_bytes(b"old")

    def fails(*_: object) -> None:
        raise OSError(28, "No space left on device")

    if moment == "fsync":
        monkeypatch.setattr(os, "fsync", fails)
    else:
        monkeypatch.setattr(Path, "replace", fails)
    with pytest.raises(FileRefused) as caught:
        write(path, b"new")
    assert caught.value.what == "The file cannot be written: No space left on device"
    assert caught.value.where == str(path)
    assert path.read_bytes() == b"old"
    assert list(tmp_path.iterdir()) == [path]


def test_stopped_by_hand(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A writing that the teacher stops leaves the old bytes and nothing beside them."""
    path = tmp_path / "page.pdf"
    path.write_bytes(b"old")

    def stops(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(os, "fsync", stops)
    with pytest.raises(KeyboardInterrupt):
        write(path, b"new")
    assert path.read_bytes() == b"old"
    assert list(tmp_path.iterdir()) == [path]


def test_missing_folder(tmp_path: Path) -> None:
    """A folder that is not there is named, and is not made."""
    with pytest.raises(FileRefused) as caught:
        write(tmp_path / "out" / "page.pdf", b"six kites")
    assert (
        str(caught.value)
        == f"The folder is not there ({tmp_path / 'out'}). Make the folder, or choose another."
    )
    assert list(tmp_path.iterdir()) == []


def test_a_file_where_the_folder_should_be(tmp_path: Path) -> None:
    """A file cannot stand in for a folder."""
    (tmp_path / "out").write_bytes(b"old")
    with pytest.raises(FileRefused, match="The folder is not there"):
        write(tmp_path / "out" / "page.pdf", b"six kites")
    assert (tmp_path / "out").read_bytes() == b"old"


def test_a_folder_where_the_file_should_be(tmp_path: Path) -> None:
    """A folder is not written over."""
    (tmp_path / "page.pdf").mkdir()
    with pytest.raises(FileRefused, match="This is a folder, not a file"):
        write(tmp_path / "page.pdf", b"six kites")


@pytest.mark.skipif(os.geteuid() == 0, reason="the owner of the machine may write anywhere")
def test_folder_without_permission(tmp_path: Path) -> None:
    """A folder that may not be written in is refused with what to look at."""
    tmp_path.chmod(0o500)
    try:
        with pytest.raises(FileRefused, match="see that you may write there"):
            write(tmp_path / "page.pdf", b"six kites")
    finally:
        tmp_path.chmod(0o700)


def test_file_refused_is_one_of_ours_and_an_os_error() -> None:
    """Callers may catch the project's parent or Python's own kind."""
    assert issubclass(FileRefused, OnewholeError)
    assert issubclass(FileRefused, OSError)
