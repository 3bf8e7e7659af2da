"""What a problem needs: regrouping, renaming, and the forms that its numbers are given in."""

from enum import Enum
from itertools import accumulate
from operator import mul
from typing import assert_never

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.another_name import another_name
from onewhole.number.ladder import Style
from onewhole.number.name_wanted import Wanted, named_as
from onewhole.number.quantity import Quantity, counted, usual
from onewhole.number.unit import Kind
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Times,
    WithRemainder,
    kind,
    quantities,
    value,
)
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Statement,
    asked_quantities,
    gap_amount,
)
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.missing import alone_on_its_side
from onewhole.working.strategies.same_units import Signed, common_ladder


class Operation(Enum):
    """What is to be done with the numbers."""

    ADD = "add"
    SUBTRACT = "subtract"
    MULTIPLY = "multiply"
    DIVIDE = "divide"
    COMPARE = "compare"
    ORDER = "order"
    FIND = "find"
    RENAME = "rename"
    ROUND = "round"
    READ = "read"


#: Of numbers that are added or taken away it is worth saying that nothing is regrouped.
REGROUPED = frozenset({Operation.ADD, Operation.SUBTRACT})


class Needs(Struct, frozen=True):
    """What a problem asks of a pupil, seen from its numbers alone and not from a strategy.

    ``regroupings`` counts how often one larger unit is opened, or put together, on the way; ``whole_first``
    says that the first number has nothing of the smaller units taken from it (4 - 1 3/8, 50 - 27);
    ``over_one`` counts fraction parts of one or more in the problem as given (2 4/3, 11/8). ``denominators``
    are the different ones, rising; a whole number has none. ``halfway`` says that a number to be rounded is
    exactly halfway between its neighbors.
    """

    kind: Kind
    operations: tuple[Operation, ...]
    numbers: int
    denominators: tuple[int, ...]
    regroupings: int
    renaming: bool
    whole_first: bool
    over_one: int
    halfway: bool = False

    @property
    def regrouping(self) -> bool:
        """Say whether anything is regrouped."""
        return self.regroupings > 0


def needs(statement: Statement) -> Needs:
    """Return what a statement needs.

    ``n1 < n2`` needs regrouping in a difference, parts that fill a whole need it in a sum, and so on every
    ladder: K11 of our list of checks; the standards never split 4.NF.B.3.c by regrouping (CCSSM 2010).

    >>> from onewhole.statements.reading import read_statement
    >>> needs(read_statement("7 2/6 - 3 5/6")).regrouping, needs(read_statement("7 5/6 - 3 2/6")).regrouping
    (True, False)
    >>> needs(read_statement("304 - 128")).regroupings
    2
    """
    match statement:
        case Question(Quantity() as alone):
            return _needs((alone,), {Operation.RENAME}, _made_or_opened(alone, another_name(alone) or alone))
        case Question(asked):
            return _needs((asked,), _operations(asked), *_regrouped(asked))
        case Comparison(left, right):
            both = _operations(left) | _operations(right) | {Operation.COMPARE}
            return _needs((left, right), both, _regrouped(left)[0] + _regrouped(right)[0])
        case Ordering(parts):
            return _needs(parts, {Operation.ORDER}, 0)
        case MissingNumber():
            return _needs_of_gap(statement)
        case AnotherName(number, wanted):
            return _needs((number,), {Operation.RENAME}, _renamed(number, wanted))
        case PlotQuestion():
            read = statement.leads_to
            return _needs((read,), {Operation.READ} | _operations(read), *_regrouped(read))
        case WholeGroups(about=about):
            return _needs((about,), _operations(about), 0)
        case Listing(number=number):
            return _needs((number,), {Operation.MULTIPLY}, 0)
        case FactorQuestion(number=number):
            return _needs((number,), {Operation.DIVIDE}, 0)
        case Rounding(number):
            return replace(_needs((number,), {Operation.ROUND}, 0), halfway=statement.tie)
        case _:
            assert_never(statement)


def _needs(
    sides: tuple[Expression, ...],
    operations: set[Operation],
    regroupings: int,
    whole_first: bool = False,
    gap: Gap | None = None,
) -> Needs:
    found = [quantity for side in sides for quantity in quantities(side)]
    styles = {q.ladder.style for q in found}
    bottoms = {q.ladder.denominator for q in found if q.ladder.style is Style.MIXED}
    places = {q.ladder.after for q in found if q.ladder.style is Style.DECIMAL}
    if gap is not None and isinstance(gap.bottom, int):
        bottoms.add(gap.bottom)
    return Needs(
        kind(sides[0]),
        tuple(operation for operation in Operation if operation in operations),
        len(found) + (gap is not None),
        tuple(sorted(bottoms)),
        regroupings,
        max(len(bottoms), len(places)) > 1 or styles >= {Style.MIXED, Style.DECIMAL},
        whole_first,
        sum(_over_one(quantity) for quantity in found),
    )


