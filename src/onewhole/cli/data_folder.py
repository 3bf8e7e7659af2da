"""Where a program keeps what is a person's own, by the XDG base directory standard."""

from collections.abc import Mapping
from pathlib import Path

from onewhole.errors import InputError


def data_folder(environment: Mapping[str, str], home: Path) -> Path:
    """Return our folder in the person's data folder; a path there that is not whole does not count.

    Source: XDG Base Directory Specification 0.8, from memory.

    >>> data_folder({}, Path("/ada")).as_posix()
    '/ada/.local/share/onewhole'
    >>> data_folder({"XDG_DATA_HOME": "/data"}, Path("/ada")).as_posix()
    '/data/onewhole'
    """
    named = Path(environment.get("XDG_DATA_HOME", ""))
    return (named if named.is_absolute() else home / ".local" / "share") / "onewhole"


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
