"""Working a comparison: pieces of one size first, then count them. Every line keeps the order."""

from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.statements.expression import Expression, value
from onewhole.statements.statement import Comparison, relation
from onewhole.working.line import Line
from onewhole.working.questions import NotWorkedError
from onewhole.working.reason import Reason
from onewhole.working.reasons.comparing import (
    AllInPiecesToCompare,
    CountDecides,
    OnlyCountsMatter,
    PlaceDecides,
    SameSizeToCompare,
    WholesDecide,
)
from onewhole.working.strategies.same_units import same_units
from onewhole.working.strategies.to_fractions import in_smallest
from onewhole.working.working import Working

KEY = "same_size_pieces"


def work_comparison(asked: Comparison) -> Working:
    """Work a comparison of two quantities; each line keeps which one is more.

    Wholes decide when they differ; otherwise both are counted in pieces of one size. Source: 4.NF.A.2
    (common denominators), CCSSM (2010). Raises NotWorkedError when a side is more than one number.

    >>> from onewhole.statements.reading import read_statement
    >>> work_comparison(read_statement("5/6 ? 7/8")).answer.value
    '<'
    """
    left, right = asked.left, asked.right
    if not isinstance(left, Quantity) or not isinstance(right, Quantity):
        msg = "only two single numbers are compared line by line"
        raise NotWorkedError(msg, remedy="Work out each side first.")
    sign = relation(left, right)
    lines = [Line(Comparison(left, right))]
    signed, _ = same_units(((left, False), (right, False)))
    (first, _), (second, _) = signed
    pairs = tuple(zip(first.amounts, second.amounts, strict=True))
    differs = next((at for at, (one, other) in enumerate(pairs) if one != other), None)
    reason: Reason
    if differs is not None and _by_place(first, differs):
        units = first.ladder.units
        reason = PlaceDecides(units[differs], *pairs[differs], units[:differs])
    elif differs == 0 and _usual(first) and _usual(second):
        reason = WholesDecide(first.ladder.units[0], *pairs[0])
    else:
        small = first.ladder.units[-1]
        _say(lines, trimmed(first), trimmed(second), SameSizeToCompare(small))
        one, other = in_smallest(first), in_smallest(second)
        _say(lines, trimmed(one), trimmed(other), AllInPiecesToCompare(small))
        _say(lines, whole(one.parts), whole(other.parts), OnlyCountsMatter(small))
        reason = CountDecides(small, one.parts, other.parts)
    lines.append(Line(Comparison(left, right, sign), reason))
    return Working(KEY, asked, tuple(lines), sign)


def _say(lines: list[Line], left: Expression, right: Expression, reason: Reason) -> None:
    says = Comparison(left, right)
    if says != lines[-1].says:
        lines.append(Line(says, reason))


def _by_place(quantity: Quantity, differs: int) -> bool:
    """Say whether the place that differs first decides by itself.

    In whole numbers it always does (4.NBT.A.2); in decimals below the point all is counted in one unit
    (4.NF.C.7). Source: CCSSM (2010).
    """
    if quantity.ladder.style is Style.PLACES:
        return len(quantity.counts) > 1
    return quantity.ladder.style is Style.DECIMAL and not differs


def _usual(quantity: Quantity) -> bool:
    """Say whether the pieces make less than a whole, so that the wholes alone can decide."""
    if len(quantity.counts) == 1:
        return False
    return value(quantity) < value(quantity.only(0)) + quantity.ladder.units[0].size
