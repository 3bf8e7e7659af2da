"""Files that are ready are put into a folder together, with the list of what belongs to the night."""

from collections.abc import Iterable, Mapping
from datetime import datetime
from enum import Enum
from hashlib import sha256
from pathlib import Path
from typing import assert_never

from msgspec import Struct
from msgspec.structs import replace

from onewhole.marking.reading.mark import ClassMarks
from onewhole.presses.manifest import Manifest, ManifestFile, content_digest
from onewhole.presses.page_folder import put_whole
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import CornerMarks, Paper, Print
from onewhole.sheets.writing import write_sheet
from onewhole.writers.frame import UNTITLED


class NightPart(Enum):
    """What is made together of a night: a run makes one part or several, and each of them anew."""

    PAGES = "pages"
    AUDIT = "audit"
    MARKS = "marks"
    MORNING = "morning"
    AGAIN = "again"
    FILM = "film"

    @property
    def of_pupils(self) -> bool:
        """Say whether it holds what pupils wrote, or what that may show."""
        match self:
            case NightPart.MARKS | NightPart.MORNING:
                return True
            case NightPart.PAGES | NightPart.AUDIT | NightPart.AGAIN | NightPart.FILM:
                return False
            case _:
                assert_never(self)


class Made(Struct, frozen=True):
    """A file that was made: which page it is, and where it lies."""

    page: str
    path: Path


class Ready(Struct, frozen=True):
    """A file that is ready to be put on the disk: which page it is, its ending, its bytes."""

    page: str
    ending: str
    content: bytes


class ReadyFile(Struct, frozen=True):
    """The same, where the bytes lie in a file already, which is moved."""

    page: str
    ending: str
    content: Path


class MadeFrom(Struct, frozen=True):
    """What files are made from and when: the sheet, and the marked answers where there are any."""

    sheet: Sheet
    when: datetime
    answers: ClassMarks | None = None


def put(
    parts: Mapping[NightPart, Iterable[Ready | ReadyFile]],
    folder: Path,
    made_from: MadeFrom,
    *,
    own: bool = False,
) -> tuple[Made, ...]:
    """Put files that are all ready into a folder, made if it is not there: all of them, or none.

    The folder then holds one night: files of another sheet, of other answers, and those of the same parts
    that are not made any more are gone from it; the teacher's own stay. ``manifest.json`` lists what belongs
    together. See :func:`~onewhole.presses.page_folder.put_whole`, also for ``own`` and what is raised.
    """
    files = [(part, file) for part, ready in parts.items() for file in ready]
    when = made_from.when.isoformat()
    listed = tuple(
        ManifestFile(_name(file), file.page, part.value, when, part.of_pupils, *content_digest(file.content))
        for part, file in files
    )
    answers = "" if made_from.answers is None else _answers_digest(made_from.answers)
    title = made_from.sheet.header.title or UNTITLED
    put_whole(
        folder,
        Manifest(title, _sheet_digest(made_from.sheet), answers, listed),
        {_name(file): file.content for _, file in files},
        {part.value for part in parts},
        own=own,
    )
    return tuple(Made(file.page, folder / _name(file)) for _, file in files)


def _name(file: Ready | ReadyFile) -> str:
    return f"{file.page}.{file.ending}"


def _sheet_digest(sheet: Sheet) -> str:
    """Return the SHA-256 of a sheet as the program writes it; not how it is laid on paper.

    Nor where its film is: that is known only when the film is made, and the film must stay then.
    """
    header = replace(
        sheet.header,
        paper=Paper.LETTER,
        print=Print.ORDINARY,
        fit=None,
        marks=CornerMarks.NONE,
        film="",
        braille=False,
    )
    return sha256(write_sheet(replace(sheet, header=header)).encode()).hexdigest()


def _answers_digest(marks: ClassMarks) -> str:
    """Return the SHA-256 of what everyone wrote."""
    written = [
        (pupil.pupil, [(mark.label, mark.written.text) for mark in pupil.marks]) for pupil in marks.pupils
    ]
    return sha256(repr(written).encode(errors="replace")).hexdigest()
