"""Odds as they are typed."""

from fractions import Fraction

import pytest

from onewhole.cli.odds import odds_typed
from onewhole.errors import InputError


@pytest.mark.parametrize("said", ["0.95", "95%", "95 %", "19/20", " 0.95 "])
def test_odds_are_read_exactly(said: str) -> None:
    """As a decimal, a percentage or a fraction."""
    assert odds_typed(said) == Fraction(19, 20)


@pytest.mark.parametrize("said", ["", "high", "1/0", "nan", "0,9", "%"])
def test_what_are_no_odds_is_refused(said: str) -> None:
    """With what to type instead."""
    with pytest.raises(InputError, match="are no odds") as refused:
        odds_typed(said)
    assert refused.value.remedy == "Type a number such as 0.9 or 90%."
