"""The goals of the laboratory, held on thirty seeded classes; `make lab` measures them on many."""

import pytest

from lab.measures import calibration_error, first_said, share, wrongly_given
from lab.nights import Night, all_seen
from lab.pages import room12
from lab.pupils import Kind
from lab.trials import Trial

FAIR_SHOWINGS = 3


@pytest.fixture(scope="module")
def seen() -> tuple[Trial, ...]:
    """Thirty classes of 25 on the example's page, drawn with a seed of their own."""
    return tuple(all_seen(Night((room12(),), 30, seed="goals"), None))


def test_pupils_without_a_steady_idea_are_hardly_ever_given_one(seen: tuple[Trial, ...]) -> None:
    """Fewer than 2 in 100 of them are said to fit a pattern."""
    wrongly = wrongly_given(seen)
    assert wrongly.of > 450
    assert wrongly.value < 0.02


def test_what_is_said_to_fit_is_true(seen: tuple[Trial, ...]) -> None:
    """Nine of ten findings that say "likely" name the true idea."""
    sure = [one for one in seen if one.likely]
    assert len(sure) > 45
    assert share(sure, lambda one: one.holds).value > 0.9


def test_a_steady_idea_that_can_show_is_found(seen: tuple[Trial, ...]) -> None:
    """Of steady pupils whose idea can show on three problems or more, nine of ten are said to fit it."""
    steady = [one for one in seen if one.kind is Kind.STEADY and one.truth and one.acts >= FAIR_SHOWINGS]
    assert len(steady) > 20
    assert share(steady, lambda one: one.likely and one.holds).value > 0.9


def test_the_odds_are_calibrated(seen: tuple[Trial, ...]) -> None:
    """The expected calibration error of all that is said first stays under 0.05."""
    assert calibration_error(first_said(seen)) < 0.05
