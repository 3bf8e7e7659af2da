"""Reckon the nights of a class: each with what the earlier ones showed, and keep what it left as a cache."""

import csv
from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from hashlib import sha256
from io import StringIO

from onewhole import __version__
from onewhole.desk.classbook import (
    NightPage,
    Room,
    Store,
    StoreRefused,
    night_page,
    night_pages,
    room,
    sheet_typed,
)
from onewhole.desk.leaves import Leave, Leaves, PupilLeave, leave_text, notebook_night, read_leave
from onewhole.desk.mark import Marked, mark_sheet
from onewhole.desk.readings import Readings, readings
from onewhole.desk.word import Word, with_word, word_of
from onewhole.marking.notebook import Notebook, Tonight
from onewhole.store.answers import answers_of
from onewhole.store.bases import Basis, bases_of
from onewhole.store.corrections import corrections_of
from onewhole.store.reckonings import keep_reckoning, reckonings_of

__all__ = [
    "Handed",
    "Leave",
    "Leaves",
    "PupilLeave",
    "Reckoned",
    "leaves",
    "marked_of",
    "missing_before",
    "reckon",
    "reckon_missing",
    "reckoned",
]

#: Grows when what is kept of a night changes though the program's version does not.
FORM = 1
#: So many nights are held in memory as they were marked.
HELD = 16

Progress = Callable[[int, int], None]


@dataclass(frozen=True, slots=True)
class Handed:
    """What a night is marked from: page and answers (CSV) as text, the day, what the nights before left."""

    typed: str
    answers: str
    day: date
    before: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Reckoned:
    """A night read: ``said`` is what the answers alone say, ``marked`` has the teacher's ``word`` in it.

    ``handed`` is all that ``said`` comes from (:func:`marked_of`).
    """

    page: NightPage
    handed: "Handed"
    said: Marked
    marked: Marked
    word: Word


def leaves(book: Store, room_number: int) -> Leaves:
    """Return what every marked night of a class left, as far as it is reckoned, and which nights are not.

    Nights on which nothing was written leave nothing and are not missing. Three questions to the file, no
    marking.
    """
    kept = reckonings_of(book, room_number)
    found, missing = [], []
    for basis, stamp in _stamps(book, room_number).values():
        had, text = kept.get(basis.night, ("", ""))
        if had == stamp:
            found.append(read_leave(text))
        else:
            missing.append(basis.night)
    return Leaves(tuple(found), tuple(missing))


def missing_before(book: Store, room_number: int, night_number: int) -> int:
    """Return how many nights must be reckoned before this one can be."""
    stamps = _stamps(book, room_number)
    kept = reckonings_of(book, room_number)
    earlier = _earlier(stamps, night_page(book, room_number, night_number))
    return sum(kept.get(night, ("", ""))[0] != stamps[night][1] for night in earlier)


def reckon(book: Store, room_number: int, night_number: int) -> Marked:
    """Return a night marked, with what the class showed on earlier nights and the teacher's word.

    Earlier nights that are not reckoned yet are reckoned first. Raises NotThere.
    """
    return reckoned(book, room_number, night_number).marked


def reckoned(book: Store, room_number: int, night_number: int) -> Reckoned:
    """Return a night marked, as the answers alone say and with the teacher's word. Raises NotThere."""
    page = night_page(book, room_number, night_number)
    stamps = _stamps(book, room_number)
    earlier = _earlier(stamps, page)
    texts = _work_through(book, room_number, stamps, earlier, _no_progress)
    found = _read(book, room(book, room_number), page, tuple(texts.values()), hold=True)
    if night_number in stamps:
        _keep(book, found, stamps[night_number][1], quietly=True)
    return found


def reckon_missing(book: Store, room_number: int, progress: Progress) -> int:
    """Reckon every night that is not reckoned yet, by day; return how many there were.

    ``progress`` is told how many are done and of how many, from 0 on. What is done stays done when the work
    stops half-way.
    """
    stamps = _stamps(book, room_number)
    before = reckonings_of(book, room_number)
    _work_through(book, room_number, stamps, tuple(stamps), progress)
    return sum(before.get(night, ("", ""))[0] != stamp for night, (_, stamp) in stamps.items())


