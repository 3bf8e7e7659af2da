"""A strategy run with some steps replaced: most patterns are defined in this way."""

from collections.abc import Callable, Mapping

from msgspec import Struct
from msgspec.structs import replace

from onewhole.misconceptions.attempt import Attempt, Outcome, finished
from onewhole.misconceptions.bend import Bend, BentTry
from onewhole.misconceptions.pair import Pair, like_parts, pair_of, renamed_parts
from onewhole.misconceptions.wrong_steps.apart import unit_from_unit
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.misconceptions.wrong_steps.writing import as_it_comes
from onewhole.number.clock import on_clock
from onewhole.number.ladder import Style, joined
from onewhole.number.quantity import Quantity, usual
from onewhole.statements.clock_sides import time_asked
from onewhole.statements.expression import Sum
from onewhole.statements.statement import Statement
from onewhole.working.pair_state import PairState
from onewhole.working.strategy import Strategy

_UNITS = 2

#: Whether a pattern applies to two numbers on one ladder.
When = Callable[[PairState], bool]

#: Other ways to write what the same wrong step gives.
Also = Callable[[PairState], tuple[Outcome, ...]]


def no_other(_: PairState) -> tuple[Outcome, ...]:
    """There is one way only to write it."""
    return ()


#: Steps that every bent strategy replaces: a child may write the answer without regrouping it.
_AS_A_CHILD = {"unit_by_unit": unit_from_unit, "usual_form": as_it_comes}


class Bent(Struct, frozen=True):
    """A strategy as it runs with some steps replaced, and which steps of the taught one those are."""

    runs: Strategy
    bends: Bend

    def attempt(self, pair: Pair, state: PairState, also: tuple[Outcome, ...] = ()) -> Attempt:
        """Work a pair."""
        return finished(pair.asked, self.runs.run(state), also)


def bent(taught: Strategy, steps: Mapping[str, Act]) -> Bent:
    """Return a strategy with some steps replaced; KeyError when it has no step of such a name.

    A step that is replaced by itself is not bent.

    >>> from onewhole.misconceptions.wrong_steps.regrouping import nothing
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> bent(REGROUP_FIRST, {"regroup": nothing}).bends.steps
    ('regroup',)
    """
    own = {step.key: step.act for step in taught.steps}
    runs = taught
    for key, act in {**{key: act for key, act in _AS_A_CHILD.items() if key in own}, **steps}.items():
        runs = runs.with_step(key, act)
    return Bent(runs, Bend(taught.key, tuple([key for key in own if steps.get(key, own[key]) != own[key]])))


def on_like_parts(strategy: Bent, when: When, *, taken: bool, also: Also = no_other) -> BentTry:
    """Return the attempt at a sum or difference with like denominators by a bent strategy."""

    def attempt(statement: Statement) -> Attempt | None:
        found = like_parts(statement, taken=taken)
        if found is None or not when(found[1]):
            return None
        pair, state = found
        return strategy.attempt(pair, state, also(state))

    return BentTry(strategy.bends, attempt)


def on_parts(strategy: Bent, when: When, *, taken: bool) -> BentTry:
    """Return the attempt at a sum or difference by a bent strategy; unlike denominators are renamed first.

    The renaming is right, so that the false line is the one that the bent step writes.
    """

    def renamed(statement: Statement) -> Attempt | None:
        found = renamed_parts(statement, taken=taken)
        return strategy.attempt(*found) if found is not None and when(found[1]) else None

    return on_like_parts(strategy, when, taken=taken).also(renamed)


def on_units(strategy: Bent, when: When, *, taken: bool) -> BentTry:
    """Return the attempt at a sum or difference of measures in two units or more by a bent strategy."""

    def attempt(statement: Statement) -> Attempt | None:
        pair = pair_of(statement)
        if pair is None or pair.taken != taken or pair.styles != {Style.MEASURE}:
            return None
        ladder = joined(pair.first.ladder, pair.second.ladder)
        if len(ladder.units) < _UNITS:
            return None
        state = pair.state(ladder)
        return _as_time_of_day(strategy.attempt(pair, state)) if when(state) else None

    return BentTry(strategy.bends, attempt)


def _as_time_of_day(tried: Attempt) -> Attempt:
    """Write the answer as a clock shows it where a time of day is asked for and the minutes fill no hour."""
    asked, wrote = tried.lines[0].says, tried.wrote
    like = time_asked(asked) if isinstance(asked, Sum) else None
    if like is None or not isinstance(wrote, Quantity) or usual(wrote.ladder, wrote.value) != wrote:
        return tried
    return replace(tried, wrote=on_clock(wrote, like), also=(wrote, *tried.also))
