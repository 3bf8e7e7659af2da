"""Practice and forgetting foretold on a few invented terms; `python -m lab.practice` takes many."""

import numpy as np
import pytest

from lab.practice.rivals import RIVALS
from lab.practice.scores import Score, bands_held, scored
from lab.practice.sitting import WAYS, foretold, sitting
from lab.practice.terms import NIGHTS, WORLDS, TermNight, World, term

OURS = "courses, pooled (ours)"
TERMS = {world: [term(world, 2000 + seed) for seed in range(2)] for world in WORLDS}


def _mean(name: str) -> float:
    """Return the mean log score of skills that came back, over the worlds."""
    return sum(scored(RIVALS[name], TERMS[world])[1].log for world in WORLDS) / len(WORLDS)


def _rights(night: TermNight) -> list[list[int]]:
    return [one.right.tolist() for one in night.asked.values()]


@pytest.mark.parametrize("world", WORLDS, ids=lambda world: world.name)
def test_a_term_is_the_same_each_time_and_counts_are_possible(world: World) -> None:
    """The seed says all; nobody has more right than was asked, and who is away has none."""
    again = term(world, 2000)
    assert len(again) == NIGHTS
    for one, two in zip(again, TERMS[world][0], strict=True):
        assert _rights(one) == _rights(two)
        for asked in one.asked.values():
            assert 0 <= asked.right.min() <= asked.right.max() <= asked.problems
            assert not np.any(asked.right[~asked.here])


def test_skills_that_come_back_are_foretold_better_than_by_days_and_shares() -> None:
    """By the log score, which nothing but true chances can make smallest."""
    ours = _mean(OURS)
    assert ours < _mean("pupil's share, 14 days") - 0.05
    assert ours < _mean("class's share") - 0.05
    assert ours < _mean("knowledge tracing, one half-life")


def test_bands_hold_what_came_back() -> None:
    """Of ten shares nine and more lie inside, over the worlds."""
    held = [bands_held(terms) for terms in TERMS.values()]
    hits, of = sum(one.hits for one in held), sum(one.of for one in held)
    assert of > 50
    assert hits / of > 0.9


def test_open_data_are_foretold_by_how_answers_show_a_skill() -> None:
    """Better than by the share of the skill, and than by one rate of lapses and luck."""
    data = sitting()
    if data is None:
        pytest.skip("the open data do not lie beside the project")
    scores: dict[str, Score] = {name: foretold(way, data) for name, way in WAYS.items()}
    ours = scores.pop("has it or not, as our courses show it")
    assert all(ours.log < one.log and ours.brier < one.brier for one in scores.values())
