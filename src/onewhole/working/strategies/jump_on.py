"""Jump on along the number line from the first number: wholes, then to the next whole, then the rest.

Source: common practice, no source (number line diagrams of 4.NF.B.3 and 3.MD.A.1).
"""

from onewhole.number.quantity import Quantity, landmark, trimmed
from onewhole.statements.expression import plus
from onewhole.working.bench import Bench
from onewhole.working.reasons.jumping import JumpedTo, JumpedToWhole, JumpedWholes
from onewhole.working.reasons.unsuited import Unsuited
from onewhole.working.strategies.make_a_whole import lacking
from onewhole.working.strategies.moves import something, total, usual_form
from onewhole.working.strategy import Act, Step, Strategy


def jump_wholes(bench: Bench) -> Bench:
    """Jump on by the larger units of the second number."""
    ladder, last = bench.first.ladder, len(bench.first.counts) - 1
    wholes, pieces = bench.second.only(*range(last)), bench.second.only(last)
    start = trimmed(bench.first)
    if not wholes.parts:
        return bench
    reason = JumpedWholes(start, wholes)
    bench = bench.say(plus(start, *something(wholes, pieces)), reason, aside=True)
    reached = landmark(ladder, bench.first.parts + wholes.on(ladder).parts)
    bench = bench.say(plus(*something(reached, pieces)), JumpedTo(reached))
    rest = Quantity(ladder, (*(0,) * last, bench.second.amounts[last]))
    return bench.now(first=reached.on(ladder), second=rest)


def jump_pieces(bench: Bench) -> Bench:
    """Jump to the next whole, then on by what is left."""
    ladder = bench.first.ladder
    lacks, pieces = lacking(bench.first), bench.second
    if not 0 < lacks <= pieces.parts:
        return total(bench, trimmed(bench.first), trimmed(pieces))
    by, rest = landmark(ladder, lacks), landmark(ladder, pieces.parts - lacks)
    start = trimmed(bench.first)
    reason = JumpedToWhole(start, by)
    bench = bench.say(plus(start, *something(by, rest)), reason, aside=True)
    reached = landmark(ladder, bench.first.parts + lacks)
    bench = bench.say(plus(*something(reached, rest)), JumpedTo(reached))
    return total(bench, reached, rest)


def _always(_: Bench) -> Unsuited | None:
    return None


JUMP_ON = Strategy(
    key="jump_on",
    name="Jump on along the number line",
    act=Act.ADD,
    partner="count_up",
    steps=(
        Step("jump_wholes", jump_wholes),
        Step("jump_pieces", jump_pieces),
        Step("usual_form", usual_form),
    ),
    unsuited=_always,
)
