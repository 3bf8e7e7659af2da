"""The answer is found, and then written in another way or with a slip."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import written, wrongly
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.number.ladder import TEN
from onewhole.number.quantity import trimmed, usual
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.taking import InAll, Left

#: From a count of a smaller unit and how many make one of the next: how many go up, and what is left.
Carry = Callable[[int, int], tuple[int, int]]

HUNDRED = 100


def as_it_comes(state: PairState) -> PairState:
    """Write the result without putting full groups together: 5 11/8 stays 5 11/8."""
    result = trimmed(state.found())
    return state.say(result, Left(result) if state.taken else InAll(result))


def swapped(state: PairState) -> PairState:
    """Write 39/8 with the remainder as wholes and the quotient as numerator: 7 4/8."""
    wholes, pieces = _divided(state)
    return _answered(as_it_comes(state), (pieces, wholes))


def carries(rule: Carry) -> Act:
    """Return the step that carries by a rule at every smaller unit, the smallest first."""

    def act(state: PairState) -> PairState:
        found = state.found()
        counts = list(found.amounts)
        for rung in reversed(range(1, len(counts))):
            up, counts[rung] = rule(counts[rung], found.ladder.ratios[rung - 1])
            counts[rung - 1] += up
        return _answered(as_it_comes(state), tuple(counts))

    return act


def drops_the_new_whole(count: int, ratio: int) -> tuple[int, int]:
    """Take a full whole out of the pieces and do not add it to the wholes: 3 7/5 becomes 3 2/5."""
    return (0, count - ratio) if count >= ratio else (0, count)


def keeps_the_pieces(count: int, ratio: int) -> tuple[int, int]:
    """Add the new whole and leave its pieces too: 3 7/5 becomes 4 7/5."""
    return (1, count) if count >= ratio else (0, count)


def whole_of_ten(count: int, ratio: int) -> tuple[int, int]:
    """Make a larger unit of ten smaller ones, whatever they are: 7 13/8 becomes 8 3/8."""
    return (1, count - TEN) if count >= TEN else divmod(count, ratio)


def large_of_a_hundred(count: int, _: int) -> tuple[int, int]:
    """Make one of the larger unit of every hundred: 3 h 105 min becomes 4 h 5 min."""
    return divmod(count, HUNDRED)


def off_by(larger: int, smallest: int) -> Act:
    """Return the step that finds the result, off by so many of the largest and of the smallest unit."""

    def act(state: PairState) -> PairState:
        first, second = state.first, state.second
        ladder = first.ladder
        right = first.parts - second.parts if state.taken else first.parts + second.parts
        parts = right + larger * ladder.worths[0] + smallest
        written(ladder, (*(0,) * (len(ladder.units) - 1), parts))
        result = usual(ladder, parts * ladder.finest)
        return wrongly(state.now(result=result.on(ladder)), result)

    return act


def _divided(state: PairState) -> tuple[int, int]:
    """Part the result into full wholes and the pieces left over."""
    result = state.found()
    return divmod(result.parts, result.ladder.worths[0])


def _answered(state: PairState, counts: tuple[int, ...]) -> PairState:
    """Write the answer with other counts."""
    answer = written(state.found().ladder, counts)
    return wrongly(state.now(result=answer), trimmed(answer))
