"""Folders to print into are made, or refused with what to do next."""

import stat
from pathlib import Path

import pytest

from onewhole.presses.files import FileRefused
from onewhole.presses.folders import made


def test_a_folder_and_those_above_it_are_made(tmp_path: Path) -> None:
    """A folder is made with those above it; one that is there already stays as it is."""
    goal = tmp_path / "out" / "monday"
    assert made(goal) == goal
    (goal / "page.pdf").write_bytes(b"six kites")
    assert made(goal) == goal
    assert (goal / "page.pdf").read_bytes() == b"six kites"


def test_private_folders_are_their_owners_alone(tmp_path: Path) -> None:
    """Those that are made now; one that is there keeps its permissions."""
    (tmp_path / "out").mkdir()
    (tmp_path / "out").chmod(0o755)
    goal = made(tmp_path / "out" / "monday" / "morning", private=True)
    modes = [stat.S_IMODE(path.stat().st_mode) for path in (goal, goal.parent, tmp_path / "out")]
    assert modes == [0o700, 0o700, 0o755]


def test_a_file_in_the_way_is_refused(tmp_path: Path) -> None:
    """A file where the folder should be stays, and its name is told."""
    (tmp_path / "out").write_bytes(b"six kites")
    with pytest.raises(FileRefused, match="Choose another folder") as caught:
        made(tmp_path / "out")
    assert caught.value.where == str(tmp_path / "out")
    assert (tmp_path / "out").read_bytes() == b"six kites"
