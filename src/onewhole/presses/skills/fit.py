"""Fit a skill model to right and wrong, and put what was found into exact records."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

import numpy as np

from onewhole.errors import InputError
from onewhole.mastery.fitted import (
    Climbed,
    FittedChance,
    FittedGroup,
    FittedProblem,
    FittedSkills,
    MeasuredNumber,
    NeedsCheck,
    PairMisfit,
    SkillShare,
)
from onewhole.mastery.profile import SkillProfile
from onewhole.mastery.q_matrix import MOST_CHANCES, QMatrix
from onewhole.mastery.right_wrong import RightWrong
from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.one_thread import one_thread
from onewhole.presses.skills import fit_checks
from onewhole.presses.skills.cells import Cells, Floats, cells_of
from onewhole.presses.skills.likelihood import Point
from onewhole.presses.skills.profiles import posterior, profiles, skills_of_groups
from onewhole.presses.skills.rows import RowArrays, row_arrays
from onewhole.presses.skills.standard_errors import standard_errors
from onewhole.presses.skills.summits import Summits, best_summit


@one_thread()
def fit_skills(table: RightWrong, q: QMatrix, model: SkillModel, *, climbs: int, seed: int) -> FittedSkills:
    """Fit a model by maximum likelihood: the highest of ``climbs`` summits, the first from the usual start
    and the others by seeded chance.

    Answers that are missing are taken as missing at random. Raises InputError where the model has more than
    1,000 chances for these problems.

    >>> q = QMatrix(("a",), ("1", "2", "3"), (1, 1, 1))
    >>> table = RightWrong(("1", "2", "3"), ("111", "110", "000", "001"), (8, 2, 7, 2))
    >>> found = fit_skills(table, q, SkillModel.DINA, climbs=2, seed=1)
    >>> found.climbed.arrived, len(found.groups), round(float(found.skills[0].least), 2)
    (True, 2, 0.53)
    """
    if q.chances(model) > MOST_CHANCES:
        what = f"{q.chances(model):,} chances would be fitted, and at most {MOST_CHANCES:,} are"
        raise InputError(what, remedy="Give each problem fewer skills, or take dina or dino.")
    cells, rows = cells_of(q, model), row_arrays(table)
    summits = best_summit(cells, rows, climbs, seed)
    point = summits.best.point
    errors = standard_errors(cells, rows, point)
    skills, accuracy = _skills(q, cells, rows, point)
    return FittedSkills(
        model,
        q,
        table.pupils,
        len(table.rows),
        _climbed(cells, summits),
        tuple(_problems(q, cells, rows, point, errors)),
        tuple(
            FittedGroup(group, _estimate(share, error))
            for group, share, error in zip(cells.groups, point.shares, errors[cells.count :], strict=True)
        ),
        skills,
        accuracy,
        Fraction(fit_checks.pair_bound(len(q.problems))),
    )


def profiles_of(fitted: FittedSkills, rows: Sequence[str]) -> Iterator[SkillProfile]:
    """Give the profile of each row by a fitted model."""
    cells = cells_of(fitted.q, fitted.model)
    chances = [float(one.right.value) for problem in fitted.problems for one in problem.chances]
    shares = [float(one.share.value) for one in fitted.groups]
    point = Point(np.array(chances), np.array(shares))
    return profiles(cells, point, len(fitted.q.skills), fitted.q.problems, rows)


def _climbed(cells: Cells, summits: Summits) -> Climbed:
    best = summits.best
    parameters = cells.count + len(cells.groups) - 1
    return Climbed(
        Fraction(best.log_likelihood),
        parameters,
        summits.climbs,
        summits.same,
        summits.lost,
        best.reached,
        best.steps,
    )


def _problems(
    q: QMatrix, cells: Cells, rows: RowArrays, point: Point, errors: Floats
) -> Iterator[FittedProblem]:
    found = fit_checks.expected_right(cells, rows, point)
    misfits = fit_checks.misfits(cells, point, found)
    deviates = fit_checks.pair_deviates(cells, rows, point)
    told = fit_checks.explained(q, cells, point, found)
    for at, (problem, needs) in enumerate(zip(q.problems, q.needs, strict=True)):
        mine = range(int(cells.starts[at]), int(cells.starts[at + 1]))
        chances = tuple(
            FittedChance(_having(cells, q, at, one), _estimate(point.chances[one], errors[one]))
            for one in mine
        )
        worst = int(np.abs(deviates[at]).argmax())
        pair = (
            PairMisfit(q.problems[worst], Fraction(float(deviates[at, worst])))
            if deviates[at, worst]
            else None
        )
        rather = fit_checks.rather(q, at, told)
        check = NeedsCheck(
            Fraction(float(told[needs, at])),
            rather,
            None if rather is None else Fraction(float(told[rather, at])),
        )
        yield FittedProblem(problem, needs, chances, Fraction(float(misfits[at])), pair, check)


def _having(cells: Cells, q: QMatrix, problem: int, chance: int) -> int:
    """Return the smallest set of a problem's own skills with which a pupil has a chance."""
    sets = (
        group.sets
        for group, here in zip(cells.groups, cells.of_group[problem], strict=True)
        if here == chance
    )
    return min(
        (one & q.needs[problem] for some in sets for one in some), key=lambda one: (one.bit_count(), one)
    )


def _skills(
    q: QMatrix, cells: Cells, rows: RowArrays, point: Point
) -> tuple[tuple[SkillShare, ...], Fraction]:
    """Return the share of each skill with how often its call is right, and how often the likeliest group is.

    Both are means over the pupils of the odds of what is called: Wang, Song, Chen, Meng & Ding (2015),
    Journal of Educational Measurement 52, 457-476 (from memory).
    """
    had = skills_of_groups(cells, len(q.skills))
    sure, group = np.zeros(len(q.skills)), 0.0
    for piece in rows.pieces(len(cells.groups)):
        odds = posterior(cells, piece, point)
        even = odds @ had.even
        sure += piece.times @ np.maximum(even, 1 - even)
        group += float(piece.times @ odds.max(axis=1))
    least, most = point.shares @ had.least, point.shares @ had.most
    told = tuple(
        SkillShare(name, *(Fraction(float(one)) for one in (low, max(low, high), right / rows.pupils)))
        for name, low, high, right in zip(q.skills, least, most, sure, strict=True)
    )
    return told, Fraction(group / rows.pupils)


def _estimate(value: np.float64, error: np.float64) -> MeasuredNumber:
    return MeasuredNumber(Fraction(float(value)), None if np.isnan(error) else Fraction(float(error)))
