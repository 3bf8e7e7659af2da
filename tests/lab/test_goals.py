"""The goals of the laboratory, held on fifteen seeded classes, in CI on thirty; `make lab` takes many."""

from collections import Counter
from dataclasses import replace

import pytest

from lab.measures import calibration_error, first_said, share, wrongly_given
from lab.nights import CLASS, Night, all_seen
from lab.outside import HELD_OUT
from lab.pages import room12
from lab.pupils import Kind
from lab.rates import USUAL
from lab.trials import Trial

FAIR_SHOWINGS = 3
CLASSES = 30


@pytest.fixture(scope="module")
def seen() -> tuple[Trial, ...]:
    """Classes of 25 on the example's page, drawn with a seed of their own."""
    return tuple(all_seen(Night((room12(),), CLASSES, seed="goals"), None))


@pytest.mark.more("lab/test_steps.py")
def test_pupils_without_a_steady_idea_are_hardly_ever_given_one(seen: tuple[Trial, ...]) -> None:
    """Fewer than 2 in 100 of them are said to fit a pattern."""
    wrongly = wrongly_given(seen)
    assert wrongly.of > 15 * CLASSES
    assert wrongly.value < 0.02


@pytest.mark.more("lab/test_steps.py")
def test_what_is_said_to_fit_is_true(seen: tuple[Trial, ...]) -> None:
    """Nine of ten findings that say "likely" name the true idea."""
    sure = [one for one in seen if one.likely]
    assert len(sure) > 1.5 * CLASSES
    assert share(sure, lambda one: one.holds).value > 0.9


@pytest.mark.more("lab/test_steps.py")
def test_a_steady_idea_that_can_show_is_found(seen: tuple[Trial, ...]) -> None:
    """Of steady pupils whose idea can show on three problems or more, nine of ten are said to fit it."""
    steady = [one for one in seen if one.kind is Kind.STEADY and one.truth and one.acts >= FAIR_SHOWINGS]
    assert len(steady) > CLASSES * 2 // 3
    assert share(steady, lambda one: one.likely and one.holds).value > 0.9


@pytest.mark.more("lab/test_steps.py")
def test_the_odds_are_calibrated(seen: tuple[Trial, ...]) -> None:
    """The expected calibration error of all that is said first stays under 0.05."""
    assert calibration_error(first_said(seen)) < 0.05


@pytest.mark.more("lab/test_steps.py")
def test_ideas_close_beside_a_pattern_are_hardly_ever_taken_for_it() -> None:
    """Of pupils with rules that nothing was set by, fewer than 3 in 100 have odds of 0.9 for a pattern."""
    rates = replace(USUAL, outside=0.5, rules=tuple(HELD_OUT))
    outside = [one for one in all_seen(Night((room12(),), 5, rates, "beside")) if one.kind is Kind.OUTSIDE]
    assert len(outside) > 40
    assert share(outside, lambda one: one.together >= 0.9).value < 0.03
    assert share(outside, lambda one: one.likely).value < 0.03


@pytest.mark.more("lab/test_steps.py")
def test_pupils_of_one_idea_sit_together(seen: tuple[Trial, ...]) -> None:
    """Every pupil has a group, and nine of ten of a class who are said to fit one idea share it."""
    assert all(one.sits for one in seen)
    rooms = [seen[at : at + CLASS] for at in range(0, len(seen), CLASS)]
    held = [Counter((one.alike[0], one.sits) for one in room if one.likely) for room in rooms]
    ideas = [Counter(one.alike[0] for one in room if one.likely) for room in rooms]
    shared = [
        (max(many for (idea, _), many in seats.items() if idea == which), of)
        for seats, every in zip(held, ideas, strict=True)
        for which, of in every.items()
        if of > 1
    ]
    assert sum(of for _, of in shared) > CLASSES // 3
    assert sum(together for together, _ in shared) > 0.9 * sum(of for _, of in shared)
