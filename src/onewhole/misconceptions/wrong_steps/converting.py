"""Both numbers are turned into one fraction by a wrong rule, then the numerators are worked rightly."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import wrongly
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.number.quantity import Quantity, trimmed
from onewhole.working.pair_state import PairState

#: From wholes, numerator and denominator: how many pieces the number is said to be.
Convert = Callable[[int, int, int], int]


def whole_and_top_added(wholes: int, top: int, _: int) -> int:
    """9 5/8 is said to be 14/8."""
    return wholes + top


def whole_times_top(wholes: int, top: int, _: int) -> int:
    """9 5/8 is said to be 45/8."""
    return wholes * top


def top_forgotten(wholes: int, _: int, bottom: int) -> int:
    """9 5/8 is said to be 72/8."""
    return wholes * bottom


def side_by_side(wholes: int, top: int, _: int) -> int:
    """9 5/8 is said to be 95/8."""
    return int(f"{wholes}{top}")


def whole_as_pieces(wholes: int, top: int, bottom: int) -> int:
    """4 is said to be 4/8; a mixed number is turned rightly."""
    return wholes * bottom + top if top else wholes


def fractions_as_they_are(convert: Convert) -> Convert:
    """Return a rule that leaves a fraction without wholes as it is."""

    def kept(wholes: int, top: int, bottom: int) -> int:
        return convert(wholes, top, bottom) if wholes else top

    return kept


def converts(rule: Convert) -> Act:
    """Return the step that turns both numbers into one fraction by a rule.

    Both go wrong in one line. When the first comes out smaller, it is the one that is taken away.
    """

    def act(state: PairState) -> PairState:
        ladder = state.first.ladder
        pieces = [_by(rule, state.first), _by(rule, state.second)]
        if state.taken:
            pieces.sort(reverse=True)
        first, second = (Quantity(ladder, (0, count)) for count in pieces)
        state = state.now(first=first, second=second)
        return wrongly(state, state.joined(trimmed(first)))

    return act


def _by(rule: Convert, number: Quantity) -> int:
    wholes, top = number.amounts
    return rule(wholes, top, number.ladder.denominator)
