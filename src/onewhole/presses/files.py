"""The file press: bytes go to the disk whole, or not at all."""

import os
import secrets
import stat
from collections.abc import Iterable
from contextlib import suppress
from pathlib import Path

from onewhole.errors import OnewholeError

#: A file that is made: nothing may stand under its name, a link least of all.
_NEW = os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0) | getattr(os, "O_NOFOLLOW", 0)


class FileRefused(OnewholeError, OSError):
    """A file that cannot be written: what is wrong, which file, what to do next."""


def write(path: Path, content: bytes, *, private: bool = False) -> None:
    """Write `content` to `path`: first to a new file beside it, which then takes its name.

    Whatever goes wrong, `path` holds either all of its old bytes or all of the new ones, and nothing is left
    beside it. The folder must be there already. A link under the name is replaced by the file: what it points
    to stays as it is. A `private` file is for its owner alone (mode 0600); any other keeps the permissions of
    the file that was there.

    Raises `FileRefused`.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     write(Path(folder) / "page.pdf", b"six kites")
    ...     (Path(folder) / "page.pdf").read_bytes()
    b'six kites'
    """
    write_parts(path, (content,), private=private)


def write_parts(path: Path, parts: Iterable[bytes], *, private: bool = False) -> None:
    """Write a file part by part, so that it never has to be held whole; otherwise as :func:`write`.

    What goes wrong while a part is made leaves the old file as it was.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     write_parts(Path(folder) / "page.csv", (b"six ", b"kites"))
    ...     (Path(folder) / "page.csv").read_bytes()
    b'six kites'
    """
    if path.is_dir() and not path.is_symlink():
        raise FileRefused(
            "This is a folder, not a file", where=str(path), remedy="Give the file a name of its own."
        )
    if not path.parent.is_dir():
        raise FileRefused(
            "The folder is not there", where=str(path.parent), remedy="Make the folder, or choose another."
        )
    try:
        _replace(path, parts, private=private)
    except OSError as error:
        raise FileRefused(
            f"The file cannot be written: {error.strerror or error}",
            where=str(path),
            remedy="Close the file if it is open; see that you may write there and that the disk has room.",
        ) from error


def write_new(path: Path, parts: Iterable[bytes], *, private: bool) -> None:
    """Write a file under a name that nothing has yet, and put its bytes on the disk. Raises OSError."""
    handle = os.open(path, _NEW, 0o600 if private else 0o666)
    with os.fdopen(handle, "wb") as file:
        file.writelines(parts)
        file.flush()
        os.fsync(file.fileno())


def sync_folder(folder: Path) -> None:
    """Put the names in a folder on the disk. Raises OSError; where folders cannot be opened, does nothing."""
    try:
        handle = os.open(folder, os.O_RDONLY)
    except PermissionError:
        return
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _replace(goal: Path, parts: Iterable[bytes], *, private: bool) -> None:
    """Write beside, then rename; when either fails, take the new file away again."""
    beside = goal.with_name(f".{goal.name[:40]}.{secrets.token_hex(6)}")
    try:
        write_new(beside, parts, private=private)
        if not private and goal.exists() and not goal.is_symlink():
            beside.chmod(stat.S_IMODE(goal.stat().st_mode) & 0o777)
        beside.replace(goal)
    except BaseException:
        with suppress(OSError):
            beside.unlink()
        raise
    with suppress(OSError):  # the file stands under its name already
        sync_folder(goal.parent)
