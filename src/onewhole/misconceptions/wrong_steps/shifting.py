"""Equal shift done on one side or in opposite directions, and pieces taken off that should be added back."""

from onewhole.misconceptions.attempt import written, wrongly
from onewhole.number.ladder import Ladder
from onewhole.number.quantity import Quantity, trimmed, usual
from onewhole.statements.expression import minus, plus
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.jumping import EasierToTake
from onewhole.working.reasons.taking import TakenFromWhole


def shifts_only_the_second(state: PairState) -> PairState:
    """Move the second number up to the next whole and leave the first: 9 5/8 - 5."""
    state = state.now(second=_counted(state.first.ladder, _next_whole(state.second)))
    return wrongly(state, state.joined(trimmed(state.first)))


def shifts_apart(state: PairState) -> PairState:
    """Move the second number up to the next whole and the first down by as much."""
    ladder, up = state.first.ladder, _next_whole(state.second)
    by = up - state.second.parts
    first, second = _counted(ladder, state.first.parts - by), _counted(ladder, up)
    shift = usual(ladder, by * ladder.finest)
    both = minus(trimmed(state.first), shift), plus(trimmed(state.second), shift)
    state = wrongly(state.now(first=first, second=second), minus(*both))
    return state.say(state.joined(trimmed(first)), EasierToTake(trimmed(second)))


def takes(state: PairState) -> PairState:
    """Take the second number, now a whole number, away."""
    return state.now(result=_counted(state.first.ladder, state.first.parts - state.second.parts))


def takes_again(state: PairState) -> PairState:
    """Take the second number from the wholes rightly, then take the pieces off too."""
    ladder = state.first.ladder
    wholes, pieces = state.first.only(0), state.first.only(1)
    left = _counted(ladder, wholes.on(ladder).parts - state.second.parts)
    state = state.say(plus(trimmed(left), pieces), TakenFromWhole(wholes, trimmed(left)))
    result = _counted(ladder, left.parts - state.first.amounts[1])
    return wrongly(state.now(result=result), minus(trimmed(left), pieces))


def _next_whole(number: Quantity) -> int:
    """Return how many pieces the whole above a number is worth."""
    return (number.amounts[0] + 1) * number.ladder.worths[0]


def _counted(ladder: Ladder, parts: int) -> Quantity:
    """Count pieces on the ladder, full wholes put together; BelowZeroError when there are less than none."""
    written(ladder, (0, parts))
    return Quantity(ladder, divmod(parts, ladder.worths[0]))
