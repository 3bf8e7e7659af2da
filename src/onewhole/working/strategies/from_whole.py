"""Take it all from the whole, then add back the pieces that were set aside.

Source: common practice, no source.
"""

from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.taking import OpenedToTake, SetAside, TakenFromWhole
from onewhole.working.reasons.unsuited import NothingToSetAside, Unsuited, WholeTooSmall
from onewhole.working.strategies.moves import enough_of_each, total, usual_form
from onewhole.working.strategy import Act, Step, Strategy, short_numbers


def _parted(quantity: Quantity) -> tuple[Quantity, Quantity]:
    """Part the largest unit from the rest: 7 2/6 as 7 and 2/6."""
    return quantity.only(0), quantity.only(*range(1, len(quantity.counts)))


def set_aside(state: PairState) -> PairState:
    """Part the wholes of the first number from its pieces."""
    wholes, pieces = _parted(state.first)
    reason = SetAside(wholes, pieces)
    return state.say(plus(minus(wholes, trimmed(state.second)), pieces), reason)


def take_from_whole(state: PairState) -> PairState:
    """Take the second number from the wholes."""
    wholes, pieces = _parted(state.first)
    ladder, second = state.first.ladder, state.second
    opened = enough_of_each(PairState(wholes.on(ladder), second, taken=True)).first
    reason = OpenedToTake(wholes, trimmed(opened))
    state = state.say(plus(minus(trimmed(opened), trimmed(second)), pieces), reason, aside=True)
    left = landmark(ladder, wholes.on(ladder).parts - second.parts)
    state = state.say(plus(left, pieces), TakenFromWhole(wholes, left))
    return total(state, left, pieces)


def _unsuited(state: PairState) -> Unsuited | None:
    wholes, pieces = _parted(state.first)
    if not pieces.parts:
        return NothingToSetAside(trimmed(state.first))
    if wholes.value < state.second.value:
        return WholeTooSmall(wholes, trimmed(state.second))
    return None


FROM_WHOLE = Strategy(
    key="from_whole",
    name="Take it from the whole, then add back",
    act=Act.SUBTRACT,
    partner="units_apart",
    steps=(
        Step("set_aside", set_aside),
        Step("take_from_whole", take_from_whole),
        Step("usual_form", usual_form),
    ),
    unsuited=_unsuited,
    offered=short_numbers,
)
