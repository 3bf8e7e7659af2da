"""Equal shift: add the same to both numbers so that a whole is taken; the distance between them stays.

Source: common practice, no source.
"""

from onewhole.number.quantity import Quantity, counted_in_parts, landmark, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.jumping import EasierToTake, SameToBoth
from onewhole.working.reasons.unsuited import NoShiftNeeded, Unsuited
from onewhole.working.strategies.moves import usual_form
from onewhole.working.strategy import Act, Step, Strategy


def shift_of(second: Quantity) -> int:
    """Return how many of the smallest unit bring a number up to a whole one of its largest written unit.

    0 if it is one already. The unit to fill is never the smallest of all.

    >>> from onewhole.number.ladder import mixed
    >>> shift_of(Quantity(mixed(6), (3, 5)))
    1
    """
    worths = second.ladder.worths[:-1]
    written = [worth for worth, count in zip(worths, second.amounts, strict=False) if count]
    filled = (written or worths[-1:] or [1])[0]
    return -second.parts % filled


def shift(state: PairState) -> PairState:
    """Add the same to both numbers."""
    ladder = state.first.ladder
    more = shift_of(state.second)
    by = landmark(ladder, more)
    reason = SameToBoth(by, trimmed(state.second))
    says = minus(plus(trimmed(state.first), by), plus(trimmed(state.second), by))
    state = state.say(says, reason, aside=True)
    first, second = (
        landmark(ladder, state.first.parts + more),
        landmark(ladder, state.second.parts + more),
    )
    state = state.say(minus(first, second), EasierToTake(second))
    return state.now(first=first.on(ladder), second=second.on(ladder))


def take(state: PairState) -> PairState:
    """Take the whole away."""
    ladder = state.first.ladder
    return state.now(result=counted_in_parts(ladder, state.first.parts - state.second.parts))


def _unsuited(state: PairState) -> Unsuited | None:
    if shift_of(state.second):
        return None
    return NoShiftNeeded(trimmed(state.second))


EQUAL_SHIFT = Strategy(
    key="equal_shift",
    name="Equal shift: add the same to both",
    act=Act.SUBTRACT,
    partner="make_a_whole",
    steps=(Step("shift", shift), Step("take", take), Step("usual_form", usual_form)),
    unsuited=_unsuited,
)
