"""A term of forty nights: pupils who learn, pages that change from night to night, and what was said."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cache
from random import Random

from lab.nights import CLASS, Typed
from lab.pages import composed, random_page, room12
from lab.pupils import Kind, Pupil, school_class
from lab.rates import USUAL, Rates
from lab.steps import page_of
from lab.trials import Ideas, problems, truth_on
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight
from onewhole.marking.diagnosis.one_night import read_night
from onewhole.marking.reading.class_answers import PupilTexts, read_texts
from onewhole.marking.reading.mark import ClassMarks, mark_class
from onewhole.problems.problem import Problem

NIGHTS = 40
#: Pages go home from Monday to Thursday; in the middle of the term a week is free.
BEGINS, A_WEEK, FREE_AFTER = date(2026, 9, 7), 4, 5
#: Of pupils who hold an idea in a term so many have it from the first night, and so many lose it; it stays
#: for anything from six nights on. Our assumption.
FROM_THE_START, RECOVERS, LEAST_NIGHTS = 0.5, 0.5, 6
#: How often a pupil hands nothing in; our assumption.
AWAY = 0.04


@dataclass(frozen=True, slots=True)
class Course:
    """A pupil over a term: the ideas are held from one night until another, counted from 1."""

    pupil: Pupil
    appears: int
    goes: int

    def on(self, night: int) -> Pupil:
        """Return the pupil of one night: sound before the ideas appear and after they are gone."""
        if not self.pupil.ideas or self.appears <= night < self.goes:
            return self.pupil
        return replace(self.pupil, kind=Kind.SOUND, ideas=(), back=0.0)


def courses(rates: Rates, size: int, seed: str) -> tuple[Course, ...]:
    """Return a class for a term: some ideas are there from the start, some appear, some go.

    >>> courses(USUAL, 3, "one") == courses(USUAL, 3, "one")
    True
    """
    chance = Random(f"courses {seed}")
    found = []
    for one in school_class(rates, size, seed):
        appears = 1 if chance.random() < FROM_THE_START else chance.randrange(2, NIGHTS - LEAST_NIGHTS)
        goes = NIGHTS + 1
        if chance.random() < RECOVERS:
            goes = chance.randrange(appears + LEAST_NIGHTS, NIGHTS + 1)
        found.append(Course(one, appears, goes))
    return tuple(found)


def day_of(night: int) -> date:
    """Return the day of a night, counted from 1.

    >>> [day_of(night).isoformat() for night in (1, 4, 5, 21)]
    ['2026-09-07', '2026-09-10', '2026-09-14', '2026-10-19']
    """
    week, day = divmod(night - 1, A_WEEK)
    return BEGINS + timedelta(weeks=week + (week >= FREE_AFTER), days=day)


@cache
def shelf(seed: int) -> tuple[Typed, ...]:
    """Return the pages from which a term is drawn: composed ones, a teacher's own, and the example's."""
    made = [composed(size, seed + at) for at in range(2) for size in (8, 12)]
    own = [random_page(size, seed + size) for size in (4, 6, 8, 10)]
    return (*made, *own, *(sums_and_differences(seed + at) for at in range(4)), room12())


def sums_and_differences(seed: int) -> Typed:
    """Return a page as in many books: five sums and five differences in turn."""
    page = random_page(10, 50 + seed)
    return tuple(text if at % 2 else text.replace(" - ", " + ") for at, text in enumerate(page))


@dataclass(frozen=True, slots=True)
class TermNight:
    """One pupil on one night: what was true, and what was said.

    ``truth`` are the ideas that can act on the page; ``acted`` counts the nights on which they could, up to
    this one; ``gone`` the nights since the idea is gone, 0 for never. ``stands`` says that an idea which the
    pupil has or had is shown after this night: by a finding of tonight, or by an earlier one that stands.
    """

    code: str
    night: int
    kind: Kind
    truth: Ideas
    acted: int
    gone: int
    likely: bool
    holds: bool
    together: float
    stands: bool


@dataclass(frozen=True, slots=True)
class Road:
    """A way to read a term: with what earlier nights showed of each pupil, or of the class alone."""

    own_history: bool

    def read(
        self, marks: ClassMarks, book: Notebook, on: date, page: str
    ) -> tuple[tuple[Finding, ...], Notebook]:
        """Read one night, and return its findings and the notebook with it."""
        if self.own_history:
            read = read_night(marks, book, on)
            found, counts, pupils = read.findings, read.weighed.counts, read.pupils
        else:
            weighed = weigh(marks, book.learnt(on))
            found, counts, pupils = findings(marks, weighed.diagnoses), weighed.counts, {}
        kept = (KeptFinding(one.pupil, one.patterns) for one in found if one.status is Status.LIKELY)
        return found, book.and_night(NotebookNight(on, page, counts, {}, tuple(kept), pupils))


CLASS_ALONE, OWN_HISTORY = Road(own_history=False), Road(own_history=True)


def term(
    pages: Sequence[Typed],
    seed: str,
    nights: int = NIGHTS,
    roads: Sequence[Road] = (CLASS_ALONE, OWN_HISTORY),
) -> tuple[tuple[TermNight, ...], ...]:
    """Let one class write a term, and read it by each road: the nights of the pupils who handed in."""
    chance = Random(f"term {seed}")
    pupils = courses(USUAL, CLASS, seed)
    books = [Notebook() for _ in roads]
    seen: list[list[TermNight]] = [[] for _ in roads]
    acted: Counter[str] = Counter()
    for night in range(1, nights + 1):
        page, on = problems(chance.choice(pages)), day_of(night)
        here = [one for one in pupils if chance.random() >= AWAY]
        wrote = (_wrote(one.on(night), page, f"{seed} night {night}") for one in here)
        marks = mark_class(read_texts(wrote, page))
        true = [_true(one, night, page) for one in here]
        acted.update(one.code for one in true if one.truth)
        for at, road in enumerate(roads):
            found, books[at] = road.read(marks, books[at], on, f"page {night}")
            for one, fact, said in zip(here, true, found, strict=True):
                row = _said(replace(fact, acted=acted[fact.code]), said)
                seen[at].append(replace(row, stands=_stands(one, said, books[at], on)))
    return tuple(map(tuple, seen))


def _wrote(pupil: Pupil, page: Sequence[Problem], seed: str) -> PupilTexts:
    return PupilTexts(pupil.code, tuple(page_of(pupil, page, seed)))


def _true(course: Course, night: int, page: Sequence[Problem]) -> TermNight:
    """Return what is true of a pupil tonight; nothing is said yet."""
    now = course.on(night)
    truth, _ = truth_on(now, page)
    gone = max(0, night - course.goes + 1) if course.pupil.ideas else 0
    return TermNight(
        now.code,
        night,
        now.kind,
        truth,
        acted=0,
        gone=gone,
        likely=False,
        holds=False,
        together=0.0,
        stands=False,
    )


def _said(fact: TermNight, found: Finding) -> TermNight:
    sets, likely = found.diagnosis.alike, found.status is Status.LIKELY
    holds = any(ids and set(ids) <= fact.truth for ids in sets)
    return replace(fact, likely=likely, holds=holds, together=float(found.diagnosis.together))


def _stands(course: Course, said: Finding, book: Notebook, on: date) -> bool:
    shown = [said.patterns] if said.status is Status.LIKELY else []
    shown += [kept.patterns for _, kept in book.standing(course.pupil.code, on)]
    return any(not set(course.pupil.ideas).isdisjoint(patterns) for patterns in shown)
