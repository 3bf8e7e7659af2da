"""Two fractions or mixed numbers that are multiplied by a wrong rule."""

from collections.abc import Callable
from math import lcm

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt, finished, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, trimmed, usual, whole
from onewhole.statements.expression import Expression, Over, Times, plus, value
from onewhole.statements.statement import Question, Statement
from onewhole.working.pair_state import PairState


class FactorParts(Struct, frozen=True):
    """A fraction or mixed number: w n/d, w 0 where there are no wholes."""

    w: int
    n: int
    d: int


#: Wholes, numerator and denominator of what a rule writes, still to be worked out; no wholes is None.
Made = tuple[Expression | None, Expression, Expression]
Rule = Callable[[FactorParts, FactorParts], Made | None]


def fraction_factors(statement: Statement) -> tuple[Times, Quantity, Quantity] | None:
    """Return the two numbers of a product that both have pieces, or None for anything else."""
    match statement:
        case Question(Times(Quantity() as one, Quantity() as other) as asked):
            pass
        case _:
            return None
    if {one.ladder.style, other.ladder.style} != {Style.MIXED} or one.ladder.mark or other.ladder.mark:
        return None
    return (asked, one, other) if one.amounts[1] and other.amounts[1] else None


def multiplies_parts(rule: Rule, *, grouped: bool = False) -> Try:
    """Return the attempt at a product of two fractions or mixed numbers; ``grouped`` makes full wholes."""

    def attempt(statement: Statement) -> Attempt | None:
        found = fraction_factors(statement)
        made = None if found is None else rule(*(factor_parts(number) for number in found[1:]))
        if found is None or made is None:
            return None
        wholes, top, bottom = made
        says = _over(top, bottom) if wholes is None else plus(wholes, _over(top, bottom))
        counts = 0 if wholes is None else value(wholes).numerator, value(top).numerator
        wrote = trimmed(Quantity(mixed(value(bottom).numerator), counts))
        if grouped:
            wrote = usual(wrote.ladder, wrote.value)
        state = wrongly(PairState(wrote, wrote, taken=False, result=wrote), says)
        return finished(found[0], wrongly(state, wrote))

    return attempt


def factor_parts(number: Quantity) -> FactorParts:
    """Return the parts of a fraction or mixed number."""
    wholes, top = number.amounts
    return FactorParts(wholes, top, number.ladder.denominator)


def _over(top: Expression, bottom: Expression) -> Expression:
    """Write a fraction; one with nothing to work out stands as it is."""
    if isinstance(top, Quantity) and isinstance(bottom, Quantity):
        return Quantity(mixed(bottom.parts), (None, top.parts))
    return Over(top, bottom)


def multiplied(one: int, other: int) -> Expression:
    """Write two whole numbers as a product, still to be worked out."""
    return Times(whole(one), whole(other))


def keeps_the_bottom(one: FactorParts, other: FactorParts) -> Made | None:
    """2/5 x 3/5 is said to be 6/5."""
    if one.w or other.w or one.d != other.d:
        return None
    return None, multiplied(one.n, other.n), whole(one.d)


def over_the_common_bottom(one: FactorParts, other: FactorParts) -> Made | None:
    """2/3 x 3/4 is said to be 8/12 x 9/12, 72/12."""
    if one.w or other.w or one.d == other.d:
        return None
    common = lcm(one.d, other.d)
    return None, multiplied(one.n * common // one.d, other.n * common // other.d), whole(common)


def parts_apart(one: FactorParts, other: FactorParts) -> Made | None:
    """2 1/2 x 3 1/4 is said to be 6 1/8."""
    if not one.w or not other.w:
        return None
    return multiplied(one.w, other.w), multiplied(one.n, other.n), multiplied(one.d, other.d)


def crosswise(one: FactorParts, other: FactorParts) -> Made | None:
    """2/3 x 4/7 is said to be 12/14."""
    if one.w or other.w:
        return None
    return None, multiplied(one.d, other.n), multiplied(one.n, other.d)


def wholes_as_factors(one: FactorParts, other: FactorParts) -> Made | None:
    """2 1/2 x 3 1/4 is said to be (2 x 1 x 3 x 1)/(2 x 4)."""
    if not one.w or not other.w:
        return None
    return None, multiplied(one.w * one.n, other.w * other.n), multiplied(one.d, other.d)


def fractions_only(one: FactorParts, other: FactorParts) -> Made | None:
    """1/2 x 3 1/4 is said to be 3 1/8."""
    if bool(one.w) == bool(other.w):
        return None
    return whole(one.w or other.w), multiplied(one.n, other.n), multiplied(one.d, other.d)
