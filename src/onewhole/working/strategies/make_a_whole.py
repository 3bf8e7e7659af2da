"""Make a whole: give the first number what it lacks, out of the second.

Source: common practice, no source (make a ten, carried to wholes).
"""

from fractions import Fraction

from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.bench import Bench
from onewhole.working.reason import Reason, because
from onewhole.working.strategies.moves import total, usual_form
from onewhole.working.strategy import Act, Step, Strategy


def lacking(first: Quantity) -> Fraction:
    """Return what the first number lacks to the next whole of the unit above its smallest; 0 if nothing."""
    sizes = [unit.size for unit in first.ladder.units[:-1]]
    return -first.value % sizes[-1] if sizes else Fraction(0)


def give(bench: Bench) -> Bench:
    """Move the missing pieces from the second number to the first."""
    ladder = bench.first.ladder
    by = landmark(ladder, lacking(bench.first))
    reason = because("give_to_make_one", by=by, first=trimmed(bench.first))
    says = plus(plus(trimmed(bench.first), by), minus(trimmed(bench.second), by))
    bench = bench.say(says, reason, aside=True)
    filled = landmark(ladder, bench.first.value + by.value)
    rest = landmark(ladder, bench.second.value - by.value)
    bench = bench.say(plus(filled, rest), because("whole_and_rest", filled=filled, rest=rest))
    return total(bench, filled, rest)


def _unsuited(bench: Bench) -> Reason | None:
    lacks = lacking(bench.first)
    if not lacks:
        return because("nothing_lacking", first=trimmed(bench.first))
    if bench.second.value < lacks:
        return because("too_little_to_give", first=trimmed(bench.first), second=trimmed(bench.second))
    return None


MAKE_A_WHOLE = Strategy(
    key="make_a_whole",
    name="Make a whole",
    act=Act.ADD,
    partner="equal_shift",
    steps=(Step("give", give), Step("usual_form", usual_form)),
    unsuited=_unsuited,
)
