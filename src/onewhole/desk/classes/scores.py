"""Scores: right of tried, for each pupil and night; who still owes a paper."""

from collections.abc import Iterator, Mapping, Sequence
from datetime import date

from msgspec import Struct

from onewhole.desk.classes.class_records import (
    Classroom,
    NightPage,
    night_page,
    night_pages,
    room,
    standing_answers,
)
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.classes.night_summary import LETTERS, NightSummary
from onewhole.desk.classes.papers import PaperChoice, choice_of
from onewhole.desk.classes.rosters import Roster, roster_of, rosters
from onewhole.desk.marking.verdicts import judged
from onewhole.marking.reading.class_answers import PupilTexts
from onewhole.store.classes import Pupil
from onewhole.store.marked import answered
from onewhole.store.opening import Store

__all__ = ["NightScores", "Owed", "Score", "Scores", "night_scores", "owed_in", "scores"]


class Score(Struct, frozen=True):
    """One pupil's paper of one night.

    ``verdicts`` has a letter for each problem in the order of the page, as
    :class:`~onewhole.desk.classes.night_summary.PupilSummary` has them; it is empty where nothing is written.
    """

    choice: PaperChoice
    verdicts: str = ""

    @property
    def wrote(self) -> bool:
        """Say whether a paper is there."""
        return bool(self.verdicts)

    @property
    def right(self) -> int:
        """Return how many answers are right in amount.

        >>> one = Score(PaperChoice.HERE, "rfw.?")
        >>> one.right, one.tried
        (2, 4)
        """
        return self.verdicts.count("r") + self.verdicts.count("f")

    @property
    def tried(self) -> int:
        """Return to how many problems something is written."""
        return len(self.verdicts) - self.verdicts.count(".")

    @property
    def owes(self) -> bool:
        """Say whether the paper is waited for and not there."""
        return not self.wrote and self.choice.awaited


class NightScores(Struct, frozen=True):
    """A night with the score of each pupil who was in the class that day or wrote something, by code."""

    page: NightPage
    of: Mapping[str, Score]


class Owed(Struct, frozen=True):
    """A pupil who owes papers, with the nights, by day."""

    pupil: Pupil
    shown: str
    nights: tuple[NightPage, ...]


class Scores(Struct, frozen=True):
    """The scores of some nights by day; ``pupils`` are those who have a place in any of them."""

    room: Classroom
    nights: tuple[NightScores, ...]
    pupils: tuple[Pupil, ...]

    def total(self, code: str) -> tuple[int, int]:
        """Return how many answers of a pupil are right, and how many problems were tried, on all nights."""
        mine = [night.of[code] for night in self.nights if code in night.of]
        return sum(one.right for one in mine), sum(one.tried for one in mine)


def scores(book: Store, room_number: int, first: date, last: date) -> Scores:
    """Return the scores of the nights of a class from one day to another. Raises NotThere."""
    with book.snapshot() as seen:
        here, who = room(seen, room_number), rosters(seen, room_number)
        pages = [page for page in night_pages(seen, room_number) if first <= page.night.day <= last]
        wrote = answered(seen, [page.night.number for page in pages])
        read = _read(seen, room_number)
        nights = tuple(
            _night(seen, here, page, who[page.night.number], _Come.of(page, wrote, read)) for page in pages
        )
    there = {code for night in nights for code in night.of}
    return Scores(here, nights, tuple(one for one in here.pupils if one.code in there))


def night_scores(book: Store, room_number: int, night: int) -> NightScores:
    """Return the scores of one night. Raises NotThere."""
    with book.snapshot() as seen:
        page, here = night_page(seen, room_number, night), room(seen, room_number)
        came = _Come.of(page, answered(seen, [night]), _read(seen, room_number))
        return _night(seen, here, page, roster_of(seen, page.night), came)


def owed_in(found: Scores, today: date) -> tuple[Owed, ...]:
    """Return who owes papers of nights before a day, those who owe most first, then in the class's order."""
    rows = []
    for pupil in found.pupils:
        nights = tuple(
            night.page
            for night in found.nights
            if night.page.night.day < today and pupil.code in night.of and night.of[pupil.code].owes
        )
        if nights:
            rows.append(Owed(pupil, found.room.shown(pupil.code), nights))
    return tuple(sorted(rows, key=lambda one: -len(one.nights)))


class _Come(Struct, frozen=True):
    """What came in on a night: who wrote something, and the night as it was read, if it was."""

    wrote: frozenset[str]
    read: NightSummary | None

    @classmethod
    def of(
        cls, page: NightPage, wrote: Mapping[int, frozenset[str]], read: Mapping[int, NightSummary]
    ) -> "_Come":
        number = page.night.number
        return cls(wrote.get(number, frozenset()), read.get(number))


def _read(book: Store, room_number: int) -> dict[int, NightSummary]:
    return {one.night: one for one in night_summaries(book, room_number).nights}


def _night(book: Store, here: Classroom, page: NightPage, who: Roster, came: _Come) -> NightScores:
    """Return the scores of a night; one that is not read yet is judged cell by cell."""
    verdicts: dict[str, str] = {}
    if came.read is not None:
        verdicts = {code: pupil.verdicts for code, pupil in came.read.pupils.items()}
    elif came.wrote:
        verdicts = dict(_judged(page, standing_answers(book, page, here)))
    blank = "." * len(page.labels)
    return NightScores(
        page,
        {
            code: Score(choice_of(who, code), verdicts.get(code, blank) if code in came.wrote else "")
            for code in who.everyone
            if code in who.in_class or code in who.got or code in came.wrote
        },
    )


def _judged(page: NightPage, rows: Sequence[PupilTexts]) -> Iterator[tuple[str, str]]:
    for row in rows:
        cells = zip(page.labels, row.texts, strict=True)
        yield row.pupil, "".join(LETTERS[judged(page, label, text).verdict] for label, text in cells)
