"""What a class's nights left of each skill, all at once: whole numbers in NumPy arrays, no float anywhere.

A night moves the chance that a skill is there as its answers say (Bayes), then practice gives it to some
who had it not; every course does so on its own, and one that foretold the answers better weighs more. How
likely the courses are is pooled: a pupil's few nights with a skill lean on the pupil's other skills and on
the class.

`tests/agreement/test_traces_at_once.py` holds it equal, number by number, to the same said slowly for one
pupil and skill (`tests/kit/traces.py`). Arrays have the axes pupil, skill and course.
"""

from collections.abc import Sequence
from datetime import date
from functools import lru_cache

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.marking.practice.course import COURSES, START, telling
from onewhole.marking.practice.halving import HALVES, MILLION, STEPS
from onewhole.marking.practice.trace import Trace

#: The weights of courses are kept between 1 and about twice this; only how they compare counts.
HEAVY = MILLION * MILLION
#: What the shares of courses lean on counts as much as so many traces; our own, chosen in the lab. A skill's
#: and a pupil's lean on the whole class's, and that on the shares before any night, which are equal.
CLASS_LEANS, SKILL_LEANS, PUPIL_LEANS = 20, 40, 2
EVEN = (MILLION // len(COURSES),) * len(COURSES)
#: So many times the shares are counted anew; they hardly move after that.
ROUNDS = 8
#: Bounds that keep every product below 2^63.
MOST, LESS = 1_000_000_000, 1000

Numbers = NDArray[np.int64]
Mask = NDArray[np.bool_]


def _column(name: str) -> Numbers:
    return np.array([getattr(course, name) for course in COURSES], dtype=np.int64)


_LEARNS, _LAPSES, _LUCKY = _column("learns"), _column("lapses"), _column("lucky")
_SHOWS = _column("shows")
#: The lasting ones that differ, and which of them each course has.
_LASTING = tuple(dict.fromkeys((course.half_life, course.grows) for course in COURSES))
_HALF_LIFE = np.array([half for half, _ in _LASTING], dtype=np.int64)
_GROWS = np.array([grows for _, grows in _LASTING], dtype=np.int64)
_OF_LASTING = np.array([_LASTING.index((course.half_life, course.grows)) for course in COURSES])
_HALVES = np.array(HALVES, dtype=np.int64)
#: Two, four, eight and so on: between them it is counted how often weights are halved.
_POWERS = 2 ** np.arange(1, 63, dtype=np.int64)
#: So many problems of one skill a page usually has at most.
_USUAL = 16
#: Shifted by so many places nothing is left of a million.
_NOTHING = 40


class PractisedNight(Struct, frozen=True, eq=False):
    """A night: its day, the places of the skills on its page, and by pupil and skill what was answered.

    ``here`` says who practised it; ``right`` and ``wrong`` count what could be read.
    """

    day: date
    skills: tuple[int, ...]
    here: Mask
    right: Numbers
    wrong: Numbers


class Traces(Struct, frozen=True, eq=False):
    """The traces of a class: by pupil and skill the last day (an ordinal, 0 before the first) and the nights.

    ``knows`` are the chances, by course, that the skill was there after it, ``weights`` those of the courses.
    """

    days: Numbers
    nights: Numbers
    knows: Numbers
    weights: Numbers

    def on(self, day: date) -> Numbers:
        """Return the chances that each skill is still there on a day."""
        return _kept(self.days, self.nights, self.knows, day)

    def only(self, pupils: slice, skills: slice) -> "Traces":
        """Return the traces of some pupils and skills."""
        at = pupils, skills
        return Traces(self.days[at], self.nights[at], self.knows[at], self.weights[at])


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
    at = _places(night.skills)
    known = _kept(after.days[:, at], after.nights[:, at], after.knows[:, at], night.day)
    there, absent = _telling(night)
    has, has_not = known * there, (MILLION - known) * absent
    both = has + has_not
    knew = has * MILLION // both
    weights = after.weights[:, at] * np.maximum(1, both // MILLION)
    too_heavy = np.searchsorted(_POWERS, weights.max(-1, keepdims=True) // HEAVY, side="right")
    weights = np.maximum(1, weights >> too_heavy)
    knows = knew + (MILLION - knew) * _LEARNS // MILLION
    days = np.full(night.here.shape, night.day.toordinal(), dtype=np.int64)
    if not night.here.all():
        here = night.here[..., None]
        knows = np.where(here, knows, after.knows[:, at])
        weights = np.where(here, weights, after.weights[:, at])
        days = np.where(night.here, days, after.days[:, at])
    after.knows[:, at], after.weights[:, at], after.days[:, at] = knows, weights, days
    after.nights[:, at] += night.here


def _places(skills: tuple[int, ...]) -> Numbers | slice:
    """Return the places of skills as an index; those in a row are a slice, which copies nothing."""
    if skills and skills == tuple(range(skills[0], skills[0] + len(skills))):
        return slice(skills[0], skills[0] + len(skills))
    return np.array(skills, dtype=np.int64)


def _telling(night: PractisedNight) -> tuple[Numbers, Numbers]:
    """Return for every course what a night's answers tell, where the skill is there and where not."""
    most = int(np.maximum(night.right, night.wrong).max(initial=0))
    table = _table(max(_USUAL, most))
    told = table[night.right, night.wrong]
    return told[..., 0, :].take(_SHOWS, axis=-1), told[..., 1, :].take(_SHOWS, axis=-1)


@lru_cache(maxsize=4)
def _table(most: int) -> Numbers:
    """Return by right and wrong answers, both up to so many, what they tell: there, not there, by shows."""
    upto = range(most + 1)
    told = np.array([[telling(right, wrong) for wrong in upto] for right in upto], dtype=np.int64)
    return np.ascontiguousarray(told.swapaxes(-1, -2))


def _kept(days: Numbers, nights: Numbers, knows: Numbers, day: date) -> Numbers:
    passed = np.where(days > 0, day.toordinal() - days, 0)[..., None]
    steps = passed * (STEPS * 100) // (_HALF_LIFE * (100 + _GROWS * nights[..., None]))
    left = _HALVES[steps % STEPS] >> np.minimum(steps // STEPS, _NOTHING)
    kept: Numbers = knows * left.take(_OF_LASTING, axis=-1) // MILLION
    return kept


class Pooled(Struct, frozen=True, eq=False):
    """How likely the courses are: by pupil and skill, and ``by_skill`` for the class as a whole."""

    shares: Numbers
    by_skill: Numbers


def pooled(traces: Traces) -> Pooled:
    """Return how a class's courses are shared out."""
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
    shares: Numbers = np.maximum(1, weighed * MILLION // weighed.sum(-1, keepdims=True))
    return shares


def _counted(leans: Numbers, count: int, held: Numbers, of: "Numbers | np.int64") -> Numbers:
    counted: Numbers = np.maximum(1, (leans * count + held) // (count + of))
    return counted


def trace(traces: Traces, shared: Pooled, pupil: int, skill: int) -> Trace | None:
    """Return one pupil's trace of one skill; None before the first night."""
    day = int(traces.days[pupil, skill])
    if not day:
        return None
    return Trace(
        date.fromordinal(day),
        int(traces.nights[pupil, skill]),
        tuple(map(int, traces.knows[pupil, skill])),
        tuple(map(int, shared.shares[pupil, skill])),
    )


def rights(knows: Numbers) -> Numbers:
    """Return the chances of a right answer where the skill is there with these chances."""
    right: Numbers = _LUCKY + knows * (MILLION - _LAPSES - _LUCKY) // MILLION
    return right


def chances(knows: Numbers, shares: Numbers) -> Numbers:
    """Return by pupil and skill the chance of a right answer, over the courses."""
    right: Numbers = (rights(knows) * shares).sum(-1) // shares.sum(-1)
    return right
