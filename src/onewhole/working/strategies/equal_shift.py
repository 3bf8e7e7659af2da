"""Equal shift: add the same to both numbers so that a whole is taken; the distance between them stays.

Source: common practice, no source.
"""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, counted_in_parts, landmark, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.jumping import EasierToTake, SameToBoth
from onewhole.working.reasons.unsuited import NoShiftNeeded, ShiftNoEasier, Unsuited
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
    by = shift_of(state.second)
    if not by:
        return NoShiftNeeded(trimmed(state.second))
    shifted = landmark(state.first.ladder, by)
    return None if easily_said(shifted) else ShiftNoEasier(trimmed(state.second), shifted)


def easily_said(number: Quantity) -> bool:
    """Say whether a whole number or decimal has one digit but zeros: 3, 70, 0.2; other numbers always do.

    To find 722 for 1,278 is a subtraction of its own. Common practice, no source.

    >>> from onewhole.number.quantity import whole
    >>> easily_said(whole(70)), easily_said(whole(722))
    (True, False)
    """
    places = number.ladder.style in {Style.PLACES, Style.DECIMAL}
    return not places or sum(map(bool, number.amounts)) == 1


EQUAL_SHIFT = Strategy(
    key="equal_shift",
    name="Equal shift: add the same to both",
    act=Act.SUBTRACT,
    partner="make_a_whole",
    steps=(Step("shift", shift), Step("take", take), Step("usual_form", usual_form)),
    unsuited=_unsuited,
)
