"""What lies hidden beside a folder of pages while it is traded for a new one, and after a run was killed."""

import os
import sys
from collections.abc import Iterator
from contextlib import suppress
from hashlib import sha256
from itertools import chain, count
from pathlib import Path

from onewhole.presses.manifest import MANIFEST, is_unchanged, read_manifest
from onewhole.presses.swap import swapped

#: How the names of hidden folders end: one in the making, one that is whole and is traded (after the trade it
#: is the old one), and an old one set aside where names cannot be traded.
MAKING, READY, BEFORE = ".pages-making", ".pages-ready", ".pages-before"


def hidden_name(goal: Path, token: str, end: str) -> str:
    """Return the name of a folder that lies hidden beside another one.

    >>> hidden_name(Path("out"), "ab12", MAKING)
    '.out.762069.ab12.pages-making'
    """
    return f"{_start(goal)}{token}{end}"


def _start(goal: Path) -> str:
    """Return how the names of hidden folders begin: two folders with long names alike are told apart."""
    return f".{goal.name[:40]}.{sha256(os.fsencode(goal.name)).hexdigest()[:6]}."


def mend(goal: Path) -> None:
    """Put right what a killed run left beside a folder: nothing of it stays hidden. Raises OSError."""
    for before in _hidden(goal, BEFORE):
        if not os.path.lexists(goal):
            before.rename(goal)
        else:
            settle(before, goal)
    for ready in _hidden(goal, READY):
        settle(ready, goal)
    for making in _hidden(goal, MAKING):
        take_away(making)


def _hidden(goal: Path, end: str) -> Iterator[Path]:
    """Yield the hidden folders of a kind; one that belongs to somebody else was not left by a run of ours."""
    start = _start(goal)
    with os.scandir(goal.parent) as entries:
        names = sorted(
            entry.name
            for entry in entries
            if entry.name.startswith(start)
            and entry.name.endswith(end)
            and entry.is_dir(follow_symlinks=False)
            and (sys.platform == "win32" or entry.stat(follow_symlinks=False).st_uid == os.geteuid())
        )
    yield from (goal.with_name(name) for name in names)


def leave_pointer(making: Path, ready: Path, name: str) -> None:
    """Let a folder of the teacher's be found through the new folder while it still lies in the old one.

    It is a link to where the old folder will be after the trade. On a disk without links there is none, and
    the folder is moved after the trade.
    """
    with suppress(OSError):
        (making / name).symlink_to(f"../{ready.name}/{name}")


def settle(hidden: Path, goal: Path) -> None:
    """Empty a hidden folder into the one that stands, and take it away.

    It is the old folder after a trade, or a whole new one that was never traded. Its own pages are gone;
    what is the teacher's and is not in the standing folder yet is moved there. Raises OSError.
    """
    if not hidden.is_dir():
        return
    own, standing, two_names = read_manifest(hidden), read_manifest(goal), _numbers(goal)
    with os.scandir(hidden) as entries:
        there = sorted(entries, key=lambda entry: entry.name == MANIFEST)  # the list goes last
    for entry in there:
        path, place = Path(entry.path), goal / entry.name
        listed, wanted = own.file(entry.name), standing.file(entry.name)
        if _is_pointer(path, goal) or entry.inode() in two_names:
            path.unlink()
        elif entry.is_dir(follow_symlinks=False):
            _move_folder(path, place, goal)
        elif wanted is not None and not os.path.lexists(place) and is_unchanged(wanted, path):
            path.rename(place)
        elif entry.name == MANIFEST or os.path.lexists(place) or (listed and is_unchanged(listed, path)):
            path.unlink()
        else:
            path.rename(place)
    hidden.rmdir()


def _move_folder(path: Path, place: Path, goal: Path) -> None:
    """Move a folder of the teacher's to its place; it can be found there at every moment."""
    if _is_pointer(place, goal):
        if swapped(path, place):
            path.unlink()
            return
        place.unlink()
    path.rename(unused(place) if os.path.lexists(place) else place)


def unused(path: Path, *folders: Path) -> Path:
    """Return "key (before).pdf" for "key.pdf", or with a number: a name that nothing has there or in folders.

    >>> unused(Path("nowhere") / "key.pdf").name
    'key (before).pdf'
    """
    ends = chain(("",), (f" {number}" for number in count(2)))
    names = (path.with_name(f"{path.stem} (before{end}){path.suffix}") for end in ends)
    where = (path.parent, *folders)
    return next(one for one in names if not any(os.path.lexists(folder / one.name) for folder in where))


def _is_pointer(path: Path, goal: Path) -> bool:
    """Say whether this is a link that was left for a folder which is moved after the trade."""
    if not path.is_symlink():
        return False
    up, _, rest = str(path.readlink()).partition("/")
    hidden, _, name = rest.partition("/")
    return up == ".." and hidden.startswith(_start(goal)) and name == path.name


def _numbers(goal: Path) -> frozenset[int]:
    """Return the numbers of the files in a folder: one that is met again has been given a second name."""
    if not goal.is_dir():
        return frozenset()
    with os.scandir(goal) as entries:
        return frozenset(entry.inode() for entry in entries)


def take_away(making: Path) -> None:
    """Take away a folder in the making: what is the teacher's in it has another name. Raises OSError."""
    if not making.is_dir():
        return
    with os.scandir(making) as entries:
        there = [Path(entry.path) for entry in entries if not entry.is_dir(follow_symlinks=False)]
    for path in there:
        path.unlink()
    making.rmdir()
