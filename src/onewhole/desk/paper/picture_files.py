"""Files of pictures that were named, and those of folders: each is opened when it is its turn."""

from collections import Counter
from collections.abc import Iterator
from pathlib import Path

from msgspec import Struct

from onewhole.desk.paper.seen_papers import NamedPicture
from onewhole.errors import InputError
from onewhole.presses.named_file import opened

#: What a file of pictures may be called at its end.
ENDINGS = (".jpg", ".jpeg", ".png", ".heic", ".heif", ".tif", ".tiff", ".pdf", ".webp")
#: A picture of cells that the program wrote itself is none of papers.
OURS = ".cells.png"
#: So many bytes of a file are read: what looks at pictures takes no more, and says so.
MOST_BYTES = 200_000_001


class PictureFiles(Struct, frozen=True):
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
        paths = self.paths
        names = Counter(path.name for path in paths)
        for path in paths:
            try:
                with opened(path) as file:
                    content = file.read(MOST_BYTES)
            except OSError as error:
                raise InputError(
                    f"This file cannot be read: {error.strerror or error}",
                    where=str(path),
                    remedy="See that it is there and that you may read it.",
                ) from error
            yield (path.name if names[path.name] == 1 else str(path)), content

    @property
    def paths(self) -> tuple[Path, ...]:
        """Return the files in the order in which they are read, none twice."""
        return tuple(dict.fromkeys(one for path in self.named for one in _files(path)))


def _files(path: Path) -> Iterator[Path]:
    """Give a file that was named, or the pictures in a folder."""
    if not path.is_dir():
        yield path
        return
    for one in sorted(path.iterdir()):
        if one.suffix.lower() in ENDINGS and not one.name.endswith(OURS) and one.is_file():
            yield one
