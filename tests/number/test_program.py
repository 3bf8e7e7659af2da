from fractions import Fraction
from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.number.program import Limit, Program
from tests.kit.programs import programs


def test_a_limit_may_be_open_on_either_side() -> None:
    """None is no limit."""
    row = {0: 2, 1: -1}
    assert Limit("open", row).kept((100, 0))
    assert not Limit("most", row, most=3).kept((2, 0))
    assert not Limit("least", row, least=1).kept((0, 0))
    assert Limit("both", row, least=3, most=3).kept((2, 1))


def test_what_is_broken_is_named_once() -> None:
    """Each name comes once, bounds first."""
    program = Program((1,), (1,), (Limit("few", {0: 1}, most=0), Limit("few", {0: 2}, most=0)), 1)
    assert program.broken((2,)) == ("bounds", "few")
    assert program.broken((0,)) == ()


@pytest.mark.parametrize(
    ("gains", "most", "limits", "whole"),
    [
        ((1, 2), (1,), (), 1),
        ((1,), (-1,), (), 1),
        ((1,), (1,), (), 2),
        ((1,), (1,), (Limit("far", {1: 1}),), 1),
    ],
)
def test_rows_that_do_not_fit_are_refused(
    gains: tuple[int, ...], most: tuple[int, ...], limits: tuple[Limit, ...], whole: int
) -> None:
    """Gains, bounds and limits speak of the same counts."""
    with pytest.raises(ValueError, match="count"):
        Program(gains, most, limits, whole)


@given(programs(), st.lists(st.tuples(st.integers(-3, 9), st.integers(-3, 9)), min_size=5, max_size=5))
def test_any_prices_give_a_true_bound(program: Program, prices: list[tuple[int, int]]) -> None:
    """No counts that keep the limits gain more than the bound, whatever the prices."""
    found = program.bound(prices[: len(program.limits)], 2)
    for counts in product(*(range(most + 1) for most in program.most)):
        if not program.broken(counts):
            assert program.gained(counts) <= found


def test_without_limits_the_bound_is_all_that_gains() -> None:
    """What costs is left out."""
    assert Program((3, -2), (4, 5), (), 2).bound([]) == Fraction(12)
