"""Papers as the machine would see them, for tests of what the desk makes of them: no picture is looked at."""

from collections.abc import Iterable, Mapping, Sequence
from datetime import date
from pathlib import Path

from onewhole.desk.classes.class_records import open_book, set_night, start_room
from onewhole.desk.paper.seen_papers import NamedPicture, SeenCell, SeenPapers
from onewhole.findings.in_pictures import PictureFinding
from onewhole.marking.paper.ink_reading import InkReading
from onewhole.store.opening import Store
from tests.kit.answers import TWELVE
from tests.kit.kept import DAY, NOW
from tests.kit.paper_cells import CROP

TYPED = "title: Kite tails\n\n" + "\n".join(f"{at}. {one}" for at, one in enumerate(TWELVE, 1)) + "\n"


def paper_class(path: Path, pupils: int = 3, typed: str = TYPED, day: date = DAY) -> Store:
    """Return the file of a class of so many pupils that took one page home: class 1, night 1."""
    book = open_book(path)
    start_room(book, "Room 12", pupils, NOW)
    set_night(book, 1, typed, day, NOW)
    return book


def sure(text: str) -> InkReading:
    """Return a picture that is sure of a text; of nothing where the text is empty."""
    if not text:
        return InkReading((), 999_900, 50)
    return InkReading(((text, 999_900),), 50, 50)


def unsure(*texts: str) -> InkReading:
    """Return a picture that wavers between texts, the first one the likeliest."""
    parts = [500_000 // (2**at) for at in range(1, len(texts) + 1)]
    return InkReading(tuple(zip(texts, parts, strict=True)), 10_000, 10_000)


def seen(
    rows: Mapping[str, Mapping[str, InkReading]], *found: PictureFinding, crop: bytes = CROP
) -> SeenPapers:
    """Return papers: by pupil's code and problem's label what each cell says."""
    cells = (SeenCell(code, label, crop, ink) for code, row in rows.items() for label, ink in row.items())
    return SeenPapers(tuple(cells), found)


def row(texts: Sequence[str]) -> dict[str, InkReading]:
    """Return a page that is sure of every answer, labelled 1, 2, 3 and so on."""
    return {str(at): sure(text) for at, text in enumerate(texts, 1)}


class Sees:
    """Stands for the machine: it sees what it is told, and remembers what it was shown."""

    def __init__(self, papers: SeenPapers) -> None:
        """It will see these papers."""
        self.papers = papers
        self.shown: list[NamedPicture] = []

    def __call__(self, pictures: Iterable[NamedPicture]) -> SeenPapers:
        """Look."""
        self.shown.extend(pictures)
        return self.papers
