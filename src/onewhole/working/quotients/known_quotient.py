"""By heart, thinking of the multiplication: 42 / 6 is 7 because 6 times 7 is 42.

Sources: 3.OA.B.6 (an unknown-factor problem) and 3.OA.C.7 (the facts from memory), CCSSM (2010).
"""

from onewhole.number.ladder import TEN
from onewhole.number.quantity import whole
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.quotient_way import QuotientStep, QuotientWay
from onewhole.working.reasons.dividing import KnownQuotient
from onewhole.working.reasons.unsuited import NoFactKnown, Unsuited


def known(state: QuotientState) -> QuotientState:
    """Write the quotient."""
    result = whole(state.left.parts // state.right.parts)
    return state.say(result, KnownQuotient(state.right.parts, result.parts)).ends(result)


def _unsuited(state: QuotientState) -> Unsuited | None:
    number, by = state.left.parts, state.right.parts
    fact = state.wholes and by <= TEN and number <= TEN * by and number % by == 0
    return None if fact else NoFactKnown()


def _offered(_: QuotientState) -> bool:
    return True


KNOWN_QUOTIENT = QuotientWay(
    key="known_quotient",
    name="By heart: think of the multiplication",
    steps=(QuotientStep("known", known),),
    unsuited=_unsuited,
    offered=_offered,
)
