"""Rows of answers into profiles: the odds of each group by Bayes' rule, and of each skill."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

import numpy as np
from msgspec import Struct

from onewhole.mastery.profile import SkillOdds, SkillProfile
from onewhole.mastery.right_wrong import RightWrong
from onewhole.presses.skills.cells import Cells, Floats
from onewhole.presses.skills.likelihood import Point, of_groups
from onewhole.presses.skills.rows import RowArrays, row_arrays


class SkillsOfGroups(Struct, frozen=True):
    """For each group, by skill: 1 where all its sets have it, the part of its sets, 1 where any has it."""

    least: Floats
    even: Floats
    most: Floats


def skills_of_groups(cells: Cells, skills: int) -> SkillsOfGroups:
    """Return what each group leaves open of each skill."""
    even = np.array(
        [[group.having(at) / len(group.sets) for at in range(skills)] for group in cells.groups],
        dtype=np.float64,
    )
    return SkillsOfGroups((even == 1).astype(np.float64), even, (even > 0).astype(np.float64))


def posterior(cells: Cells, rows: RowArrays, point: Point) -> Floats:
    """Return the odds of each group for each row: rows by groups."""
    odds = of_groups(cells, rows, point.chances) * point.shares
    return np.asarray(odds / odds.sum(axis=1, keepdims=True))


def profiles(
    cells: Cells, point: Point, skills: int, problems: Sequence[str], rows: Sequence[str]
) -> Iterator[SkillProfile]:
    """Give the profile of each row."""
    table = row_arrays(RightWrong(tuple(problems), tuple(rows), (1,) * len(rows)))
    had = skills_of_groups(cells, skills)
    at = 0
    for piece in table.pieces(len(cells.groups)):
        odds = posterior(cells, piece, point)
        best = odds.argmax(axis=1)
        bands = zip(odds @ had.least, odds @ had.even, odds @ had.most, strict=True)
        for group, own, band in zip(best, odds, bands, strict=True):
            told = tuple(_odds(*three) for three in zip(*(one.tolist() for one in band), strict=True))
            yield SkillProfile(rows[at], int(group), Fraction(float(own[group])), told)
            at += 1


def _odds(least: float, even: float, most: float) -> SkillOdds:
    """Return odds in order: rounding may have put them out of it by a hair."""
    low, high = min(max(least, 0.0), 1.0), min(max(most, 0.0), 1.0)
    return SkillOdds(Fraction(low), Fraction(min(max(even, low), max(low, high))), Fraction(max(low, high)))
