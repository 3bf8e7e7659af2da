from collections.abc import Callable
from itertools import product
from math import log, prod

import numpy as np
import pytest

from onewhole.mastery.right_wrong import MISSING, RightWrong
from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.skills.cells import Cells, Floats, cells_of
from onewhole.presses.skills.curvature import curvature
from onewhole.presses.skills.likelihood import Point, better, slope, walk
from onewhole.presses.skills.rows import RowArrays, row_arrays
from tests.kit.skill_tables import THREE, answered_by, point_by_lot

MODELS = [
    pytest.param(model, missing, id=f"{model.name} {missing}")
    for model in SkillModel
    for missing in (0.0, 0.2)
]


def by_definition(table: RightWrong, cells: Cells, point: Point) -> float:
    """The log-likelihood summed over rows and groups, problem by problem, as the models are written down."""
    total = 0.0
    for row, times in zip(table.rows, table.times, strict=True):
        total += times * log(
            sum(
                share
                * prod(
                    chance if sign == "1" else 1 - chance
                    for sign, chance in zip(row, point.chances[cells.of_group[:, group]], strict=True)
                    if sign != MISSING
                )
                for group, share in enumerate(point.shares)
            )
        )
    return total


def drawn(model: SkillModel, missing: float) -> tuple[RightWrong, Cells, RowArrays, Point]:
    """A small table, the model's shape, and a point anywhere."""
    table, _ = answered_by(THREE, model, 60, seed=3, missing=missing)
    cells = cells_of(THREE, model)
    return table, cells, row_arrays(table), point_by_lot(cells, np.random.default_rng(4))


def differences(act: Callable[[Point], Floats | float], cells: Cells, point: Point) -> Floats:
    """Central differences of a function by each chance and share."""
    step = 1e-5

    def at(flat: Floats) -> Floats | float:
        return act(Point(flat[: cells.count], flat[cells.count :]))

    steps = step * np.eye(len(point.flat))
    return np.array([(at(point.flat + one) - at(point.flat - one)) / (2 * step) for one in steps])


@pytest.mark.parametrize(("model", "missing"), MODELS)
def test_the_likelihood_is_that_of_the_definition(model: SkillModel, missing: float) -> None:
    """Summed row by row, group by group, problem by problem, it is the same number."""
    table, cells, rows, point = drawn(model, missing)
    assert walk(cells, rows, point).log_likelihood == pytest.approx(
        by_definition(table, cells, point), rel=1e-12
    )


def test_all_rows_together_are_certain() -> None:
    """The probabilities of all rows that can be add up to 1."""
    cells = cells_of(THREE, SkillModel.GDINA)
    every = tuple("".join(signs) for signs in product("01", repeat=len(THREE.problems)))
    rows = row_arrays(RightWrong(THREE.problems, every, (1,) * len(every)))
    point = point_by_lot(cells, np.random.default_rng(1))
    alone = (RowArrays(rows.right[[at]], rows.answered[[at]], rows.times[[at]]) for at in range(len(every)))
    assert sum(np.exp(walk(cells, row, point).log_likelihood) for row in alone) == pytest.approx(1)


@pytest.mark.parametrize(("model", "missing"), MODELS)
def test_slope_and_curvature_are_the_differences(model: SkillModel, missing: float) -> None:
    """The slope is that of the log-likelihood less pupils by shares; the curvature is the slope's own."""
    _, cells, rows, point = drawn(model, missing)

    def height(one: Point) -> float:
        return walk(cells, rows, one).log_likelihood - rows.pupils * float(one.shares.sum())

    def sloping(one: Point) -> Floats:
        return slope(cells, rows, one, walk(cells, rows, one))

    found = sloping(point)
    assert found == pytest.approx(differences(height, cells, point), rel=1e-5, abs=1e-4)
    bent = curvature(cells, rows, point)
    assert bent == pytest.approx(-differences(sloping, cells, point), rel=1e-5, abs=1e-3)


@pytest.mark.parametrize(("model", "missing"), MODELS)
def test_a_step_of_em_never_goes_down(model: SkillModel, missing: float) -> None:
    """From anywhere inside what the model allows, and the shares add up to 1."""
    _, cells, rows, _ = drawn(model, missing)
    point = Point(np.where(np.array(cells.seen) == 0, 0.4, 0.6), cells.split)
    before = walk(cells, rows, point).log_likelihood
    for _ in range(30):
        point = better(cells, rows, point, walk(cells, rows, point))
        now = walk(cells, rows, point).log_likelihood
        assert now >= before - 1e-9
        assert point.shares.sum() == pytest.approx(1)
        before = now
