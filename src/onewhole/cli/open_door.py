"""The door that is open on a class's file: one for each file and person, found again by a second start.

It is noted in a folder that only its owner reads: a file that is held by a lock as long as the program runs,
and a page that leads a browser in. The address with its key stands in these two and on no command line, which
every account of a machine can read. Source of the page: Jupyter Server's file for its browser, from memory.
"""

import os
import sys
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager, suppress
from hashlib import sha256
from html import escape
from pathlib import Path
from stat import S_ISREG

import msgspec
from msgspec import Struct

from onewhole.cli.data_folder import data_folder, made_private

if sys.platform == "win32":
    import msvcrt
else:
    import fcntl

#: Where on Windows the lock lies: nobody can read bytes that another has locked, and no note is that long.
_LOCK_LIES = 1 << 30
_PAGE = """<!doctype html>
<html lang="en-US"><head><meta charset="utf-8"><meta name="referrer" content="no-referrer">
<meta http-equiv="refresh" content="0; url={address}"><title>onewhole</title></head>
<body><p><a href="{address}">Open onewhole</a></p></body></html>
"""


class DoorNote(msgspec.Struct, frozen=True):
    """What is noted of an open door: its process, and an address that opens one more window."""

    pid: int
    address: str


class DoorPlace(Struct, frozen=True):
    """Where the door on one file of a class is noted."""

    note: Path
    page: Path

    @classmethod
    def of(cls, path: Path, environment: Mapping[str, str], home: Path) -> "DoorPlace":
        """Return the place for a file: in the person's runtime folder, or in the data folder without one.

        Source: XDG Base Directory Specification 0.8, from memory. Raises InputError where no folder can be
        made.
        """
        named = Path(environment.get("XDG_RUNTIME_DIR", ""))
        own = named.is_absolute() and named.is_dir() and _is_ours(named.stat())
        folder = made_private(named / "onewhole" if own else data_folder(environment, home) / "open")
        name = sha256(os.fsencode(os.path.realpath(path))).hexdigest()[:16]
        return cls(folder / f"{name}.door", folder / f"{name}.html")


@contextmanager
def held_door(place: DoorPlace) -> Iterator[Callable[[str], None] | None]:
    """Hold the place of a door; None where another process of this person holds it.

    What is given notes an address for the next window, as often as there is a new one. At the end nothing of
    it is left; of a process that was killed the lock is gone, and the next start takes its place. On a disk
    that knows no such locks, every start has a door of its own.
    """
    handle = _taken(place.note)
    if handle is None:
        yield None
        return
    try:
        yield lambda address: _write(place, handle, address)
    finally:
        if sys.platform == "win32":  # where no open file is taken away
            os.close(handle)
        for path in (place.page, place.note):
            with suppress(OSError):
                path.unlink(missing_ok=True)
        if sys.platform != "win32":
            os.close(handle)


def door_noted(place: DoorPlace) -> DoorNote | None:
    """Return what is noted of a door that is held; None where there is no note of ours, or none yet.

    A file is believed that is plain, this person's own, and read by nobody else; its process is there.
    """
    try:
        handle = os.open(place.note, os.O_RDONLY | getattr(os, "O_NOFOLLOW", 0))
    except OSError:
        return None
    with os.fdopen(handle, "rb") as file:
        seen = os.fstat(handle)
        if not (S_ISREG(seen.st_mode) and _is_ours(seen) and _is_private(seen)):
            return None
        try:
            note = msgspec.json.decode(file.read(10_000), type=DoorNote)
        except msgspec.DecodeError:
            return None
    return note if _is_running(note.pid) else None


def _taken(note: Path) -> int | None:
    """Return the handle of a note that is locked now and stands under its name; None where another has it."""
    while True:
        handle = os.open(note, os.O_RDWR | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0), 0o600)
        try:
            _lock(handle)
        except BlockingIOError:
            os.close(handle)
            return None
        except OSError:  # a disk without locks
            return handle
        with suppress(FileNotFoundError):
            if os.path.samestat(os.fstat(handle), note.stat()):
                return handle
        os.close(handle)  # whoever held it took the name away meanwhile


def _lock(handle: int) -> None:
    """Lock a file until it is closed. Raises BlockingIOError where it is, OSError on a disk without locks."""
    if sys.platform == "win32":
        os.lseek(handle, _LOCK_LIES, os.SEEK_SET)
        try:
            msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        except PermissionError as error:
            raise BlockingIOError from error
    else:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)


def _write(place: DoorPlace, handle: int, address: str) -> None:
    """Note an address: the page first, so that whoever reads the note finds it."""
    beside = place.page.with_suffix(".new")
    made = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_TRUNC | getattr(os, "O_NOFOLLOW", 0), 0o600)
    with os.fdopen(made, "w", encoding="utf-8") as file:
        file.write(_PAGE.format(address=escape(address)))
    beside.replace(place.page)
    content = msgspec.json.encode(DoorNote(os.getpid(), address))
    os.ftruncate(handle, 0)
    os.lseek(handle, 0, os.SEEK_SET)
    os.write(handle, content)


def _is_ours(seen: os.stat_result) -> bool:
    return sys.platform == "win32" or seen.st_uid == os.geteuid()


def _is_private(seen: os.stat_result) -> bool:
    """Say whether only its owner reads a file; on Windows the person's own folder sees to that."""
    return sys.platform == "win32" or seen.st_mode & 0o077 == 0


def _is_running(pid: int) -> bool:
    if sys.platform == "win32" or pid <= 0:
        return pid > 0
    try:
        os.kill(pid, 0)
    except OSError:
        return False
    return True
