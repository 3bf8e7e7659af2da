"""Comparisons that are decided by something other than the amount."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.wrong_steps.cutting import Parts, of_two
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.statement import Comparison, Statement, relation
from onewhole.working.line import Line

#: The two numbers that are looked at in the place of the amounts; None where the rule does not apply.
Look = Callable[[Parts], tuple[int, int] | None]

_POINTED = frozenset({Style.DECIMAL, Style.PLACES})


def on_fractions_compared(look: Look) -> Try:
    """Return the attempt at comparing two fractions without wholes, by two other numbers.

    The false line compares those two numbers; the sign that belongs between them is then written.
    """

    def attempt(statement: Statement) -> Attempt | None:
        match statement:
            case Comparison(Quantity() as left, Quantity() as right, None):
                pass
            case _:
                return None
        if {left.ladder.style, right.ladder.style} != {Style.MIXED} or left.amounts[0] or right.amounts[0]:
            return None
        seen = look(of_two(left, right))
        return None if seen is None else _decided(statement, *seen)

    return attempt


def on_decimals_compared(look: Callable[[tuple[int, int]], int]) -> Try:
    """Return the attempt at comparing two decimals by how many digits they show after the point.

    ``look`` tells from both numbers of digits how far the first is ahead.
    """

    def attempt(statement: Statement) -> Attempt | None:
        match statement:
            case Comparison(Quantity() as left, Quantity() as right, None):
                pass
            case _:
                return None
        digits = left.ladder.after, right.ladder.after
        if digits[0] == digits[1] or not {left.ladder.style, right.ladder.style} <= _POINTED:
            return None
        return _decided(statement, *(digits if look(digits) * (digits[0] - digits[1]) > 0 else digits[::-1]))

    return attempt


def by_more_digits(digits: tuple[int, int]) -> int:
    """Call the number with more digits larger."""
    return digits[0] - digits[1]


def _decided(asked: Comparison, left: int, right: int) -> Attempt:
    looked_at = Comparison(whole(left), whole(right))
    sign = relation(whole(left), whole(right))
    return Attempt((Line(asked), Line(looked_at), Line(Comparison(asked.left, asked.right, sign))), sign)


def larger_bottom(parts: Parts) -> tuple[int, int] | None:
    """Call the fraction with the larger denominator larger."""
    return (parts.bottom1, parts.bottom2) if parts.bottom1 != parts.bottom2 else None


def smaller_bottom(parts: Parts) -> tuple[int, int] | None:
    """Call the fraction with the smaller denominator larger."""
    return (parts.bottom2, parts.bottom1) if parts.bottom1 != parts.bottom2 else None


def larger_top(parts: Parts) -> tuple[int, int] | None:
    """Call the fraction with the larger numerator larger."""
    return (parts.top1, parts.top2) if parts.bottom1 != parts.bottom2 else None


def smaller_top(parts: Parts) -> tuple[int, int] | None:
    """Call the fraction with fewer pieces of the same size larger."""
    return (parts.top2, parts.top1) if parts.bottom1 == parts.bottom2 else None


def smaller_gap(parts: Parts) -> tuple[int, int] | None:
    """Call the fraction with fewer pieces missing to a whole larger; it must be no more than a whole."""
    gaps = parts.bottom1 - parts.top1, parts.bottom2 - parts.top2
    return (gaps[1], gaps[0]) if min(gaps) >= 0 else None


def larger_digits(parts: Parts) -> tuple[int, int]:
    """Call the fraction with the larger numerator and denominator together larger."""
    return parts.top1 + parts.bottom1, parts.top2 + parts.bottom2
