"""One unit is opened, and something is lost or invented on the way."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import written, wrongly
from onewhole.number.quantity import trimmed
from onewhole.working.pair_state import PairState

#: From a rung's count and the ratio to the rung above: how many that one loses, the new count of this one.
Rule = Callable[[int, int], tuple[int, int]]
Act = Callable[[PairState], PairState]


def keeps_the_unit(have: int, ratio: int) -> tuple[int, int]:
    """One unit is opened and still counted: 9 5/8 becomes 9 13/8."""
    return 0, have + ratio


def as_ten(have: int, _: int) -> tuple[int, int]:
    """One unit always gives ten: 9 5/8 becomes 8 15/8."""
    return 1, have + 10


def as_hundred(have: int, _: int) -> tuple[int, int]:
    """One unit gives a hundred, as if an hour were written like money."""
    return 1, have + 100


def as_one_piece(have: int, _: int) -> tuple[int, int]:
    """One unit gives one piece: 9 5/8 becomes 8 6/8."""
    return 1, have + 1


def drops_what_was_there(_: int, ratio: int) -> tuple[int, int]:
    """One unit is opened and the pieces already there are lost: 9 5/8 becomes 8 8/8."""
    return 1, ratio


def two_for_one(have: int, ratio: int) -> tuple[int, int]:
    """Two units are taken and one is opened: 9 5/8 becomes 7 13/8."""
    return 2, have + ratio


def loses_the_pieces(have: int, _: int) -> tuple[int, int]:
    """One unit is taken and nothing is made of it: 9 5/8 becomes 8 5/8."""
    return 1, have


def short(state: PairState, rung: int) -> bool:
    """Say whether the first number has too few of a rung's unit."""
    return state.first.amounts[rung] < state.second.amounts[rung]


def changed(state: PairState, rule: Rule, *, needed: bool = True) -> PairState:
    """Change the first number by a rule at every rung that is short (or at every one that is not).

    Nothing is written yet. Raises BelowZeroError when the rung above holds too few.
    """
    counts = list(state.first.amounts)
    for rung in reversed(range(1, len(counts))):
        if (counts[rung] < state.second.amounts[rung]) == needed:
            lost, counts[rung] = rule(counts[rung], state.first.ladder.ratios[rung - 1])
            counts[rung - 1] -= lost
    return state.now(first=written(state.first.ladder, tuple(counts)))


def regroups(rule: Rule, *, needed: bool = True) -> Act:
    """Return the step that opens a unit by a rule and writes the number that comes of it."""

    def act(state: PairState) -> PairState:
        state = changed(state, rule, needed=needed)
        return wrongly(state, state.joined(trimmed(state.first)))

    return act


def regroups_unsaid(rule: Rule) -> Act:
    """Return the step that regroups by a rule without writing a line; the next step writes one for both.

    So two wrong steps make one false line.
    """

    def act(state: PairState) -> PairState:
        return changed(state, rule)

    return act


def regroups_if_that_helps(rule: Rule) -> Act:
    """Return the step that regroups by a rule and writes the line only where the result is enough."""

    def act(state: PairState) -> PairState:
        after = changed(state, rule)
        enough = not any(short(after, rung) for rung in range(1, len(after.first.counts)))
        return wrongly(after, after.joined(trimmed(after.first))) if enough else after

    return act


def takes_from_the_second(state: PairState) -> PairState:
    """Pay for the opened unit out of the second number: 9 13/8 - 3 6/8."""
    paid = list(state.second.amounts)
    for rung in range(1, len(paid)):
        paid[rung - 1] -= short(state, rung)
    state = changed(state, keeps_the_unit)
    state = state.now(second=written(state.second.ladder, tuple(paid)))
    return wrongly(state, state.joined(trimmed(state.first)))


def nothing(state: PairState) -> PairState:
    """Leave the step out."""
    return state
