"""Comparing fractions and mixed numbers by the simplest thing that decides.

What is tried, in this order: pieces of one size, and as many pieces (3.NF.A.3.d); one whole as a mark; the
wholes; one half as a mark (4.NF.A.2); as many pieces missing to one whole; more pieces that are larger too;
one number cut finer; as many pieces made; and only then a common denominator (4.NF.A.2).

Source: the codes are those of CCSSM (2010); that classes compare by marks and by what is missing before they
look for a common denominator, Cramer, Post & delMas (2002), JRME 33, 111-144 (from memory).
"""

from fractions import Fraction

from msgspec.structs import replace

from onewhole.number.factors import common_denominator
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, usual, whole
from onewhole.number.unit import ONE, Unit
from onewhole.working.comparison_way import ComparisonWay, MadeAlike
from onewhole.working.reasons.comparing import (
    AgainstHalf,
    AgainstOne,
    AsManyMissing,
    AsManyPieces,
    CountDecides,
    Deciding,
    MoreAndLarger,
    MoreBesideWholes,
    OnlyOneIsMore,
    PiecesOfOneSize,
    SameCountToCompare,
    SameNumber,
    SameSizeToCompare,
    WholesDecide,
    WholesSame,
    WithWholes,
)

HALF = Fraction(1, 2)


def compare_fractions(left: Quantity, right: Quantity) -> ComparisonWay:
    """Return the way to compare two fractions, mixed numbers or whole numbers.

    >>> from onewhole.statements.reading import read_quantity
    >>> compare_fractions(read_quantity("4/5"), read_quantity("4/7")).decides.count
    4
    """
    if left == right:
        return ComparisonWay((), SameNumber(left))
    if not left.value and not right.value:
        return ComparisonWay((), SameNumber(whole(0, left.ladder.mark)))
    if not left.value or not right.value:
        return ComparisonWay((), OnlyOneIsMore(left if left.value else right))
    seen = _at_sight(left, right)
    if seen:
        return ComparisonWay((), seen)
    if (left.value < 1) != (right.value < 1):
        return ComparisonWay((), AgainstOne(_one(left), left, right))
    if _overfull(left) or _overfull(right):
        first, second = (
            usual(mixed(_pieces(number), number.ladder.mark), number.value) for number in (left, right)
        )
        return _beside_wholes(first, second).after(MadeAlike(first, second, WithWholes(_one(left))))
    return _beside_wholes(left, right)


def _beside_wholes(left: Quantity, right: Quantity) -> ComparisonWay:
    """Compare two numbers without overfull pieces: by their wholes, or by what stands beside them."""
    if left == right:
        return ComparisonWay((), SameNumber(left))
    (wholes, first), (others, second) = _parted(left), _parted(right)
    if wholes != others:
        return ComparisonWay((), WholesDecide(_one(left), wholes, others))
    if first is None:
        more = (
            SameNumber(whole(wholes, left.ladder.mark))
            if second is None
            else MoreBesideWholes(_one(left), wholes, right, second)
        )
        return ComparisonWay((), more)
    if second is None:
        return ComparisonWay((), MoreBesideWholes(_one(left), wholes, left, first))
    if not wholes:
        return _proper(first, second)
    return _proper(first, second).after(MadeAlike(first, second, WholesSame(_one(left), wholes)))


def _proper(left: Quantity, right: Quantity) -> ComparisonWay:
    """Compare two fractions of less than one whole."""
    if left == right:
        return ComparisonWay((), SameNumber(left))
    decides = _at_sight(left, right) or _by_marks(left, right)
    if decides:
        return ComparisonWay((), decides)
    tops, bottoms = (left.amounts[1], right.amounts[1]), (_pieces(left), _pieces(right))
    finest = common_denominator(bottoms)
    few = max(tops)
    if finest not in bottoms and not few % min(tops) and left.value != right.value:
        first, second = (_with_top(number, few) for number in (left, right))
        way = ComparisonWay((), AsManyPieces(few, first.ladder.units[1], second.ladder.units[1]))
        return way.after(MadeAlike(first, second, SameCountToCompare(few)))
    ladder = mixed(finest, left.ladder.mark)
    first, second = (number.on(ladder) for number in (left, right))
    step = MadeAlike(_alone(first), _alone(second), SameSizeToCompare(ladder.units[1]))
    if first == second:
        return ComparisonWay((step,), SameNumber(_alone(first)))
    return ComparisonWay((step,), CountDecides(ladder.units[1], first.amounts[1], second.amounts[1]))


def _at_sight(left: Quantity, right: Quantity) -> Deciding | None:
    """Decide two fractions without wholes whose pieces are of one size, or as many."""
    if {left.ladder.style, right.ladder.style} != {Style.MIXED} or left.amounts[0] or right.amounts[0]:
        return None
    first, second = left.amounts[1], right.amounts[1]
    small, other = left.ladder.units[1], right.ladder.units[1]
    if left.value == right.value or not first or not second:
        return None
    if small == other:
        return PiecesOfOneSize(small, first, second)
    return AsManyPieces(first, small, other) if first == second else None


def _by_marks(left: Quantity, right: Quantity) -> Deciding | None:
    """Decide two fractions of less than one whole by one half, by what is missing, or by pieces and size."""
    sides = [(number.value > HALF) - (number.value < HALF) for number in (left, right)]
    if sides[0] != sides[1]:
        return AgainstHalf(left, right)
    bottoms = _pieces(left), _pieces(right)
    if not sides[0] and 2 not in bottoms:
        return AgainstHalf(left, right)
    if left.value == right.value:
        return None
    tops = left.amounts[1], right.amounts[1]
    if bottoms[0] - tops[0] == bottoms[1] - tops[1]:
        return AsManyMissing(bottoms[0] - tops[0], left, right)
    if (tops[0] > tops[1]) == (bottoms[0] < bottoms[1]):
        return MoreAndLarger(left, right) if tops[0] > tops[1] else MoreAndLarger(right, left)
    return None


def _one(number: Quantity) -> Unit:
    """Return what one of a number is: one, or its unit."""
    return replace(ONE, mark=number.ladder.mark)


def _overfull(number: Quantity) -> bool:
    return number.ladder.style is Style.MIXED and number.amounts[1] >= _pieces(number)


def _pieces(number: Quantity) -> int:
    return number.ladder.denominator if number.ladder.style is Style.MIXED else 1


def _parted(number: Quantity) -> tuple[int, Quantity | None]:
    """Return the wholes of a number without overfull pieces, and the fraction beside them."""
    if number.ladder.style is not Style.MIXED:
        return int(number.value), None
    wholes, pieces = number.amounts
    return wholes, _alone(number) if pieces else None


def _alone(number: Quantity) -> Quantity:
    """Return the pieces of a number without its wholes."""
    return Quantity(number.ladder, (None, number.amounts[1]))


def _with_top(number: Quantity, top: int) -> Quantity:
    """Write a fraction with another numerator, a multiple of its own: 2/3 as 4/6."""
    times = top // number.amounts[1]
    return Quantity(mixed(_pieces(number) * times, number.ladder.mark), (None, top))
