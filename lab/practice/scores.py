"""Scores on nights still to come: each night is foretold from those before it, and then taken in."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import timedelta

import numpy as np

from lab.measures import Share
from lab.practice.rivals import FIRST, Rival, Tracing
from lab.practice.terms import PUPILS, Asked, Reals, TermNight
from onewhole.marking.practice.due import class_band
from onewhole.marking.practice.halving import MILLION
from onewhole.presses.traces_at_once import chances, rights

#: The first half of a term only teaches; a skill has come back when it was away for so many days.
HELD, CAME_BACK = 0.5, 10
_LEAST = 1e-6


@dataclass(frozen=True, slots=True)
class Score:
    """The mean log score and Brier score of so many answers; for both, less is better."""

    log: float
    brier: float
    answers: int


def scored(make: Callable[[], Rival], terms: Sequence[Sequence[TermNight]]) -> tuple[Score, Score]:
    """Return the scores of the later half of the nights, and of the answers to skills that came back.

    A skill's first night counts in neither.
    """
    held, back = np.zeros(3), np.zeros(3)
    for nights in terms:
        rival, last = make(), dict[int, int]()
        for at, night in enumerate(nights):
            for skill, asked in night.asked.items():
                if skill not in last:
                    continue
                loss = _loss(rival.foretell(night.day, skill), asked)
                held += loss * (at >= HELD * len(nights))
                back += loss * (night.day - last[skill] >= CAME_BACK)
            rival.learn(night)
            last.update(dict.fromkeys(night.asked, night.day))
    return _score(held), _score(back)


def _loss(chance: Reals, asked: Asked) -> Reals:
    here = asked.here
    said = np.clip(chance[here], _LEAST, 1 - _LEAST)
    right = asked.right[here]
    wrong = asked.problems - right
    log = -(right * np.log(said) + wrong * np.log(1 - said)).sum()
    brier = (right * (1 - said) ** 2 + wrong * said**2).sum()
    return np.array([log, brier, float(asked.problems * here.sum())])


def _score(sums: Reals) -> Score:
    return Score(float(sums[0] / sums[2]), float(sums[1] / sums[2]), int(sums[2]))


def bands_held(terms: Sequence[Sequence[TermNight]]) -> Share:
    """Return how often the class's share right lay in its band when a skill came back.

    The first answer of each pupil is counted: the band is of one problem each.
    """
    inside = of = 0
    chance = np.random.default_rng(1)
    for nights in terms:
        rival, last = Tracing(), dict[int, int]()
        for night in nights:
            for skill, asked in night.asked.items():
                if night.day - last.get(skill, night.day) >= CAME_BACK:
                    band = _band(rival, night.day, skill)
                    one = chance.random(PUPILS) * asked.problems < asked.right
                    share = int(MILLION * (one & asked.here).sum() / asked.here.sum())
                    inside += band[0] <= share <= band[1]
                    of += 1
            rival.learn(night)
            last.update(dict.fromkeys(night.asked, night.day))
    return Share(inside, of)


def _band(rival: Tracing, day: int, skill: int) -> tuple[int, int]:
    knows = rival.traces.on(FIRST + timedelta(day))[:, skill : skill + 1]
    own = chances(knows, rival.shared.shares[:, skill : skill + 1])[:, 0]
    by_course = rights(knows)[:, 0].sum(0) // PUPILS
    known = int((rival.traces.nights[:, skill] > 0).sum())
    shares = list(map(int, rival.shared.by_skill[skill]))
    band = class_band(list(map(int, own)), list(map(int, by_course)), shares, known)
    return band.low, band.high
