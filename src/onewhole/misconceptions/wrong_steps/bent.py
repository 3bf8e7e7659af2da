"""A strategy with steps replaced, run on a problem: what most patterns are."""

from collections.abc import Callable, Mapping

from onewhole.misconceptions.attempt import Attempt, Outcome, finished
from onewhole.misconceptions.pair import Pair, like_parts
from onewhole.misconceptions.wrong_steps.apart import unit_from_unit
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.misconceptions.wrong_steps.writing import as_it_comes
from onewhole.statements.statement import Statement
from onewhole.working.bench import Bench
from onewhole.working.strategy import Strategy

Try = Callable[[Statement], Attempt | None]

#: Whether a pattern applies to two numbers on one ladder.
When = Callable[[Bench], bool]

#: Other ways to write what the same wrong step gives.
Also = Callable[[Bench], tuple[Outcome, ...]]


def no_other(_: Bench) -> tuple[Outcome, ...]:
    """There is one way only to write it."""
    return ()


#: Steps that a bent strategy takes as a child may: the answer is written as it comes.
_AS_A_CHILD = {"unit_by_unit": unit_from_unit, "usual_form": as_it_comes}


def bent(strategy: Strategy, steps: Mapping[str, Act]) -> Strategy:
    """Return a strategy with some steps replaced.

    own = {key: act for key, act in _AS_A_CHILD.items() if key in known}
    for key, act in (own | dict(steps)).items():
    """
    known = {step.key for step in strategy.steps}
    for key, act in {**{key: act for key, act in _AS_A_CHILD.items() if key in known}, **steps}.items():
        strategy = strategy.with_step(key, act)
    return strategy


def run(pair: Pair, bench: Bench, strategy: Strategy, also: tuple[Outcome, ...] = ()) -> Attempt:
    """Work a pair by a bent strategy."""
    return finished(pair.asked, strategy.run(bench), also)


def on_like_parts(strategy: Strategy, when: When, *, taken: bool, also: Also = no_other) -> Try:
    """Return the attempt at a sum or difference with like denominators by a bent strategy."""

    def attempt(statement: Statement) -> Attempt | None:
        found = like_parts(statement, taken=taken)
        if found is None or not when(found[1]):
            return None
        pair, bench = found
        return run(pair, bench, strategy, also(bench))

    return attempt
