"""Steps that several ways to multiply share."""

from onewhole.statements.expression import Times
from onewhole.working.line import without_repeats
from onewhole.working.pair_state import PairState
from onewhole.working.products.product_state import ProductState
from onewhole.working.reasons.multiplying import TurnedRound
from onewhole.working.strategies import moves


def turned(state: ProductState) -> ProductState:
    """Put the whole number first, so that it says how many times the other number is taken.

    Source: 3.OA.B.5 (commutative property of multiplication), CCSSM (2010).
    """
    other = ProductState(state.right, state.left)
    if other.times is None or not (state.times is None or len(state.right.counts) < len(state.left.counts)):
        return state
    reason = TurnedRound(state.left, state.right)
    return ProductState(state.right, state.left, state.lines, state.result).say(
        Times(state.right, state.left), reason
    )


def usual_form(state: ProductState) -> ProductState:
    """Say what there is in all, and put full groups together into the next larger unit."""
    found = state.found()
    told = moves.usual_form(PairState(found, found, taken=False, result=found))
    return ProductState(state.left, state.right, without_repeats((*state.lines, *told.lines)), told.result)
