import pytest

from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.table import STRATEGIES, strategy_named
from onewhole.working.strategy import Strategy
from onewhole.working.way import UnknownStrategyError


def test_every_strategy_is_named_once() -> None:
    """Keys and names are unique, and every partner is in the table and does the other operation as well.

    Columns do both; their partner is for numbers that have no columns.
    """
    assert len({strategy.key for strategy in STRATEGIES}) == len(STRATEGIES) == 10
    assert len({strategy.name for strategy in STRATEGIES}) == 10
    assert (COLUMNS.act.value, COLUMNS.partner) == ("either", "regroup_first")
    for strategy in STRATEGIES:
        if strategy is COLUMNS:
            continue
        partner = strategy_named(strategy.partner)
        assert {strategy.act.value, partner.act.value} in ({"add", "subtract"}, {"either"})


@pytest.mark.parametrize("strategy", STRATEGIES, ids=[strategy.key for strategy in STRATEGIES])
def test_found_by_key_and_by_name(strategy: Strategy) -> None:
    """However it is spaced and capitalised."""
    for typed in (strategy.key, strategy.key.replace("_", " ").upper(), strategy.name, strategy.name.lower()):
        assert strategy_named(typed) is strategy


def test_there_is_no_such_strategy() -> None:
    """With all that there are."""
    with pytest.raises(UnknownStrategyError) as refused:
        strategy_named("borrowing")
    assert str(refused.value) == (
        "there is no strategy called “borrowing”. Choose one of: columns, regroup_first, wholes_first, "
        "to_fractions, count_up, from_whole, equal_shift, units_apart, make_a_whole, jump_on."
    )
    assert isinstance(refused.value, KeyError)
