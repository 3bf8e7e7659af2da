"""Other denominators go together as a problem's own do."""

from math import gcd, lcm

import pytest

from onewhole.problems.needs import needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.other_pieces import BOTTOMS, MOST_COMMON, with_other_pieces
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize("typed", ["1/2 + 1/3", "5 1/4 - 2 7/8", "3/4 ? 5/6", "11/4 + 2/3"])
def test_two_denominators(typed: str) -> None:
    """Every pair of the grade that goes together so is there once; numbers stay below or above one."""
    asked = read_statement(typed)
    one, other = needs(asked).denominators
    found = list(with_other_pieces(asked))
    pairs = {tuple(number.ladder.denominator for number in numbers_of(each)) for each in found}
    assert len(pairs) == len(found)
    apart = {
        (a, b)
        for a in BOTTOMS
        for b in BOTTOMS
        if a != b and (gcd(a, b) > 1) == (gcd(one, other) > 1) and lcm(a, b) <= MOST_COMMON
    }
    assert pairs <= apart
    for each in found:
        for before, after in zip(numbers_of(asked), numbers_of(each), strict=True):
            assert after.value // 1 == before.value // 1
            assert bool(after.value % 1) == bool(before.value % 1)


@pytest.mark.parametrize(
    "typed", ["7/8 - 3/8", "3/10 + 4/100", "52 - 27", "5 ft 2 in - 2 ft 7 in", "3 x 2/5"]
)
def test_one_denominator_has_no_others(typed: str) -> None:
    """Nor have hundredths, which are of a topic of their own, and numbers without pieces."""
    assert not list(with_other_pieces(read_statement(typed)))
