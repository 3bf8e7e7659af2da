"""The class's own file as the doors see it: rooms with their pupils, nights with their pages, answers."""

import unicodedata
from collections.abc import Sequence
from datetime import date, datetime
from functools import lru_cache
from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from onewhole.desk.classes.class_languages import languages_of
from onewhole.desk.classes.rosters import roster_of, who_wrote
from onewhole.desk.keep.way_back import open_or_tell
from onewhole.desk.marking.readings import Readings, readings
from onewhole.errors import InputError
from onewhole.findings.attendance import PaperWord
from onewhole.marking.reading.class_answers import PupilTexts
from onewhole.sheets.class_languages import in_languages
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading import read_sheet
from onewhole.store.answers import answers_of
from onewhole.store.classes import Pupil, add_class, add_pupil, class_names, classes_with_pupils
from onewhole.store.nights import KeptNight, add_night
from onewhole.store.opening import Store
from onewhole.store.refusals import NotThere, StoreRefused
from onewhole.store.set_pages import set_pages
from onewhole.store.sheets import KeptSheet, add_sheet
from onewhole.writers.frame import UNTITLED

__all__ = [
    "Classroom",
    "NightPage",
    "NotThere",
    "Pupil",
    "Store",
    "StoreRefused",
    "class_names",
    "night_page",
    "night_pages",
    "open_book",
    "room",
    "rooms",
    "set_night",
    "sheet_typed",
    "spoken_night",
    "standing_answers",
    "start_room",
]

#: A class has no more pupils than this, a name no more characters.
MOST_PUPILS, LONGEST_NAME = 60, 80


class Classroom(Struct, frozen=True):
    """A class and its pupils, in the order they were added."""

    number: int
    name: str
    pupils: tuple[Pupil, ...]

    def shown(self, code: str) -> str:
        """Return how the teacher knows a pupil: the code, and the name where one was typed."""
        name = next((pupil.name for pupil in self.pupils if pupil.code == code), None)
        return f"{code} {name}" if name else code

    def pupil(self, code: str) -> Pupil:
        """Return the pupil of a code. Raises NotThere."""
        for one in self.pupils:
            if one.code == code:
                return one
        raise NotThere(
            "There is no such pupil in this class",
            where=f"pupil {code[:20]!r}",
            remedy="Choose one on the page Class.",
        )


class NightPage(Struct, frozen=True):
    """A night and the page that went home, as kept and as read."""

    night: KeptNight
    kept: KeptSheet
    sheet: Sheet

    @property
    def labels(self) -> tuple[str, ...]:
        """Return the labels of the problems in the order of the page."""
        return tuple(problem.label for problem in self.sheet.problems)

    @property
    def name(self) -> str:
        """Return what the night is called: by its own name, or as its page is."""
        return self.night.name or self.page_name

    @property
    def page_name(self) -> str:
        """Return what the page is called that went home on the night."""
        return self.sheet.header.title or self.kept.name or UNTITLED


def open_book(path: Path) -> Store:
    """Open the file of a class, or make it. Raises StoreRefused."""
    return open_or_tell(path)


def rooms(book: Store) -> tuple[Classroom, ...]:
    """Return every class in the file with its pupils."""
    return tuple(Classroom(one.number, one.name, pupils) for one, pupils in classes_with_pupils(book))


def room(book: Store, number: int) -> Classroom:
    """Return a class with its pupils. Raises NotThere."""
    for one, pupils in classes_with_pupils(book, number):
        return Classroom(one.number, one.name, pupils)
    raise NotThere("There is no such class", where=f"class {number}", remedy="Choose one, or add it.")


def start_room(book: Store, name: str, pupils: int, now: datetime) -> Classroom:
    """Keep a new class with so many pupils, each under a code. Raises InputError.

    >>> from datetime import UTC
    >>> from tempfile import TemporaryDirectory
    >>> with TemporaryDirectory() as folder:
    ...     book = open_book(Path(folder) / "room12.class")
    ...     made = start_room(book, "Room 12", 2, datetime(2026, 9, 1, tzinfo=UTC))
    ...     book.close()
    >>> [pupil.code for pupil in made.pupils]
    ['K01', 'K02']
    """
    name = named(name, "The class")
    if not 0 <= pupils <= MOST_PUPILS:
        raise InputError(f"A class has from 0 to {MOST_PUPILS} pupils", remedy="Give another number.")
    with book.transaction() as one:
        check_name_free(one, name)
        made = add_class(one, name, now)
        added = tuple(add_pupil(one, made.number) for _ in range(pupils))
    return Classroom(made.number, made.name, added)


