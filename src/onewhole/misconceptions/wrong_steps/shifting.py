"""Equal shift done on one side or in opposite directions, and pieces taken off that should be added back."""

from onewhole.misconceptions.attempt import written, wrongly
from onewhole.number.ladder import Ladder
from onewhole.number.quantity import Quantity, trimmed, usual
from onewhole.statements.expression import minus, plus
from onewhole.working.bench import Bench
from onewhole.working.reasons.jumping import EasierToTake
from onewhole.working.reasons.taking import TakenFromWhole


def shifts_only_the_second(bench: Bench) -> Bench:
    """Move the second number up to the next whole and leave the first: 9 5/8 - 5."""
    bench = bench.now(second=_counted(bench.first.ladder, _next_whole(bench.second)))
    return wrongly(bench, bench.joined(trimmed(bench.first)))


def shifts_apart(bench: Bench) -> Bench:
    """Move the second number up to the next whole and the first down by as much."""
    ladder, up = bench.first.ladder, _next_whole(bench.second)
    by = up - bench.second.parts
    first, second = _counted(ladder, bench.first.parts - by), _counted(ladder, up)
    shift = usual(ladder, by * ladder.finest)
    both = minus(trimmed(bench.first), shift), plus(trimmed(bench.second), shift)
    bench = wrongly(bench.now(first=first, second=second), minus(*both))
    return bench.say(bench.joined(trimmed(first)), EasierToTake(trimmed(second)))


def takes(bench: Bench) -> Bench:
    """Take the second number, now a whole number, away."""
    return bench.now(result=_counted(bench.first.ladder, bench.first.parts - bench.second.parts))


def takes_again(bench: Bench) -> Bench:
    """Take the second number from the wholes rightly, then take the pieces off too."""
    ladder = bench.first.ladder
    wholes, pieces = bench.first.only(0), bench.first.only(1)
    left = _counted(ladder, wholes.on(ladder).parts - bench.second.parts)
    bench = bench.say(plus(trimmed(left), pieces), TakenFromWhole(wholes, trimmed(left)))
    result = _counted(ladder, left.parts - bench.first.amounts[1])
    return wrongly(bench.now(result=result), minus(trimmed(left), pieces))


def _next_whole(number: Quantity) -> int:
    """Return how many pieces the whole above a number is worth."""
    return (number.amounts[0] + 1) * number.ladder.worths[0]


def _counted(ladder: Ladder, parts: int) -> Quantity:
    """Count pieces on the ladder, full wholes put together; BelowZeroError when there are less than none."""
    written(ladder, (0, parts))
    return Quantity(ladder, divmod(parts, ladder.worths[0]))
