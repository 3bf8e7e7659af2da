"""Parallel problems keep the structure and change the numbers."""

from itertools import combinations, islice
from math import lcm

import pytest
from msgspec.structs import replace

from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.needs import needs
from onewhole.problems.parallel import parallel
from onewhole.problems.traps import traps
from onewhole.problems.twins import twin_key
from onewhole.statements.reading import read_statement

TYPED = (
    "9 5/8 - 4 6/8",
    "7 2/6 - 3 5/6",
    "5 4/6 - 2 1/6",
    "4 - 1 3/8",
    "2 4/5 + 1 3/5",
    "3 3/8 - 2 5/6",
    "52 - 27",
    "304 - 128",
    "5.2 - 2.7",
    "5 ft 2 in - 2 ft 7 in",
    "7 2/6 = 6 ?/6",
    "9 - ? = 3 1/2",
    "5/6 ? 7/8",
    "3 x 2/5",
)


@pytest.mark.parametrize("typed", TYPED)
def test_same_structure_new_numbers(typed: str) -> None:
    """The same needs, the same written units in the answer, no new trap, and no twins among them."""
    asked = read_statement(typed)
    found = list(islice(parallel(asked), 6))
    assert len(found) >= 4
    assert len({twin_key(one) for one in (asked, *found)}) == len(found) + 1
    right = answer(asked)
    for one in found:
        assert read_statement(text(one)) == one
        assert needs(one) == needs(asked)
        assert traps(one).core.within(traps(asked).core)
        other = answer(one)
        if isinstance(right, Quantity):
            assert isinstance(other, Quantity)
            assert [bool(count) for count in other.amounts] == [bool(count) for count in right.amounts]
        else:
            assert other == right


@pytest.mark.parametrize(
    "typed", ["3/4 = ?/8", "6/8 = ?/4", "1/2 + 1/3", "1/2 x 3/4", "1/2 + ? = 5/6", "order 2/3, 1/2, 3/4"]
)
def test_few_with_own_denominators_go_on_with_others(typed: str) -> None:
    """There are enough for a week, and denominators still go together as those of the first one."""
    asked = read_statement(typed)
    found = list(islice(parallel(asked), 12))
    assert len({twin_key(one) for one in (asked, *found)}) == 13
    assert len({needs(one).denominators for one in found}) > 1
    for one in found:
        assert read_statement(text(one)) == one
        assert replace(needs(one), denominators=()) == replace(needs(asked), denominators=())
        assert together(needs(one).denominators) == together(needs(asked).denominators)


def together(bottoms: tuple[int, ...]) -> list[tuple[bool, bool]]:
    """For every two whether the smaller fits into the larger, and whether a piece fits into both."""
    return sorted((b % a == 0, lcm(a, b) < a * b) for a, b in combinations(bottoms, 2))


def test_the_order_never_changes() -> None:
    """Asked twice, the same problems come."""
    asked = read_statement("9 5/8 - 4 6/8")
    assert list(islice(parallel(asked), 8)) == list(islice(parallel(asked), 8))


def test_a_space_is_walked_to_its_end() -> None:
    """Fourths with regrouping are few; halves have no other halves."""
    assert 0 < len(list(parallel(read_statement("3 1/4 - 1 2/4")))) < 40
    assert not list(parallel(read_statement("1/2 + 1/2")))


def test_a_zero_in_the_middle_stays() -> None:
    """304 - 128 has its chain from that zero."""
    for one in islice(parallel(read_statement("304 - 128")), 5):
        assert text(one)[1] == "0"