def check_name_free(book: Store, name: str, of: int | None = None) -> None:
    """Refuse the name of another class than ``of``; small and large letters and blanks are the same.

    Raises InputError.
    """
    if any(number != of for number in called_alike(class_names(book), name)):
        raise InputError(f"There is a class called “{name}” already", remedy="Choose another name.")


def called_alike(classes: Sequence[tuple[int, str]], name: str) -> tuple[int, ...]:
    """Return the numbers of the classes that a name could mean.

    >>> called_alike([(1, "Room 7"), (2, "room  7 "), (3, "Room 17")], "ROOM 7")
    (1, 2)
    """
    return tuple(number for number, other in classes if _folded(other) == _folded(name))


def _folded(name: str) -> str:
    return " ".join(unicodedata.normalize("NFKC", name).casefold().split())


def named(name: str, what: str) -> str:
    """Return a typed name, spaces around it taken off. Raises InputError for none and for one too long."""
    name = name.strip()
    if not name or "\0" in name:
        raise InputError(f"{what} needs a name in plain letters", remedy="Type one.")
    if len(name) > LONGEST_NAME:
        raise InputError(
            f"{what} has a name of {len(name)} characters", remedy=f"Use {LONGEST_NAME} at most."
        )
    return name


def night_page(book: Store, room_number: int, night: int) -> NightPage:
    """Return a night of a class with its page. Raises NotThere."""
    for found, kept in set_pages(book, room_number, night):
        return NightPage(found, kept, sheet_typed(kept.typed))
    raise NotThere("There is no such night", where=f"night {night}", remedy="Choose one of the class.")


def spoken_night(book: Store, room_number: int, night: int) -> NightPage:
    """Return a night of a class with its page in the languages of the class. Raises NotThere."""
    page = night_page(book, room_number, night)
    return replace(page, sheet=sheet_typed(page.kept.typed, languages_of(book, room_number)))


def night_pages(book: Store, room_number: int) -> tuple[NightPage, ...]:
    """Return the nights of a class by day, each with its page."""
    return tuple(
        NightPage(night, kept, sheet_typed(kept.typed)) for night, kept in set_pages(book, room_number)
    )


@lru_cache(maxsize=512)
def sheet_typed(typed: str, languages: str = "") -> Sheet:
    """Read a typed sheet for a class of these languages; read before costs nothing. Raises SheetError."""
    return in_languages(read_sheet(typed), languages)


def set_night(book: Store, room_number: int, typed: str, day: date, now: datetime) -> NightPage:
    """Keep a typed page as a new sheet, and that a class takes it home. Raises SheetError, NotThere."""
    sheet = sheet_typed(typed)
    header = sheet.header
    with book.transaction() as one:
        kept = add_sheet(one, header.title or UNTITLED, typed, now, header.recipe or None)
        return NightPage(add_night(one, room_number, kept.number, kept.version, day), kept, sheet)


def standing_answers(
    book: Store, page: NightPage, of: Classroom, read: Readings | None = None
) -> tuple[PupilTexts, ...]:
    """Return the answers of a night as they stand, a row for each pupil who got its page or wrote something.

    A text is exactly as typed, unless the teacher said how to read it: then it is that reading. ``read`` are
    these readings where they are at hand.
    """
    answers = answers_of(book, page.night.number)
    written = {(one.code, one.problem): one.text for one in answers}
    wrote = who_wrote(answers)
    roster = roster_of(book, page.night)
    for cell, reading in (readings(book, page.night.number) if read is None else read).items():
        if cell in written:
            written[cell] = reading.of(written[cell])
    marked = set(roster.marked(wrote))
    return tuple(
        PupilTexts(
            pupil.code,
            tuple(written.get((pupil.code, label), "") for label in page.labels),
            PaperWord.HERE if pupil.code in wrote else roster.word(pupil.code),
        )
        for pupil in of.pupils
        if pupil.code in marked
    )
