"""Text files are read whole, or refused with the place that cannot be read."""

from pathlib import Path

import pytest

from onewhole.errors import InputError
from onewhole.presses.texts import LARGEST, read_text


@pytest.mark.parametrize(
    ("content", "text"),
    [
        (b"", ""),
        ("1. 7 2/6 − 3 5/6".encode(), "1. 7 2/6 − 3 5/6"),
        (b"\xef\xbb\xbf1. 4", "1. 4"),
        (b"1. 4\r\n2. 5\r", "1. 4\r\n2. 5\r"),
    ],
)
def test_text_is_read_as_it_stands(tmp_path: Path, content: bytes, text: str) -> None:
    """The text of the file, without the mark at its very start and with its line ends."""
    path = tmp_path / "sheet.txt"
    path.write_bytes(content)
    assert read_text(path) == text


@pytest.mark.parametrize(
    ("content", "line", "column"),
    [(b"\xff\xfe1", 1, 1), (b"1. 4\n2. Caf" + b"\xe9", 2, 7), (b"ok\n\n\x80", 3, 1)],
)
def test_bytes_that_are_no_text_are_told_with_their_place(
    tmp_path: Path, content: bytes, line: int, column: int
) -> None:
    """The first byte that is no UTF-8 is told with its line and column."""
    path = tmp_path / "sheet.txt"
    path.write_bytes(content)
    with pytest.raises(InputError, match="not plain text in UTF-8") as caught:
        read_text(path)
    assert (caught.value.line, caught.value.column) == (line, column)


def test_a_file_that_is_not_there(tmp_path: Path) -> None:
    """A missing file is told by its name."""
    with pytest.raises(InputError, match="there is no such file") as caught:
        read_text(tmp_path / "sheet.txt")
    assert caught.value.file == str(tmp_path / "sheet.txt")


def test_a_folder_is_no_file(tmp_path: Path) -> None:
    """A folder cannot be read."""
    with pytest.raises(InputError, match="This is a folder, and a file is wanted"):
        read_text(tmp_path)


def test_a_file_that_is_too_large(tmp_path: Path) -> None:
    """A file larger than any sheet is not read at all."""
    path = tmp_path / "sheet.txt"
    with path.open("wb") as file:
        file.truncate(LARGEST + 1)
    with pytest.raises(InputError, match="too large"):
        read_text(path)
