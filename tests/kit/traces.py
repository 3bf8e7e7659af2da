"""The traces of practice, one pupil and one skill at a time, in plain whole numbers.

:mod:`onewhole.presses.traces_at_once` reads a whole class at once; this says the same slowly.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from onewhole.marking.practice.course import COURSES, START, telling
from onewhole.marking.practice.halving import MILLION, left_after
from onewhole.presses.traces_at_once import (
    CLASS_LEANS,
    EVEN,
    HEAVY,
    LESS,
    MOST,
    PUPIL_LEANS,
    ROUNDS,
    SKILL_LEANS,
)

Shares = tuple[int, ...]


@dataclass(frozen=True, slots=True)
class PlainTrace:
    """For every course the chance that the skill was there after the last night, and the course's weight."""

    day: date | None
    nights: int
    knows: tuple[int, ...]
    weights: tuple[int, ...]

    def on(self, day: date) -> tuple[int, ...]:
        """Return for every course the chance that the skill is still there on a day."""
        if self.day is None:
            return self.knows
        days = (day - self.day).days
        return tuple(
            known * left_after(course.steps(days, self.nights)) // MILLION
            for course, known in zip(COURSES, self.knows, strict=True)
        )

    def after(self, day: date, right: int, wrong: int) -> "PlainTrace":
        """Return the trace after a night of practice with so many right and wrong answers."""
        told = telling(right, wrong)
        knows, weights = [], []
        for course, known, weight in zip(COURSES, self.on(day), self.weights, strict=True):
            there, absent = told[course.shows]
            has, has_not = known * there, (MILLION - known) * absent
            knew = has * MILLION // (has + has_not)
            knows.append(knew + (MILLION - knew) * course.learns // MILLION)
            weights.append(weight * max(1, (has + has_not) // MILLION))
        halved = max(0, (max(weights) // HEAVY).bit_length() - 1)
        return PlainTrace(day, self.nights + 1, tuple(knows), tuple(max(1, one >> halved) for one in weights))


NEW = PlainTrace(None, 0, (START,) * len(COURSES), (HEAVY,) * len(COURSES))


def plainly_pooled(traces: Mapping[tuple[str, int], PlainTrace]) -> Mapping[tuple[str, int], Shares]:
    """Return for every pupil and skill the shares of the courses."""
    whole: Shares = EVEN
    by_pupil = {pupil: EVEN for pupil, _ in traces}
    by_skill = {skill: EVEN for _, skill in traces}
    for _ in range(ROUNDS):
        held = {
            key: _shares(trace, by_skill[key[1]], by_pupil[key[0]], whole)
            for key, trace in traces.items()
            if trace.nights
        }
        whole = _counted(EVEN, CLASS_LEANS, list(held.values()))
        by_skill = {
            skill: _counted(whole, SKILL_LEANS, [one for key, one in held.items() if key[1] == skill])
            for skill in by_skill
        }
        by_pupil = {
            pupil: _counted(whole, PUPIL_LEANS, [one for key, one in held.items() if key[0] == pupil])
            for pupil in by_pupil
        }
    return {key: _shares(trace, by_skill[key[1]], by_pupil[key[0]], whole) for key, trace in traces.items()}


def _shares(trace: PlainTrace, skill: Shares, pupil: Shares, whole: Shares) -> Shares:
    weighed = [
        max(1, max(1, weight // MILLION) * min(max(1, of_skill * of_pupil // of_all), MOST) // LESS)
        for weight, of_skill, of_pupil, of_all in zip(trace.weights, skill, pupil, whole, strict=True)
    ]
    total = sum(weighed)
    return tuple(max(1, one * MILLION // total) for one in weighed)


def _counted(leans: Shares, count: int, held: Sequence[Shares]) -> Shares:
    return tuple(
        max(1, (share * count + sum(one[at] for one in held)) // (count + len(held)))
        for at, share in enumerate(leans)
    )