def _over_one(quantity: Quantity) -> bool:
    return quantity.ladder.style is Style.MIXED and quantity.amounts[-1] >= quantity.ladder.denominator


def _operations(side: Expression) -> set[Operation]:
    match side:
        case Quantity():
            return set()
        case Sum(terms):
            here = {Operation.SUBTRACT if term.taken else Operation.ADD for term in terms[1:]}
            return here.union(*(_operations(term.part) for term in terms))
        case Times(left, right):
            return {Operation.MULTIPLY} | _operations(left) | _operations(right)
        case Over(top, bottom):
            return _operations(top) | _operations(bottom)
        case Quotient(left, right):
            return {Operation.DIVIDE} | _operations(left) | _operations(right)
        case InBrackets(inside):
            return _operations(inside)
        case WithRemainder():
            return {Operation.DIVIDE}
        case _:
            assert_never(side)


def _regrouped(side: Expression) -> tuple[int, bool]:
    """Count the regroupings of a flat sum or difference, and say whether it begins with wholes only."""
    signed = asked_quantities(Question(side))
    if signed is None or len(signed) == 1 or runs_below_zero(side):
        return 0, False
    return regroupings(signed), _whole_first(signed)


def runs_below_zero(side: Expression) -> bool:
    """Say whether a sum taken from left to right is below zero on the way: 2 - 5 + 4 (K4)."""
    if not isinstance(side, Sum):
        return False
    return min(accumulate(-value(term.part) if term.taken else value(term.part) for term in side.terms)) < 0


def _whole_first(signed: Signed) -> bool:
    ladder = common_ladder(signed)
    (first, _), (second, taken) = signed[:2]
    have, gone = first.on(ladder).amounts, second.on(ladder).amounts
    return taken and not any(have[1:]) and any(gone[1:])


def regroupings(signed: Signed) -> int:
    """Count how often a unit is opened or put together when numbers are joined from left to right."""
    ladder = common_ladder(signed)
    (first, _), *rest = ((quantity.on(ladder), taken) for quantity, taken in signed)
    count, parts = 0, first.parts
    for second, taken in rest:
        if taken and not _enough(first, second):
            count += 1
            first = usual(ladder, first.value).on(ladder)
        count += _carries(first, second, taken=taken)
        parts += -second.parts if taken else second.parts
        first = counted(ladder, parts * ladder.finest)
    return count


def _enough(first: Quantity, second: Quantity) -> bool:
    """Say whether the larger units as written are enough, so that nothing is put together first."""
    worths = first.ladder.worths
    have, gone = (accumulate(map(mul, side.amounts, worths)) for side in (first, second))
    return all(a >= b for a, b in zip(have, gone, strict=True))


def _carries(first: Quantity, second: Quantity, *, taken: bool) -> int:
    """Count the units opened (or put together), from the smallest rung up."""
    count = carried = 0
    for rung in reversed(range(1, len(first.amounts))):
        a, b, ratio = first.amounts[rung], second.amounts[rung], first.ladder.ratios[rung - 1]
        carried = max(0, -(-(b + carried - a) // ratio)) if taken else (a + b + carried) // ratio
        count += carried
    return count


def _needs_of_gap(asked: MissingNumber) -> Needs:
    """Return the needs of finding the missing number, and of renaming the known side to match the gap."""
    alone = alone_on_its_side(asked)
    count, whole_first = _regrouped(alone.rest)
    operations = _operations(alone.rest) | {Operation.FIND}
    return _needs((alone.rest,), operations, count + _opened(alone), whole_first, asked.gap)


def _renamed(number: Quantity, wanted: Wanted) -> int:
    """Count the larger units that are opened or made where a number is written another way: 1 at most."""
    return _made_or_opened(number, named_as(number, wanted))


def _made_or_opened(number: Quantity, name: Quantity) -> int:
    return int(number != name and (number.kind is not Kind.NUMBER or _wholes(number) != _wholes(name)))


def _wholes(number: Quantity) -> int:
    return number.amounts[0] if number.ladder.style is Style.MIXED else int(number.value)


def _opened(asked: MissingNumber) -> bool:
    """Say whether wholes are opened or put together to match the form of the number with the gap."""
    gap = asked.gap
    if gap.alone:
        return False
    found = gap.filling(gap_amount(asked))
    wholes = found if gap.wholes is HOLE else gap.wholes or 0
    if isinstance(asked.rest, Quantity) and asked.rest.ladder.style is Style.MIXED:
        return wholes != asked.rest.amounts[0]
    return wholes != value(asked.rest) // 1
