"""A folder of pages, written whole: made beside, on the disk, then traded for the one that stands."""

import os
import secrets
import shutil
import stat
import sys
from collections.abc import Collection, Iterator, Mapping
from contextlib import contextmanager, suppress
from pathlib import Path

from onewhole.presses.files import FileRefused, sync_folder, write_new
from onewhole.presses.folders import made
from onewhole.presses.manifest import (
    MANIFEST,
    NOTHING_MADE,
    Manifest,
    is_unchanged,
    joined,
    manifest_text,
    read_manifest,
)
from onewhole.presses.settling import (
    BEFORE,
    MAKING,
    READY,
    hidden_name,
    leave_pointer,
    mend,
    settle,
    take_away,
    unused,
)
from onewhole.presses.swap import swapped

if sys.platform != "win32":
    import fcntl


def put_whole(
    folder: Path,
    tonight: Manifest,
    contents: Mapping[str, bytes | Path],
    parts: Collection[str],
    *,
    own: bool = False,
) -> None:
    """Put files into a folder (made where there is none), all of them at once, with their list.

    ``contents`` are the bytes of each file of ``tonight`` by its name, or where a file lies that is moved in.
    ``parts`` are those that are made anew: a file that an earlier list names and that is not of tonight is
    gone (:func:`~.manifest.joined`). What no list names, and what was changed since it was made, is the
    teacher's: it stays, and where one of tonight's files takes its name it is called "key (before).pdf". A
    link is replaced and never followed.

    Whatever goes wrong, and whenever, the folder is the old one whole or the new one whole: all is made in a
    hidden folder beside it and traded for it in one step. On a disk that cannot trade names there are two
    steps; the next run puts right what was broken off between them. Where pupils' work is among the files,
    the folder has mode 0700 and they have 0600, whatever is usual.

    ``own`` says that the folder is the program's own, whatever lies in it, and its owner's alone; otherwise
    one that cannot be traded is refused (:func:`check_folder`). Raises FileRefused.
    """
    goal = Path(os.path.realpath(folder))
    made(goal.parent, private=own)
    try:
        with _alone(goal.parent):
            mend(goal)
            check_folder(folder, own=own)
            _put(goal, tonight, contents, parts, own=own)
    except OSError as error:
        if isinstance(error, FileRefused):
            raise
        there = (
            "still there" if os.path.lexists(goal) else "hidden beside it, and the next run brings it back"
        )
        raise FileRefused(
            f"The pages cannot be put into the folder: {error.strerror or error}",
            where=str(folder),
            remedy=(
                f"What was there is {there}, whole. "
                "See that you may write beside the folder and that the disk has room."
            ),
        ) from error


def folder_within(folder: Path, name: str) -> Path:
    """Return a folder of the program's own in a folder of pages; both are made where they are not there.

    A link under its name is not followed but taken away, once what a killed run left is put right. Raises
    FileRefused.
    """
    goal = Path(os.path.realpath(folder))
    place = folder / name
    if place.is_symlink():
        try:
            with _alone(goal.parent):
                mend(goal)
                if place.is_symlink():
                    place.unlink()
        except OSError as error:
            raise FileRefused(
                f"The folder cannot be used: {error.strerror or error}",
                where=str(place),
                remedy="Take the link away, or choose another folder.",
            ) from error
    return made(place)


def check_folder(folder: Path, *, own: bool = False) -> None:
    """Refuse a folder that cannot be traded whole for a new one, or that plainly is not one of pages.

    Those are a file, a disk of its own, the working folder or the home folder (and what they lie in), and,
    where it is not the program's `own`, a folder that holds other folders and no list of ours, or a list that
    is not ours. Raises FileRefused.
    """
    goal = Path(os.path.realpath(folder))
    if goal.exists() and not goal.is_dir():
        raise FileRefused(
            "The folder cannot be made: File exists",
            where=str(folder),
            remedy="Choose another folder, or see that you may write there.",
        )
    if not goal.is_dir():
        return
    try:
        what = _unlike_pages(goal, own=own)
    except OSError as error:
        raise FileRefused(
            f"The folder cannot be looked into: {error.strerror or error}",
            where=str(folder),
            remedy="Choose another folder, or see that you may read it.",
        ) from error
    if what:
        raise FileRefused(
            f"{what}, and pages go into a folder of their own",
            where=str(folder),
            remedy=f"Name a folder in it: {folder / 'pages'}.",
        )


def _unlike_pages(goal: Path, *, own: bool) -> str:
    """Say what makes a folder no folder of pages; nothing where it is one."""
    with os.scandir(goal) as entries:
        folders = [Path(entry.path) for entry in entries if entry.is_dir(follow_symlinks=False)]
    if any(os.path.ismount(one) for one in (goal, *folders)):
        return "This is a disk of its own, or holds one"
    if any(goal == one or goal in one.parents for one in _lived_in()):
        return "This is the folder that you work in, or holds it"
    if own or read_manifest(goal) != NOTHING_MADE:
        return ""
    if any(not one.name.startswith(".") for one in folders):
        return "This folder holds other folders"
    if (goal / MANIFEST).is_file() and not (goal / MANIFEST).is_symlink():
        return f"This folder holds a {MANIFEST} that is not one of pages"
    return ""


