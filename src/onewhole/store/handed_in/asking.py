"""Asks the limited process: a query goes in, frames of rows come out, or a refusal."""

import os
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from threading import Timer
from typing import IO, Protocol

import msgspec

from onewhole.store.handed_in import child
from onewhole.store.refusals import BackupRefused, plain
from onewhole.store.standing import check_head

#: A file is read in so many seconds of the processor, and one more for so many bytes; on the clock in so many
#: times that.
SECONDS, BYTES_A_SECOND, PATIENCE = 20, 10_000_000, 4
#: What is read of a file is at most so many times the file, and so many bytes more.
TIMES, MORE = 3, 1_000_000

_OTHER = "Choose another backup; nothing was changed."
_TOO_MUCH = "reading it took more time or memory than a class needs"


class Frames(Protocol):
    """Answers a query with the rows of each frame, as MessagePack."""

    def __call__(self, query: str, table: str = "") -> Iterator[bytes]:
        """Give the frames. Raises `BackupRefused`, which names the table."""


@contextmanager
def asked(saved: Path) -> Iterator[Frames]:
    """Start the process for a file that was handed in, and end it. Raises `BackupRefused`."""
    check_handed_in(saved)
    size = saved.stat().st_size
    seconds = SECONDS + size // BYTES_A_SECOND
    process = subprocess.Popen(  # noqa: S603 - our own script
        [sys.executable, "-I", child.__file__, os.fspath(saved.absolute()), str(seconds)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        cwd=saved.absolute().parent,
        env=None if sys.platform == "win32" else {},
    )
    assert process.stdin is not None
    assert process.stdout is not None
    clock = Timer(seconds * PATIENCE, process.kill)
    clock.daemon = True
    clock.start()
    try:
        yield _Asked(saved, process.stdin, process.stdout, size * TIMES + MORE)
    finally:
        clock.cancel()
        process.kill()
        for pipe in (process.stdin, process.stdout):
            with suppress(OSError):
                pipe.close()
        process.wait()


def check_handed_in(saved: Path) -> None:
    """Refuse what is no file of ours by its kind and its first bytes. Raises `BackupRefused`."""
    try:
        check_head(saved)
    except OSError as error:
        what = getattr(error, "what", error.strerror or str(error))
        raise BackupRefused(f"This backup cannot be used: {what}", where=str(saved), remedy=_OTHER) from error


class _Asked:
    """The process at the other end of two pipes; what it sends is held against limits, too."""

    __slots__ = ("_from", "_left", "_saved", "_to")

    def __init__(self, saved: Path, to: IO[bytes], answers: IO[bytes], left: int) -> None:
        self._saved, self._to, self._from, self._left = saved, to, answers, left

    def __call__(self, query: str, table: str = "") -> Iterator[bytes]:
        """Give the frames of an answer."""
        try:
            self._to.write(query.encode() + b"\n")
            self._to.flush()
        except OSError as error:
            raise refused(self._saved, _TOO_MUCH) from error
        while True:
            kind, size = child.HEAD.unpack(self._read(child.HEAD.size))
            held = self._read(size)
            if kind == child.END:
                return
            if kind == child.WRONG:
                raise said(self._saved, held, table)
            yield held

    def _read(self, size: int) -> bytes:
        self._left -= size
        held = self._from.read(size) if self._left >= 0 else b""
        if len(held) != size:
            raise refused(self._saved, _TOO_MUCH)
        return held


def said(saved: Path, held: bytes, table: str) -> BackupRefused:
    """Put an error of SQLite that came in a frame into words."""
    words, came = msgspec.msgpack.decode(held, type=tuple[str, int])
    place = f"{table}, row {came + 1}: " if table else ""
    if "decode" in words.lower():
        return refused(saved, f"{place}a text cannot be read")
    return refused(saved, f"{place}{plain(words)[:120]}")


def refused(saved: Path, why: str) -> BackupRefused:
    """Say why a backup cannot be used."""
    return BackupRefused(f"This backup cannot be used: {why}", where=str(saved), remedy=_OTHER)
