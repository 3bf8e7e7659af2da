"""The file press: bytes go to the disk whole, or not at all."""

import os
import secrets
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path

from onewhole.errors import OnewholeError


class FileRefused(OnewholeError, OSError):
    """A file that cannot be written: what is wrong, which file, what to do next."""


def write(path: Path, content: bytes) -> None:
    """Write `content` to `path`: first to a new file beside it, which then takes its name.

    Whatever goes wrong, `path` holds either all of its old bytes or all of the new ones, and nothing is left
    beside it. The folder must be there already. A link stays a link, and the file it points to is written. A
    file that was there keeps its permissions.

    Raises `FileRefused`.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     write(Path(folder) / "page.pdf", b"six kites")
    ...     (Path(folder) / "page.pdf").read_bytes()
    b'six kites'
    """
    write_parts(path, (content,))


def write_parts(path: Path, parts: Iterable[bytes]) -> None:
    """Write a file part by part, so that it never has to be held whole; otherwise as :func:`write`.

    What goes wrong while a part is made leaves the old file as it was.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     write_parts(Path(folder) / "page.csv", (b"six ", b"kites"))
    ...     (Path(folder) / "page.csv").read_bytes()
    b'six kites'
    """
    goal = Path(os.path.realpath(path))
    if goal.is_dir():
        raise FileRefused(
            "This is a folder, not a file", where=str(path), remedy="Give the file a name of its own."
        )
    if not goal.parent.is_dir():
        raise FileRefused(
            "The folder is not there", where=str(path.parent), remedy="Make the folder, or choose another."
        )
    try:
        _replace(goal, parts)
    except OSError as error:
        raise FileRefused(
            f"The file cannot be written: {error.strerror or error}",
            where=str(path),
            remedy="Close the file if it is open; see that you may write there and that the disk has room.",
        ) from error


def _replace(goal: Path, parts: Iterable[bytes]) -> None:
    """Write beside, then rename; when either fails, take the new file away again."""
    beside = goal.with_name(f".{goal.name[:40]}.{secrets.token_hex(6)}")
    handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), 0o666)
    try:
        with os.fdopen(handle, "wb") as file:
            file.writelines(parts)
            file.flush()
            os.fsync(file.fileno())
        if goal.exists():
            beside.chmod(goal.stat().st_mode & 0o777)
        beside.replace(goal)
    except BaseException:
        with suppress(OSError):
            beside.unlink()
        raise
