"""Long division: digit by digit from the left: how often it goes, multiply, take away, bring down.

A digit of the quotient stands above the last digit that was used for it, and a zero where it goes no times.
Behind the point it goes on in the same way, with zeros where digits are lacking.

Sources: 4.NBT.B.6 and 5.NBT.B.6 ask for quotients of whole numbers by place value, 5.NBT.B.7 for decimals by
a written method, and 6.NS.B.2 names the standard algorithm; CCSSM (2010). The layout is that of schools in
the United States (common practice, no source).
"""

from msgspec.structs import replace

from onewhole.number.digits import stands_in_digits
from onewhole.number.ladder import TEN, Style, decimal
from onewhole.number.quantity import Quantity, counted_in_parts, landmark, trimmed, usual_in_parts
from onewhole.number.unit import DOLLAR
from onewhole.statements.expression import Expression, Quotient, WithRemainder, minus, plus
from onewhole.working.line import Line
from onewhole.working.quotients.quotient_state import QuotientState, written
from onewhole.working.quotients.quotient_way import QuotientStep, QuotientWay
from onewhole.working.quotients.shared_ladder import even, in_cents, places_needed, pointed
from onewhole.working.reasons.columns import DigitBroughtDown, Divided, DivisionEnds, QuotientDigit
from onewhole.working.reasons.unsuited import (
    DigitsGoOn,
    NoColumns,
    NotSharedOut,
    TooFewToShare,
    Unsuited,
)

#: Divisors below this are divided by in grades 4 and 5. Source: 5.NBT.B.6, CCSSM (2010).
MOST_BY = 100


def laid(number: Quantity, by: int) -> Quantity | None:
    """Return a number with all places that its long division has; None where the digits go on too long.

    Whole numbers stay as they are, money that does not come out even in dollars gets its cents, and a decimal
    as many places as are needed.

    >>> from onewhole.number.quantity import whole
    >>> laid(whole(87), 4).counts, laid(Quantity(decimal(1, 1), (7, 5)), 2).counts
    ((8, 7), (7, 5, 0))
    """
    number = trimmed(number)
    if number.ladder.mark == DOLLAR:
        return number if even(number, by, number.ladder) else in_cents(number)
    if number.ladder.style is Style.PLACES:
        return number
    after = places_needed(number, by)
    return None if after is None else number.on(pointed(number, after))


def digit_by_digit(state: QuotientState) -> QuotientState:
    """Find every digit of the quotient, the largest place first."""
    number = laid(state.left, state.right.parts)
    assert number is not None, "the digits do not go on too long"
    state = replace(state, left=number)
    return _ended(_columns(state, _first(state)))


def with_point(found: WithRemainder, after: int) -> QuotientState:
    """Go on behind the point with the remainder of whole numbers, so many places.

    >>> from onewhole.number.quantity import whole
    >>> with_point(WithRemainder(whole(21), whole(3), whole(4)), 2).found().counts
    (2, 1, 7, 5)
    """
    assert found.by is not None
    left = Quantity(decimal(1, after), (found.left.parts, *(0,) * after))
    state = QuotientState(left, found.by, done=(found.quotient,), counting=True)
    state = _brought_down(state, 0, found.left.parts, None)
    return _ended(_columns(state, 1))


def _first(state: QuotientState) -> int:
    """Return the rung of the first digit of the quotient: the first that is not 0, the ones at the latest."""
    ones = len(state.left.ladder.units) - state.left.ladder.after - 1
    large = [rung for rung in range(ones) if _have(state, rung) >= state.right.parts]
    return min(large, default=ones)


def _have(state: QuotientState, rung: int) -> int:
    """Return how many of a rung are still to be divided, those of larger ones with them."""
    return state.left.parts // state.left.ladder.worths[rung]


def _columns(state: QuotientState, first: int) -> QuotientState:
    """Go from a rung to the last one; each but the last brings a digit down."""
    last, by = len(state.left.ladder.units) - 1, state.right.parts
    for rung in range(first, last + 1):
        have = _have(state, rung)
        digit = have // by
        reason = QuotientDigit(
            state.left.ladder.units[rung], have, by, digit, rung == first and not state.done
        )
        worth = state.left.ladder.worths[rung]
        if digit:
            part = written(landmark(state.left.ladder, digit * worth))
            taken = written(landmark(state.left.ladder, reason.product * worth))
            state = replace(state, done=(*state.done, part))
            state = _say(state, Quotient(minus(_told(state.left), taken), state.right), reason=reason)
            rest = state.left.parts - reason.product * worth
            state = replace(state, left=counted_in_parts(state.left.ladder, rest))
        else:
            state = _say(state, *_rest(state), reason=reason)
        taken_away = reason.product if digit else None
        if rung == last:
            return _last(state, have, taken_away)
        state = _brought_down(state, rung, have, taken_away)
    return state


def _told(number: Quantity) -> Quantity:
    """Return a number that is still to be divided as it is written on a line."""
    return written(usual_in_parts(number.ladder, number.parts))


def _rest(state: QuotientState) -> tuple[Expression, ...]:
    return (Quotient(_told(state.left), state.right),) if state.left.parts or not state.done else ()


def _say(state: QuotientState, *rest: Expression, reason: Divided) -> QuotientState:
    line = Line(plus(*state.done, *rest), reason, aside=True)
    return replace(state, lines=(*state.lines, line))


def _brought_down(state: QuotientState, rung: int, have: int, taken: int | None) -> QuotientState:
    ladder = state.left.ladder
    now = _have(state, rung + 1)
    small = ladder.units[rung + 1]
    point = rung == len(ladder.units) - ladder.after - 1
    reason = DigitBroughtDown(small, have, taken, now % TEN, now, point)
    return _say(state, *_rest(state), reason=reason)


def _last(state: QuotientState, have: int, taken: int | None) -> QuotientState:
    reason = DivisionEnds(have, taken, state.right.parts)
    return _say(state, *_rest(state), reason=reason)


def _ended(state: QuotientState) -> QuotientState:
    """Write the quotient, with the remainder where something is left."""
    ladder = state.left.ladder
    total = sum(int(part.value / ladder.finest) for part in state.done)
    quotient = usual_in_parts(ladder, total)
    left = usual_in_parts(ladder, state.left.parts)
    result = WithRemainder(quotient, left, state.right) if state.left.parts else quotient
    last = replace(state.lines[-1], says=result, aside=False)
    return replace(state, lines=(*state.lines[:-1], last)).ends(result)


def _unsuited(state: QuotientState) -> Unsuited | None:
    if state.shares is None:
        return NotSharedOut()
    if not stands_in_digits(state.left):
        return NoColumns()
    if state.wholes and 0 < state.left.parts < state.shares:
        return TooFewToShare(state.left, state.right)
    number = laid(state.left, state.shares)
    if number is None:
        return DigitsGoOn(state.left, state.right)
    return NoColumns() if len(number.counts) == 1 else None


def _offered(state: QuotientState) -> bool:
    return state.right.parts < MOST_BY


LONG_DIVISION = QuotientWay(
    key="long_division",
    name="Long division",
    steps=(QuotientStep("digit_by_digit", digit_by_digit),),
    unsuited=_unsuited,
    offered=_offered,
)
