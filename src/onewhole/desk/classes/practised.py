"""What a class's nights left of each skill: read from the summaries of the nights, and remembered."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from functools import cached_property, lru_cache

import numpy as np
from msgspec import Struct

from onewhole.desk.classes.class_records import NightPage, sheet_typed
from onewhole.desk.classes.night_summary import NightSummaries, NightSummary
from onewhole.desk.classes.rosters import Roster
from onewhole.desk.keep.pupil_cache import pupil_cache
from onewhole.findings.skill import Skill
from onewhole.marking.practice.due import Band, class_band, due_day
from onewhole.marking.practice.trace import Trace
from onewhole.presses.traces_at_once import (
    Numbers,
    Pooled,
    PractisedNight,
    Traces,
    chances,
    pooled,
    rights,
    trace,
    traced,
    untouched,
)
from onewhole.problems.skill import skill

#: The most classes whose traces are remembered.
HELD = 4


class SkillNight(Struct, frozen=True):
    """A night: its day and the skills on its page."""

    day: date
    skills: tuple[Skill, ...]


class ClassSkill(Struct, frozen=True, eq=False):
    """What the nights of a class left of one skill, the last of them on ``last``."""

    traces: Traces
    shares: Numbers
    by_skill: Numbers
    last: date

    @property
    def due(self) -> date:
        """Return the day on which the class is due to come back to the skill."""
        of = max(1, len(self.shares))
        return due_day(lambda day: int(self._chances(day).sum()) // of, self.last)

    def band(self, day: date) -> Band:
        """Return what share of the class's answers would be right on a day, with its band."""
        by_course = rights(self.traces.on(day))[:, 0].sum(0) // max(1, len(self.shares))
        return class_band(
            list(map(int, self._chances(day))),
            list(map(int, by_course)),
            list(map(int, self.by_skill)),
            int((self.traces.nights > 0).sum()),
        )

    def practised_on(self, day: date) -> "ClassSkill":
        """Return the same after one more night, on which everybody practised and no answer is known."""
        nothing = np.zeros_like(self.traces.nights)
        night = PractisedNight(day, (0,), nothing == 0, nothing, nothing)
        return ClassSkill(traced(self.traces, [night]), self.shares, self.by_skill, day)

    def _chances(self, day: date) -> Numbers:
        return chances(self.traces.on(day), self.shares)[:, 0]


@dataclass(frozen=True, eq=False)
class Practised:
    """What the nights of a class left: ``codes`` are its pupils, ``last`` the last page with each skill.

    A night still to come, and one whose answers are not read yet, count as practised by everybody whose paper
    is waited for. One that is read counts for those of whom an answer with the skill could be read.
    """

    codes: tuple[str, ...]
    nights: tuple[SkillNight, ...]
    last: Mapping[Skill, NightPage]
    traces: Traces
    pooled: Pooled

    @property
    def skills(self) -> tuple[Skill, ...]:
        """Return the skills that were on a page, in the order of the axes."""
        return tuple(self.last)

    @cached_property
    def due(self) -> Mapping[Skill, date]:
        """Return the day on which the class is due to come back to each skill."""
        return {named: self.one_skill(named).due for named in self.last}

    def one_skill(self, named: Skill) -> ClassSkill:
        """Return what was left of one skill."""
        at = self.skills.index(named)
        one = slice(at, at + 1)
        traces = self.traces.only(slice(None), one)
        return ClassSkill(
            traces, self.pooled.shares[:, one], self.pooled.by_skill[at], self.last[named].night.day
        )

    def trace(self, code: str, named: Skill) -> Trace | None:
        """Return what a pupil's nights with a skill left; None who never practised it."""
        return trace(self.traces, self.pooled, self.codes.index(code), self.skills.index(named))


