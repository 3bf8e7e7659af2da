"""Take the wholes first, then regroup only if the pieces need it.

Source: common practice, no source; the order of a number line (jump back the wholes, then the pieces).
"""

from onewhole.number.quantity import Quantity, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.fact import hard_difference
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.taking import LargerUnitFirst, PiecesTaken, UnitsTaken
from onewhole.working.reasons.unsuited import NoWholesToTake, Unsuited
from onewhole.working.strategies.moves import enough_at, something, usual_form
from onewhole.working.strategy import Act, Step, Strategy, short_numbers


def take_wholes(state: PairState) -> PairState:
    """Take every unit but the smallest, the largest first."""
    last = len(state.first.counts) - 1
    for rung in range(last):
        if state.second.amounts[rung]:
            state = _take(enough_at(state, rung), rung)
    return state


def regroup(state: PairState) -> PairState:
    """Open one whole if there are too few pieces."""
    return enough_at(state, len(state.first.counts) - 1)


def take_pieces(state: PairState) -> PairState:
    """Take the smallest units."""
    last = len(state.first.counts) - 1
    if not state.second.amounts[last]:
        return state.now(result=state.first)
    stays = state.first.only(*range(last))
    have, gone = state.first.amounts[last], state.second.amounts[last]
    pieces = minus(state.first.only(last), state.second.only(last))
    reason = PiecesTaken(state.first.ladder.units[last], have, gone)
    says = plus(stays, pieces) if stays.parts else pieces
    state = state.say(says, reason, aside=True, facts=[hard_difference(have, gone)])
    left = (*state.first.amounts[:last], have - gone)
    return state.now(result=Quantity(state.first.ladder, left))


def _take(state: PairState, rung: int) -> PairState:
    first, second = state.first, state.second
    gone = second.only(rung)
    rest = Quantity(second.ladder, tuple(n * (at != rung) for at, n in enumerate(second.amounts)))
    left = Quantity(
        first.ladder, tuple(a - (at == rung) * second.amounts[at] for at, a in enumerate(first.amounts))
    )
    more = (trimmed(rest),) if rest.parts else ()
    state = state.say(
        minus(trimmed(first), gone, *more),
        LargerUnitFirst(first.ladder.units[rung], second.amounts[rung]),
        aside=True,
    )
    reason = UnitsTaken(first.ladder.units[rung], first.amounts[rung], second.amounts[rung])
    fact = hard_difference(first.amounts[rung], second.amounts[rung])
    state = state.say(minus(*something(trimmed(left)), *more), reason, facts=[fact])
    return state.now(first=left, second=rest)


def _unsuited(state: PairState) -> Unsuited | None:
    if any(state.second.amounts[:-1]):
        return None
    return NoWholesToTake(trimmed(state.second))


WHOLES_FIRST = Strategy(
    key="wholes_first",
    name="Take the wholes first, then regroup",
    act=Act.SUBTRACT,
    partner="jump_on",
    steps=(
        Step("take_wholes", take_wholes),
        Step("regroup", regroup),
        Step("take_pieces", take_pieces),
        Step("usual_form", usual_form),
    ),
    unsuited=_unsuited,
    offered=short_numbers,
)
