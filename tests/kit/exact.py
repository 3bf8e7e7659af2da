"""A second road to what a line is worth: straight from the units, by Fractions alone.

Nothing here calls the weighing of the program, so that a fault there cannot hide.
"""

import operator
from collections import Counter
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from itertools import pairwise
from statistics import mean, multimode
from typing import assert_never

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.statements.expression import Expression, InBrackets, Over, Quotient, Sum, Times, WithRemainder
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.line_plot import Bound, PlotAsk, PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import Comparison, MissingNumber, NumberRow, Ordering
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.line import LineContent


def amount(expression: Expression) -> Fraction:
    """Add, subtract, multiply and divide what stands there, count by count of each unit."""
    match expression:
        case Quantity():
            pairs = zip(expression.ladder.units, expression.counts, strict=True)
            return sum((unit.size * (count or 0) for unit, count in pairs), Fraction(0))
        case Sum(terms):
            signed = ((-1 if term.taken else 1) * amount(term.part) for term in terms)
            return sum(signed, Fraction(0))
        case Times(left, right):
            return amount(left) * amount(right)
        case Over(top, bottom) | Quotient(top, bottom):
            return amount(top) / amount(bottom)
        case InBrackets(inside):
            return amount(inside)
        case WithRemainder(quotient, left, Quantity() as by):
            return amount(quotient) + amount(left) / amount(by)
        case WithRemainder():
            msg = "a remainder without its divisor has no amount"
            raise ValueError(msg)
        case _:
            assert_never(expression)


def kinds(expression: Expression) -> set[Kind]:
    """Every kind that is counted anywhere in it, seen unit by unit."""
    match expression:
        case Quantity():
            return {unit.kind for unit in expression.ladder.units}
        case Sum(terms):
            return {kind for term in terms for kind in kinds(term.part)}
        case Times(first, second) | Over(first, second) | Quotient(first, second):
            return kinds(first) | kinds(second)
        case InBrackets(inside):
            return kinds(inside)
        case WithRemainder(quotient, left):
            return kinds(quotient) | kinds(left)
        case _:
            assert_never(expression)


def filled(gap: Gap, found: Fraction) -> Fraction:
    """Put a number into the hole and say what the number with the gap is worth then."""
    parts = (gap.wholes, gap.top, gap.bottom)
    wholes, top, bottom = (found if part is HOLE else Fraction(part or 0) for part in parts)
    return wholes if gap.top is None else wholes + top / bottom


def true_with(equation: MissingNumber, found: Fraction) -> bool:
    """Say whether both sides are worth the same once the number is put into the gap."""
    beside = sum(((-1 if taken else 1) * amount(part) for part, taken in equation.beside), Fraction(0))
    gap = filled(equation.gap, found) * (-1 if equation.gap_taken else 1)
    return amount(equation.rest) == beside + gap


def order(comparison: Comparison) -> str:
    """Say which sign belongs between the two sides."""
    left, right = amount(comparison.left), amount(comparison.right)
    return "=" if left == right else "<" if left < right else ">"


def in_order(says: LineContent, wanted: tuple[Fraction, ...]) -> bool:
    """Say whether a line keeps the order of several numbers: all, or two that are compared rightly."""
    match says:
        case Ordering(parts, falling):
            return tuple(sorted(map(amount, parts), reverse=falling)) == wanted
        case NumberRow(parts, ()):
            return sorted(map(amount, parts)) == sorted(wanted)
        case NumberRow(parts, signs):
            found = [order(Comparison(one, other)) for one, other in pairwise(parts)]
            return tuple(map(amount, parts)) == wanted and list(signs) == found
        case Comparison(left, right, sign):
            return {amount(left), amount(right)} <= set(wanted) and order(says) == sign
        case _:
            return False


def keeps(says: LineContent, wanted: Fraction | str | tuple[Fraction, ...]) -> bool:
    """Say whether a line keeps the amount, the order or the missing number that is wanted."""
    if isinstance(wanted, tuple):
        return in_order(says, wanted)
    if isinstance(says, Ordering | NumberRow | Listing):
        return False
    if isinstance(says, Comparison):
        return order(says) == wanted
    if isinstance(says, MissingNumber):
        return isinstance(wanted, Fraction) and true_with(says, wanted)
    if isinstance(says, Rounding):
        return rounded(says) == wanted
    if isinstance(says, FactorQuestion):
        return says.gives is None or worded(says) == says.gives.value == wanted
    if isinstance(says, PlotQuestion):
        return plotted(says) == wanted
    if isinstance(says, WholeGroups):
        return in_groups(says) == wanted == (says.gives.value if says.gives else wanted)
    return amount(says) == wanted


def in_groups(asked: WholeGroups) -> Fraction:
    """Answer what is asked of things in groups by laying them out one by one."""
    laid: list[int] = []
    for _ in range(asked.number.parts):
        if not laid or laid[-1] == asked.by.parts:
            laid.append(0)
        laid[-1] += 1
    full = sum(one == asked.by.parts for one in laid)
    loose = sum(one for one in laid if one < asked.by.parts)
    return Fraction({"NEEDED": len(laid), "FULL": full, "LEFT": loose}[asked.asks.name])


def worded(asked: FactorQuestion) -> str:
    """Say by trial, one number after another, whether a number is prime, or is counted to by another."""
    number = asked.number.parts
    if asked.step is not None:
        return "yes" if number in range(0, number + 1, asked.step.parts) else "no"
    many = sum(1 for first in range(1, number + 1) if number in range(first, number + 1, first))
    return {1: "neither", 2: "prime"}.get(many, "composite")


def plotted(asked: PlotQuestion) -> Fraction:
    """Answer what is asked of a line plot from its measurements one by one, tallied by a Counter."""
    tally = Counter({quantity.value: count for quantity, count in asked.plot.marks})
    every = sorted(tally.elements())
    if asked.among is not None:
        own, holds = asked.among.value.value, _BOUNDS[asked.among.bound]
        every = [one for one in every if holds(one, own)]
    match asked.asks:
        case PlotAsk.COUNT:
            return Fraction(len(every))
        case PlotAsk.TOTAL:
            return sum(every, Fraction(0))
        case PlotAsk.SHARE:
            return mean(every)
        case PlotAsk.MOST:
            (most,) = multimode(every)
            return most
        case PlotAsk.SPREAD:
            return every[-1] - every[0]


_BOUNDS = {
    Bound.EXACTLY: operator.eq,
    Bound.MORE: operator.gt,
    Bound.LESS: operator.lt,
    Bound.AT_LEAST: operator.ge,
    Bound.AT_MOST: operator.le,
}


def rounded(says: Rounding) -> Fraction:
    """Round by the standard library's decimal, half up: the amount counted in the unit, to no places.

    A line that gives an answer is worth that answer; one whose stretch has the right one at no end, -1.
    """
    counted = says.number.value / says.to.size
    digits = Decimal(counted.numerator) / Decimal(counted.denominator)
    found = int(digits.quantize(Decimal(1), ROUND_HALF_UP)) * says.to.size
    if says.gives is not None:
        return says.gives.value
    if says.between is not None and found not in {end.value for end in says.between}:
        return Fraction(-1)
    return found
