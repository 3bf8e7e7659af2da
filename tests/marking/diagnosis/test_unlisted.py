"""Where an idea that no pattern describes may act."""

import pytest

from onewhole.marking.diagnosis.unlisted import FEWEST, ActsOn, seen_on, where
from tests.kit.odds import known

TYPED = ("5 - 1 3/8", "7 1/4 - 3 3/4", "6 7/8 - 3 2/8", "2 4/5 + 1 3/5", "1/5 + 2/5", "1/2 - 1/3")
ASKED = known(TYPED)[0]


@pytest.mark.parametrize(
    ("at", "sorts"),
    [
        (0, {ActsOn.EVERYWHERE, ActsOn.TAKING, ActsOn.OPENING, ActsOn.WHOLE_FIRST}),
        (1, {ActsOn.EVERYWHERE, ActsOn.TAKING, ActsOn.OPENING}),
        (2, {ActsOn.EVERYWHERE, ActsOn.TAKING}),
        (3, {ActsOn.EVERYWHERE, ActsOn.ADDING, ActsOn.MAKING}),
        (4, {ActsOn.EVERYWHERE, ActsOn.ADDING}),
        (5, {ActsOn.EVERYWHERE, ActsOn.TAKING, ActsOn.UNLIKE}),
    ],
)
def test_a_problem_belongs_to_its_sorts(at: int, sorts: set[ActsOn]) -> None:
    """By what is to be done, and whether a whole is opened or made."""
    assert where(ASKED[at]) == sorts


def test_a_sort_is_seen_on_two_problems_or_more() -> None:
    """One problem where a whole number comes first, one with unlike pieces: too few to see an idea steady."""
    assert FEWEST == 2
    assert set(seen_on(ASKED)) == {ActsOn.EVERYWHERE, ActsOn.OPENING, ActsOn.TAKING, ActsOn.ADDING}


def test_two_sorts_of_the_same_problems_are_one() -> None:
    """On a page of differences that all need a whole opened nothing tells those sorts apart."""
    assert seen_on(ASKED[:2]) == (ActsOn.EVERYWHERE,)
    assert seen_on(ASKED[:1]) == ()
