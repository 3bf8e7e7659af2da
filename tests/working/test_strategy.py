import pytest

from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.count_up import COUNT_UP
from onewhole.working.strategies.moves import unit_by_unit
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.to_fractions import TO_FRACTIONS
from onewhole.working.strategies.units_apart import UNITS_APART
from onewhole.working.strategy import fits


def test_what_a_strategy_is_for() -> None:
    """Taking away, adding, or either."""
    assert [fits(REGROUP_FIRST, taken=taken) for taken in (True, False)] == [True, False]
    assert [fits(UNITS_APART, taken=taken) for taken in (True, False)] == [False, True]
    assert [fits(TO_FRACTIONS, taken=taken) for taken in (True, False)] == [True, True]


def test_a_step_is_replaced_in_a_copy() -> None:
    """The strategy itself stays as it is taught."""

    def other(state: PairState) -> PairState:
        return unit_by_unit(state)

    changed = REGROUP_FIRST.with_step("regroup", other)
    assert changed.steps[0].act is other
    assert changed.steps[1:] == REGROUP_FIRST.steps[1:]
    assert REGROUP_FIRST.steps[0].act is not other


def test_a_step_left_out_does_nothing() -> None:
    """Counting up without the last step ends at the jumps, overfull as they are."""
    state = PairState(Quantity(mixed(6), (5, 4)), Quantity(mixed(6), (2, 1)), taken=True)
    assert COUNT_UP.with_step("usual_form", lambda same: same).run(state).found().counts == (2, 9)
    assert COUNT_UP.run(state).found().counts == (3, 3)


def test_there_is_no_such_step() -> None:
    """Asked for by its name."""
    with pytest.raises(KeyError, match="jump"):
        REGROUP_FIRST.with_step("jump", unit_by_unit)
