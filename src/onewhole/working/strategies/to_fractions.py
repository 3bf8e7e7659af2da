"""Change both numbers to the smallest unit: fractions greater than one, inches, tenths; then add or subtract.

Source: 4.NF.B.3.c names replacing each mixed number by an equal fraction; CCSSM (2010). Changing by adding
(7 = 42/6, and 2/6 more) follows the Progressions for Fractions 3-5, grade 4 part (from memory).
"""

from onewhole.number.ladder import Ladder, Style
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression, Over, Term, minus, plus
from onewhole.statements.expression import Sum as Row
from onewhole.working.fact import hard_difference, hard_sum
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.renaming import AllInPieces, WholesInPieces
from onewhole.working.reasons.taking import PiecesAdded, PiecesTaken
from onewhole.working.reasons.unsuited import AllOnesAlready, Unsuited
from onewhole.working.strategies.moves import something, usual_form
from onewhole.working.strategy import Act, Step, Strategy


def in_smallest(quantity: Quantity) -> Quantity:
    """Return the same amount with everything on the last rung: 7 2/6 as 44/6."""
    return Quantity(quantity.ladder, (*(0,) * (len(quantity.counts) - 1), quantity.parts))


def change(state: PairState) -> PairState:
    """Write both numbers in the smallest unit."""
    first, second = in_smallest(state.first), in_smallest(state.second)
    small = first.ladder.units[-1]
    if any(state.first.amounts[:-1]) or any(state.second.amounts[:-1]):
        parts = Row((Term(_spread(state.first)), Term(_spread(state.second), taken=state.taken)))
        reason = WholesInPieces(*_worth(first.ladder))
        state = state.say(parts, reason, aside=True)
    state = state.now(first=first, second=second)
    return state.say(state.joined(trimmed(first)), AllInPieces(small, first.parts, second.parts))


def _worth(ladder: Ladder) -> tuple[Unit, Unit, int]:
    """Return the unit that is said in pieces, the pieces, and how many: a one in tenths, a foot in inches.

    Of a decimal it is the one, however many places stand before it.
    """
    rung = len(ladder.units) - 1 - ladder.after if ladder.style is Style.DECIMAL else 0
    return ladder.units[rung], ladder.units[-1], ladder.worths[rung]


def join(state: PairState) -> PairState:
    """Add or subtract the smallest units."""
    a, b, taken = state.first.parts, state.second.parts, state.taken
    count = a - b if taken else a + b
    small = state.first.ladder.units[-1]
    reason = PiecesTaken(small, a, b) if taken else PiecesAdded(small, a, b)
    if state.first.ladder.style is Style.MIXED:
        tops = whole(a), whole(b)
        top = minus(*tops) if taken else plus(*tops)
        says = Over(top, whole(state.first.ladder.denominator))
        fact = hard_difference(a, b) if taken else hard_sum(a, b)
        state = state.say(says, reason, aside=True, facts=[fact])
    result = Quantity(state.first.ladder, (*(0,) * (len(state.first.counts) - 1), count))
    return state.now(result=result)


def _spread(quantity: Quantity) -> Expression:
    """Write wholes in pieces beside the pieces already there: 42/6 + 2/6."""
    last = len(quantity.counts) - 1
    wholes = quantity.only(*range(last))
    as_pieces = Quantity(quantity.ladder, (*(0,) * last, wholes.on(quantity.ladder).parts)).only(last)
    return plus(*something(as_pieces, quantity.only(last)))


def _unsuited(state: PairState) -> Unsuited | None:
    if state.first.ladder.style is Style.PLACES:
        return AllOnesAlready()
    return None


TO_FRACTIONS = Strategy(
    key="to_fractions",
    name="Change both to fractions greater than one",
    act=Act.EITHER,
    partner="to_fractions",
    steps=(Step("change", change), Step("join", join), Step("usual_form", usual_form)),
    unsuited=_unsuited,
)
