"""What is left of something that halves."""

from onewhole.marking.practice.halving import HALVES, MILLION, STEPS, left_after


def test_each_step_is_the_root_that_it_stands_for() -> None:
    """To the power of 1024 it is half to the power of its place, as near as rounding allows."""
    for place, left in enumerate(HALVES):
        wanted = MILLION**STEPS >> place
        assert (2 * left - 1) ** STEPS <= wanted << STEPS <= (2 * left + 1) ** STEPS


def test_it_never_rises_and_ends_at_nothing() -> None:
    """Over thirty half-lives, step by step."""
    left = [left_after(steps) for steps in range(30 * STEPS)]
    assert left == sorted(left, reverse=True)
    assert (left[0], left[STEPS], left[-1]) == (MILLION, MILLION // 2, 0)
