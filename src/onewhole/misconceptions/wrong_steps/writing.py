"""The answer is found, and then written in another way or with a slip."""

from onewhole.misconceptions.attempt import written, wrongly
from onewhole.misconceptions.wrong_steps.regrouping import Act
from onewhole.number.quantity import trimmed, usual
from onewhole.working.bench import Bench
from onewhole.working.reasons.taking import InAll, Left


def as_it_comes(bench: Bench) -> Bench:
    """Write the result without putting full groups together: 5 11/8 stays 5 11/8."""
    result = trimmed(bench.found())
    return bench.say(result, Left(result) if bench.taken else InAll(result))


def swapped(bench: Bench) -> Bench:
    """Write 39/8 with the remainder as wholes and the quotient as numerator: 7 4/8."""
    wholes, pieces = _divided(bench)
    return _answered(as_it_comes(bench), (pieces, wholes))


def drops_the_new_whole(bench: Bench) -> Bench:
    """Take a full whole out of the pieces and do not add it to the wholes: 3 7/5 becomes 3 2/5."""
    wholes, pieces = bench.found().amounts
    return _answered(as_it_comes(bench), (wholes, pieces - bench.first.ladder.ratios[-1]))


def keeps_the_pieces(bench: Bench) -> Bench:
    """Add the new whole and leave its pieces too: 3 7/5 becomes 4 7/5."""
    wholes, pieces = bench.found().amounts
    return _answered(as_it_comes(bench), (wholes + 1, pieces))


def whole_of_ten(bench: Bench) -> Bench:
    """Make a whole of ten pieces, whatever the denominator: 7 13/8 becomes 8 3/8."""
    wholes, pieces = bench.found().amounts
    return _answered(as_it_comes(bench), (wholes + 1, pieces - 10))


def off_by(larger: int, smallest: int) -> Act:
    """Return the step that finds the result, off by so many of the largest and of the smallest unit."""

    def act(bench: Bench) -> Bench:
        first, second = bench.first, bench.second
        ladder = first.ladder
        right = first.parts - second.parts if bench.taken else first.parts + second.parts
        parts = right + larger * ladder.worths[0] + smallest
        written(ladder, (*(0,) * (len(ladder.units) - 1), parts))
        result = usual(ladder, parts * ladder.finest)
        return wrongly(bench.now(result=result.on(ladder)), result)

    return act


def _divided(bench: Bench) -> tuple[int, int]:
    """Part the result into full wholes and the pieces left over."""
    result = bench.found()
    return divmod(result.parts, result.ladder.worths[0])


def _answered(bench: Bench, counts: tuple[int, int]) -> Bench:
    """Write the answer with other counts."""
    answer = written(bench.found().ladder, counts)
    return wrongly(bench.now(result=answer), trimmed(answer))
