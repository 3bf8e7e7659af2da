"""Ways to foretell how a pupil answers on a later night, each fitted on the class's earlier nights alone."""

from collections.abc import Callable
from datetime import date, timedelta
from typing import Protocol

import numpy as np

from lab.practice.terms import PUPILS, SKILLS, Reals, TermNight
from onewhole.marking.practice.halving import MILLION
from onewhole.presses.traces_at_once import (
    PractisedNight,
    Traces,
    chances,
    pooled,
    rights,
    traced,
    untouched,
)

FIRST = date(2026, 9, 1)


class Rival(Protocol):
    """What foretells: by pupil the chance of a right answer; then it is told the night."""

    def foretell(self, day: int, skill: int) -> Reals:
        """Return the chance of a right answer of every pupil."""
        ...

    def learn(self, night: TermNight) -> None:
        """Take a night in."""
        ...


class ClassShare:
    """The share right of the class in the skill so far; one right and one wrong are counted beforehand."""

    def __init__(self) -> None:
        self._right, self._of = np.full(SKILLS, 1.0), np.full(SKILLS, 2.0)

    def foretell(self, day: int, skill: int) -> Reals:
        """Return the chance of a right answer of every pupil."""
        del day
        return np.full(PUPILS, self._right[skill] / self._of[skill])

    def learn(self, night: TermNight) -> None:
        """Take a night in."""
        for skill, asked in night.asked.items():
            self._right[skill] += asked.right.sum()
            self._of[skill] += asked.problems * asked.here.sum()


class PupilShare:
    """The pupil's own share in the skill, leaning on the class's, which counts as two answers.

    After ``days`` without the skill (None: never) it is the class's: the same days for everybody.
    """

    def __init__(self, days: int | None = None) -> None:
        self._class, self._days = ClassShare(), days
        self._right, self._of = np.zeros((PUPILS, SKILLS)), np.zeros((PUPILS, SKILLS))
        self._last = np.zeros((PUPILS, SKILLS))

    def foretell(self, day: int, skill: int) -> Reals:
        """Return the chance of a right answer of every pupil."""
        of_class = self._class.foretell(day, skill)
        own = (self._right[:, skill] + 2 * of_class) / (self._of[:, skill] + 2)
        if self._days is None:
            return own
        return np.where(day - self._last[:, skill] < self._days, own, of_class)

    def learn(self, night: TermNight) -> None:
        """Take a night in."""
        self._class.learn(night)
        for skill, asked in night.asked.items():
            self._right[:, skill] += asked.right
            self._of[:, skill] += asked.problems * asked.here
            self._last[asked.here, skill] = night.day


class Factors:
    """Performance factors with a decay: a logistic regression, fitted anew after each night.

    Skill and pupil (with a ridge, so that few answers lean on the others), the logarithm of right and of
    wrong answers so far, each halved after some days, the logarithm of the days since, and the share right.
    Source: Pavlik, Cen and Koedinger (2009), performance factors analysis (from memory); the decay is ours.
    """

    def __init__(self, half: float = 60.0) -> None:
        self._half = half
        self._right, self._wrong = np.zeros((PUPILS, SKILLS)), np.zeros((PUPILS, SKILLS))
        self._last = np.full((PUPILS, SKILLS), np.nan)
        self._rows: list[Reals] = []
        self._hits: list[Reals] = []
        self._of: list[Reals] = []
        self._weights = np.zeros(SKILLS + PUPILS + 6)

    def foretell(self, day: int, skill: int) -> Reals:
        """Return the chance of a right answer of every pupil."""
        found: Reals = 1 / (1 + np.exp(-self._features(day, skill) @ self._weights))
        return found

    def learn(self, night: TermNight) -> None:
        """Take a night in."""
        for skill, asked in night.asked.items():
            here = asked.here
            self._rows.append(self._features(night.day, skill)[here])
            self._hits.append(asked.right[here].astype(np.float64))
            self._of.append(np.full(int(here.sum()), float(asked.problems)))
            left = self._left(night.day, skill)
            self._right[:, skill] = self._right[:, skill] * left + asked.right
            self._wrong[:, skill] = self._wrong[:, skill] * left + asked.problems * here - asked.right
            self._last[:, skill] = night.day
        self._fit()

    def _left(self, day: int, skill: int) -> Reals:
        left: Reals = 0.5 ** (np.nan_to_num(day - self._last[:, skill]) / self._half)
        return left

    def _features(self, day: int, skill: int) -> Reals:
        left = self._left(day, skill)
        right, wrong = self._right[:, skill] * left, self._wrong[:, skill] * left
        found = np.zeros((PUPILS, SKILLS + PUPILS + 6))
        found[:, skill] = 1
        found[np.arange(PUPILS), SKILLS + np.arange(PUPILS)] = 1
        since = np.nan_to_num(day - self._last[:, skill])
        never = np.isnan(self._last[:, skill]).astype(np.float64)
        share = (self._right[:, skill] + 1) / (self._right[:, skill] + self._wrong[:, skill] + 2) - 0.5
        beside = (np.log1p(right), np.log1p(wrong), np.log1p(since), never, np.ones(PUPILS), share)
        found[:, SKILLS + PUPILS :] = np.stack(beside, axis=1)
        return found

    def _fit(self) -> None:
        rows, hits, of = np.concatenate(self._rows), np.concatenate(self._hits), np.concatenate(self._of)
        ridge = np.full(rows.shape[1], 0.1)
        ridge[:SKILLS], ridge[SKILLS : SKILLS + PUPILS] = 1.0, 2.0
        for _ in range(6):
            chance = 1 / (1 + np.exp(-np.clip(rows @ self._weights, -30, 30)))
            slope = rows.T @ (hits - of * chance) - ridge * self._weights
            bend = (rows * (of * chance * (1 - chance))[:, None]).T @ rows + np.diag(ridge)
            self._weights = self._weights + np.linalg.solve(bend, slope)


