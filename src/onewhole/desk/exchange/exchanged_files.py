"""Files that go in and out: read up to a size, written whole or not at all."""

from pathlib import Path

from onewhole.presses.files import write
from onewhole.presses.named_file import content, refused


def handed_in(path: Path, most: int) -> bytes:
    """Return a file of so many bytes at most. Raises InputError for one that cannot be read or is larger."""
    with refused(path):
        return content(path, most)


def put_file(path: Path, made: bytes) -> None:
    """Write a file that is about no pupil. Raises FileRefused."""
    write(path, made)
