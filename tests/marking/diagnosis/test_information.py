"""How much an answer is expected to tell."""

import math
import random

import pytest

from onewhole.marking.diagnosis.information import MILLION, bits, doubt, expected


@pytest.mark.parametrize("number", [1, 2, 3, 5, 10, 999, 1000, 1024, 1025, 10**6, 10**12 + 7, 3**200])
def test_logarithms_are_good_to_a_millionth(number: int) -> None:
    """Against the logarithm of the standard library."""
    assert abs(bits(number) - MILLION * math.log2(number)) < 1.5


def test_powers_of_two_come_out_even() -> None:
    """No rounding where none is needed."""
    assert [bits(2**power) for power in range(70)] == [MILLION * power for power in range(70)]


def test_below_one_there_is_no_logarithm() -> None:
    """Refused, not guessed."""
    with pytest.raises(ValueError, match="0 has no logarithm"):
        bits(0)


def test_doubt_is_the_entropy() -> None:
    """Nothing for one, one bit for two alike, the standard formula for others."""
    assert (doubt((7,)), doubt((5, 5)), doubt((0, 9))) == (0, MILLION, 0)
    shares = (10, 30, 60)
    exact = -sum(share / 100 * math.log2(share / 100) for share in shares)
    assert abs(doubt(shares) - MILLION * exact) < 2


@pytest.mark.parametrize("seed", range(20))
def test_what_is_expected_is_the_mutual_information(seed: int) -> None:
    """Against the formula in floats, for random odds and chances."""
    chance = random.Random(seed)
    weights = [chance.randint(1, 10**12) for _ in range(4)]
    rows = [[chance.choice([0, chance.randint(1, 10**6)]) for _ in range(6)] + [1] for _ in range(4)]
    shares = [weight / sum(weights) for weight in weights]
    even = [[one / sum(row) for one in row] for row in rows]
    mixed = [sum(share * row[at] for share, row in zip(shares, even, strict=True)) for at in range(7)]
    exact = sum(
        share * one * math.log2(one / both)
        for share, row in zip(shares, even, strict=True)
        for one, both in zip(row, mixed, strict=True)
        if one
    )
    found = expected(weights, rows)
    assert abs(found - MILLION * exact) < 60
    assert 0 <= found <= doubt(weights) + 60


def test_an_answer_tells_at_most_what_is_not_known() -> None:
    """All where the rows share nothing, nothing where they are alike or one row is certain."""
    apart = ((1, 0, 0), (0, 1, 0), (0, 0, 1))
    assert expected((1, 1, 2), apart) == doubt((1, 1, 2))
    assert expected((1, 2, 3), ((4, 5), (4, 5), (8, 10))) == 0
    assert expected((1, 0), ((1, 0), (0, 1))) == 0
