"""Where a program keeps what is a person's own, by the custom of each system."""

import sys
from collections.abc import Mapping
from pathlib import Path, PurePath

from onewhole.errors import InputError


def data_folder(environment: Mapping[str, str], home: Path, platform: str = sys.platform) -> Path:
    """Return our folder in the person's data folder; a path there that is not whole does not count.

    Windows: the local application data; macOS: Application Support; elsewhere the XDG base directories, which
    also count on macOS where they are named. Sources: XDG Base Directory Specification 0.8, File System
    Programming Guide (Apple), known folder FOLDERID_LocalAppData (Microsoft), from memory;
    `tests/outside/test_data_folder.py` asks platformdirs.

    >>> data_folder({}, Path("/ada"), "linux").as_posix()
    '/ada/.local/share/onewhole'
    >>> data_folder({"XDG_DATA_HOME": "/data"}, Path("/ada"), "linux").as_posix()
    '/data/onewhole'
    >>> data_folder({}, Path("/ada"), "darwin").as_posix()
    '/ada/Library/Application Support/onewhole'

    Where a folder of an earlier release is there, which was under `.local/share` on every system, it stays.
    """
    former = home.joinpath(".local", "share", "onewhole")
    if platform in {"win32", "darwin"} and former.is_dir():
        return former
    folder: PurePath
    if platform == "win32":
        folder = named(home, environment.get("LOCALAPPDATA", "")) or home / "AppData" / "Local"
    else:
        usual = ("Library", "Application Support") if platform == "darwin" else (".local", "share")
        folder = named(home, environment.get("XDG_DATA_HOME", "")) or home.joinpath(*usual)
    return home.joinpath(folder, "onewhole")


def named(home: PurePath, typed: str) -> PurePath | None:
    """Return a folder that the environment names, in the style of the home's paths; None for half a path."""
    folder = type(home)(typed)
    return folder if folder.is_absolute() else None


def made_private(folder: Path) -> Path:
    """Make a folder that only its owner reads (mode 0700), and return it. Raises InputError."""
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        folder.chmod(0o700)
    except OSError as error:
        raise InputError(
            f"The folder for the class cannot be made: {error.strerror}",
            where=str(folder),
            remedy="Say where the file of the class is to be: onewhole serve FILE.",
        ) from error
    return folder
