"""A new numerator over a new denominator; the wholes are worked apart."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import written, wrongly
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Expression, Over, Times, minus, plus, value
from onewhole.working.pair_state import PairState


class Parts(Struct, frozen=True):
    """The numerators and denominators of two mixed numbers.

    >>> of_two(Quantity(mixed(4), (3, 1)), Quantity(mixed(6), (1, 5)))
    Parts(top1=1, bottom1=4, top2=5, bottom2=6)
    """

    top1: int
    bottom1: int
    top2: int
    bottom2: int


#: A numerator or a denominator made of the parts of both numbers, still to be worked out.
Make = Callable[[Parts], Expression]


def of_two(first: Quantity, second: Quantity) -> Parts:
    """Take numerators and denominators of two mixed numbers apart."""
    return Parts(first.amounts[1], first.ladder.denominator, second.amounts[1], second.ladder.denominator)


def tops_added(parts: Parts) -> Expression:
    """Add the numerators."""
    return plus(whole(parts.top1), whole(parts.top2))


def tops_apart(parts: Parts) -> Expression:
    """Take the smaller numerator from the larger."""
    return _apart(parts.top1, parts.top2)


def tops_multiplied(parts: Parts) -> Expression:
    """Multiply the numerators."""
    return Times(whole(parts.top1), whole(parts.top2))


def top_kept(parts: Parts) -> Expression:
    """Keep the first numerator."""
    return whole(parts.top1)


def bottoms_added(parts: Parts) -> Expression:
    """Add the denominators."""
    return plus(whole(parts.bottom1), whole(parts.bottom2))


def bottoms_apart(parts: Parts) -> Expression:
    """Take the smaller denominator from the larger."""
    return _apart(parts.bottom1, parts.bottom2)


def bottoms_multiplied(parts: Parts) -> Expression:
    """Multiply the denominators."""
    return Times(whole(parts.bottom1), whole(parts.bottom2))


def bottom_kept(parts: Parts) -> Expression:
    """Keep the first denominator."""
    return whole(parts.bottom1)


def _apart(one: int, other: int) -> Expression:
    return minus(whole(max(one, other)), whole(min(one, other)))


def cut_anew(top: Make, bottom: Make) -> Act:
    """Return the step that adds or takes the wholes and writes a new numerator over a new denominator.

    The fraction is left as it comes. BelowZeroError when there are more wholes in the second number.
    """

    def act(state: PairState) -> PairState:
        first, second = state.first, state.second
        wholes = (first.only(0), second.only(0))
        parts = of_two(first, second)
        over, under = top(parts), bottom(parts)
        ladder = mixed(value(under).numerator)
        a, b = first.amounts[0], second.amounts[0]
        counts = (a - b if state.taken else a + b, value(over).numerator)
        result = written(ladder, counts)
        shown = minus(*wholes) if state.taken else plus(*wholes)
        fraction = Over(over, under)
        return wrongly(state.now(result=result), plus(shown, fraction) if a or b else fraction)

    return act


def total_as_denominator(state: PairState) -> PairState:
    """After regrouping, cut the wholes into as many pieces as the first number now has: 7 over 13."""
    return cut_anew(tops_apart, lambda parts: whole(parts.top1))(state)


def wholes_into_numerator(state: PairState) -> PairState:
    """Count wholes as pieces: all counts of both numbers over the denominator."""
    counts = (*state.first.amounts, *state.second.amounts)
    ladder = state.first.ladder
    says = Over(plus(*(whole(count) for count in counts if count)), whole(ladder.denominator))
    return wrongly(state.now(result=Quantity(ladder, (0, sum(counts)))), says)
