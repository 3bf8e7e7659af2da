"""How well a fitted model keeps to the answers: each problem, pairs of problems, each problem's skills."""

from itertools import combinations
from statistics import NormalDist

import numpy as np

from onewhole.mastery.q_matrix import QMatrix
from onewhole.presses.skills.cells import Cells, Floats
from onewhole.presses.skills.likelihood import Point, inside, walk
from onewhole.presses.skills.rows import RowArrays

#: Of a hundred tables that the model made itself, five have a pair beyond the bound.
ERRORS = 0.05
#: A pair that fewer pupils answered is not judged: the deviate is one of large numbers (the limit is ours).
LEAST_PUPILS = 50
#: Correlations are taken as no nearer to 1 than this: the transform of 1 has no end.
NEAREST = 0.99
#: Skills that explain this share of what all skills together explain are enough (de la Torre & Chiu 2016).
ENOUGH = 0.95
#: Two sets of skills that explain as much to this are alike.
ALIKE = 1e-6


def expected_right(cells: Cells, rows: RowArrays, point: Point) -> Floats:
    """Return the share of right answers that each group is expected to have: groups by problems; NaN
    without a pupil.
    """
    sums = walk(cells, rows, point)
    answered = sums.answered * point.shares[:, None]
    with np.errstate(invalid="ignore"):
        return np.where(answered > 0, sums.right / np.where(sums.answered > 0, sums.answered, 1), np.nan)


def misfits(cells: Cells, point: Point, found: Floats) -> Floats:
    """Return the RMSEA of each problem: how far what groups answer is from their chance, weighted by their
    shares.

    Kunina-Habenicht, Rupp & Wilhelm (2009), Studies in Educational Evaluation 35, 64-70 (from memory).
    """
    off = np.where(np.isnan(found), 0, found - point.chances[cells.of_group].T)
    return np.asarray(np.sqrt(point.shares @ off**2))


def pair_deviates(cells: Cells, rows: RowArrays, point: Point) -> Floats:
    """Return for each pair of problems how much more their answers go together than the model says: a normal
    deviate, 0 for fewer than 50 pupils and where it cannot be told.

    The Fisher transforms of both correlations differ with variance 1 / (pupils - 3): Chen, de la Torre &
    Zhang (2013), Journal of Educational Measurement 50, 123-140 (from memory).
    """
    right, answered = rows.right.astype(np.float64), rows.answered.astype(np.float64)
    weighed, counted = right * rows.times[:, None], answered * rows.times[:, None]
    pupils, both = counted.T @ answered, weighed.T @ right
    one = weighed.T @ answered
    with np.errstate(divide="ignore", invalid="ignore"):
        seen = _correlation(both / pupils, one / pupils, one.T / pupils)
        chance = inside(point.chances)[cells.of_group]
        alone = chance @ point.shares
        told = _correlation((chance * point.shares) @ chance.T, alone[:, None], alone[None, :])
        found = (np.arctanh(seen) - np.arctanh(told)) * np.sqrt(np.maximum(pupils - 3, 0))
    found[pupils < LEAST_PUPILS] = 0
    np.fill_diagonal(found, 0)
    return np.asarray(np.nan_to_num(found, nan=0.0, posinf=0.0, neginf=0.0))


def pair_bound(problems: int) -> float:
    """Return the deviate beyond which a pair does not fit, for all pairs at once (Bonferroni).

    >>> round(pair_bound(20), 2)
    3.65
    """
    pairs = max(1, problems * (problems - 1) // 2)
    return NormalDist().inv_cdf(1 - ERRORS / 2 / pairs)


def explained(q: QMatrix, cells: Cells, point: Point, found: Floats) -> Floats:
    """Return what each set of skills explains of each problem: sets (the set 0 too) by problems, parts of 1.

    The variance of the chances between pupils who are alike in these skills, over the variance between all
    skill sets (PVAF of the G-DINA discrimination index): de la Torre & Chiu (2016), Psychometrika 81,
    253-273. Sets of one group share its pupils evenly.
    """
    sets = 1 << len(q.skills)
    share, chance = np.zeros(sets), np.zeros((sets, len(q.problems)))
    for at, group in enumerate(cells.groups):
        members = list(group.sets)
        share[members] = point.shares[at] / len(members)
        chance[members] = np.nan_to_num(found[at])
    weighed = share[:, None] * chance
    mean = weighed.sum(axis=0)
    total = np.maximum((weighed * chance).sum(axis=0) - mean**2, 0)
    every = np.arange(sets)
    told = np.zeros((sets, len(q.problems)))
    for some in range(sets):
        alike = every & some
        size = np.bincount(alike, share, minlength=sets)
        here = size > 0
        sums = np.zeros((sets, len(q.problems)))
        np.add.at(sums, alike, weighed)
        told[some] = (sums[here] ** 2 / size[here, None]).sum(axis=0) - mean**2
    return np.where(total > ALIKE**2, told / np.where(total > ALIKE**2, total, 1), 1.0)


def rather(q: QMatrix, problem: int, told: Floats) -> int | None:
    """Return the skills that explain enough of a problem and are the fewest, of these the best; None where
    its own are as few and as good, or nothing explains enough.
    """
    own = q.needs[problem]
    for size in range(1, len(q.skills) + 1):
        sets = [sum(1 << at for at in some) for some in combinations(range(len(q.skills)), size)]
        best = max(sets, key=lambda some: (told[some, problem], some == own))
        if told[best, problem] >= ENOUGH:
            mine = own.bit_count() == size and told[own, problem] >= told[best, problem] - ALIKE
            return None if mine else best
    return None


def _correlation(both: Floats, one: Floats, other: Floats) -> Floats:
    spread = one * (1 - one) * other * (1 - other)
    return np.clip((both - one * other) / np.sqrt(spread), -NEAREST, NEAREST)
