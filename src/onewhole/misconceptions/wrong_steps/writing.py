"""The answer is found, and then written in another way or with a slip."""

from onewhole.misconceptions.attempt import written, wrongly
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.number.quantity import trimmed, usual
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.taking import InAll, Left


def as_it_comes(state: PairState) -> PairState:
    """Write the result without putting full groups together: 5 11/8 stays 5 11/8."""
    result = trimmed(state.found())
    return state.say(result, Left(result) if state.taken else InAll(result))


def swapped(state: PairState) -> PairState:
    """Write 39/8 with the remainder as wholes and the quotient as numerator: 7 4/8."""
    wholes, pieces = _divided(state)
    return _answered(as_it_comes(state), (pieces, wholes))


def drops_the_new_whole(state: PairState) -> PairState:
    """Take a full whole out of the pieces and do not add it to the wholes: 3 7/5 becomes 3 2/5."""
    wholes, pieces = state.found().amounts
    return _answered(as_it_comes(state), (wholes, pieces - state.first.ladder.ratios[-1]))


def keeps_the_pieces(state: PairState) -> PairState:
    """Add the new whole and leave its pieces too: 3 7/5 becomes 4 7/5."""
    wholes, pieces = state.found().amounts
    return _answered(as_it_comes(state), (wholes + 1, pieces))


def whole_of_ten(state: PairState) -> PairState:
    """Make a larger unit of ten smaller ones, whatever they are: 7 13/8 becomes 8 3/8."""
    wholes, pieces = state.found().amounts
    return _answered(as_it_comes(state), (wholes + 1, pieces - 10))


def large_of_a_hundred(state: PairState) -> PairState:
    """Make one of the larger unit of every hundred: 3 h 105 min becomes 4 h 5 min."""
    wholes, pieces = state.found().amounts
    full, rest = divmod(pieces, 100)
    return _answered(as_it_comes(state), (wholes + full, rest))


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


def _answered(state: PairState, counts: tuple[int, int]) -> PairState:
    """Write the answer with other counts."""
    answer = written(state.found().ladder, counts)
    return wrongly(state.now(result=answer), trimmed(answer))