def practised(
    pages: Sequence[NightPage],
    left: NightSummaries,
    codes: Sequence[str],
    who: Mapping[int, Roster],
) -> Practised:
    """Return what the nights of a class left of each skill; the same once more costs nothing.

    ``pages`` are the nights by day, ``left`` their summaries, ``codes`` the pupils of the class, ``who`` the
    rosters of the nights by number.
    """
    read = {one.night for one in left.nights}
    waited = tuple(
        (page.night.number, who[page.night.number].awaited())
        for page in pages
        if page.night.number not in read
    )
    return _practised(
        _PractisedFrom(left.stamp, tuple(codes), tuple(map(_key, pages)), waited, tuple(pages), left)
    )


@dataclass(frozen=True, slots=True)
class _PractisedFrom:
    """What the traces come from: the first four fields change whenever the others do.

    ``waited`` has for each night that is not read whose paper is waited for.
    """

    stamp: str
    codes: tuple[str, ...]
    nights: tuple[tuple[int, date, str], ...]
    waited: tuple[tuple[int, tuple[str, ...]], ...]
    pages: tuple[NightPage, ...] = field(compare=False)
    left: NightSummaries = field(compare=False)


def _key(page: NightPage) -> tuple[int, date, str]:
    return page.night.number, page.night.day, page.kept.typed


@pupil_cache(maxsize=HELD)
def _practised(given: _PractisedFrom) -> Practised:
    last: dict[Skill, NightPage] = {}
    for page in given.pages:
        last.update(dict.fromkeys(_asked(page.kept.typed).skills, page))
    order = {named: at for at, named in enumerate(last)}
    read = {one.night: one for one in given.left.nights}
    waited = dict(given.waited)
    nights = [
        _night(page, read.get(page.night.number) or waited[page.night.number], given.codes, order)
        for page in given.pages
    ]
    traces = traced(untouched(len(given.codes), len(order)), nights)
    asked = tuple(SkillNight(page.night.day, _asked(page.kept.typed).skills) for page in given.pages)
    return Practised(given.codes, asked, last, traces, pooled(traces))


@lru_cache(maxsize=512)
def skills_of(typed: str) -> tuple[Skill, ...]:
    r"""Return the skill of each problem of a typed sheet; a text read before costs nothing.

    >>> [one.name for one in skills_of("1. 2/8 + 3/8\n2. 52 - 27")]
    ['ADD', 'WHOLE_NUMBERS_REGROUPED']
    """
    return tuple(skill(problem.statement) for problem in sheet_typed(typed).problems)


class _PageSkills(Struct, frozen=True, eq=False):
    """The skills of a page, each once, and by problem and skill 1 where it is of that skill."""

    skills: tuple[Skill, ...]
    of: Numbers


@lru_cache(maxsize=512)
def _asked(typed: str) -> _PageSkills:
    every = skills_of(typed)
    once = tuple(dict.fromkeys(every))
    return _PageSkills(once, np.array([[one is named for named in once] for one in every], dtype=np.int64))


def _night(
    page: NightPage,
    read: NightSummary | tuple[str, ...],
    codes: Sequence[str],
    order: Mapping[Skill, int],
) -> PractisedNight:
    """Return a night as it was read; of one that is not read yet ``read`` are those who count for it."""
    asked = _asked(page.kept.typed)
    shape = len(codes), len(asked.skills)
    at = tuple(order[one] for one in asked.skills)
    if isinstance(read, tuple):
        nothing = np.zeros(shape, dtype=np.int64)
        waited = np.array([code in read for code in codes], dtype=np.bool_)
        counts = np.ones(shape, dtype=np.bool_) & waited[:, np.newaxis]
        return PractisedNight(page.night.day, at, counts, nothing, nothing)
    blank = "." * len(asked.of)
    pupils = read.pupils
    written = "".join([pupils[code].verdicts if code in pupils else blank for code in codes])
    verdicts = np.frombuffer(written.encode("ascii"), dtype=np.uint8).reshape(len(codes), len(asked.of))
    right = ((verdicts == ord("r")) | (verdicts == ord("f"))) @ asked.of
    wrong = (verdicts == ord("w")) @ asked.of
    return PractisedNight(page.night.day, at, right + wrong > 0, right, wrong)
