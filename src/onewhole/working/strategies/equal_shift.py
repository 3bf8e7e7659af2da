"""Equal shift: add the same to both numbers so that a whole is taken; the distance between them stays.

Source: common practice, no source.
"""

from fractions import Fraction

from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.bench import Bench
from onewhole.working.reason import Reason, because
from onewhole.working.strategies.moves import usual_form
from onewhole.working.strategy import Act, Step, Strategy


def shift_of(second: Quantity) -> Fraction:
    """Return how much brings a number up to the next whole of its largest written unit; 0 if it is one."""
    size = _unit(second)
    return -second.value % size


def _unit(second: Quantity) -> Fraction:
    """Return the size of the unit to fill: the largest that is written, but not the smallest of all."""
    sizes = [unit.size for unit in second.ladder.units[:-1]]
    written = [size for size, count in zip(sizes, second.amounts, strict=False) if count]
    return (written or sizes[-1:])[0] if sizes else second.ladder.finest


def shift(bench: Bench) -> Bench:
    """Add the same to both numbers."""
    ladder = bench.first.ladder
    by = landmark(ladder, shift_of(bench.second))
    reason = because("same_to_both", by=by, second=trimmed(bench.second))
    says = minus(plus(trimmed(bench.first), by), plus(trimmed(bench.second), by))
    bench = bench.say(says, reason, aside=True)
    first, second = (
        landmark(ladder, bench.first.value + by.value),
        landmark(ladder, bench.second.value + by.value),
    )
    bench = bench.say(minus(first, second), because("easier_to_take", second=second))
    return bench.now(first=first.on(ladder), second=second.on(ladder))


def take(bench: Bench) -> Bench:
    """Take the whole away."""
    ladder = bench.first.ladder
    return bench.now(result=landmark(ladder, bench.first.value - bench.second.value).on(ladder))


def _unsuited(bench: Bench) -> Reason | None:
    if shift_of(bench.second):
        return None
    return because("no_shift_needed", second=trimmed(bench.second))


EQUAL_SHIFT = Strategy(
    key="equal_shift",
    name="Equal shift: add the same to both",
    act=Act.SUBTRACT,
    partner="make_a_whole",
    steps=(Step("shift", shift), Step("take", take), Step("usual_form", usual_form)),
    unsuited=_unsuited,
)
