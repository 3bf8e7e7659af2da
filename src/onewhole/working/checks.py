"""Checks a working carries: an estimate, undoing it, and a second strategy that agrees."""

from collections.abc import Iterable, Iterator
from fractions import Fraction
from itertools import accumulate

from msgspec import Struct

from onewhole.errors import Fault
from onewhole.number.ladder import TEN, Ladder, Style, decimal, mixed
from onewhole.number.quantity import Quantity, usual, usual_in_parts, whole
from onewhole.number.unit import CENT_PLACES, DOLLAR, Kind
from onewhole.statements.expression import (
    Expression,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
    is_worth,
    value,
)
from onewhole.working.strategies.same_units import Signed

#: Counts in quarters of the smallest unit, each with whether it is taken away.
Counted = list[tuple[int, bool]]
#: Half of a step of half a whole, so that every bound is a whole number of something.
QUARTERS = 4


class CheckError(Fault, ArithmeticError):
    """A working disagrees with its own check: a fault in the program, never shown as a result."""


class Estimate(Struct, frozen=True):
    """The answer with easy numbers, and its bounds: at least ``low``, at most ``high``.

    ``easy`` is the problem with every number rounded, and ``about`` what it comes to; both are None where
    the rounded numbers run below zero. Where every number is easy already, all three are the answer.
    """

    easy: Expression | None
    about: Quantity | None
    low: Quantity
    high: Quantity

    @property
    def exact(self) -> bool:
        """Say whether every number was easy already, so that nothing is estimated."""
        return self.low == self.high


class Undone(Struct, frozen=True):
    """Putting back what was taken (or taking back what was added) gives the first number again.

    ``links`` is a chain of equal expressions.
    """

    links: tuple[Expression, ...]

    def __post_init__(self) -> None:
        """Refuse a chain that is not true."""
        amount = value(self.links[0])
        if not all(is_worth(link, amount) for link in self.links[1:]):
            msg = "undoing the working does not lead back"
            raise CheckError(msg)


class Agreed(Struct, frozen=True):
    """A second strategy, by its key, reaches the same amount; ``answer`` is what it reaches."""

    strategy: str
    answer: Quantity | WithRemainder


Check = Estimate | Undone | Agreed


def agreement(
    key: str, answer: Quantity | WithRemainder, others: Iterable[tuple[str, Quantity | WithRemainder]]
) -> Iterator[Agreed]:
    """Give the first of other ways, each by its key with what it reaches; no more than that one is worked.

    Raises CheckError when it reaches another amount than the ``answer`` of the way with the ``key``.

    >>> from onewhole.number.quantity import whole
    >>> [one.strategy for one in agreement("jumps", whole(6), [("by_heart", whole(6)), ("parts", whole(6))])]
    ['by_heart']
    """
    for other, reached in others:
        if value(reached) != value(answer):
            msg = f"{key} and {other} disagree"
            raise CheckError(msg)
        yield Agreed(other, reached)
        return


