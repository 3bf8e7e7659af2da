from fractions import Fraction

import pytest

from onewhole.mastery.fitted import MeasuredNumber
from onewhole.mastery.profile import SkillOdds, SkillSign


@pytest.mark.parametrize(
    ("least", "most", "sign"),
    [
        (80, 80, SkillSign.THERE),
        (80, 100, SkillSign.THERE),
        (79, 79, SkillSign.UNSURE),
        (20, 20, SkillSign.NOT_THERE),
        (0, 20, SkillSign.NOT_THERE),
        (21, 21, SkillSign.UNSURE),
        (10, 60, SkillSign.UNTOLD),
        (30, 79, SkillSign.UNSURE),
        (0, 100, SkillSign.UNTOLD),
    ],
)
def test_a_sign_is_called_from_both_ends(least: int, most: int, sign: SkillSign) -> None:
    """There from 80 in 100 at least, not there to 20 at most; untold where half or more is left open."""
    low, high = Fraction(least, 100), Fraction(most, 100)
    assert SkillOdds(low, (low + high) / 2, high).sign is sign


def test_odds_are_in_order_and_errors_not_below_0() -> None:
    """Anything else cannot be built."""
    with pytest.raises(ValueError, match="in order"):
        SkillOdds(Fraction(1, 2), Fraction(1, 3), Fraction(1))
    with pytest.raises(ValueError, match="not below 0"):
        MeasuredNumber(Fraction(1), Fraction(-1))
