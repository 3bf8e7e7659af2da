"""A way back: what stands where the class should be is moved aside, and the newest good backup is found."""

import os
from contextlib import closing
from datetime import datetime, timedelta
from glob import escape
from itertools import count
from pathlib import Path

from msgspec import Struct

from onewhole.desk.keep.pupil_cache import pupil_cache
from onewhole.errors import InputError
from onewhole.store.backups import Backup, backups_folder, backups_of, dated_name
from onewhole.store.copying import copy_beside
from onewhole.store.handed_in.fresh import fresh_file
from onewhole.store.mending import check_backup
from onewhole.store.opening import Store, all_beside, connected, disk_refusals, logs_of, open_store
from onewhole.store.refusals import BackupRefused, Damaged, NotThere, StoreRefused
from onewhole.store.standing import Standing, own_place, real_place, standing

__all__ = [
    "Damaged",
    "WayBack",
    "damaged_of",
    "open_kept",
    "put_aside",
    "way_back",
]


#: Where the devices of the machine stand.
_DEVICES = Path("/dev")


class WayBack(Struct, frozen=True):
    """The newest good backup, or None; newer ones that are passed over, and why."""

    good: Backup | None
    bad: tuple[tuple[Backup, str], ...]

    @property
    def told(self) -> str:
        """Say what to do where the class cannot be opened."""
        skipped = "".join(f" {one.path.name} is passed over. {why}." for one, why in self.bad)
        if self.good is None:
            return f"There is no good backup: move aside what stands here, then start anew.{skipped}"
        name = self.good.path.name
        return f"Restore the newest good backup, {name}; what stands here is then kept aside.{skipped}"


def way_back(path: Path) -> WayBack:
    """Find the newest automatic backup that can be brought back; each is read whole until one is good.

    One whose rows are not as they were written, such as that made before a damage was taken back, is passed
    over for an older one that is whole; it is offered where there is none.
    """
    bad: list[tuple[Backup, str]] = []
    doubted: Backup | None = None
    for one in backups_of(path):
        read = _read(one.path)
        if read.comes_back and not read.why:
            return WayBack(one, tuple(bad))
        if read.comes_back and doubted is None:
            doubted = one
        bad.append((one, read.why))
    return WayBack(doubted, tuple((one, why) for one, why in bad if one != doubted))


class _Read(Struct, frozen=True):
    """Whether a backup can be brought back, and why it is not good; an empty text for a good one."""

    comes_back: bool
    why: str = ""


def _read(saved: Path) -> _Read:
    try:
        seen = saved.stat()
        return _read_whole(saved, seen.st_ino, seen.st_size, seen.st_mtime_ns)
    except OSError as error:
        return _Read(comes_back=False, why=getattr(error, "what", str(error)))


@pupil_cache(maxsize=64)
def _read_whole(saved: Path, _number: int, _size: int, _written: int) -> _Read:
    """Read a backup as a restore would; what was read before and is the same file is not read again."""
    try:
        with fresh_file(saved, saved) as fresh:
            count = len(check_backup(fresh).damages)
    except BackupRefused as no:
        return _Read(comes_back=False, why=no.what)
    return _Read(comes_back=True, why=not_as_written(count))


def not_as_written(count: int) -> str:
    """Say how many places of a file are damaged; an empty text for none.

    >>> not_as_written(1), not_as_written(3)
    ('One place in it is not as written', '3 places in it are not as written')
    """
    if not count:
        return ""
    return f"{'One place in it is' if count == 1 else f'{count} places in it are'} not as written"


def open_or_tell(path: Path) -> Store:
    """Open the file of a class, or make it. Raises StoreRefused; for a damaged one it tells the way back.

    A file of an earlier release is backed up before it is brought forward: no backup, no change.
    """
    try:
        return open_store(path, before_steps=_backed_up)
    except Damaged as damaged:
        told = way_back(path).told
        raise type(damaged)(damaged.what, where=damaged.where, remedy=told) from damaged


def _backed_up(path: Path) -> None:
    """Back up a file of an earlier release as it stands, under the moment it was last written at."""
    with disk_refusals(path):
        written = max(one.stat().st_mtime for one in (path, *logs_of(path)) if one.exists())
    goal = name_before(path, datetime.fromtimestamp(written).astimezone())
    with closing(connected(path, "ro")) as source:
        copy_beside(source, goal)


def open_kept(path: Path) -> Store:
    """Open the file of a class that is there already. Raises NotThere, StoreRefused."""
    if not _stands(path):
        raise NotThere(
            "There is no such file",
            where=str(path),
            remedy="See how the name is spelt and in which folder it is.",
        )
    return open_or_tell(path)


def put_aside(path: Path, now: datetime) -> Path:
    """Move aside what stands where the class should be and cannot be opened as one; return its new name.

    Raises NotThere where nothing stands, InputError for a class that opens, and StoreRefused for what cannot
    be moved: then it offers another name for the class.
    """
    try:
        open_kept(path).close()
    except Damaged:
        return moved_aside(path, now)
    raise InputError(
        "This is a whole class: it stays where it is",
        where=str(path),
        remedy="To have an earlier state again, restore a backup.",
    )


def moved_aside(path: Path, now: datetime) -> Path:
    """Move what stands under a name, whatever it is, with its logs; return its new name, with the date.

    A link that leads to no file is moved itself: what it leads to is not the program's to move. Raises
    StoreRefused for what cannot be moved, and for the machine's own devices.
    """
    path = real_place(path) if standing(path) is Standing.FILE else own_place(path)
    if _DEVICES in path.parents and not path.is_symlink() and standing(path) is Standing.DEVICE:
        raise StoreRefused(
            "This is a device of the machine: it stays where it is",
            where=str(path),
            remedy="Name the file of the class.",
        )
    aside = free_name(path.parent, path, now, "damaged")
    try:
        for one in (path, *all_beside(path)):
            if os.path.lexists(one):
                one.rename(aside.with_name(aside.name + one.name.removeprefix(path.name)))
    except OSError as error:
        raise StoreRefused(
            f"What stands here cannot be moved aside: {error.strerror or error}",
            where=str(path),
            remedy=f"Give the class another name, such as {_other_name(path).name}, and restore to it.",
        ) from error
    return aside


def damaged_of(path: Path) -> tuple[Path, ...]:
    """Return the damaged files that were moved aside from this name, the newest last."""
    return tuple(sorted(path.parent.glob(f"{escape(path.name)}.*.damaged")))


def free_name(folder: Path, path: Path, now: datetime, kind: str) -> Path:
    """Find a name with the date that nothing has yet."""
    names = (folder / dated_name(path, now + timedelta(seconds=later), kind) for later in count())
    return next(name for name in names if not os.path.lexists(name))


def make_folder(folder: Path) -> None:
    """Make the folder for backups, mode 0700. Raises StoreRefused."""
    with disk_refusals(folder):
        folder.mkdir(mode=0o700, exist_ok=True)
        folder.chmod(0o700)


def name_before(path: Path, now: datetime) -> Path:
    """Find a free name for a backup of what stands before it is changed as a whole. Raises StoreRefused."""
    folder = backups_folder(path)
    make_folder(folder)
    return free_name(folder, path, now, "backup")


def _other_name(path: Path) -> Path:
    names = (path.with_name(f"{path.stem}-{number}{path.suffix}") for number in count(2))
    return next(name for name in names if not os.path.lexists(name))


def _stands(path: Path) -> bool:
    return os.path.lexists(path) or any(log.exists() for log in logs_of(path))