def estimated(signed: Signed, answer: Quantity) -> Estimate:
    """Estimate an answer by easy numbers, and bound it by where each number lies beside its easy one.

    The quantities stand on one ladder. Pieces are rounded to 0, 1/2 and 1 (5.NF.A.2 asks for benchmark
    fractions); whole numbers and decimals to one place, the first of the smaller number or the second of the
    larger, whichever is larger; measures to the largest unit there is. A number that was rounded up lies
    between its easy number and half a step below, one that was rounded down between it and half a step above.
    Raises CheckError when the answer is not within these bounds. Source: 3.OA.D.8, 4.OA.A.3 and 5.NF.A.2 ask
    for estimates to judge an answer (CCSSM 2010); which numbers are easy is common practice, no source.

    >>> from onewhole.number.quantity import whole
    >>> found = estimated(((whole(4567), False), (whole(3789).on(whole(4567).ladder), False)), whole(8356))
    >>> found.about == whole(9000), found.low == whole(8000), found.high == whole(9000)
    (True, True, True)
    """
    ladder = signed[0][0].ladder
    counted = [(QUARTERS * quantity.parts, taken) for quantity, taken in signed]
    step, easy = _easy(ladder, counted)
    low = high = 0
    for (parts, taken), (near, _) in zip(counted, easy, strict=True):
        ends = sorted((near, near + (step if parts > near else -step if parts < near else 0) // 2))
        low, high = (low - ends[1], high - ends[0]) if taken else (low + ends[0], high + ends[1])
    if not low <= QUARTERS * answer.on(ladder).parts <= high:
        msg = "the answer lies outside its estimate"
        raise CheckError(msg)
    bounds = _written(ladder, max(low, 0), up=False), _written(ladder, high, up=True)
    running = list(accumulate(-near if taken else near for near, taken in easy))
    if min(running) < 0:
        return Estimate(None, None, *bounds)
    terms = [Term(_written(ladder, near, up=False), taken) for near, taken in easy]
    whole_sum: Expression = Sum(tuple(terms)) if len(terms) > 1 else terms[0].part
    return Estimate(whole_sum, _written(ladder, running[-1], up=False), *bounds)


def _easy(ladder: Ladder, counted: Counted) -> tuple[int, Counted]:
    """Return how far easy numbers are apart, and the easy numbers; finer where they would come to nothing."""
    step = _step(ladder, [parts for parts, _ in counted])
    while True:
        easy = [((2 * parts + step) // (2 * step) * step, taken) for parts, taken in counted]
        finer = step // TEN
        if sum(-near if taken else near for near, taken in easy) or finer <= QUARTERS or _in_parts(ladder):
            return step, easy
        step = finer


def _in_parts(ladder: Ladder) -> bool:
    """Say whether easy numbers are halves, or whole larger units, and not digits of a place."""
    return ladder.style is Style.MIXED or (ladder.style is Style.MEASURE and len(ladder.units) > 1)


def _step(ladder: Ladder, quarters: list[int]) -> int:
    """Return from easy number to easy number, in quarters of the smallest unit."""
    some = [count for count in quarters if count] or [QUARTERS]
    if ladder.style is Style.MIXED:
        return QUARTERS * ladder.denominator // 2
    if _in_parts(ladder):
        worths = [QUARTERS * worth for worth in ladder.worths]
        return next((worth for worth in worths if worth <= max(some)), worths[-1])
    first, second = (_first_place(count) for count in (min(some), max(some)))
    return max(first, second // TEN, QUARTERS)


def _first_place(quarters: int) -> int:
    """Return what the first digit of a count counts, in quarters: of 345 a hundred."""
    place = QUARTERS
    while place * TEN <= quarters:
        place *= TEN
    return place


def _written(ladder: Ladder, quarters: int, *, up: bool) -> Quantity:
    """Write so many quarters of the smallest unit as short as can be; a measure in whole units.

    It is rounded ``up`` or down to them. Of a mixed number that is wholes, halves and quarters, of a decimal
    as few places as hold it.
    """
    if ladder.style is Style.MEASURE:
        return usual_in_parts(ladder, -(-quarters // QUARTERS) if up else quarters // QUARTERS)
    amount = Fraction(quarters * ladder.finest.numerator, QUARTERS * ladder.finest.denominator)
    return _easy_number(ladder, amount)


def estimated_product(left: Quantity, right: Quantity, answer: Quantity) -> Estimate:
    """Estimate a product by easy numbers, and bound it by where each number lies beside its easy one.

    Raises CheckError when the answer is not within these bounds. Sources as in :func:`estimated`; that one
    digit is kept of a factor is common practice, no source.

    >>> from onewhole.number.quantity import whole
    >>> found = estimated_product(whole(24), whole(36), whole(864))
    >>> found.about == whole(800), found.low == whole(700), found.high == whole(1000)
    (True, True, True)
    """
    (low, near, high), (least, other, most) = _between(left), _between(right)
    if not low * least <= answer.value <= high * most:
        msg = "the answer lies outside its estimate"
        raise CheckError(msg)
    easy = Times(_easy_number(left.ladder, near), _easy_number(right.ladder, other))
    bounds = (_easy_number(answer.ladder, low * least), _easy_number(answer.ladder, high * most, up=True))
    return Estimate(easy, _easy_number(answer.ladder, near * other), *bounds)


def estimated_quotient(left: Quantity, right: Quantity, reached: Fraction) -> Estimate | None:
    """Estimate a quotient by the nearest easy number below it, and bound it by that one and the next.

    87 / 4 lies between 80 / 4 and 120 / 4. None where the right number is no plain whole number, for
    measures, and for less than one. Raises CheckError when the answer is not within these bounds. Sources as
    in :func:`estimated`; 4.NBT.B.6 asks for the relationship between multiplication and division.

    >>> from onewhole.number.quantity import whole
    >>> found = estimated_quotient(whole(87), whole(4), Fraction(87, 4))
    >>> found.about == found.low == whole(20), found.high == whole(30)
    (True, True)
    """
    by, mark = right.parts, left.ladder.mark
    if not right.plain or left.kind is not Kind.NUMBER or left.value < by:
        return None
    step = 1
    while step * TEN * by <= left.value:
        step *= TEN
    low = int(left.value / by / step) * step
    high = low if low * by == left.value else low + step
    if not low <= reached <= high:
        msg = "the answer lies outside its estimate"
        raise CheckError(msg)
    easy = Quotient(whole(low * by, mark), right)
    return Estimate(easy, whole(low, mark), whole(low, mark), whole(high, mark))


def _between(number: Quantity) -> tuple[Fraction, Fraction, Fraction]:
    """Return what a number is at least, its easy number, and what it is at most."""
    parts = QUARTERS * number.parts
    step, ((near, _),) = _easy(number.ladder, [(parts, False)])
    ends = sorted((near, near + (step if parts > near else -step if parts < near else 0) // 2))
    low, easy, high = (
        Fraction(found * number.ladder.finest.numerator, QUARTERS * number.ladder.finest.denominator)
        for found in (ends[0], near, ends[1])
    )
    return low, easy, high


def _easy_number(ladder: Ladder, amount: Fraction, *, up: bool = False) -> Quantity:
    """Write an amount as short as can be; a measure in whole smallest units, money in whole cents.

    These are rounded ``up`` or down.
    """
    if ladder.style is Style.MEASURE:
        parts = amount / ladder.finest
        return usual_in_parts(ladder, -(-parts.numerator // parts.denominator) if up else int(parts))
    if amount.denominator == 1:
        return whole(amount.numerator, ladder.mark)
    if ladder.mark == DOLLAR:
        cents = amount * TEN**CENT_PLACES
        kept = -(-cents.numerator // cents.denominator) if up else int(cents)
        return usual(decimal(1, CENT_PLACES, DOLLAR), Fraction(kept, TEN**CENT_PLACES))
    if ladder.style is Style.DECIMAL:
        after = next((places for places in range(1, TEN) if not (amount * TEN**places) % 1), 0)
        return usual(decimal(1, after, ladder.mark), amount)
    return usual(mixed(amount.denominator, ladder.mark), amount)


def undone(signed: Signed, answer: Quantity) -> Undone:
    """Put back what was taken and take back what was added, last first."""
    undo = tuple([Term(quantity, not taken) for quantity, taken in reversed(signed[1:])])
    return Undone((Sum((Term(answer), *undo)), signed[0][0]))
