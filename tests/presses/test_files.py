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


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    """Writing to a link writes the file that it points to."""
    goal = tmp_path / "page.pdf"
    goal.write_bytes(b"old")
    link = tmp_path / "link.pdf"
    link.symlink_to(goal)
    write(link, b"new")
    assert link.is_symlink()
    assert goal.read_bytes() == b"new"


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
