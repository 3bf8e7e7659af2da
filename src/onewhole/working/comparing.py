"""Working a comparison by the simplest thing that decides, as a teacher would. Every line keeps the order."""

from onewhole.number.digits import in_digits
from onewhole.number.ladder import TEN, Style, joined, mixed
from onewhole.number.quantity import Quantity, trimmed, usual
from onewhole.statements.statement import Comparison, relation
from onewhole.working.comparing_fractions import compare_fractions
from onewhole.working.comparison_way import ComparisonWay, MadeAlike
from onewhole.working.line import Line
from onewhole.working.not_worked import NotWorkedError
from onewhole.working.reasons.comparing import (
    AllInPiecesToCompare,
    AsFractions,
    CountDecides,
    PlaceDecides,
    SameNumber,
    SamePlacesToCompare,
    WholesDecide,
)
from onewhole.working.strategies.to_fractions import in_smallest
from onewhole.working.working import Working

KEY = "compare"

_DIGITS = frozenset({Style.PLACES, Style.DECIMAL})


def work_comparison(asked: Comparison) -> Working:
    """Work a comparison of two quantities; each line keeps which one is more.

    Raises NotWorkedError when a side is more than one number.

    >>> from onewhole.statements.reading import read_statement
    >>> work_comparison(read_statement("5/6 ? 7/8")).answer.value
    '<'
    """
    left, right = asked.left, asked.right
    if not isinstance(left, Quantity) or not isinstance(right, Quantity):
        msg = "only two single numbers are compared line by line"
        raise NotWorkedError(msg, remedy="Work out each side first.")
    sign = relation(left, right)
    way = compare(left, right)
    lines = [Line(Comparison(left, right))]
    for step in way.steps:
        says = Comparison(step.left, step.right)
        if says != lines[-1].says:
            lines.append(Line(says, step.because))
    lines.append(Line(Comparison(left, right, sign), way.decides))
    return Working(KEY, asked, tuple(lines), sign)


def compare(left: Quantity, right: Quantity) -> ComparisonWay:
    """Return the way to compare two numbers of one kind that a teacher would choose.

    Whole numbers and decimals go place by place from the largest (4.NBT.A.2, 4.NF.C.7), measures unit by
    unit, or are counted in the smaller unit; fractions as :mod:`~.comparing_fractions` says (3.NF.A.3.d,
    4.NF.A.2). Source of the codes: CCSSM (2010).

    >>> from onewhole.number.quantity import whole
    >>> compare(whole(345), whole(354)).decides.first
    4
    """
    styles = {left.ladder.style, right.ladder.style}
    if styles <= _DIGITS:
        both = in_digits(left) and in_digits(right)
        return _by_place(left, right) if both else _in_smallest(left, right)
    if styles == {Style.MEASURE}:
        return _by_unit(left, right)
    if Style.DECIMAL in styles:
        as_fractions = _as_fraction(left), _as_fraction(right)
        return compare_fractions(*as_fractions).after(MadeAlike(*as_fractions, AsFractions()))
    return compare_fractions(left, right)


def _by_place(left: Quantity, right: Quantity) -> ComparisonWay:
    """Compare two numbers in digits place by place, from the largest place on."""
    ladder = joined(left.ladder, right.ladder)
    first, second = left.on(ladder), right.on(ladder)
    at = _first_difference(first, second)
    units = ladder.units
    ones = len(units) - 1 - ladder.after
    if at is not None and at <= ones and ladder.after:
        return ComparisonWay((), WholesDecide(units[ones], int(left.value), int(right.value)))
    needed = ladder.after if at is None else at - ones
    steps = _with_places(left, right, needed) if needed > 0 else ()
    if at is None:
        return ComparisonWay(steps, SameNumber(usual(ladder, left.value)))
    above = units[ones:at] if ladder.after else units[:at]
    return ComparisonWay(steps, PlaceDecides(units[at], first.amounts[at], second.amounts[at], above))


def _with_places(left: Quantity, right: Quantity, needed: int) -> tuple[MadeAlike, ...]:
    """Write zeros at the end of a decimal that does not reach a place which is needed."""
    short = min(left.ladder.after, right.ladder.after)
    if short >= needed:
        return ()
    ladder = joined(left.ladder, right.ladder)
    first, second = (usual(ladder, number.value) for number in (left, right))
    return (MadeAlike(first, second, SamePlacesToCompare(ladder.units[-1])),)


def _by_unit(left: Quantity, right: Quantity) -> ComparisonWay:
    """Compare two measures from the largest unit on where both have it, and else in the smallest."""
    ladder = joined(left.ladder, right.ladder)
    first, second = left.on(ladder), right.on(ladder)
    if left.ladder.units[0] != right.ladder.units[0] or _overfull(first) or _overfull(second):
        return _in_smallest(left, right)
    at = _first_difference(first, second)
    if at is None:
        return ComparisonWay((), SameNumber(left))
    units = ladder.units
    return ComparisonWay((), PlaceDecides(units[at], first.amounts[at], second.amounts[at], units[:at]))


def _in_smallest(left: Quantity, right: Quantity) -> ComparisonWay:
    """Count both numbers in the smallest unit."""
    ladder = joined(left.ladder, right.ladder)
    first, second = (in_smallest(number.on(ladder)) for number in (left, right))
    small = ladder.units[-1]
    step = MadeAlike(trimmed(first), trimmed(second), AllInPiecesToCompare(small))
    if first == second:
        return ComparisonWay((step,), SameNumber(trimmed(first)))
    return ComparisonWay((step,), CountDecides(small, first.parts, second.parts))


def _first_difference(first: Quantity, second: Quantity) -> int | None:
    pairs = enumerate(zip(first.amounts, second.amounts, strict=True))
    return next((at for at, (one, other) in pairs if one != other), None)


def _overfull(number: Quantity) -> bool:
    return any(n >= ratio for n, ratio in zip(number.amounts[1:], number.ladder.ratios, strict=True))


def _as_fraction(number: Quantity) -> Quantity:
    """Write a decimal as a fraction: 0.75 as 75/100; 3.0 stays a whole number, and so does 4."""
    if number.ladder.style is not Style.DECIMAL:
        return number
    return usual(mixed(TEN**number.ladder.after, number.ladder.mark), number.value)
