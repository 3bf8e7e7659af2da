"""Files of pictures that were named, and those of folders: each is opened when it is its turn."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from onewhole.desk.paper.seen_papers import NamedPicture
from onewhole.errors import InputError
from onewhole.presses.named_file import content

#: What a file of pictures may be called at its end.
ENDINGS = (".jpg", ".jpeg", ".png", ".heic", ".heif", ".tif", ".tiff", ".pdf", ".webp")
#: A file of pictures has so many bytes at most: the decoder tells of more.
MOST_BYTES = 400_000_000


@dataclass(frozen=True, slots=True)
class PictureFiles:
    """Files and folders that were named. Of a folder every file that is called as a picture is, by name.

    Raises InputError for what is not there.
    """

    named: tuple[Path, ...]

    def __post_init__(self) -> None:
        """Refuse a name under which nothing is."""
        for path in self.named:
            if not path.exists():
                raise InputError(
                    "There is no such file or folder", where=str(path), remedy="Look at how it is called."
                )

    def __iter__(self) -> Iterator[NamedPicture]:
        """Open one file after another; several of one name are told apart by their folders."""
        for path in self.paths:
            try:
                yield path.name, content(path, MOST_BYTES)
            except OSError as error:
                raise InputError(
                    f"This file cannot be read: {error.strerror or error}",
                    where=str(path),
                    remedy="See that it is there and that you may read it.",
                ) from error

    @property
    def paths(self) -> tuple[Path, ...]:
        """Return the files in the order in which they are read."""
        found: dict[Path, None] = {}
        for path in self.named:
            inside = sorted(path.iterdir()) if path.is_dir() else [path]
            found.update(
                (one, None)
                for one in inside
                if not path.is_dir() or (one.suffix.lower() in ENDINGS and one.is_file())
            )
        return tuple(found)
