"""The week: the nights of a class in a row, where each stands and what is to be done next."""

from collections.abc import Mapping, Sequence
from datetime import date, datetime, timedelta
from enum import Enum, auto

from msgspec import Struct

from onewhole.desk.classes.bring_back import HOW, WHY, BringBack, bring_back
from onewhole.desk.classes.class_records import Classroom, NightPage, night_pages, room
from onewhole.desk.classes.every_night import LONGEST_SOUGHT, EveryNight, as_sought, every_night, nights_found
from onewhole.desk.classes.marked_nights import night_summaries
from onewhole.desk.classes.practised import practised
from onewhole.desk.classes.rosters import Roster, in_class_on, rosters
from onewhole.desk.classes.term_plan import PLAN, TermPlan, term_plan
from onewhole.store.marked import answered
from onewhole.store.opening import Store
from onewhole.store.steps import NightStep, keep_step, steps_of

__all__ = [
    "HOW",
    "LONGEST_SOUGHT",
    "PLAN",
    "WHY",
    "EveryNight",
    "Next",
    "NightStep",
    "Week",
    "WeekNight",
    "Weeks",
    "keep_step",
    "monday",
    "week",
]

#: So many weeks stand on one page.
SHOWN = 3


class Next(Enum):
    """What is to be done next with a night; the door knows the page for each."""

    PRINT = auto()
    SHOW = auto()
    MARK = auto()
    REGROUP = auto()
    DONE = auto()


class WeekNight(Struct, frozen=True):
    """A night in its week. ``marked`` of the ``pupils`` whose paper is waited for have an answer.

    ``steps`` are those taken; ``got`` is how many got the page, of ``in_class``. ``owed`` are those,
    as the teacher knows them, whose paper is not here while others are: none of whom before the day is over.
    """

    number: int
    day: date
    name: str
    sheet: int
    problems: int
    pupils: int
    marked: int
    steps: frozenset[NightStep]
    today: date
    got: int
    in_class: int
    owed: tuple[str, ...] = ()

    @property
    def is_marked(self) -> bool:
        """Say whether marking is done: the teacher went on to the groups, or every pupil has an answer."""
        return bool(self.steps & {NightStep.MARKED, NightStep.REGROUPED}) or 0 < self.pupils <= self.marked

    @property
    def next(self) -> Next:
        """Return the first thing of the round that is not done; once answers come in, that is marking."""
        if NightStep.REGROUPED in self.steps:
            return Next.DONE
        if self.is_marked:
            return Next.REGROUP
        if self.marked or self.day < self.today:
            return Next.MARK
        if NightStep.PRINTED not in self.steps:
            return Next.PRINT
        return Next.MARK if NightStep.SHOWN in self.steps else Next.SHOW


class Week(Struct, frozen=True):
    """A week by its Monday, with its nights by day."""

    monday: date
    nights: tuple[WeekNight, ...]


class Weeks(Struct, frozen=True):
    """The weeks that are shown, the latest first, every night of the class, and what is due to come back.

    ``every`` are all nights, the newest first; ``found`` are those with what is ``sought``. ``earlier``
    is the day of the last night before the weeks that are shown. ``plan`` says which skill comes back on
    which night. ``missing`` counts the nights not marked yet, ``failed`` tells of those on which the program
    failed.
    """

    shown: tuple[Week, ...]
    every: tuple[EveryNight, ...]
    sought: str
    found: tuple[EveryNight, ...]
    earlier: date | None
    due: tuple[BringBack, ...]
    plan: TermPlan
    missing: int
    failed: tuple[str, ...] = ()


def week(
    book: Store, room_number: int, today: date, around: date | None = None, *, sought: str = ""
) -> Weeks:
    """Return the weeks of a class: this one, those to come and the two before; or three up to another.

    ``around`` is any day of the last week that is asked for, ``sought`` a date or part of a title. Raises
    NotThere.
    """
    with book.snapshot() as seen:
        return _week(seen, room_number, today, around, as_sought(sought))


def _week(book: Store, room_number: int, today: date, around: date | None, sought: str) -> Weeks:
    here = room(book, room_number)
    found = night_pages(book, room_number)
    every, mondays = every_night(found), {monday(page.night.day) for page in found}
    last = monday(around or today)
    first = last - timedelta(weeks=SHOWN - 1)
    chosen = [day for day in mondays if first <= day and (around is None or day <= last)]
    chosen += [last] * (around is None and last not in mondays)
    nights = [page for page in found if monday(page.night.day) in chosen]
    steps = steps_of(book, room_number)
    wrote = answered(book, [page.night.number for page in nights])
    who = rosters(book, room_number, [page.night for page in found])
    rows = [
        _night(
            page,
            here,
            who[page.night.number],
            wrote.get(page.night.number, frozenset()),
            steps.get(page.night.number, {}),
            today=today,
        )
        for page in nights
    ]
    left = night_summaries(book, room_number)
    known = practised(found, left, in_class_on(book, room_number, today), who)
    return Weeks(
        tuple(Week(day, _of(rows, day)) for day in sorted(chosen, reverse=True)),
        every,
        sought,
        nights_found(every, sought) if sought else (),
        next((night.day for night in every if night.day < first), None),
        bring_back(found, left, known, today),
        term_plan(known, today),
        len(left.missing),
        left.failures_told,
    )


def monday(day: date) -> date:
    """Return the Monday of a day's week.

    >>> monday(date(2026, 11, 25)).isoformat()
    '2026-11-23'
    """
    return day - timedelta(days=day.weekday())


def _of(rows: Sequence[WeekNight], of: date) -> tuple[WeekNight, ...]:
    return tuple(row for row in rows if monday(row.day) == of)


def _night(
    page: NightPage,
    here: Classroom,
    who: Roster,
    wrote: frozenset[str],
    steps: Mapping[NightStep, datetime],
    *,
    today: date,
) -> WeekNight:
    awaited = who.awaited(wrote)
    owed = tuple(here.shown(code) for code in awaited if code not in wrote)
    return WeekNight(
        page.night.number,
        page.night.day,
        page.name,
        page.kept.number,
        len(page.sheet.problems),
        len(awaited),
        len(wrote),
        frozenset(steps),
        today,
        len(who.marked(wrote)),
        len(who.in_class),
        owed if wrote and page.night.day < today else (),
    )
