"""The band round a share of right answers."""

from fractions import Fraction

import pytest
from scipy.stats import binomtest

from onewhole.marking.diagnosis.interval import Interval, interval


def test_two_roads_to_the_same_interval() -> None:
    """Ours, exact, and SciPy's Wilson interval agree to a thousandth for every count up to 30."""
    for of in range(1, 31):
        for right in range(of + 1):
            ours, theirs = interval(right, of), binomtest(right, of).proportion_ci(method="wilson")
            assert -0.0015 < float(ours.low) - theirs.low < 0.0002
            assert -0.0002 < float(ours.high) - theirs.high < 0.0015


def test_the_share_lies_in_its_band_and_more_answers_make_it_narrower() -> None:
    """For half right of 2, 4, 8 ... answers; the band is never outside none and all."""
    wide = Fraction(2)
    for of in (2, 4, 8, 16, 32, 64):
        one = interval(of // 2, of)
        assert 0 <= one.low < one.share < one.high <= 1
        assert one.high - one.low < wide
        wide = one.high - one.low


@pytest.mark.parametrize(("right", "of"), [(0, 0), (3, 2), (-1, 2)])
def test_counts_that_cannot_be(right: int, of: int) -> None:
    """None of none, more right than there are, fewer than none."""
    with pytest.raises(ValueError, match=f"{right} right of {of}"):
        Interval(right, of, Fraction(0), Fraction(1))
