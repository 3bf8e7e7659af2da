"""What lies on the disk of a class: every file that the program made beside it, by its place."""

import os
from collections.abc import Iterator
from pathlib import Path

from msgspec import Struct

from onewhole.desk.keep.places import DataPlace, place_of
from onewhole.store.backups import FOLDER


class Lying(Struct, frozen=True):
    """A place and its files, seen from the folder of the class's file."""

    place: DataPlace
    files: tuple[str, ...]


def what_lies(path: Path) -> tuple[Lying, ...]:
    """Return what lies beside the file of a class, and that itself, in the order of the table of places.

    A file that is not ours is not in it, and no link is followed.
    """
    path = Path(os.path.realpath(path))
    found: dict[DataPlace, list[str]] = {place: [] for place in DataPlace}
    for file in _files(path):
        seen = file.relative_to(path.parent).as_posix()
        if (place := place_of(seen, path.name)) is not None:
            found[place].append(seen)
    return tuple(Lying(place, tuple(files)) for place, files in found.items() if files)


def _files(path: Path) -> Iterator[Path]:
    for folder in (path.parent, path.parent / FOLDER):
        if folder.is_dir():
            yield from sorted(file for file in folder.iterdir() if file.is_file() and not file.is_symlink())
    for top, _, names in os.walk(path.with_name(f"{path.stem}-made")):
        yield from (Path(top, name) for name in sorted(names) if not Path(top, name).is_symlink())
