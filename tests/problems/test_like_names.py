"""New numbers for one that is to be written another way: of the same kind, in pieces of any size."""

from itertools import islice
from math import gcd

import pytest

from onewhole.notations.text import text
from onewhole.problems.needs import needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.parallel import parallel
from onewhole.problems.skill import skill
from onewhole.statements.reading import read_statement

ASKED = (
    "12/18 simplest",
    "18/12 simplest",
    "3/4 simplest",
    "2 6/8 simplest",
    "11/4 as a mixed number",
    "12/4 as a mixed number",
    "2 3/4 as a fraction",
    "3/4 as a decimal",
    "2 3/4 as a decimal",
    "12/18 = ?",
    "11/4",
    "1 1/2 = ?",
)


@pytest.mark.parametrize("typed", ASKED)
def test_ten_others_of_the_same_kind(typed: str) -> None:
    """Of one skill, simple or not as the first one is, below or over one as it is, and read back as typed."""
    asked = read_statement(typed)
    (first,) = numbers_of(asked)
    found = list(islice(parallel(asked), 10))
    assert len(found) == 10
    assert len({text(one) for one in found} | {text(asked)}) == 11
    assert len({number.ladder.denominator for one in found for number in numbers_of(one)}) > 2
    for one in found:
        (number,) = numbers_of(one)
        top, bottom = number.amounts[1], number.ladder.denominator
        assert skill(one) is skill(asked)
        assert needs(one).regrouping == needs(asked).regrouping
        assert (number.counts[0] is None) == (first.counts[0] is None)
        assert (top > bottom) == (first.amounts[1] > first.ladder.denominator)
        if "simplest" in typed or typed == "12/18 = ?":
            assert (gcd(top, bottom) > 1) == (gcd(first.amounts[1], first.ladder.denominator) > 1)
        assert read_statement(text(one)) == one


def test_three_tenths_as_a_decimal_go_on_in_tenths_or_hundredths() -> None:
    """Tenths and hundredths are read off; fourths have to be cut again first."""
    for typed, easy in (("3/10 as a decimal", True), ("3/4 as a decimal", False)):
        for one in islice(parallel(read_statement(typed)), 10):
            (number,) = numbers_of(one)
            assert (number.ladder.denominator in {10, 100}) == easy
