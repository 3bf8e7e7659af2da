"""Where a file is wanted, a pipe, a socket, a device and a folder are refused: at once, by name."""

import os
import socket
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from tests.kit.terminal import Terminal


def _pipe(path: Path) -> None:
    os.mkfifo(path)


def _socket(path: Path) -> None:
    with closing(socket.socket(socket.AF_UNIX)) as there:
        there.bind(str(path))


def _device(path: Path) -> None:
    path.symlink_to("/dev/zero")


def _folder(path: Path) -> None:
    path.mkdir()


KINDS: dict[Callable[[Path], None], str] = {
    _pipe: "This is a pipe, a socket or a device, and a file is wanted",
    _socket: "This is a pipe, a socket or a device, and a file is wanted",
    _device: "This is a pipe, a socket or a device, and a file is wanted",
    _folder: "This is a folder, and a file is wanted",
}


@pytest.mark.parametrize("make", KINDS)
def test_what_is_no_file_is_no_sheet_and_no_answers(
    onewhole: Terminal,
    sheet: Path,
    tmp_path: Path,
    make: Callable[[Path], None],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Every verb that reads a sheet, answers or a notebook says what stands there; nothing is waited for."""
    monkeypatch.chdir(tmp_path)  # the name of a socket is short
    odd = Path("odd")
    make(odd)
    q_matrix = Path("q.csv")
    q_matrix.write_text("item,a\n1,1\n")
    asked = [
        ["audit", odd],
        ["print", odd],
        ["film", odd],
        ["mark", odd, odd],
        ["mark", sheet, odd],
        ["mark", sheet, odd, "--notebook", odd],
        ["plan", sheet, odd],
        ["again", odd],
        ["reached", sheet, odd],
        ["skills", sheet, odd],
        ["skills", odd, q_matrix],
        ["compose", "--not-again", odd],
        ["compose", "--again", odd],
        ["compose", "--after", odd, "--answers", odd],
    ]
    for typed in asked:
        shown = onewhole(*typed)
        assert (shown.code, shown.out) == (2, "")
        assert shown.err.splitlines() == [
            KINDS[make],
            "  where: odd",
            "  next:  See that the name is that of a file.",
        ]


@pytest.mark.parametrize("make", KINDS)
def test_a_night_of_what_is_no_file(
    onewhole: Terminal,
    sheet: Path,
    tmp_path: Path,
    make: Callable[[Path], None],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """The answers of a folder are a file, or there are none yet."""
    monkeypatch.chdir(tmp_path)
    make(Path("answers.csv"))
    shown = onewhole("night", ".")
    assert (shown.code, shown.out) == (2, "")
    assert shown.err.startswith(KINDS[make])
    assert not Path("out").exists()
