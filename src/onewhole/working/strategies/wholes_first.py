"""Take the wholes first, then regroup only if the pieces need it.

Source: common practice, no source; the order of a number line (jump back the wholes, then the pieces).
"""

from onewhole.number.quantity import Quantity, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.working.bench import Bench
from onewhole.working.fact import hard_difference
from onewhole.working.reasons.taking import LargerUnitFirst, PiecesTaken, UnitsTaken
from onewhole.working.reasons.unsuited import NoWholesToTake, Unsuited
from onewhole.working.strategies.moves import enough_at, something, usual_form
from onewhole.working.strategy import Act, Step, Strategy


def take_wholes(bench: Bench) -> Bench:
    """Take every unit but the smallest, the largest first."""
    last = len(bench.first.counts) - 1
    for rung in range(last):
        if bench.second.amounts[rung]:
            bench = _take(enough_at(bench, rung), rung)
    return bench


def regroup(bench: Bench) -> Bench:
    """Open one whole if there are too few pieces."""
    return enough_at(bench, len(bench.first.counts) - 1)


def take_pieces(bench: Bench) -> Bench:
    """Take the smallest units."""
    last = len(bench.first.counts) - 1
    if not bench.second.amounts[last]:
        return bench.now(result=bench.first)
    stays = bench.first.only(*range(last))
    have, gone = bench.first.amounts[last], bench.second.amounts[last]
    pieces = minus(bench.first.only(last), bench.second.only(last))
    reason = PiecesTaken(bench.first.ladder.units[last], have, gone)
    says = plus(stays, pieces) if stays.parts else pieces
    bench = bench.say(says, reason, aside=True, facts=[hard_difference(have, gone)])
    left = (*bench.first.amounts[:last], have - gone)
    return bench.now(result=Quantity(bench.first.ladder, left))


def _take(bench: Bench, rung: int) -> Bench:
    first, second = bench.first, bench.second
    gone = second.only(rung)
    rest = Quantity(second.ladder, tuple(n * (at != rung) for at, n in enumerate(second.amounts)))
    left = Quantity(
        first.ladder, tuple(a - (at == rung) * second.amounts[at] for at, a in enumerate(first.amounts))
    )
    more = (trimmed(rest),) if rest.parts else ()
    bench = bench.say(
        minus(trimmed(first), gone, *more),
        LargerUnitFirst(first.ladder.units[rung], second.amounts[rung]),
        aside=True,
    )
    reason = UnitsTaken(first.ladder.units[rung], first.amounts[rung], second.amounts[rung])
    fact = hard_difference(first.amounts[rung], second.amounts[rung])
    bench = bench.say(minus(*something(trimmed(left)), *more), reason, facts=[fact])
    return bench.now(first=left, second=rest)


def _unsuited(bench: Bench) -> Unsuited | None:
    if any(bench.second.amounts[:-1]):
        return None
    return NoWholesToTake(trimmed(bench.second))


WHOLES_FIRST = Strategy(
    key="wholes_first",
    name="Take the wholes first, then regroup",
    act=Act.SUBTRACT,
    partner="jump_on",
    steps=(
        Step("take_wholes", take_wholes),
        Step("regroup", regroup),
        Step("take_pieces", take_pieces),
        Step("usual_form", usual_form),
    ),
    unsuited=_unsuited,
)
