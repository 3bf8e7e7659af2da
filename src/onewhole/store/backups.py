"""Automatic backups: where they lie, how they are called, which there are."""

import re
from datetime import date, datetime, time
from pathlib import Path

from msgspec import Struct

from onewhole.store.standing import own_place, real_place

#: The folder beside the file of a class.
FOLDER = "backups"

_LAST = re.compile(r"\.(\d{4}-\d\d-\d\d)(?:T(\d{6}))?\.backup")


class Backup(Struct, frozen=True):
    """An automatic backup: made on `day`; `at` is the time of one kept before a restore, else None."""

    path: Path
    day: date
    at: time | None


def backups_folder(path: Path) -> Path:
    """The folder for the automatic backups of the file of a class, beside the file that a link leads to.

    >>> backups_folder(Path("school/room12.class")).parts[-2:]
    ('school', 'backups')
    """
    return real_place(path).parent / FOLDER


def daily_name(path: Path, day: date) -> str:
    """The name of a day's backup.

    >>> daily_name(Path("school/room12.class"), date(2026, 9, 1))
    'room12.class.2026-09-01.backup'
    """
    return f"{path.name}.{day.isoformat()}.backup"


def dated_name(path: Path, now: datetime, kind: str) -> str:
    """A name with day and time, as the teacher's clock shows it: `room12.class.2026-09-01T183000.backup`."""
    return f"{path.name}.{now.astimezone():%Y-%m-%dT%H%M%S}.{kind}"


def backups_of(path: Path) -> tuple[Backup, ...]:
    """The automatic backups of the file of a class, the newest first; other files are no backups."""
    places = {real_place(path)}
    if path.is_symlink() and not path.exists():
        places.add(own_place(path))
    found = [one for place in places for one in _of(place)]
    return tuple(sorted(found, key=lambda one: (one.day, one.at or time.min), reverse=True))


def _of(path: Path) -> list[Backup]:
    try:
        folder = (path.parent / FOLDER).iterdir()
        files = [file for file in folder if file.is_file() and not file.is_symlink()]
    except OSError:
        return []
    return [one for file in files if (one := _read(path, file))]


def _read(path: Path, file: Path) -> Backup | None:
    """A file as a backup; None when its name is not that of one."""
    last = _LAST.fullmatch(file.name.removeprefix(path.name))
    if last is None or not file.name.startswith(path.name):
        return None
    try:
        day = date.fromisoformat(last[1])
        at = None if last[2] is None else datetime.strptime(last[2], "%H%M%S").time()  # noqa: DTZ007 - a time of day
    except ValueError:
        return None
    return Backup(file, day, at)
