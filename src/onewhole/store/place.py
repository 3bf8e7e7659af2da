"""Where an open file stands: whether its name still leads to it, so that nothing is told kept elsewhere."""

from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from onewhole.store.refusals import FileMoved

#: How the name of SQLite's write-ahead log ends: what was kept last stands there first.
LOG = "-wal"

#: A file system and the number of a file in it: names change, this does not.
Inode = tuple[int, int]


class FilePlace(Struct, frozen=True):
    """A name, and the file and the log that it led to; ``log`` is None as long as there is none.

    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     path = Path(folder) / "room12.class"
    ...     path.touch()
    ...     place = FilePlace.of(path)
    ...     there = place.is_there()
    ...     _ = path.rename(path.with_name("elsewhere.class"))
    ...     there, place.is_there()
    (True, False)
    """

    path: Path
    file: Inode | None
    log: Inode | None = None

    @classmethod
    def of(cls, path: Path) -> "FilePlace":
        """Return where a name leads to now."""
        return cls(path, _inode(path))

    def with_log(self) -> "FilePlace":
        """Return this place with the log that lies beside the file now."""
        return replace(self, log=_inode(self._log_path))

    def is_there(self) -> bool:
        """Say whether the name still leads to the file, and the name of the log to its log."""
        return (
            self.file is not None
            and _inode(self.path) == self.file
            and (self.log is None or _inode(self._log_path) == self.log)
        )

    def check(self) -> None:
        """Refuse where the file, or its log, was moved, replaced or taken away: `FileMoved`."""
        if not self.is_there():
            raise FileMoved(
                "The file of the class was moved or replaced while it was open here",
                where=str(self.path),
                remedy="Load the page again, look at what stands there, and do it once more.",
            )

    @property
    def _log_path(self) -> Path:
        return self.path.with_name(self.path.name + LOG)


def _inode(path: Path) -> Inode | None:
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_dev, found.st_ino
