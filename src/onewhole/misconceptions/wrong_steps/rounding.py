"""A number rounded by a wrong rule. Every rule counts in the unit that is rounded to, or in places."""

from collections.abc import Callable
from fractions import Fraction

from msgspec.structs import replace

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.number.ladder import TEN, Style
from onewhole.number.quantity import Quantity, usual, whole
from onewhole.number.unit import Kind, Unit
from onewhole.statements.rounding import Rounding, on_rung, units_to_round_to
from onewhole.statements.statement import Statement
from onewhole.working.line import Line

FIVE = 5

#: What is written as the rounded number; None where the rule does not apply.
Wrongly = Callable[[Rounding], Quantity | None]


def rounded_by(rule: Wrongly) -> Try:
    """Return the attempt at a number to be rounded by a wrong rule.

    Exactly halfway the smaller neighbor is right too, so that no rule shows that writes it.
    """

    def attempt(statement: Statement) -> Attempt | None:
        if not isinstance(statement, Rounding) or (wrote := rule(statement)) is None:
            return None
        if statement.tie and wrote.value == statement.low.value:
            return None
        return Attempt((Line(statement), Line(replace(statement, gives=wrote))), wrote)

    return attempt


def always_down(asked: Rounding) -> Quantity | None:
    """Write the smaller neighbor where the larger one is nearer."""
    return asked.low if _up(asked) else None


def always_up(asked: Rounding) -> Quantity | None:
    """Write the larger neighbor where the smaller one is nearer."""
    return asked.high if _down(asked) else None


def one_taken_off(asked: Rounding) -> Quantity | None:
    """Write the number below the smaller neighbor where that one is nearer."""
    count = asked.number.value // asked.to.size
    return on_rung(asked, count - 1) if _down(asked) and count else None


def tail_kept(asked: Rounding) -> Quantity | None:
    """Round the place, and leave what stands to the right of it."""
    if asked.there or not _right(asked):
        return None
    kept = asked.number.value % asked.to.size
    return usual(asked.number.ladder, asked.rounded + kept)


def in_a_chain(asked: Rounding) -> Quantity | None:
    """Round to the smallest place, that to the next, and so on up to the place that is asked for."""
    if not _in_places(asked) or not _right(asked):
        return None
    amount = asked.number.value
    size = asked.number.ladder.finest * TEN
    while size <= asked.to.size:
        amount = _half_up(amount, size)
        size *= TEN
    return on_rung(asked, int(amount / asked.to.size))


def one_place_too_small(asked: Rounding) -> Quantity | None:
    """Round to the place on the right of the one that is asked for."""
    return _rounded_to(asked, asked.to.size / TEN)


def one_place_too_large(asked: Rounding) -> Quantity | None:
    """Round to the place on the left of the one that is asked for, where the number has a digit there."""
    size = asked.to.size * TEN
    return _rounded_to(asked, size) if size <= asked.number.value else None


def by_the_last_digit(asked: Rounding) -> Quantity | None:
    """Go up where the last digit is 5 or more, and else down."""
    finest = asked.number.ladder.finest
    if not _in_places(asked) or asked.there or asked.to.size < TEN * TEN * finest:
        return None
    last = asked.number.value / finest % TEN
    return asked.high if last >= FIVE else asked.low


def zeros_left_off(asked: Rounding) -> Quantity | None:
    """Round rightly, and write how many of the place there are: 35 for 3,500."""
    if not _in_places(asked) or asked.to.size < TEN or not asked.rounded:
        return None
    return whole(int(asked.rounded / asked.to.size), asked.number.ladder.mark)


def _up(asked: Rounding) -> bool:
    """Say whether the larger neighbor is nearer."""
    return 2 * (asked.number.value % asked.to.size) > asked.to.size


def _down(asked: Rounding) -> bool:
    """Say whether the smaller neighbor is nearer, and the number is not that one itself."""
    return 0 < 2 * (asked.number.value % asked.to.size) < asked.to.size


def _right(asked: Rounding) -> bool:
    """Say whether only one neighbor is right: the number is not exactly halfway."""
    return not asked.tie


def _in_places(asked: Rounding) -> bool:
    """Say whether the number has digits in places, so that a rule can be about them."""
    return asked.to.kind is Kind.NUMBER and asked.number.ladder.style in {Style.PLACES, Style.DECIMAL}


def _rounded_to(asked: Rounding, size: Fraction) -> Quantity | None:
    """Round to another place, if the number can be rounded to it; exactly halfway upwards."""
    if not _in_places(asked):
        return None
    other = next((unit for unit in units_to_round_to(asked.number) if unit.size == size), None)
    return None if other is None else _on(asked.number, other)


def _on(number: Quantity, unit: Unit) -> Quantity:
    elsewhere = Rounding(number, unit)
    return on_rung(elsewhere, int(elsewhere.rounded / unit.size))


def _half_up(amount: Fraction, size: Fraction) -> Fraction:
    return (amount / size + Fraction(1, 2)) // 1 * size
