"""The list that lies in a folder of pages: which files belong together, made when, from which sheet."""

from collections.abc import Collection
from hashlib import file_digest, sha256
from pathlib import Path

import msgspec
from msgspec import Struct

#: The list's name in the folder; no page is called so.
MANIFEST = "manifest.json"
#: A list is far smaller; nothing larger is read.
LARGEST = 1_000_000


class ManifestFile(Struct, frozen=True):
    """A file: its name, which page it is, of which part of a night, when it was made, its size and SHA-256.

    ``pupils`` says that it holds what pupils wrote, or what that may show.
    """

    name: str
    page: str
    part: str
    made: str
    pupils: bool
    size: int
    sha256: str


class Manifest(Struct, frozen=True):
    """What belongs together: the title and digest of the sheet, the digest of the answers, and the files.

    ``answers`` is empty where no file holds what pupils wrote.
    """

    title: str
    sheet: str
    answers: str
    files: tuple[ManifestFile, ...]

    @property
    def pupils(self) -> bool:
        """Say whether any of the files holds what pupils wrote."""
        return any(file.pupils for file in self.files)

    @property
    def names(self) -> frozenset[str]:
        """Return the names of the files."""
        return frozenset(file.name for file in self.files)

    def file(self, name: str) -> ManifestFile | None:
        """Return the file of a name, or None."""
        return next((file for file in self.files if file.name == name), None)


NOTHING_MADE = Manifest("", "", "", ())


def content_digest(content: bytes | Path) -> tuple[int, str]:
    """Return the size of bytes or of a file, and its SHA-256.

    >>> content_digest(b"six kites")[0]
    9
    """
    if isinstance(content, bytes):
        return len(content), sha256(content).hexdigest()
    with content.open("rb") as file:
        found = file_digest(file, "sha256").hexdigest()
        return file.tell(), found


def joined(former: Manifest, tonight: Manifest, parts: Collection[str]) -> Manifest:
    """Return the list of a folder once tonight's files are in it.

    ``parts`` are those that tonight makes anew: nothing former of them stays. Of the others stays what was
    made from the same sheet and, where it holds what pupils wrote and tonight's answers are known, from the
    same answers.

    >>> key = ManifestFile("key.pdf", "key", "pages", "", False, 9, "")
    >>> film = ManifestFile("film.mp4", "film", "film", "", False, 9, "")
    >>> former = Manifest("Kites", "sheet one", "", (key, film))
    >>> joined(former, Manifest("Kites", "sheet one", "", (key,)), {"pages"}).files == (key, film)
    True
    >>> joined(former, Manifest("Kites", "sheet two", "", (key,)), {"pages"}).files == (key,)
    True
    """
    known = bool(tonight.answers) and tonight.answers != former.answers
    stay = tuple(
        file
        for file in former.files
        if former.sheet == tonight.sheet
        and file.part not in parts
        and file.name not in tonight.names
        and not (file.pupils and known)
    )
    files = (*tonight.files, *stay)
    pupils = any(file.pupils for file in files)
    return Manifest(
        tonight.title, tonight.sheet, (tonight.answers or former.answers) if pupils else "", files
    )


def manifest_text(manifest: Manifest) -> bytes:
    """Write a list as JSON."""
    return msgspec.json.format(msgspec.json.encode(manifest), indent=2) + b"\n"


def read_manifest(folder: Path) -> Manifest:
    """Return the list in a folder; where there is none, or what is there is no list, nothing is listed.

    A link is not followed: it is nobody's list. Raises OSError where the disk does not give it: whose the
    files are is then not known.
    """
    path = folder / MANIFEST
    if path.is_symlink() or not path.is_file() or path.stat().st_size > LARGEST:
        return NOTHING_MADE
    try:
        return msgspec.json.decode(path.read_bytes(), type=Manifest)
    except ValueError:
        return NOTHING_MADE


def is_unchanged(file: ManifestFile, path: Path) -> bool:
    """Say whether a file is a plain one that holds the very bytes that were listed. Raises OSError."""
    if path.is_symlink() or not path.is_file() or path.stat().st_size != file.size:
        return False
    return content_digest(path) == (file.size, file.sha256)