def _lived_in() -> Iterator[Path]:
    with suppress(OSError):
        yield Path.cwd()
    with suppress(OSError, RuntimeError):
        yield Path(os.path.realpath(Path.home()))


@contextmanager
def _alone(parent: Path) -> Iterator[None]:
    """Let one run at a time trade folders in a place; a run that was killed holds nobody up."""
    if sys.platform == "win32":
        yield
        return
    handle = os.open(parent, os.O_RDONLY)
    try:
        with suppress(OSError):  # some disks of other machines have no locks
            fcntl.flock(handle, fcntl.LOCK_EX)
        yield
    finally:
        with suppress(OSError):  # nothing was written through it
            os.close(handle)


def _put(
    goal: Path,
    tonight: Manifest,
    contents: Mapping[str, bytes | Path],
    parts: Collection[str],
    *,
    own: bool,
) -> None:
    token = secrets.token_hex(6)
    making, ready = (goal.with_name(hidden_name(goal, token, end)) for end in (MAKING, READY))
    former = read_manifest(goal)
    whole = joined(former, tonight, parts)
    private = own or whole.pupils
    making.mkdir(mode=0o700)
    try:
        for name, content in {**contents, MANIFEST: manifest_text(whole)}.items():
            _put_in(making / name, content, private=private)
        if goal.is_dir():
            _carry(goal, making, ready, whole.names, former, private=private)
        making.chmod(_mode(goal, making, private=private))
        sync_folder(making)
        making.rename(ready)
    except BaseException:
        with suppress(OSError):
            take_away(making)
        raise
    _trade(goal, ready, goal.with_name(hidden_name(goal, token, BEFORE)))


def _put_in(path: Path, content: bytes | Path, *, private: bool) -> None:
    """Write a file, or move one in that lies ready, and put it on the disk."""
    if isinstance(content, bytes):
        write_new(path, (content,), private=private)
        return
    content.rename(path)
    if private:
        path.chmod(0o600)
    with path.open("rb") as file:
        os.fsync(file.fileno())


def _carry(
    goal: Path, making: Path, ready: Path, names: frozenset[str], former: Manifest, *, private: bool
) -> None:
    """Give the new folder what stays of the old one, under both names at once: it is never nowhere."""
    with os.scandir(goal) as entries:
        there = sorted(entries, key=lambda entry: entry.name)
    for entry in there:
        name, path = entry.name, Path(entry.path)
        listed = former.file(name)
        made_by_us = name == MANIFEST or (listed is not None and is_unchanged(listed, path))
        is_folder = entry.is_dir(follow_symlinks=False)
        if os.path.lexists(making / name):
            if is_folder:
                raise FileRefused(
                    "This is a folder, and a page has its name",
                    where=str(path),
                    remedy="Call the folder something else, or print into another one.",
                )
            if entry.is_file(follow_symlinks=False) and not made_by_us:
                _give(path, unused(making / name, goal))
        elif is_folder:
            leave_pointer(making, ready, name)
        elif name in names or not made_by_us:
            _give(path, making / name)
            if private and made_by_us:
                (making / name).chmod(0o600)


def _give(path: Path, place: Path) -> None:
    """Give a file a second name; on a disk where files have one name only, a copy."""
    try:
        os.link(path, place, follow_symlinks=False)
    except OSError:
        if not path.is_file() or path.is_symlink():
            return  # it is moved after the trade
        shutil.copy2(path, place)
        with place.open("rb") as file:
            os.fsync(file.fileno())


def _mode(goal: Path, making: Path, *, private: bool) -> int:
    """Return the mode of the folder: its owner's alone with pupils' work, else as it was or is usual."""
    if private:
        return 0o700
    if goal.is_dir():
        return stat.S_IMODE(goal.stat().st_mode)
    usual = stat.S_IMODE((making / MANIFEST).stat().st_mode)
    return 0o700 | usual | (usual & 0o444) >> 2


def _trade(goal: Path, ready: Path, before: Path) -> None:
    """Let the new folder take the name; the old one is emptied into it and taken away."""
    try:
        if not goal.is_dir():
            ready.rename(goal)
        elif not swapped(ready, goal):
            goal.rename(before)
            ready.rename(goal)
    except BaseException:
        with suppress(OSError):
            mend(goal)
        raise
    try:
        sync_folder(goal.parent)
    except OSError as error:
        raise FileRefused(
            f"The new pages are in their place, but the disk does not answer: {error.strerror or error}",
            where=str(goal),
            remedy="See that the disk is well, and do it again.",
        ) from error
    with suppress(OSError):  # all is in its place; the next run takes away what stays hidden
        settle(ready, goal)
    try:
        settle(before, goal)
    except OSError as error:
        raise FileRefused(
            f"The new pages are in their place, but not all that is yours is: {error.strerror or error}",
            where=str(goal),
            remedy=f"It lies in {before.name} beside the folder. Do it again, and it is put back.",
        ) from error
