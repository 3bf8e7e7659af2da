"""Count up from the smaller number to the larger by friendly stops, and add the jumps.

Source: common practice, no source (number line, making change, time intervals as in 3.MD.A.1).
"""

from itertools import pairwise

from onewhole.number.quantity import Quantity, landmark
from onewhole.statements.expression import minus, plus
from onewhole.working.pair_state import PairState
from onewhole.working.reasons.jumping import CountedUp, JumpLengths
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.strategies.moves import total, usual_form
from onewhole.working.strategy import Act, Step, Strategy, short_numbers


def stops(first: Quantity, second: Quantity) -> tuple[int, ...]:
    """Return the stops from the smaller number to the larger, in the smallest unit.

    They are the smaller number, the next whole, the last whole and the larger number; on more rungs the next
    of every larger unit on the way up, and the same on the way down.

    >>> from onewhole.number.ladder import mixed
    >>> stops(Quantity(mixed(6), (7, 2)), Quantity(mixed(6), (3, 5)))
    (23, 24, 42, 44)
    """
    worths = first.ladder.worths
    here, end = second.parts, first.parts
    found = [here]
    for worth in reversed(worths[:-1]):
        following = -(-here // worth) * worth
        if here < following <= end:
            here = following
            found.append(here)
    for worth in worths:
        reached = end // worth * worth
        if reached > here:
            here = reached
            found.append(here)
    return tuple(found)


def jump(state: PairState) -> PairState:
    """Write every jump from stop to stop, then how long each is."""
    ladder = state.first.ladder
    places = stops(state.first, state.second)
    if len(places) == 1:
        return state.now(result=Quantity(ladder, (0,) * len(ladder.units)))
    marks = [landmark(ladder, place) for place in places]
    reason = CountedUp(marks[0], marks[-1], tuple(marks))
    state = state.say(plus(*(minus(to, fro) for fro, to in pairwise(marks))), reason, aside=True)
    lengths = [landmark(ladder, to - fro) for fro, to in pairwise(places)]
    state = state.say(plus(*lengths), JumpLengths(len(lengths)))
    return total(state, *lengths)


def _always(_: PairState) -> Unsuited | None:
    return None


COUNT_UP = Strategy(
    key="count_up",
    name="Count up from the smaller number",
    act=Act.SUBTRACT,
    partner="jump_on",
    steps=(Step("jump", jump), Step("usual_form", usual_form)),
    unsuited=_always,
    offered=short_numbers,
)
