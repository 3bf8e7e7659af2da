"""Make a whole: give the first number what it lacks, out of the second.

Source: common practice, no source (make a ten, carried to wholes).
"""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.jumping import GivenToMakeOne, WholeAndRest
from onewhole.working.reasons.unsuited import FilledNotRound, NothingLacking, TooLittleToGive, Unsuited
from onewhole.working.strategies.moves import total, usual_form
from onewhole.working.strategy import Act, Step, Strategy

#: Numbers of so many places make a ten easily.
TENS_AND_ONES = 2


def lacking(first: Quantity) -> int:
    """Return how many of its smallest unit a number lacks to the next one of the unit above; 0 if none.

    >>> from onewhole.number.ladder import mixed
    >>> lacking(Quantity(mixed(5), (2, 4)))
    1
    """
    ratios = first.ladder.ratios
    return -first.parts % ratios[-1] if ratios else 0


def give(state: PairState) -> PairState:
    """Move the missing pieces from the second number to the first."""
    ladder = state.first.ladder
    lacks = lacking(state.first)
    by = landmark(ladder, lacks)
    reason = GivenToMakeOne(trimmed(state.first), by)
    says = plus(plus(trimmed(state.first), by), minus(trimmed(state.second), by))
    state = state.say(says, reason, aside=True)
    filled = landmark(ladder, state.first.parts + lacks)
    rest = landmark(ladder, state.second.parts - lacks)
    state = state.say(plus(filled, rest), WholeAndRest(filled, rest))
    return total(state, filled, rest)


def _unsuited(state: PairState) -> Unsuited | None:
    lacks = lacking(state.first)
    if not lacks:
        return NothingLacking(trimmed(state.first))
    if state.second.parts < lacks:
        return TooLittleToGive(trimmed(state.first), trimmed(state.second))
    if not _round(state.first, lacks):
        return FilledNotRound(trimmed(state.first), landmark(state.first.ladder, lacks))
    return None


def _round(first: Quantity, lacks: int) -> bool:
    """Say whether a number filled up is easy to add to.

    A mixed number and a measure are; so is a decimal that becomes whole, and a whole number below 100 or one
    with a single digit but zeros. Common practice, no source.
    """
    ladder = first.ladder
    if ladder.style not in {Style.PLACES, Style.DECIMAL}:
        return True
    filled = landmark(ladder, first.parts + lacks)
    if ladder.style is Style.DECIMAL:
        return filled.ladder.style is Style.PLACES
    return len(trimmed(first).counts) <= TENS_AND_ONES or sum(map(bool, filled.amounts)) == 1


MAKE_A_WHOLE = Strategy(
    key="make_a_whole",
    name="Make a whole",
    act=Act.ADD,
    partner="equal_shift",
    steps=(Step("give", give), Step("usual_form", usual_form)),
    unsuited=_unsuited,
)
