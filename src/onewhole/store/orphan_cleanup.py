"""Files in the making: held by a lock while a process makes them; what a killed one left is taken away."""

import os
import re
import sys
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from stat import S_ISREG

from onewhole.store.backups import backups_folder

if sys.platform != "win32":
    import fcntl

#: How the name of a file in the making ends.
MAKING = ".making"

_OURS = re.compile(rf"(\..{{1,40}}\.[a-z0-9_]{{8}}{re.escape(MAKING)})(-journal|-wal|-shm)?")


def hold(handle: int) -> bool:
    """Hold a file in the making for as long as its handle is open; False where a sweep was faster.

    On Windows, and on a disk that knows no such locks, nothing is held: there a file that is open cannot be
    taken away, or is never swept.
    """
    if sys.platform != "win32":
        with suppress(OSError):
            fcntl.flock(handle, fcntl.LOCK_EX)
    return os.fstat(handle).st_nlink > 0


def remove_orphans(path: Path) -> tuple[Path, ...]:
    """Take away what killed processes left half made beside the file of a class and among its backups.

    Only a plain file that is called as ours are, belongs to whom the file of the class belongs, and is held
    by no living process: that one is writing it. Returns the paths of what is gone; what cannot be taken away
    stays (:func:`orphans_of`).
    """
    gone = []
    for file in orphans_of(path):
        with suppress(OSError):
            _take_away(file)
            gone.append(file)
    return tuple(gone)


def orphans_of(path: Path) -> tuple[Path, ...]:
    """Return the files in the making beside the file of a class and among its backups, orphans or not."""
    path = Path(os.path.realpath(path))
    try:
        owner = path.stat().st_uid
    except OSError:
        return ()
    return tuple(_ours(path.parent, owner)) + tuple(_ours(backups_folder(path), owner))


def _ours(folder: Path, owner: int) -> Iterator[Path]:
    with suppress(OSError):
        for file in sorted(folder.iterdir()):
            if _OURS.fullmatch(file.name):
                seen = file.lstat()
                if S_ISREG(seen.st_mode) and seen.st_uid == owner:
                    yield file


def _take_away(file: Path) -> None:
    """Take a file away; BlockingIOError where somebody holds it, or holds the one whose log it is."""
    named = _OURS.fullmatch(file.name)
    assert named is not None
    made = file.with_name(named[1])
    if not made.exists():
        file.unlink()
        return
    handle = os.open(made, os.O_RDWR | getattr(os, "O_NOFOLLOW", 0))
    try:
        if sys.platform != "win32":  # there, what is open cannot be taken away
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
        file.unlink()
    finally:
        os.close(handle)
