"""Make a whole: give the first number what it lacks, out of the second.

Source: common practice, no source (make a ten, carried to wholes).
"""

from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.bench import Bench
from onewhole.working.reasons.jumping import GivenToMakeOne, WholeAndRest
from onewhole.working.reasons.unsuited import NothingLacking, TooLittleToGive, Unsuited
from onewhole.working.strategies.moves import total, usual_form
from onewhole.working.strategy import Act, Step, Strategy


def lacking(first: Quantity) -> int:
    """Return how many of its smallest unit a number lacks to the next one of the unit above; 0 if none.

    >>> from onewhole.number.ladder import mixed
    >>> lacking(Quantity(mixed(5), (2, 4)))
    1
    """
    ratios = first.ladder.ratios
    return -first.parts % ratios[-1] if ratios else 0


def give(bench: Bench) -> Bench:
    """Move the missing pieces from the second number to the first."""
    ladder = bench.first.ladder
    lacks = lacking(bench.first)
    by = landmark(ladder, lacks)
    reason = GivenToMakeOne(trimmed(bench.first), by)
    says = plus(plus(trimmed(bench.first), by), minus(trimmed(bench.second), by))
    bench = bench.say(says, reason, aside=True)
    filled = landmark(ladder, bench.first.parts + lacks)
    rest = landmark(ladder, bench.second.parts - lacks)
    bench = bench.say(plus(filled, rest), WholeAndRest(filled, rest))
    return total(bench, filled, rest)


def _unsuited(bench: Bench) -> Unsuited | None:
    lacks = lacking(bench.first)
    if not lacks:
        return NothingLacking(trimmed(bench.first))
    if bench.second.parts < lacks:
        return TooLittleToGive(trimmed(bench.first), trimmed(bench.second))
    return None


MAKE_A_WHOLE = Strategy(
    key="make_a_whole",
    name="Make a whole",
    act=Act.ADD,
    partner="equal_shift",
    steps=(Step("give", give), Step("usual_form", usual_form)),
    unsuited=_unsuited,
)
