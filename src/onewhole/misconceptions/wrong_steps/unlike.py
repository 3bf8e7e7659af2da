"""Unlike denominators: the pieces are never made the same size, or are made so wrongly."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import Attempt, Outcome, finished, written, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.pair import renamed_parts, unlike_parts
from onewhole.misconceptions.wrong_steps.cutting import (
    Make,
    Parts,
    cut_anew,
    of_two,
    tops_added,
    tops_apart,
)
from onewhole.misconceptions.wrong_steps.writing import as_it_comes
from onewhole.number.factors import common_denominator
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, trimmed, usual, whole
from onewhole.statements.expression import Expression, Times, plus
from onewhole.statements.statement import Statement
from onewhole.working.pair_state import PairState


def common_bottom(parts: Parts) -> Expression:
    """Take the smallest common denominator."""
    return whole(common_denominator([parts.bottom1, parts.bottom2]))


def larger_bottom(parts: Parts) -> Expression:
    """Take the larger denominator."""
    return whole(max(parts.bottom1, parts.bottom2))


def tops_by_own_bottom(parts: Parts) -> Expression:
    """Multiply each numerator by its own denominator and add."""
    return plus(
        Times(whole(parts.top1), whole(parts.bottom1)), Times(whole(parts.top2), whole(parts.bottom2))
    )


#: Other ways in which a child may write what the same wrong step makes of the parts of two fractions.
AlsoOfParts = Callable[[Parts], tuple[Outcome, ...]]


def no_other_way(_: Parts) -> tuple[Outcome, ...]:
    """There is one way only to write it."""
    return ()


def on_unlike_parts(
    top: Make, bottom: Make, *, taken: bool, tops_differ: bool = False, also: AlsoOfParts = no_other_way
) -> Try:
    """Return the attempt that makes one fraction of the parts of two, and adds or takes the wholes.

    ``tops_differ`` keeps the attempt to problems whose numerators are not the same. ``also`` holds where
    neither number has wholes.
    """

    def attempt(statement: Statement) -> Attempt | None:
        pair = unlike_parts(statement, taken=taken)
        if pair is None:
            return None
        parts = of_two(pair.first, pair.second)
        if tops_differ and parts.top1 == parts.top2:
            return None
        state = cut_anew(top, bottom)(PairState(pair.first, pair.second, taken))
        wholes = pair.first.amounts[0] or pair.second.amounts[0]
        return finished(pair.asked, as_it_comes(state), () if wholes else also(parts))

    return attempt


def old_tops_over(bottom: Make) -> Try:
    """Return the attempt that adds or takes the numerators as they were, over a denominator made of both."""
    adding = on_unlike_parts(tops_added, bottom, taken=False)
    taking = on_unlike_parts(tops_apart, bottom, taken=True)

    def attempt(statement: Statement) -> Attempt | None:
        return adding(statement) or taking(statement)

    return attempt


def takes_instead(statement: Statement) -> Attempt | None:
    """Take the smaller number from the larger where they should be added; all else is right."""
    found = renamed_parts(statement, taken=False)
    if found is None:
        return None
    pair, state = found
    more, less = sorted((state.first, state.second), key=lambda one: one.value, reverse=True)
    taking = PairState(more, less, taken=True, lines=state.lines)
    ladder = more.ladder
    result = usual(ladder, (more.parts - less.parts) * ladder.finest)
    return finished(pair.asked, as_it_comes(wrongly(taking, taking.joined(trimmed(more))).now(result=result)))


def renames_by_adding(statement: Statement) -> Attempt | None:
    """Move each fraction to the larger denominator by adding the same to top and bottom, then add."""
    pair = unlike_parts(statement, taken=False)
    if pair is None:
        return None
    bottom = max(pair.first.ladder.denominator, pair.second.ladder.denominator)
    first, second = (moved(number, bottom) for number in (pair.first, pair.second))
    state = PairState(first, second, taken=False)
    state = wrongly(state, state.joined(trimmed(first)))
    counts = tuple(a + b for a, b in zip(first.amounts, second.amounts, strict=True))
    return finished(pair.asked, as_it_comes(state.now(result=written(mixed(bottom), counts))))


def moved(number: Quantity, bottom: int) -> Quantity:
    """Add to the numerator what is added to the denominator: 3/4 on eighths is said to be 7/8."""
    wholes, top = number.amounts
    return Quantity(mixed(bottom), (wholes, top + bottom - number.ladder.denominator))
