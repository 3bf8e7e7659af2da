from collections.abc import Callable

import pytest

from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Topic
from onewhole.misconceptions.wrong_steps.bent import bent
from onewhole.misconceptions.wrong_steps.regrouping import nothing
from onewhole.statements.reading import read_statement
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import strategy_named
from onewhole.working.strategy import Strategy


def test_bent_steps_are_those_that_differ() -> None:
    """A step replaced by itself is not bent, and one that the strategy lacks is refused."""
    own = REGROUP_FIRST.steps[-1].act
    assert bent(REGROUP_FIRST, {"regroup": nothing, "usual_form": own}).bends.steps == ("regroup",)
    with pytest.raises(KeyError):
        bent(REGROUP_FIRST, {"fold": nothing})


def test_a_pattern_that_says_it_bends_a_strategy_runs_one(monkeypatch: pytest.MonkeyPatch) -> None:
    """On its own example each runs a strategy of the key that it tells, and no other pattern runs any.

    What goes wrong in the order of several steps, or in reading a line plot, has each step worked in a right
    way: these are passed over.
    """
    ran: list[str] = []
    run: Callable[[Strategy, PairState], PairState] = Strategy.run

    def noted(strategy: Strategy, state: PairState) -> PairState:
        ran.append(strategy.key)
        return run(strategy, state)

    monkeypatch.setattr(Strategy, "run", noted)
    for pattern in (one for one in patterns() if one.topic not in {Topic.STEPS, Topic.PLOTS}):
        ran.clear()
        pattern.attempt(read_statement(pattern.example.problem))
        assert ran == ([pattern.bends.strategy] if pattern.bends else []), pattern.id


def test_the_steps_told_are_not_those_of_the_taught_strategy() -> None:
    """56 run a taught strategy with steps replaced, and tell steps that it has."""
    runs = [pattern for pattern in patterns() if pattern.bends is not None]
    assert len(runs) == 56
    for pattern in runs:
        assert pattern.bends is not None
        assert set(pattern.bends.steps) <= {step.key for step in strategy_named(pattern.bends.strategy).steps}