class PlainTracing:
    """Knowledge tracing with one course for everybody; it forgets by half in ``half`` days, or never."""

    def __init__(self, half: float = np.inf) -> None:
        self._half = half
        self._knows, self._last = np.full((PUPILS, SKILLS), 0.5), np.full((PUPILS, SKILLS), np.nan)

    def foretell(self, day: int, skill: int) -> Reals:
        """Return the chance of a right answer of every pupil."""
        found: Reals = 0.1 + 0.82 * self._on(day, skill)
        return found

    def learn(self, night: TermNight) -> None:
        """Take a night in."""
        for skill, asked in night.asked.items():
            known, right, wrong = self._on(night.day, skill), asked.right, asked.problems - asked.right
            has, has_not = known * 0.92**right * 0.08**wrong, (1 - known) * 0.1**right * 0.9**wrong
            knew = has / (has + has_not)
            self._knows[:, skill] = np.where(asked.here, knew + (1 - knew) * 0.2, known)
            self._last[:, skill] = night.day

    def _on(self, day: int, skill: int) -> Reals:
        known: Reals = self._knows[:, skill] * 0.5 ** (np.nan_to_num(day - self._last[:, skill]) / self._half)
        return known


class Tracing:
    """Ours: the courses of :mod:`onewhole.marking.practice`, pooled over the class, or each trace alone."""

    def __init__(self, *, lean: bool = True) -> None:
        self._lean = lean
        self.traces: Traces = untouched(PUPILS, SKILLS)
        self.shared = pooled(self.traces)

    def foretell(self, day: int, skill: int) -> Reals:
        """Return the chance of a right answer of every pupil."""
        knows = self.traces.on(FIRST + timedelta(day))[:, skill : skill + 1]
        if self._lean:
            return chances(knows, self.shared.shares[:, skill : skill + 1])[:, 0] / MILLION
        weights = self.traces.weights[:, skill].astype(np.float64)
        found: Reals = (rights(knows)[:, 0] * weights).sum(-1) / weights.sum(-1) / MILLION
        return found

    def learn(self, night: TermNight) -> None:
        """Take a night in."""
        skills = tuple(night.asked)
        asked = [night.asked[skill] for skill in skills]
        right = np.stack([one.right for one in asked], axis=1)
        here = np.stack([one.here for one in asked], axis=1)
        wrong = np.stack([(one.problems - one.right) * one.here for one in asked], axis=1)
        page = PractisedNight(FIRST + timedelta(night.day), skills, here, right, wrong)
        self.traces = traced(self.traces, [page])
        self.shared = pooled(self.traces)


RIVALS: dict[str, Callable[[], Rival]] = {
    "class's share": ClassShare,
    "pupil's share": PupilShare,
    "pupil's share, 14 days": lambda: PupilShare(14),
    "performance factors, decay": Factors,
    "knowledge tracing": PlainTracing,
    "knowledge tracing, one half-life": lambda: PlainTracing(30.0),
    "courses, each trace alone": lambda: Tracing(lean=False),
    "courses, pooled (ours)": Tracing,
}
