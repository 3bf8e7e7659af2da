"""What stands under a name, looked at without opening it: a file, a folder, a pipe, a link, nothing."""

import os
import stat
from enum import Enum
from pathlib import Path

from onewhole.store.refusals import Damaged, NotAFile

#: Stands in bytes 68 to 71 of every file of ours: "1who" (SQLite's `application_id`).
MARK = b"1who"
#: How every file of SQLite begins.
MAGIC = b"SQLite format 3\0"

#: SQLite's smallest page, and so its smallest file.
LEAST = 512
_HEAD = 100
_REMEDY = "Move it aside, or restore a backup: it is then kept aside."


class Standing(Enum):
    """What stands under a name; the value says it in words."""

    NOTHING = "nothing"
    FILE = "a file"
    FOLDER = "a folder"
    PIPE = "a pipe"
    DEVICE = "a device"
    SOCKET = "a socket"
    LINK = "a link that leads to no file"


_KINDS = (
    (stat.S_ISREG, Standing.FILE),
    (stat.S_ISDIR, Standing.FOLDER),
    (stat.S_ISFIFO, Standing.PIPE),
    (stat.S_ISSOCK, Standing.SOCKET),
)


def standing(path: Path) -> Standing:
    """Say what stands under a name, a link followed. Nothing is opened. Raises `OSError`.

    >>> standing(Path("/"))
    <Standing.FOLDER: 'a folder'>
    """
    try:
        mode = path.stat().st_mode
    except OSError as error:
        if path.is_symlink():
            return Standing.LINK
        if isinstance(error, FileNotFoundError | NotADirectoryError):
            return Standing.NOTHING
        raise
    return next((what for is_kind, what in _KINDS if is_kind(mode)), Standing.DEVICE)


def own_place(path: Path) -> Path:
    """The name itself, in its real folder: a link that stands there is not followed."""
    return Path(os.path.realpath(path.parent)) / path.name


def real_place(path: Path) -> Path:
    """Where the class stands, or is to stand, under a name.

    A link is followed when it leads to a file, or to a free name in a folder that is there; one that leads to
    a device, a pipe or a folder, or turns in a circle, is itself what stands there.
    """
    real = Path(os.path.realpath(path))
    try:
        what = standing(path)
    except OSError:
        return real
    free = what is Standing.LINK and not real.is_symlink() and real.parent.is_dir()
    return real if free or what in {Standing.FILE, Standing.NOTHING} else own_place(path)


def check_kind(path: Path) -> None:
    """Refuse what is no file, and a link that leads to none. Raises `NotAFile` and `OSError`."""
    what = standing(path)
    if what not in {Standing.FILE, Standing.NOTHING}:
        raise NotAFile(f"This is {what.value}, not the file of a class", where=str(path), remedy=_REMEDY)


def check_head(path: Path) -> None:
    """Refuse what is no file of ours by its kind and its first bytes. A pipe or a device is never opened.

    Raises `NotAFile`, `Damaged`, and `OSError` where it cannot be looked at.
    """
    check_kind(path)
    head = _head(path)
    if head[:16] != MAGIC or head[68:72] != MARK:
        raise Damaged(
            "This is not the file of a class",
            where=str(path),
            remedy="Choose the right file, or restore a backup.",
        )
    if why := _wrong(head):
        raise Damaged(f"The file is damaged: {why}", where=str(path), remedy=_REMEDY)


def _head(path: Path) -> bytes:
    """The first bytes of a file; what became a pipe meanwhile is not waited for."""
    handle = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | getattr(os, "O_BINARY", 0))
    try:
        return os.read(handle, _HEAD)
    finally:
        os.close(handle)


def _wrong(head: bytes) -> str:
    """What in SQLite's head is not as this program writes it; an empty text where all is right.

    Source: "The Database Header" in SQLite's "Database File Format" (sqlite.org/fileformat2.html, 1.3).
    """
    size = int.from_bytes(head[16:18])
    numbers = {
        "its page size": size == 1 or (size >= 512 and not size & (size - 1)),
        "its version of writing": head[18] in {1, 2} and head[19] in {1, 2},
        "its reserved space": head[20] == 0,
        "its fractions": head[21:24] == bytes((64, 32, 32)),
        "its schema format": int.from_bytes(head[44:48]) in {1, 2, 3, 4},
        "its text encoding": int.from_bytes(head[56:60]) == 1,
    }
    return next((f"{name} is none of ours" for name, right in numbers.items() if not right), "")
