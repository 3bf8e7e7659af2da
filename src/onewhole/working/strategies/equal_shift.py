"""Equal shift: add the same to both numbers so that a whole is taken; the distance between them stays.

Source: common practice, no source.
"""

from onewhole.number.quantity import Quantity, counted_in_parts, landmark, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.bench import Bench
from onewhole.working.reasons.jumping import EasierToTake, SameToBoth
from onewhole.working.reasons.unsuited import NoShiftNeeded, Unsuited
from onewhole.working.strategies.moves import usual_form
from onewhole.working.strategy import Act, Step, Strategy


def shift_of(second: Quantity) -> int:
    """Return how many of the smallest unit bring a number up to a whole one of its largest written unit.

    0 if it is one already. The unit to fill is never the smallest of all.

    >>> from onewhole.number.ladder import mixed
    >>> shift_of(Quantity(mixed(6), (3, 5)))
    1
    """
    worths = second.ladder.worths[:-1]
    written = [worth for worth, count in zip(worths, second.amounts, strict=False) if count]
    filled = (written or worths[-1:] or [1])[0]
    return -second.parts % filled


def shift(bench: Bench) -> Bench:
    """Add the same to both numbers."""
    ladder = bench.first.ladder
    more = shift_of(bench.second)
    by = landmark(ladder, more)
    reason = SameToBoth(by, trimmed(bench.second))
    says = minus(plus(trimmed(bench.first), by), plus(trimmed(bench.second), by))
    bench = bench.say(says, reason, aside=True)
    first, second = (
        landmark(ladder, bench.first.parts + more),
        landmark(ladder, bench.second.parts + more),
    )
    bench = bench.say(minus(first, second), EasierToTake(second))
    return bench.now(first=first.on(ladder), second=second.on(ladder))


def take(bench: Bench) -> Bench:
    """Take the whole away."""
    ladder = bench.first.ladder
    return bench.now(result=counted_in_parts(ladder, bench.first.parts - bench.second.parts))


def _unsuited(bench: Bench) -> Unsuited | None:
    if shift_of(bench.second):
        return None
    return NoShiftNeeded(trimmed(bench.second))


EQUAL_SHIFT = Strategy(
    key="equal_shift",
    name="Equal shift: add the same to both",
    act=Act.SUBTRACT,
    partner="make_a_whole",
    steps=(Step("shift", shift), Step("take", take), Step("usual_form", usual_form)),
    unsuited=_unsuited,
)
