from itertools import islice

import numpy as np
import pytest

from onewhole.mastery.q_matrix import QMatrix
from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.skills import climb as climbing
from onewhole.presses.skills.cells import cells_of
from onewhole.presses.skills.climb import climb
from onewhole.presses.skills.likelihood import Point, better, walk
from onewhole.presses.skills.rows import row_arrays
from onewhole.presses.skills.standard_errors import standard_errors
from onewhole.presses.skills.starts import starts, usual_start
from onewhole.presses.skills.summits import best_summit
from tests.kit.skill_tables import THREE, answered_by, counted


@pytest.mark.parametrize(
    ("model", "missing"),
    [(SkillModel.DINA, 0.0), (SkillModel.DINA, 0.15), (SkillModel.DINO, 0.0), (SkillModel.GDINA, 0.0)],
)
def test_known_numbers_are_found_again(model: SkillModel, missing: float) -> None:
    """Of 6,000 invented pupils each chance and share comes out within four and a half standard errors of
    the truth.
    """
    table, truth = answered_by(THREE, model, 6_000, seed=5, missing=missing)
    cells, rows = cells_of(THREE, model), row_arrays(table)
    found = best_summit(cells, rows, climbs=2, seed=1)
    assert found.best.reached
    errors = standard_errors(cells, rows, found.best.point)
    assert not np.isnan(errors).any()
    assert (np.abs(found.best.point.flat - truth.flat) < 4.5 * errors).all()
    assert found.best.log_likelihood > walk(cells, rows, truth).log_likelihood


@pytest.mark.parametrize("model", [SkillModel.DINA, SkillModel.DINO])
def test_every_start_comes_to_the_same_summit(model: SkillModel) -> None:
    """Twenty starts by lot end within a hundred-thousandth of the log-likelihood and of every number."""
    table, _ = answered_by(THREE, model, 800, seed=8)
    cells, rows = cells_of(THREE, model), row_arrays(table)
    found = [climb(cells, rows, start) for start in islice(starts(cells, np.random.default_rng(2)), 20)]
    assert all(one.reached for one in found)
    assert np.ptp([one.log_likelihood for one in found]) < 1e-5
    assert np.ptp([one.point.flat for one in found], axis=0).max() < 1e-5


def test_em_alone_comes_to_the_same_summit() -> None:
    """Three thousand steps of EM end where the climb does."""
    table, _ = answered_by(THREE, SkillModel.DINA, 300, seed=2)
    cells, rows = cells_of(THREE, SkillModel.DINA), row_arrays(table)
    point = usual_start(cells)
    for _ in range(3000):
        point = better(cells, rows, point, walk(cells, rows, point))
    found = climb(cells, rows, usual_start(cells))
    assert found.log_likelihood == pytest.approx(walk(cells, rows, point).log_likelihood, abs=1e-7)
    assert found.point.flat == pytest.approx(point.flat, abs=1e-4)


@pytest.mark.parametrize("model", SkillModel)
def test_nothing_is_higher_next_to_a_summit(model: SkillModel) -> None:
    """Small moves by lot that keep the bounds, where shares add up to 1, all go down."""
    table, _ = answered_by(THREE, model, 150, seed=11)
    cells, rows = cells_of(THREE, model), row_arrays(table)
    found = climb(cells, rows, usual_start(cells))
    assert found.reached
    chance = np.random.default_rng(6)
    for _ in range(200):
        shares = np.maximum(found.point.shares + chance.normal(0, 1e-3, len(found.point.shares)), 0)
        chances = np.clip(found.point.chances + chance.normal(0, 1e-3, cells.count), 0, 1)
        if cells.ordered and (chances[::2] > chances[1::2]).any():
            continue
        moved = Point(chances, shares / shares.sum())
        assert walk(cells, rows, moved).log_likelihood <= found.log_likelihood + 1e-9


def test_skills_never_hurt_where_the_model_says_so() -> None:
    """A problem that pupils without its skill do better on gets one chance for all, and the climb still
    ends.
    """
    q = QMatrix(("a",), ("1", "2", "3", "4"), (1, 1, 1, 1))
    cells = cells_of(q, SkillModel.DINA)
    rows = row_arrays(counted(q, ["1110"] * 40 + ["0001"] * 30 + ["1100"] * 9 + ["0010"] * 8 + ["1111"] * 5))
    found = climb(cells, rows, usual_start(cells))
    assert found.reached
    assert (found.point.chances[::2] <= found.point.chances[1::2]).all()
    assert found.point.chances[6] == pytest.approx(found.point.chances[7])


def test_a_climb_that_does_not_arrive_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    """With two steps at most it is told as not reached, and the best summit counts it as lost."""
    monkeypatch.setattr(climbing, "MOST_STEPS", 2)
    table, _ = answered_by(THREE, SkillModel.DINA, 300, seed=2)
    cells, rows = cells_of(THREE, SkillModel.DINA), row_arrays(table)
    assert not climb(cells, rows, usual_start(cells)).reached
    assert best_summit(cells, rows, climbs=3, seed=1).lost == 3


def test_a_large_table_ends_where_a_climb_on_all_of_it_does() -> None:
    """The way over pupils drawn by lot comes to the summit of all."""
    table, _ = answered_by(
        QMatrix(THREE.skills, (*THREE.problems, *"KLMNOP"), (*THREE.needs, *THREE.needs[1:7])),
        SkillModel.DINA,
        30_000,
        seed=4,
    )
    q = QMatrix(THREE.skills, table.problems, (*THREE.needs, *THREE.needs[1:7]))
    cells, rows = cells_of(q, SkillModel.DINA), row_arrays(table)
    assert len(rows.times) > 6_000
    found = best_summit(cells, rows, climbs=1, seed=1).best
    whole = climb(cells, rows, usual_start(cells))
    assert found.reached
    assert found.log_likelihood == pytest.approx(whole.log_likelihood, abs=1e-6)


def test_standard_errors_are_the_spread_of_fits() -> None:
    """Fitted again and again to tables from one truth, numbers spread as much as their errors say, within a
    quarter.
    """
    fits, errors = [], []
    cells = cells_of(THREE, SkillModel.DINA)
    _, truth = answered_by(THREE, SkillModel.DINA, 10, seed=1)
    chance = np.random.default_rng(9)
    for _ in range(60):
        groups = chance.choice(len(cells.groups), 1_500, p=truth.shares)
        right = chance.random((1_500, 10)) < truth.chances[cells.of_group[:, groups]].T
        rows = row_arrays(counted(THREE, ["".join("01"[one] for one in row) for row in right.astype(int)]))
        point = climb(cells, rows, truth).point
        fits.append(point.flat)
        errors.append(standard_errors(cells, rows, point))
    ratio = np.std(fits, axis=0) / np.nanmean(errors, axis=0)
    print(ratio.round(2))
    assert abs(np.median(ratio) - 1) < 0.1
    assert ((ratio > 0.7) & (ratio < 1.4)).all()


def test_what_answers_do_not_settle_has_no_error() -> None:
    """A chance at its bound has none; nor have numbers that can move together and leave the likelihood as
    it is.
    """
    q = QMatrix(("a",), ("1", "2"), (1, 1))
    cells = cells_of(q, SkillModel.DINA)
    rows = row_arrays(counted(q, ["11"] * 10 + ["00"] * 10 + ["10"] * 5 + ["01"] * 4))
    found = climb(cells, rows, usual_start(cells))
    errors = standard_errors(cells, rows, found.point)
    assert np.isnan(errors[: cells.count]).all()
