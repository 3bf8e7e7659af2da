"""Folders to print into."""

from pathlib import Path

import pytest

from onewhole.presses.files import FileRefused
from onewhole.presses.folders import made


def test_a_folder_is_made_with_those_above_it(tmp_path: Path) -> None:
    """One that is there already stays as it is."""
    folder = tmp_path / "out" / "monday"
    assert made(folder) == folder
    (folder / "page").write_text("mine")
    made(folder)
    assert (folder / "page").read_text() == "mine"


def test_a_file_stands_in_the_way(tmp_path: Path) -> None:
    """It is named, and it stays."""
    file = tmp_path / "out"
    file.write_text("mine")
    for folder in (file, file / "monday"):
        with pytest.raises(FileRefused, match="cannot be made") as refused:
            made(folder)
        assert refused.value.where == str(folder)
    assert file.read_text() == "mine"
