"""Folders to print into."""

from pathlib import Path

from onewhole.presses.files import FileRefused


def made(folder: Path, *, private: bool = False) -> Path:
    """Make a folder and those above it, if they are not there. Raises FileRefused.

    `private` ones that are made now are for their owner alone (mode 0700).

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as here:
    ...     made(Path(here) / "out" / "monday").is_dir()
    True
    """
    try:
        for one in (*reversed(folder.parents), folder) if private else ():
            if not one.exists():
                one.mkdir(0o700, exist_ok=True)
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise FileRefused(
            f"The folder cannot be made: {error.strerror or error}",
            where=str(folder),
            remedy="Choose another folder, or see that you may write there.",
        ) from error
    return folder
