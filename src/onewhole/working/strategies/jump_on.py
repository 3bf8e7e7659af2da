"""Jump on along the number line from the first number: wholes, then to the next whole, then the rest.

Source: common practice, no source (number line diagrams of 4.NF.B.3 and 3.MD.A.1).
"""

from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.statements.expression import plus
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.jumping import JumpedTo, JumpedToWhole, JumpedWholes
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.strategies.make_a_whole import lacking
from onewhole.working.strategies.moves import something, total, usual_form
from onewhole.working.strategy import Act, Step, Strategy, short_numbers


def jump_wholes(state: PairState) -> PairState:
    """Jump on by the larger units of the second number."""
    ladder, last = state.first.ladder, len(state.first.counts) - 1
    wholes, pieces = state.second.only(*range(last)), state.second.only(last)
    start = trimmed(state.first)
    if not wholes.parts:
        return state
    reason = JumpedWholes(start, wholes)
    state = state.say(plus(start, *something(wholes, pieces)), reason, aside=True)
    reached = landmark(ladder, state.first.parts + wholes.on(ladder).parts)
    state = state.say(plus(*something(reached, pieces)), JumpedTo(reached))
    rest = Quantity(ladder, (*(0,) * last, state.second.amounts[last]))
    return state.now(first=reached.on(ladder), second=rest)


def jump_pieces(state: PairState) -> PairState:
    """Jump to the next whole, then on by what is left."""
    ladder = state.first.ladder
    lacks, pieces = lacking(state.first), state.second
    if not 0 < lacks <= pieces.parts:
        return total(state, trimmed(state.first), trimmed(pieces))
    by, rest = landmark(ladder, lacks), landmark(ladder, pieces.parts - lacks)
    start = trimmed(state.first)
    reason = JumpedToWhole(start, by)
    state = state.say(plus(start, *something(by, rest)), reason, aside=True)
    reached = landmark(ladder, state.first.parts + lacks)
    state = state.say(plus(*something(reached, rest)), JumpedTo(reached))
    return total(state, reached, rest)


def _always(_: PairState) -> Unsuited | None:
    return None


JUMP_ON = Strategy(
    key="jump_on",
    name="Jump on along the number line",
    act=Act.ADD,
    partner="count_up",
    steps=(
        Step("jump_wholes", jump_wholes),
        Step("jump_pieces", jump_pieces),
        Step("usual_form", usual_form),
    ),
    unsuited=_always,
    offered=short_numbers,
)
