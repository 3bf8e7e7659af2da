"""Every whole is cut, and each share gets one part of every whole: 3 / 4 is 3/4.

Source: 5.NF.B.3, CCSSM (2010).
"""

from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import plus
from onewhole.working.line import without_repeats
from onewhole.working.pair_state import PairState
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.quotient_way import QuotientStep, QuotientWay
from onewhole.working.reasons.dividing import EachWholeCut
from onewhole.working.reasons.unsuited import NotByWholes, Unsuited
from onewhole.working.strategies.moves import usual_form


def cut_wholes(state: QuotientState) -> QuotientState:
    """Write the fraction, and put full wholes together."""
    by = state.right.parts
    fraction = Quantity(mixed(by), (None, state.left.parts))
    state = state.say(fraction, EachWholeCut(state.left.parts, by))
    full = Quantity(fraction.ladder, fraction.amounts)
    told = usual_form(PairState(full, full, taken=False, result=full))
    lines = [line for line in told.lines if line.says != plus(fraction)]
    return QuotientState(state.left, state.right, without_repeats((*state.lines, *lines))).ends(told.found())


def _unsuited(state: QuotientState) -> Unsuited | None:
    return None if state.wholes and state.left.parts and state.right.parts > 1 else NotByWholes()


def _offered(state: QuotientState) -> bool:
    return state.left.parts < state.right.parts


AS_FRACTION = QuotientWay(
    key="as_fraction",
    name="As a fraction: cut every whole",
    steps=(QuotientStep("cut_wholes", cut_wholes),),
    unsuited=_unsuited,
    offered=_offered,
)
