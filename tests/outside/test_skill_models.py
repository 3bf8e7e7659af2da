"""Skill models against fits by others of published answers.

Answers: 536 middle-school pupils, K. K. Tatsuoka (1984), NIE-G-81-0002, published with C. Tatsuoka (2002),
JRSS C 51, 337-350; the 20 x 8 Q-matrix of de la Torre & Douglas (2004) and DeCarlo (2011), the subsets of
de la Torre (2009: 15 x 5) and (2011: 12 x 4). Fits: R package CDM 8.2-6 at tight stopping, and a NumPy EM
that follows it step by step. The tables lie beside the project and are no part of it; without them these
tests are left out.
"""

import csv
import json
from itertools import islice
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.skills.cells import cells_of
from onewhole.presses.skills.climb import climb
from onewhole.presses.skills.fit import fit_skills, profiles_of
from onewhole.presses.skills.likelihood import Point, better, walk
from onewhole.presses.skills.rows import row_arrays
from onewhole.presses.skills.starts import starts, usual_start
from onewhole.presses.skills.summits import best_summit
from tests.kit.skill_tables import published

SHARED = Path(__file__).parents[3] / "shared"
FITS, DATA = SHARED / "reference", SHARED / "data"
SETS = {
    "tatsuoka20_k8": ("tatsuoka_fraction_536x20.csv", "tatsuoka_fraction_q_20x8.csv"),
    "fraction1_15_k5": ("cdm_data_fraction1_responses.csv", "cdm_data_fraction1_qmatrix.csv"),
    "fraction3_12_k4": ("cdm_data_fraction3_responses.csv", "cdm_data_fraction3_qmatrix.csv"),
}
pytestmark = pytest.mark.skipif(
    not FITS.is_dir(), reason="the published answers and fits are not beside the project (../shared)"
)


def fit_by_others(model: SkillModel, of: str) -> dict[str, Any]:
    """What CDM found."""
    found: dict[str, Any] = json.loads((FITS / f"cdm_{model.value}_{of}.json").read_text(encoding="utf-8"))
    return found


@pytest.mark.parametrize("of", SETS)
@pytest.mark.parametrize("model", SkillModel)
def test_em_goes_the_same_way(model: SkillModel, of: str) -> None:
    """The log-likelihood after 0 to 99 steps of EM from the fixed start is the same to 1e-8."""
    trace = json.loads((FITS / "em_trace.json").read_text(encoding="utf-8")).get(f"{model.name}_{of}")
    if trace is None:
        pytest.skip("there is no trace of this model on these answers")
    table, q = published(DATA, *SETS[of])
    cells, rows = cells_of(q, model), row_arrays(table)
    point, seen = usual_start(cells), {}
    for step in range(1, 101):
        sums = walk(cells, rows, point)
        seen[str(step)] = sums.log_likelihood
        point = better(cells, rows, point, sums)
    told = trace["loglik_of_parameters_entering_iteration"]
    assert len(told) >= 8
    assert {step: seen[step] for step in told} == pytest.approx(told, abs=1e-8, rel=0)


@pytest.mark.parametrize(
    ("of", "groups"), [("tatsuoka20_k8", 58), ("fraction1_15_k5", 10), ("fraction3_12_k4", 7)]
)
def test_dina_comes_to_the_same_maximum(of: str, groups: int) -> None:
    """Log-likelihood, guesses, slips, and the shares of what can be told apart."""
    others = fit_by_others(SkillModel.DINA, of)
    table, q = published(DATA, *SETS[of])
    fitted = fit_skills(table, q, SkillModel.DINA, climbs=1, seed=1)
    assert fitted.climbed.arrived
    assert float(fitted.climbed.log_likelihood) == pytest.approx(others["loglik"], abs=1e-6)
    for ours, theirs in zip(fitted.problems, others["items"], strict=True):
        assert float(ours.guess.value) == pytest.approx(theirs["guess"], abs=1e-4)
        assert float(ours.slip.value) == pytest.approx(theirs["slip"], abs=1e-4)
    shares = {one: float(each.share.value) for each in fitted.groups for one in each.group.sets}
    for each in others["classes"]:
        has = sum(1 << at for at, sign in enumerate(each["class"]) if sign == "1")
        theirs = others["equivalence_group_prob"][each["equivalence_group"] - 1]
        assert shares[has] == pytest.approx(theirs, abs=1e-5)
    assert len(fitted.groups) == groups == len(others["equivalence_group_prob"])