def _no_progress(_done: int, _of: int) -> None:
    """Tell nobody."""


def _stamps(book: Store, room_number: int) -> Mapping[int, tuple[Basis, str]]:
    """Return each night on which something was written, with its stamp.

    A stamp has in it the program, the sheet, the last answer and the last correction, and the stamp of the
    night before: a change in one night makes all later ones stale.
    """
    found: dict[int, tuple[Basis, str]] = {}
    last = f"{__version__} {FORM}"
    for basis in bases_of(book, room_number):
        if basis.answer:
            last = sha256(f"{last} {basis}".encode()).hexdigest()
            found[basis.night] = basis, last
    return found


def _earlier(stamps: Mapping[int, tuple[Basis, str]], page: NightPage) -> tuple[int, ...]:
    """Return the nights with answers before this one, by day."""
    mine = (page.night.day.isoformat(), page.night.number)
    return tuple(night for night, (basis, _) in stamps.items() if (basis.day, night) < mine)


def _work_through(
    book: Store,
    room_number: int,
    stamps: Mapping[int, tuple[Basis, str]],
    nights: tuple[int, ...],
    progress: Progress,
) -> dict[int, str]:
    """Return what these nights left; those not kept, or kept under another stamp, are reckoned and kept."""
    kept = reckonings_of(book, room_number)
    texts: dict[int, str] = {}
    of = sum(kept.get(night, ("", ""))[0] != stamps[night][1] for night in nights)
    if not of:
        return {night: kept[night][1] for night in nights}
    pages = {page.night.number: page for page in night_pages(book, room_number)}
    here, done = room(book, room_number), 0
    progress(0, of)
    for night in nights:
        stamp, text = kept.get(night, ("", ""))
        if stamp != stamps[night][1]:
            found = _read(book, here, pages[night], tuple(texts.values()))
            text = _keep(book, found, stamps[night][1])
            done += 1
            progress(done, of)
        texts[night] = text
    return texts


def _keep(book: Store, found: Reckoned, stamp: str, *, quietly: bool = False) -> str:
    """Keep what a night left; quietly: a file that takes nothing more stops nobody from reading on."""
    text = leave_text(found.page, found.marked, found.word.aside)
    with suppress(*(StoreRefused,) if quietly else ()):
        keep_reckoning(book, found.page.night.number, stamp, text)
    return text


def _read(
    book: Store, here: Room, page: NightPage, before: tuple[str, ...], *, hold: bool = False
) -> Reckoned:
    word = word_of(corrections_of(book, page.night.number))
    handed = Handed(page.kept.typed, _answers(book, page, here), page.night.day, before)
    said = marked_of(handed) if hold else _mark(handed)
    return Reckoned(page, handed, said, with_word(said, word), word)


@lru_cache(maxsize=HELD)
def marked_of(handed: Handed) -> Marked:
    """Return a night marked by what the answers alone say; the same once more costs nothing."""
    return _mark(handed)


def _mark(handed: Handed) -> Marked:
    book = Notebook()
    for text in handed.before:
        book = book.and_night(notebook_night(text))
    return mark_sheet(sheet_typed(handed.typed), handed.answers, tonight=Tonight(book, handed.day))


def _answers(book: Store, page: NightPage, here: Room) -> str:
    """Return the answers as CSV text, each as the teacher reads it."""
    read = readings(book, page.night.number)
    cells = dict(_cells(book, page, read))
    made = StringIO()
    rows = csv.writer(made, lineterminator="\n")
    rows.writerow(("pupil", *page.labels))
    for pupil in here.pupils:
        rows.writerow((pupil.code, *(cells.get((pupil.code, label), "") for label in page.labels)))
    return made.getvalue()


def _cells(book: Store, page: NightPage, read: Readings) -> Iterator[tuple[tuple[str, str], str]]:
    for one in answers_of(book, page.night.number):
        cell = (one.code, one.problem)
        yield cell, read[cell].of(one.text) if cell in read else one.text
