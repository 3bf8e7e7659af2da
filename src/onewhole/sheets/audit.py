"""The audit of a page: what is found in it, and what a teacher may do about it."""

from collections.abc import Iterator
from contextlib import suppress
from functools import cache, lru_cache
from itertools import chain
from math import ceil

from msgspec import Struct

from onewhole.findings.in_page import (
    Alike,
    FallsBack,
    HardToRead,
    HigherThanPage,
    NumbersUntold,
    OutsideStandard,
    OverBudget,
    OverEvening,
    PageFinding,
    RightByLuck,
    Severity,
    Twins,
    severity,
)
from onewhole.findings.searched import Searched
from onewhole.findings.standard import StandardCode
from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.misconceptions.slip import Slip
from onewhole.problems.near import Space, near
from onewhole.problems.traps import is_core
from onewhole.sheets.header import MOST_MINUTES
from onewhole.sheets.page import Page, page
from onewhole.sheets.reading_level import AIM, reading_level
from onewhole.sheets.room import RoomError
from onewhole.sheets.told_numbers import untold
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

#: Problems that distinguish many patterns: found by working every pattern on every problem of a denominator.
TELLING = (
    "9 5/8 - 4 6/8",
    "9 7/12 - 4 9/12",
    "9 3/5 - 5 4/5",
    "9 3/6 - 5 4/6",
    "9 1/4 - 6 2/4",
    "9 1/3 - 3 2/3",
    "5 4/6 - 2 1/6",
    "6 7/8 - 3 2/8",
    "2 4/5 + 1 3/5",
    "5 7/8 + 2 6/8",
    "3/4 + 1/6",
    "11/12 - 4/6",
)


class Audit(Struct, frozen=True):
    """A page, and what is found in it, advice first."""

    page: Page
    findings: tuple[PageFinding, ...]

    @property
    def clean(self) -> bool:
        """Say whether nothing is found: what a strict audit asks for."""
        return not self.findings


def audit(worked: WorkedSheet) -> Audit:
    r"""Return the audit of a sheet.

    >>> from onewhole.sheets.reading import read_sheet
    >>> sheet = read_sheet("1. 5 1/8 - 2 5/8\n2. 6 2/8 - 3 6/8")
    >>> [type(finding).__name__ for finding in audit(WorkedSheet(sheet)).findings]
    ['Twins', 'Alike', 'OutsideStandard', 'RightByLuck']
    """
    seen = page(worked)
    found: list[PageFinding] = [*map(Twins, seen.twins), *_minutes(seen), *_alike(seen)]
    found += [*_standards(seen), *_stories(seen), *_rooms(seen), *_falls(seen), *_hidden(seen)]
    found.sort(key=lambda finding: severity(finding) is Severity.NOTE)
    return Audit(seen, tuple(found))


def _minutes(seen: Page) -> Iterator[OverBudget | OverEvening]:
    budget = seen.sheet.header.minutes
    if budget is not None and seen.minutes > budget:
        enough = ceil(seen.minutes)
        yield OverBudget(seen.minutes, budget, enough if enough <= MOST_MINUTES else None)
    if seen.minutes > seen.evening:
        yield OverEvening(seen.minutes, seen.evening)


def _alike(seen: Page) -> Iterator[Alike]:
    """Yield the groups of core patterns that the page cannot distinguish."""
    for group in seen.alike:
        keys = tuple(key for key in group if is_core(key))
        if len(keys) < 2:
            continue
        labels = tuple(one.label for one in seen.problems if keys[0] in {slip.pattern for slip in one.slips})
        told = _telling(keys, tuple(one.problem.statement for one in seen.problems if one.label in labels))
        searched = tuple(Searched(space.sort, space.taken, len(space.problems)) for space in told.searched)
        yield Alike(keys, labels, told.problem, len(TELLING), searched)


class _Told(Struct, frozen=True):
    """A problem that distinguishes patterns, or none, and the spaces that were searched for it."""

    problem: Statement | None
    searched: tuple[Space, ...]


def _telling(keys: tuple[str, ...], shown: tuple[Statement, ...]) -> _Told:
    """Look for a problem on which the patterns write different answers: known ones first, then those near.

    Nothing is claimed about problems that were not tried.
    """
    spaces = tuple(dict.fromkeys(space for one in shown if (space := near(one)) is not None))
    tried = (read_statement(typed) for typed in TELLING if _apart(keys, _slips(typed)))
    near_ones = (found for space in spaces if (found := _first_apart(keys, space)))
    return _Told(next(chain(tried, near_ones), None), spaces)


@lru_cache(maxsize=256)
def _first_apart(keys: tuple[str, ...], space: Space) -> Statement | None:
    """Return the first problem of a space on which the patterns write different answers, or None."""
    asked = tuple(map(by_id, keys))
    for typed in space.problems:
        statement = read_statement(typed)
        if _apart(keys, tuple(slip for one in asked if (slip := one.slip(statement)))):
            return statement
    return None


def _apart(keys: tuple[str, ...], slips: tuple[Slip, ...]) -> bool:
    """Say whether answers tell patterns apart; one of them may be right, or not show, where the others do."""
    wrote = [slip.wrote for slip in slips if slip.pattern in keys]
    return len(set(wrote)) == len(wrote) >= len(keys) - 1 > 0


def _hidden(seen: Page) -> Iterator[RightByLuck]:
    for key in filter(is_core, seen.hidden):
        labels = tuple(one.label for one in seen.problems if key in one.traps.lucky)
        showing = (typed for typed in TELLING if key in {slip.pattern for slip in _slips(typed)})
        yield RightByLuck(key, labels, next(map(read_statement, showing), None))


@cache
def _slips(typed: str) -> tuple[Slip, ...]:
    """Work every pattern on one of the known distinguishing problems; cached, for there are few."""
    return shows(read_statement(typed))


def _falls(seen: Page) -> Iterator[FallsBack]:
    points = {one.label: one.difficulty.score for one in seen.problems}
    for before, after in seen.falls:
        yield FallsBack(before, after, points[before], points[after])


def _stories(seen: Page) -> Iterator[HardToRead | NumbersUntold]:
    """Yield word problems that are hard to read, and those whose words and equation differ in numbers."""
    for one in seen.problems:
        level = reading_level(one.problem.story, seen.sheet.header.words.language)
        if level is not None and level.hard:
            yield HardToRead(one.label, level.rounded, AIM)
        if missing := untold(one.problem):
            yield NumbersUntold(one.label, missing)


def _rooms(seen: Page) -> Iterator[HigherThanPage]:
    """Yield what of a problem is not on its page; nothing is said where a page cannot be printed at all."""
    with suppress(RoomError):
        for label, room in seen.worked.rooms.items():
            if not room.whole:
                yield HigherThanPage(label, room.missing, room.unpictured, room.first)


def _standards(seen: Page) -> Iterator[OutsideStandard]:
    """Yield the notes of the standards; what one says in more words is not said by another too."""
    told = {note.standard.code: set(note.labels) for note in seen.notes}
    for note in seen.notes:
        better = _SAID_BETTER.get(note.standard.code)
        covered = told.get(better, set()) if better else set()
        labels = tuple(label for label in note.labels if label not in covered)
        if labels or not note.labels:
            yield OutsideStandard(note.standard.code, labels)


_SAID_BETTER = {
    StandardCode.GRADE_4_DENOMINATORS: StandardCode.ODD_DENOMINATORS,
    StandardCode.LIKE_DENOMINATORS: StandardCode.UNLIKE_IS_GRADE_5,
}
