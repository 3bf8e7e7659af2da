import pytest

from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.reading import read_expression
from onewhole.working.fact import hard_difference
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.taking import Left

FIRST, SECOND = Quantity(mixed(6), (7, 2)), Quantity(mixed(6), (0, 5))


def test_what_is_written_is_joined_with_the_second_number() -> None:
    """Added or taken away, without zero wholes."""
    assert PairState(FIRST, SECOND, taken=True).joined(FIRST) == read_expression("7 2/6 - 5/6")
    assert PairState(FIRST, SECOND, taken=False).joined(whole(7), whole(1)) == read_expression("7 + 1 + 5/6")


def test_a_bench_is_not_changed_by_going_on() -> None:
    """Each step gives the next state; the one before stays."""
    state = PairState(FIRST, SECOND, taken=True)
    after = state.say(FIRST, Left(FIRST)).now(result=FIRST)
    assert (state.lines, state.result) == ((), None)
    assert ([line.says for line in after.lines], after.found()) == ([FIRST], FIRST)
    assert (after.first, after.second) == (FIRST, SECOND)


def test_facts_that_are_none_are_left_out() -> None:
    """Only a hard fact stands beside a line."""
    fact = hard_difference(16, 9)
    state = PairState(FIRST, SECOND, taken=True).say(FIRST, Left(FIRST), facts=[None, fact, None])
    assert state.lines[0].facts == (fact,)


def test_no_result_yet() -> None:
    """Asking too early is a fault in a strategy."""
    with pytest.raises(ValueError, match=r"^the last step has not found a result yet$"):
        PairState(FIRST, SECOND, taken=True).found()