def test_dina_on_20_problems_comes_to_its_maximum_from_every_start() -> None:
    """-4402.28767 from each of 20 starts by lot, as the best of others' starts."""
    table, q = published(DATA, *SETS["tatsuoka20_k8"])
    others = json.loads((FITS / "multistart.json").read_text(encoding="utf-8"))["DINA_tatsuoka20_k8"]
    cells, rows = cells_of(q, SkillModel.DINA), row_arrays(table)
    for start in islice(starts(cells, np.random.default_rng(others["seed"])), others["starts"]):
        found = climb(cells, rows, start)
        assert found.reached
        assert found.log_likelihood == pytest.approx(others["best_loglik"], abs=1e-5)


@pytest.mark.parametrize("of", SETS)
def test_profiles_are_those_of_others(of: str) -> None:
    """The odds of each skill, sets that cannot be told apart shared evenly, and each pupil's likeliest
    group.
    """
    others = fit_by_others(SkillModel.DINA, of)
    table, q = published(DATA, *SETS[of])
    fitted = fit_skills(table, q, SkillModel.DINA, climbs=1, seed=1)
    with (DATA / SETS[of][0]).open(encoding="utf-8") as file:
        rows = ["".join(cells[1:]) for cells in csv.reader(file)][1:]
    called = dict(zip(table.rows, profiles_of(fitted, table.rows), strict=True))
    for row, theirs in zip(rows, others["eap_first20"], strict=False):
        assert [float(one.even) for one in called[row].skills] == pytest.approx(theirs, abs=1e-4)
    group_of = {each["class"]: each["equivalence_group"] for each in others["classes"]}
    for row, theirs in zip(rows, others["map_group_per_student"], strict=True):
        one = fitted.groups[called[row].group].group.sets[0]
        assert group_of["".join(str(one >> at & 1) for at in range(len(q.skills)))] == theirs


@pytest.mark.parametrize("of", SETS)
def test_dino_inside_its_bound_is_not_lower(of: str) -> None:
    """Where a guess stays below what knowing gives, our maximum is that of others or higher.

    On 15 problems there are maxima close together: CDM -3666.4429, another package -3666.4119.
    """
    table, q = published(DATA, *SETS[of])
    cells, rows = cells_of(q, SkillModel.DINO), row_arrays(table)
    found = best_summit(cells, rows, climbs=4, seed=1)
    assert found.best.reached
    chances = found.best.point.chances
    assert (chances[::2] <= chances[1::2]).all()
    best = {"tatsuoka20_k8": -4698.92113699, "fraction1_15_k5": -3666.44293, "fraction3_12_k4": -2973.46}[of]
    assert found.best.log_likelihood > best - 1e-4
    assert found.best.log_likelihood < best + 0.04


@pytest.mark.parametrize("of", ["fraction1_15_k5", "fraction3_12_k4"])
def test_g_dina_is_the_same_function(of: str) -> None:
    """At the chances and shares that CDM ended with, our likelihood is the one it tells; our best is
    higher.
    """
    others = fit_by_others(SkillModel.GDINA, of)
    table, q = published(DATA, *SETS[of])
    cells, rows = cells_of(q, SkillModel.GDINA), row_arrays(table)
    chances = np.empty(cells.count)
    for at, item in enumerate(others["items"]):
        own = [place for place in range(len(q.skills)) if q.needs[at] >> place & 1]
        by_set = {
            sum(1 << place for place, sign in zip(own, pattern[1:], strict=True) if sign == "1"): chance
            for pattern, chance in zip(item["pattern"], item["prob"], strict=True)
        }
        for cell in range(int(cells.starts[at]), int(cells.starts[at + 1])):
            chances[cell] = by_set[cells.seen[cell]]
    by_class = {
        sum(1 << at for at, sign in enumerate(each["class"]) if sign == "1"): each["prob"]
        for each in others["classes"]
    }
    shares = np.array([by_class[group.sets[0]] for group in cells.groups])
    there = Point(np.clip(chances, 0, 1), shares)
    assert walk(cells, rows, there).log_likelihood == pytest.approx(others["loglik"], abs=1e-4)
    assert climb(cells, rows, there).log_likelihood >= others["loglik"] - 1e-4
    assert best_summit(cells, rows, climbs=2, seed=1).best.log_likelihood > others["loglik"]
