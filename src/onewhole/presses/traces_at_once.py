"""The traces of a whole class at once: whole numbers in NumPy arrays, no float anywhere.

:mod:`onewhole.marking.practice` defines what a trace is, one pupil and skill at a time. This is a second, fast
implementation for a year of a class; `tests/agreement/test_traces_at_once.py` holds the two equal, number by
number. Arrays have the axes pupil, skill and course.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from numpy.typing import NDArray

from onewhole.marking.practice.course import COURSES, START, telling
from onewhole.marking.practice.halving import HALVES, MILLION, STEPS
from onewhole.marking.practice.pooling import (
    CLASS_LEANS,
    EVEN,
    LESS,
    MOST,
    PUPIL_LEANS,
    ROUNDS,
    SKILL_LEANS,
)
from onewhole.marking.practice.trace import HEAVY, Trace

Numbers = NDArray[np.int64]
Mask = NDArray[np.bool_]


def _column(name: str) -> Numbers:
    return np.array([getattr(course, name) for course in COURSES], dtype=np.int64)


_LEARNS, _LAPSES, _LUCKY = _column("learns"), _column("lapses"), _column("lucky")
#: The lasting ones that differ, and which of them each course has.
_LASTING = tuple(dict.fromkeys((course.half_life, course.grows) for course in COURSES))
_HALF_LIFE = np.array([half for half, _ in _LASTING], dtype=np.int64)
_GROWS = np.array([grows for _, grows in _LASTING], dtype=np.int64)
_OF_LASTING = np.array([_LASTING.index((course.half_life, course.grows)) for course in COURSES])
_HALVES = np.array(HALVES, dtype=np.int64)
#: Shifted by so many places nothing is left of a million.
_NOTHING = 40


@dataclass(frozen=True, slots=True, eq=False)
class PractisedNight:
    """A night: its day, which skills were on the page (their places), and by pupil and skill what was answered.

    ``here`` says who practised it; ``right`` and ``wrong`` count what could be read.
    """

    day: date
    skills: tuple[int, ...]
    here: Mask
    right: Numbers
    wrong: Numbers


@dataclass(frozen=True, slots=True, eq=False)
class Traces:
    """The traces of a class: ``days`` (ordinals, 0 before the first night) and ``nights`` by pupil and skill."""

    days: Numbers
    nights: Numbers
    knows: Numbers
    weights: Numbers

    def on(self, day: date) -> Numbers:
        """Return the chances that each skill is still there on a day."""
        return _kept(self.days, self.nights, self.knows, day)

    def trace(self, pupil: int, skill: int) -> Trace:
        """Return one trace."""
        day = int(self.days[pupil, skill])
        return Trace(
            date.fromordinal(day) if day else None,
            int(self.nights[pupil, skill]),
            tuple(map(int, self.knows[pupil, skill])),
            tuple(map(int, self.weights[pupil, skill])),
        )


def untouched(pupils: int, skills: int) -> Traces:
    """Return the traces before any night."""
    shape = pupils, skills
    return Traces(
        np.zeros(shape, dtype=np.int64),
        np.zeros(shape, dtype=np.int64),
        np.full((*shape, len(COURSES)), START, dtype=np.int64),
        np.full((*shape, len(COURSES)), HEAVY, dtype=np.int64),
    )


def traced(before: Traces, nights: Sequence[PractisedNight]) -> Traces:
    """Return the traces after some nights, by day."""
    after = Traces(before.days.copy(), before.nights.copy(), before.knows.copy(), before.weights.copy())
    for night in nights:
        _practise(after, night)
    return after


def _practise(after: Traces, night: PractisedNight) -> None:
    at = np.array(night.skills, dtype=np.int64)
    known = _kept(after.days[:, at], after.nights[:, at], after.knows[:, at], night.day)
    told = _telling(night)
    has, has_not = known * told[..., 0], (MILLION - known) * told[..., 1]
    both = has + has_not
    knew = has * MILLION // both
    weights = after.weights[:, at] * np.maximum(1, both // MILLION)
    weights = np.maximum(1, weights // np.maximum(1, weights.max(-1, keepdims=True) // HEAVY))
    here = night.here[..., None]
    after.knows[:, at] = np.where(here, knew + (MILLION - knew) * _LEARNS // MILLION, after.knows[:, at])
    after.weights[:, at] = np.where(here, weights, after.weights[:, at])
    after.days[:, at] = np.where(night.here, night.day.toordinal(), after.days[:, at])
    after.nights[:, at] += night.here


def _telling(night: PractisedNight) -> Numbers:
    """Return what a night's answers tell: one table, looked up by how many were right and wrong."""
    wide = int(night.wrong.max(initial=0)) + 1
    pairs = night.right * wide + night.wrong
    found, places = np.unique(pairs, return_inverse=True)
    table = np.array([telling(*divmod(int(pair), wide)) for pair in found], dtype=np.int64)
    return table[places.reshape(pairs.shape)]


def _kept(days: Numbers, nights: Numbers, knows: Numbers, day: date) -> Numbers:
    passed = np.where(days > 0, day.toordinal() - days, 0)[..., None]
    steps = passed * (STEPS * 100) // (_HALF_LIFE * (100 + _GROWS * nights[..., None]))
    left = _HALVES[steps % STEPS] >> np.minimum(steps // STEPS, _NOTHING)
    return knows * left[..., _OF_LASTING] // MILLION


@dataclass(frozen=True, slots=True, eq=False)
class Pooled:
    """How likely the courses are: by pupil and skill, and ``by_skill`` for the class as a whole."""

    shares: Numbers
    by_skill: Numbers


def pooled(traces: Traces) -> Pooled:
    """Return how a class's courses are shared out (:func:`onewhole.marking.practice.pooling.pooled`)."""
    pupils, skills = traces.nights.shape
    heavy = np.maximum(1, traces.weights // MILLION)
    practised = traces.nights > 0
    whole = np.array(EVEN, dtype=np.int64)
    by_skill, by_pupil = np.tile(whole, (skills, 1)), np.tile(whole, (pupils, 1))
    for _ in range(ROUNDS):
        held = np.where(practised[..., None], _shares(heavy, by_skill, by_pupil, whole), 0)
        whole = _counted(np.array(EVEN, dtype=np.int64), CLASS_LEANS, held.sum((0, 1)), practised.sum())
        by_skill = _counted(whole, SKILL_LEANS, held.sum(0), practised.sum(0)[:, None])
        by_pupil = _counted(whole, PUPIL_LEANS, held.sum(1), practised.sum(1)[:, None])
    return Pooled(_shares(heavy, by_skill, by_pupil, whole), by_skill)


def _shares(heavy: Numbers, by_skill: Numbers, by_pupil: Numbers, whole: Numbers) -> Numbers:
    leaning = np.minimum(np.maximum(1, by_skill[None] * by_pupil[:, None] // whole), MOST)
    weighed = np.maximum(1, heavy * leaning // LESS)
    return np.maximum(1, weighed * MILLION // weighed.sum(-1, keepdims=True))


def _counted(leans: Numbers, count: int, held: Numbers, of: "Numbers | np.int64") -> Numbers:
    return np.maximum(1, (leans * count + held) // (count + of))


def rights(knows: Numbers) -> Numbers:
    """Return the chances of a right answer where the skill is there with these chances."""
    return _LUCKY + knows * (MILLION - _LAPSES - _LUCKY) // MILLION


def chances(knows: Numbers, shares: Numbers) -> Numbers:
    """Return by pupil and skill the chance of a right answer, over the courses."""
    return (rights(knows) * shares).sum(-1) // shares.sum(-1)
