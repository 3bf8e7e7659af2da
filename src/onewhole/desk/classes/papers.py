"""The papers of a night, a pupil a row: who got the page, who was away, whose is there, who owes one."""

from collections.abc import Iterator, Mapping
from datetime import datetime
from enum import Enum

from msgspec import Struct

from onewhole.desk.classes.class_records import Classroom, NightPage, night_page, room
from onewhole.desk.classes.page_for import GroupNow, groups_now, saw_of
from onewhole.desk.classes.rosters import Roster, roster_of
from onewhole.desk.classes.seen import is_to_be_written
from onewhole.errors import InputError
from onewhole.findings.attendance import NightSaid, PageWord, PaperWord
from onewhole.store.classes import Pupil
from onewhole.store.marked import answered
from onewhole.store.night_words import keep_night_words
from onewhole.store.opening import Store

__all__ = ["PaperChoice", "PaperRow", "Papers", "keep_papers", "papers"]


class PaperChoice(Enum):
    """What a teacher says of a pupil's paper of one night."""

    HERE = "here"
    ABSENT = "absent"
    EXCUSED = "excused"
    LATE = "late"
    NO_PAGE = "no page"

    @property
    def said(self) -> PaperWord:
        """Return the word on the paper; of one without a page there is none.

        >>> PaperChoice.LATE.said.value, PaperChoice.NO_PAGE.said.value
        ('late', 'here')
        """
        return PaperWord.HERE if self is PaperChoice.NO_PAGE else PaperWord(self.value)

    @property
    def awaited(self) -> bool:
        """Say whether the paper is waited for.

        >>> [choice.value for choice in PaperChoice if choice.awaited]
        ['here', 'late']
        """
        return self is not PaperChoice.NO_PAGE and not self.said.away


class PaperRow(Struct, frozen=True):
    """A pupil on a night: what was said, and whether something is written.

    ``in_class`` says whether the pupil was in the class on that day.
    """

    pupil: Pupil
    shown: str
    choice: PaperChoice
    wrote: bool
    in_class: bool

    @property
    def owes(self) -> bool:
        """Say whether the paper is waited for and not there."""
        return not self.wrote and self.choice.awaited


class Papers(Struct, frozen=True):
    """A night with its rows; ``for_part`` says that the page was for named pupils.

    ``saw`` is for whom it is, as a form carries it, ``groups`` to whom it could be given.
    """

    page: NightPage
    rows: tuple[PaperRow, ...]
    for_part: bool
    saw: str
    groups: tuple[GroupNow, ...]

    @property
    def got(self) -> int:
        """Return how many got the page."""
        return sum(row.choice is not PaperChoice.NO_PAGE for row in self.rows)

    @property
    def owed(self) -> tuple[PaperRow, ...]:
        """Return the rows of those who owe a paper."""
        return tuple(row for row in self.rows if row.owes)


def papers(book: Store, room_number: int, night: int) -> Papers:
    """Return the papers of a night. Raises NotThere."""
    with book.snapshot() as seen:
        page, here = night_page(seen, room_number, night), room(seen, room_number)
        who = roster_of(seen, page.night)
        wrote = answered(seen, [night]).get(night, frozenset())
        groups = groups_now(seen, room_number)
    return Papers(page, tuple(_rows(here, who, wrote)), who.for_part, saw_of(who), groups)


def _rows(here: Classroom, who: Roster, wrote: frozenset[str]) -> Iterator[PaperRow]:
    for pupil in here.pupils:
        code = pupil.code
        yield PaperRow(pupil, here.shown(code), choice_of(who, code), code in wrote, code in who.in_class)


def choice_of(who: Roster, code: str) -> PaperChoice:
    """Return what stands of a pupil's paper."""
    return PaperChoice(who.word(code).value) if code in who.got else PaperChoice.NO_PAGE


def keep_papers(
    book: Store,
    room_number: int,
    night: int,
    said: Mapping[str, str],
    saw: Mapping[str, str],
    *,
    now: datetime,
    by: str,
) -> int:
    """Keep what is said of the papers of a night, by code; return of how many it changed.

    All are kept, or none. ``saw`` is what stood there when the window was loaded. Raises InputError for what
    is none of the choices, ChangedMeanwhile and NotThere.
    """
    with book.transaction() as within:
        page, here = night_page(within, room_number, night), room(within, room_number)
        who = roster_of(within, page.night)
        words: list[tuple[str, NightSaid]] = []
        changed = 0
        for code, typed in said.items():
            here.pupil(code)
            wanted, stands = _choice(typed), choice_of(who, code)
            what = f"What is said of {here.shown(code)}"
            if is_to_be_written(what, wanted.value, saw.get(code), stands.value):
                words += _words(who, code, wanted)
                changed += 1
        keep_night_words(within, night, words, now, by)
    return changed


def _words(who: Roster, code: str, wanted: PaperChoice) -> Iterator[tuple[str, NightSaid]]:
    if wanted is PaperChoice.NO_PAGE:
        yield code, PageWord.NOT_GIVEN
        return
    if code not in who.got:
        usual = PageWord.CLASS if code in who.in_class else PageWord.GIVEN
        yield code, PageWord.NAMED if who.for_part else usual
    if who.word(code) is not wanted.said:
        yield code, wanted.said


def _choice(typed: str) -> PaperChoice:
    try:
        return PaperChoice(typed)
    except ValueError:
        raise InputError(
            f"“{typed[:20]}” says nothing of a paper", remedy="Load the page again and choose one."
        ) from None
