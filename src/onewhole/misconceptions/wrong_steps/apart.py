"""The units are worked apart, and not all of them rightly."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import BelowZeroError, written, wrongly
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.number.quantity import Quantity, trimmed
from onewhole.statements.expression import Expression, minus, plus, value
from onewhole.working.pair_state import PairState
from onewhole.working.strategies.moves import unit_by_unit

#: What is done with one unit of both numbers; None when it is left out of the answer.
Move = Callable[[Quantity, Quantity], Expression | None]


def less(first: Quantity, second: Quantity) -> Expression:
    """Take the second from the first; BelowZeroError when it is more."""
    if first.value < second.value:
        msg = "more is taken away than there is"
        raise BelowZeroError(msg)
    return minus(first, second) if second.parts else first


def smaller_from_larger(first: Quantity, second: Quantity) -> Expression:
    """Take the smaller from the larger, whichever number it stands in."""
    return less(first, second) if first.value >= second.value else less(second, first)


def together(first: Quantity, second: Quantity) -> Expression:
    """Add."""
    return plus(*(part for part in (first, second) if part.parts)) if first.parts or second.parts else first


def first_only(first: Quantity, _: Quantity) -> Expression:
    """Keep what the first number has."""
    return first


def left_out(_: Quantity, __: Quantity) -> None:
    """Leave the unit out."""
    return


def none_if_short(first: Quantity, second: Quantity) -> Expression | None:
    """Write nothing where there are too few, as if all of them were gone."""
    return None if first.value < second.value else less(first, second)


def second_if_none(first: Quantity, second: Quantity) -> Expression:
    """Copy the second where the first has none: 0 - N is said to be N."""
    return less(first, second) if first.parts else second


def apart(largest: Move, smaller: Move) -> Act:
    """Return the step that works the largest unit by one move and the smaller ones by another."""

    def act(state: PairState) -> PairState:
        shown: list[Expression] = []
        counts: list[int] = []
        for rung, unit in enumerate(state.first.ladder.units):
            move = smaller if rung else largest
            says = move(state.first.only(rung), state.second.only(rung))
            found = 0 if says is None else (value(says) / unit.size).numerator
            counts.append(found)
            if says is not None and (found or not isinstance(says, Quantity)):
                shown.append(says)
        result = written(state.first.ladder, tuple(counts))
        return wrongly(state.now(result=result), plus(*shown) if shown else trimmed(result))

    return act


def adds_instead(state: PairState) -> PairState:
    """Write a plus sign where the problem takes away."""
    added = PairState(state.first, state.second, taken=False, lines=state.lines)
    return wrongly(added, added.joined(trimmed(state.first)))


def unit_from_unit(state: PairState) -> PairState:
    """Take (or add) each unit rightly; BelowZeroError when the wrong step before left too few of one."""
    pairs = zip(state.first.amounts, state.second.amounts, strict=True)
    written(state.first.ladder, tuple(a - b if state.taken else a + b for a, b in pairs))
    return unit_by_unit(state)
