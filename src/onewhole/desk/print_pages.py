"""Print a sheet: pupil page, answer key, workings and the page for home, each a PDF."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from onewhole.presses.files import write
from onewhole.presses.folders import made
from onewhole.presses.pdf import press
from onewhole.sheets.document import Sheet
from onewhole.writers.family_page import family_page
from onewhole.writers.key_page import key_page
from onewhole.writers.printed import Printed
from onewhole.writers.pupil_page import pupil_page
from onewhole.writers.workings_page import workings_page


@dataclass(frozen=True, slots=True)
class Made:
    """A file that was made: which page it is, and where it lies."""

    page: str
    path: Path


def print_pages(sheet: Sheet, folder: Path, *, when: datetime) -> tuple[Made, ...]:
    """Print the four pages of a sheet into a folder, which is made if it is not there.

    All pages are pressed before the first is written, so that a page that cannot be printed leaves nothing
    behind. ``when`` is the date written into the PDFs, with its time zone. Raises RoomError when a working
    does not fit the paper, PressError and FileRefused.
    """
    pages = {
        "pupil": pupil_page(sheet),
        "key": key_page(sheet),
        "workings": workings_page(sheet),
        "family": family_page(sheet),
    }
    return print_all(pages.items(), folder, when=when)


def print_all(pages: Iterable[tuple[str, Printed]], folder: Path, *, when: datetime) -> tuple[Made, ...]:
    """Press every page, then write them all."""
    pressed = [(name, press(page.source, data=page.content, when=when)) for name, page in pages]
    made(folder)
    for name, content in pressed:
        write(folder / f"{name}.pdf", content)
    return tuple(Made(name, folder / f"{name}.pdf") for name, _ in pressed)
