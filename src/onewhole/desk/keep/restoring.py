"""Bring a backup back: it is read as what comes from outside, and nothing that stood there is lost."""

from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from msgspec import Struct

from onewhole.desk.keep.way_back import moved_aside, name_before
from onewhole.errors import InputError
from onewhole.store.handed_in.fresh import fresh_file
from onewhole.store.opening import disk_refusals, make_beside, take_beside_away
from onewhole.store.refusals import BackupRefused, Damaged, StoreRefused
from onewhole.store.standing import check_kind, real_place
from onewhole.store.swapping import swap_in


class Restored(Struct, frozen=True):
    """What became of what stood under the name: `aside` was damaged, `before` is a backup of a whole one."""

    path: Path
    aside: Path | None
    before: Path | None


def restore_backup(saved: Path, path: Path, now: datetime) -> Restored:
    """Bring a backup back under a name; nothing that stood there is lost.

    The backup is read row by row into a fresh file first, and refused with the table and the row where it is
    not what a class holds: then nothing was touched. Of a class that stands there a backup is made; whatever
    else stands there is moved aside to a name with the date, with its logs. A child erased since the backup
    was made is in the file again. Raises StoreRefused: then what stood under the name stands there still, or
    lies aside as the refusal says.
    """
    goal = real_place(path)

    def before() -> Path:
        return name_before(goal, now)

    with fresh_file(saved, goal) as fresh:
        try:
            check_kind(goal)
            made = swap_in(fresh, goal, before)
            aside = None
        except Damaged:
            aside = moved_aside(goal, now)
            made = _put_in_freed(fresh, goal, aside, before)
    return Restored(goal, aside, made)


def _put_in_freed(fresh: Path, goal: Path, aside: Path, before: Callable[[], Path]) -> Path | None:
    """Put a backup where something was moved away from; what is refused then says where that lies.

    Returns the backup of what another window made there meanwhile, None for nothing.
    """
    try:
        return swap_in(fresh, goal, before)
    except StoreRefused as refusal:
        raise StoreRefused(
            refusal.what,
            where=refusal.where,
            remedy=f"What stood here is {aside.name} now. {refusal.remedy}",
        ) from refusal


def restore_bytes(content: bytes, path: Path, now: datetime) -> Restored:
    """Bring back a backup that was handed in, as `restore_backup` does; InputError for what is none."""
    handle, beside = make_beside(real_place(path))
    try:
        with disk_refusals(path):
            with open(handle, "wb", closefd=False) as file:
                file.write(content)
            return restore_backup(beside, path, now)
    except BackupRefused as refusal:
        raise InputError(refusal.what, where="the file handed in", remedy=refusal.remedy) from refusal
    finally:
        take_beside_away(handle, beside)
