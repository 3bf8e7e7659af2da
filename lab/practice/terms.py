"""Invented terms of a class, with learning and forgetting: two worlds, neither of the make of any rival.

In one, every night leaves a trace that fades by a power of the days since (Wickelgren 1974, and the sum of
such traces as in Anderson and Schooler 1991; both from memory), pupils fade at their own rates, and an answer
is right by a logistic curve of the sum. In the other a skill is there or not: it is gained on a night with
the pupil's own chance and lost after a time with a heavy tail (Lomax), longer after every night that it was
kept. All rates are our assumption.
"""

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Reals = NDArray[np.float64]
Counts = NDArray[np.int64]
Here = NDArray[np.bool_]

PUPILS, SKILLS, NIGHTS, PROBLEMS = 25, 6, 60, 12
#: Nights on which a skill is the topic, problems of an old one, and how often a pupil is away.
TOPIC, BACK, AWAY = 8, 2, 0.06


@dataclass(frozen=True, slots=True, eq=False)
class Asked:
    """Of one skill on one night: how many problems, who handed in, how many each had right."""

    problems: int
    here: Here
    right: Counts


@dataclass(frozen=True, slots=True, eq=False)
class TermNight:
    """A night: its day, counted from the first, and what was asked by skill."""

    day: int
    asked: Mapping[int, Asked]


@dataclass(frozen=True, slots=True)
class World:
    """A world: whether its traces fade by a power of time, and how fast things are forgotten there."""

    name: str
    power: bool
    pace: float


WORLDS = (
    World("fading traces, slow", power=True, pace=0.2),
    World("fading traces", power=True, pace=0.35),
    World("fading traces, fast", power=True, pace=0.6),
    World("has it or not", power=False, pace=25.0),
    World("has it or not, fast", power=False, pace=10.0),
)


def term(world: World, seed: int) -> tuple[TermNight, ...]:
    """Draw the term of a class: four nights a week, a new topic now and then, old ones back by chance."""
    chance = np.random.default_rng((seed, round(world.pace * 100), world.power))
    made = _Fading(world.pace, chance) if world.power else _Having(world.pace, chance)
    nights = []
    for night in range(NIGHTS):
        day = night + 3 * (night // 4)
        here = chance.random(PUPILS) > AWAY
        asked = {}
        for skill, (problems, topic) in _page(night, chance).items():
            right = made.answered(skill, day, problems, here, topic=topic)
            asked[skill] = Asked(problems, here, np.where(here, right, 0))
        nights.append(TermNight(day, asked))
    return tuple(nights)


def _page(night: int, chance: np.random.Generator) -> dict[int, tuple[int, bool]]:
    """Return by skill how many problems a page has, and whether it is the topic."""
    begins = [NIGHTS * 4 * skill // (5 * SKILLS) for skill in range(SKILLS)]
    begun = [skill for skill in range(SKILLS) if begins[skill] <= night]
    topics = [skill for skill in begun if night - begins[skill] < TOPIC]
    old = [skill for skill in begun if skill not in topics]
    if not topics:
        return {int(skill): (4, False) for skill in chance.choice(begun, min(2, len(begun)), replace=False)}
    back = [skill for skill in old if chance.random() < 0.25][:2]
    if old and not back and chance.random() < 0.5:
        back = [int(chance.choice(old))]
    return {topics[-1]: (PROBLEMS - 2 * BACK, True), **dict.fromkeys(back, (BACK, False))}


class _Fading:
    """Traces that fade by a power of time."""

    def __init__(self, pace: float, chance: np.random.Generator) -> None:
        self._chance = chance
        pupils, skills = chance.standard_normal((PUPILS, 1)), chance.standard_normal((1, SKILLS))
        self._fades: Reals = np.exp(np.log(pace) + 0.45 * pupils + 0.2 * skills)
        own = 0.8 * chance.standard_normal((PUPILS, 1)) + 0.5 * chance.standard_normal((PUPILS, SKILLS))
        self._able: Reals = own - chance.normal(-0.2, 0.5, (1, SKILLS))
        self._traces: list[list[tuple[float, Reals]]] = [[] for _ in range(SKILLS)]

    def answered(self, skill: int, day: int, problems: int, here: Here, *, topic: bool) -> Counts:
        traces, fades = self._traces[skill], self._fades[:, skill]
        if topic:  # the lesson of that day
            traces.append((day - 0.3, np.where(here, 1.0, 0.3)))
        total = sum((weight * max(day - at, 0.25) ** -fades for at, weight in traces), np.full(PUPILS, 1e-3))
        easy = 0.4 * self._chance.standard_normal((1, problems))
        strength = 1.6 * (np.log(total) + self._able[:, skill])[:, None] + easy
        right = 0.02 + 0.95 / (1 + np.exp(-strength))
        found: Counts = (self._chance.random((PUPILS, problems)) < right).sum(1)
        traces.append((float(day), np.where(here, 0.25 * problems**0.5, 0.0)))
        return found


class _Having:
    """A skill is there or not, and lost after a time with a heavy tail."""

    def __init__(self, pace: float, chance: np.random.Generator) -> None:
        self._chance = chance
        self._learns: Reals = np.clip(chance.beta(2, 3, PUPILS), 0.05, 0.9)
        self._lasts: Reals = pace * np.exp(0.6 * chance.standard_normal(PUPILS))
        self._lapses: Reals = 0.02 + 0.13 * chance.beta(1.5, 3, PUPILS)
        self._lucky: Reals = 0.03 + 0.2 * chance.beta(1.5, 4, PUPILS)
        self._kept: Reals = np.ones((PUPILS, SKILLS))
        had = chance.random((PUPILS, SKILLS)) < 0.2
        self._lost: Reals = np.where(had, self._time(4 * self._lasts)[:, None], -1.0)

    def _time(self, scale: Reals) -> Reals:
        drawn: Reals = scale * (self._chance.random(PUPILS) ** (-1 / 1.5) - 1)
        return drawn

    def answered(self, skill: int, day: int, problems: int, here: Here, *, topic: bool) -> Counts:
        has = self._lost[:, skill] > day
        found: Counts = self._chance.binomial(problems, np.where(has, 1 - self._lapses, self._lucky))
        gains = here & ~has & (self._chance.random(PUPILS) < self._learns * (1.3 if topic else 0.8))
        kept = self._kept[:, skill]
        longer = np.where(gains, np.maximum(1, 0.7 * kept), kept)
        self._kept[:, skill] = np.where(here & has, 1.35 * kept, longer)
        lasts = day + self._time(self._lasts * self._kept[:, skill])
        self._lost[:, skill] = np.where(here & (has | gains), lasts, self._lost[:, skill])
        return found
