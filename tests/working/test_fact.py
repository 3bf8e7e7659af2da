import pytest

from onewhole.number.quantity import whole
from onewhole.statements.expression import plus
from onewhole.statements.reading import read_chains
from onewhole.working.fact import Fact, Way, hard_difference, hard_sum
from tests.kit.exact import amount


def steps(fact: Fact | None) -> list[tuple[object, object]]:
    """The equalities beside a line."""
    assert fact is not None
    return list(fact.steps)


def equalities(*typed: str) -> list[tuple[object, object]]:
    """The same, typed."""
    links = [read_chains(line)[0].links for line in typed]
    return [(left.says, right.says) for left, right in links]


def test_think_addition() -> None:
    """103 - 87 counts up: 87 + 3 = 90, 90 + 13 = 103, so 16."""
    fact = hard_difference(103, 87)
    assert fact is not None
    assert fact.way is Way.THINK_ADDITION
    assert steps(fact) == equalities("87 + 3 = 90", "90 + 13 = 103", "3 + 13 = 16")


def test_down_through_ten() -> None:
    """16 - 9 goes down through ten: 16 - 6 = 10, 10 - 3 = 7."""
    fact = hard_difference(16, 9)
    assert fact is not None
    assert fact.way is Way.MAKE_TEN
    assert steps(fact) == equalities("16 - 6 = 10", "10 - 3 = 7")


def test_make_ten() -> None:
    """8 + 7 makes ten: 8 + 2 = 10, 10 + 5 = 15."""
    fact = hard_sum(8, 7)
    assert fact is not None
    assert fact.way is Way.MAKE_TEN
    assert steps(fact) == equalities("8 + 2 = 10", "10 + 5 = 15")


def test_just_across_a_ten() -> None:
    """With nothing above the ten there is one step less: 40 - 37 is 37 + 3 = 40."""
    assert steps(hard_difference(40, 37)) == equalities("37 + 3 = 40")


@pytest.mark.parametrize(("first", "second"), [(9, 4), (10, 3), (18, 8), (47, 3), (5, 0)])
def test_an_easy_difference_has_no_aside(first: int, second: int) -> None:
    """Within ten, from ten, or without crossing a ten."""
    assert hard_difference(first, second) is None


@pytest.mark.parametrize(("first", "second"), [(4, 5), (10, 7), (20, 9), (42, 7), (8, 2)])
def test_an_easy_sum_has_no_aside(first: int, second: int) -> None:
    """Up to a ten, or from one."""
    assert hard_sum(first, second) is None


@pytest.mark.more("agreement/test_columns.py")
def test_every_fact_up_to_two_hundred_is_true_and_gives_the_result() -> None:
    """All differences and sums of numbers up to 200: true steps, and the last one says what was asked."""
    for first in range(201):
        for second in range(first + 1):
            for fact in (hard_difference(first, second), hard_sum(first, second)):
                if fact is None:
                    continue
                assert all(amount(left) == amount(right) for left, right in fact.steps)
                if len(fact.steps) > 1:
                    assert amount(fact.steps[-1][1]) == amount(fact.asked)
                else:
                    assert amount(fact.steps[0][0]) == first


def test_a_step_that_is_not_true_is_refused() -> None:
    """No false equals sign beside a line."""
    with pytest.raises(ValueError, match=r"^a step of a fact must be true$"):
        Fact(plus(whole(8), whole(7)), Way.MAKE_TEN, ((plus(whole(8), whole(2)), whole(11)),))
