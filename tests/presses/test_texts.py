"""Text files that people typed."""

from pathlib import Path

import pytest

from onewhole.errors import InputError
from onewhole.presses import texts
from onewhole.presses.texts import read_text


@pytest.mark.parametrize(
    ("content", "text"),
    [
        (b"1. 52 - 27\r\n", "1. 52 - 27\r\n"),
        ("\ufeff1. 7⅔ − 3".encode(), "1. 7⅔ − 3"),
        (b"", ""),
    ],
)
def test_a_file_is_read_as_it_is(tmp_path: Path, content: bytes, text: str) -> None:
    """Line ends stay; a byte-order mark is no part of the text."""
    path = tmp_path / "sheet.txt"
    path.write_bytes(content)
    assert read_text(path) == text


@pytest.mark.parametrize(
    ("content", "line", "column"),
    [(b"\xff", 1, 1), (b"ab\xff", 1, 3), (b"1. 52\n\n\xe9t\xe9", 3, 1), ("é\n".encode() + b"x\xe9", 2, 2)],
)
def test_bytes_that_are_no_text_have_a_place(tmp_path: Path, content: bytes, line: int, column: int) -> None:
    """Line and column of the first, counted in characters from 1."""
    path = tmp_path / "sheet.txt"
    path.write_bytes(content)
    with pytest.raises(InputError, match="not plain text in UTF-8") as refused:
        read_text(path)
    assert (refused.value.file, refused.value.line, refused.value.column) == (str(path), line, column)


def test_what_is_not_there_and_what_is_no_file(tmp_path: Path) -> None:
    """Both are refused with the name that was typed."""
    for path, what in ((tmp_path / "none.txt", "there is no such file"), (tmp_path, "cannot be read")):
        with pytest.raises(InputError, match=what) as refused:
            read_text(path)
        assert refused.value.file == str(path)
        assert refused.value.remedy


def test_a_file_far_too_large_is_not_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A film dropped in by mistake does not fill the memory."""
    path = tmp_path / "film.txt"
    path.write_bytes(b"x" * 11)
    monkeypatch.setattr(texts, "LARGEST", 10)
    with pytest.raises(InputError, match="too large"):
        read_text(path)
