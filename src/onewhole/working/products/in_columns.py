"""In columns: every digit of one number times every digit of the other, with what is carried written small.

The number with more digits stands above. Each digit of the lower one gives a row, which begins with as many
zeros as places stand to the right of that digit; the rows are added in columns. Decimals are multiplied in
the same squares, and the point is put into the product.

Sources: 5.NBT.B.5 (the standard algorithm for whole numbers) and 5.NBT.B.7 (decimals, a written method),
CCSSM (2010). That the number with more digits stands above is common practice, no source.
"""

from msgspec import Struct
from msgspec.structs import replace

from onewhole.number.digits import stands_in_digits
from onewhole.number.ladder import TEN, Ladder, decimal, places
from onewhole.number.quantity import Quantity, landmark, trimmed, whole
from onewhole.number.unit import Unit
from onewhole.statements.expression import Expression, Times, plus
from onewhole.working.line import Line
from onewhole.working.products.made import made
from onewhole.working.products.product_state import ProductState
from onewhole.working.products.product_way import ProductStep, ProductWay
from onewhole.working.quotients.quotient_state import written
from onewhole.working.reasons.columns import (
    ColumnAdded,
    DigitMultiplied,
    DigitsLaid,
    InColumns,
    ProductPoint,
    ZerosWritten,
)
from onewhole.working.reasons.multiplying import TurnedRound
from onewhole.working.reasons.unsuited import NoColumns, NotSoManyTimes, Unsuited

#: Numbers with so many digits are multiplied so, 4 x 1 and 3 x 2 in grade 5; the lower one is the shorter.
#: Source: 4.NBT.B.5 and 5.NBT.B.5, CCSSM (2010), and as far as many states go beyond (three digits by three).
MOST_ABOVE, MOST_BELOW = 4, 3


class _Rows(Struct, frozen=True):
    """The rows of a product while they are written: what is done, and what the lower number still takes."""

    above: Quantity
    below: Quantity
    lines: tuple[Line, ...] = ()
    done: tuple[int, ...] = ()

    @property
    def ladder(self) -> Ladder:
        """Return the ladder of the product as it is written, with all its places after the point."""
        after = self.above.ladder.after + self.below.ladder.after
        size = len(str(self.above.parts)) + len(str(self.below.parts)) + 1
        mark = self.above.ladder.mark or self.below.ladder.mark
        return decimal(max(1, size - after), after, mark) if after else places(size, mark)

    def unit(self, square: int) -> Unit:
        """Return the unit of a square, counted from the right."""
        unit = self.ladder.units[-1]
        return replace(unit, size=unit.size * TEN**square)

    def say(self, reason: InColumns, *parts: Expression, later: int) -> "_Rows":
        """Return the rows with one more line: the rows done, these parts, and the products still to come."""
        done = [_part(self.ladder, row) for row in self.done if row]
        digits = _digits(self.below)
        to_come = [
            Times(self.above, _part(self.below.ladder, TEN**at * digits[at]))
            for at in range(later, len(digits))
            if digits[at]
        ]
        line = Line(plus(*done, *parts, *to_come), reason, aside=True)
        return replace(self, lines=(*self.lines, line))


def _digits(number: Quantity) -> tuple[int, ...]:
    """Return the digits of a number from the right, without zeros in front and without its point."""
    return whole(number.parts).amounts[::-1]


def _part(ladder: Ladder, parts: int) -> Quantity:
    return written(landmark(ladder, parts))


def upper_and_lower(product: ProductState) -> tuple[Quantity, Quantity]:
    """Return the number that stands above and the one below: above stands the one with more digits.

    >>> from onewhole.number.quantity import whole
    >>> [number.parts for number in upper_and_lower(ProductState(whole(7), whole(386)))]
    [386, 7]
    """
    left, right = trimmed(product.left), trimmed(product.right)
    longer = len(_digits(right)) > len(_digits(left))
    return (right, left) if longer else (left, right)


def laid(state: ProductState) -> ProductState:
    """Write the number with more digits above, as if there were no points."""
    above, below = upper_and_lower(state)
    if above != trimmed(state.left):
        state = state.say(Times(above, below), TurnedRound(state.left, state.right))
    state = ProductState(above, below, state.lines)
    if above.ladder.after or below.ladder.after:
        line = Line(Times(above, below), DigitsLaid(above, below), aside=True)
        state = replace(state, lines=(*state.lines, line))
    return state


def digit_by_digit(state: ProductState) -> ProductState:
    """Multiply the upper number by every digit of the lower one, then add the rows and put the point."""
    rows = _Rows(state.left, state.right)
    row = 0
    for place, digit in enumerate(_digits(rows.below)):
        if digit:
            rows = _row(rows, place, digit, row)
            row += 1
    if row > 1:
        rows = _added(rows)
    result = made(state.left, state.right)
    lines = (*state.lines, *rows.lines)
    if rows.ladder.after:
        point = ProductPoint(state.left.ladder.after, state.right.ladder.after)
        lines = (*lines, Line(result, point))
    else:
        lines = (*lines[:-1], replace(lines[-1], says=result, aside=False))
    return replace(state, lines=lines, result=result)


def _row(rows: _Rows, place: int, digit: int, row: int) -> _Rows:
    """Write one partial product, from its zeros to its last digit."""
    digits, worth = _digits(rows.above), digit * TEN**place
    times = _part(rows.below.ladder, worth)
    if place:
        unit = rows.below.ladder.units[-1]
        unit = replace(unit, size=unit.size * TEN**place)
        rows = rows.say(ZerosWritten(digit, unit, place, row), Times(rows.above, times), later=place + 1)
    below: list[int] = []
    carried = 0
    for at, one in enumerate(digits):
        square, outermost = at + place, at == len(digits) - 1
        unit, large = rows.unit(square), rows.unit(square + 1)
        reason = DigitMultiplied(digit, one, carried, unit, large, square, row, outermost)
        carried, stays = (0, reason.total) if outermost else divmod(reason.total, TEN)
        below.insert(0, stays * TEN**square)
        if outermost:
            rows = replace(rows, done=(*rows.done, sum(below)))
            return rows.say(reason, later=place + 1)
        open_part = _part(rows.above.ladder, rows.above.parts // TEN ** (at + 1) * TEN ** (at + 1))
        more = (carried * TEN ** (square + 1), *below)
        parts = [_part(rows.ladder, part) for part in more if part]
        rows = rows.say(reason, Times(open_part, times), *parts, later=place + 1)
    return rows


def _added(rows: _Rows) -> _Rows:
    """Add the rows, column by column."""
    open_rows, rows = rows.done, replace(rows, done=())
    later = len(_digits(rows.below))
    last = max(len(str(part)) for part in open_rows) - 1
    below: list[int] = []
    carried = 0
    for square in range(last + 1):
        digits = tuple(part // TEN**square % TEN for part in open_rows if part >= TEN**square)
        unit, large = rows.unit(square), rows.unit(square + 1)
        reason = ColumnAdded(unit, large, digits, carried, square == last)
        carried, stays = (0, reason.total) if square == last else divmod(reason.total, TEN)
        below.insert(0, stays * TEN**square)
        still = [part // TEN ** (square + 1) * TEN ** (square + 1) for part in open_rows]
        shown = [part for part in (*still, carried * TEN ** (square + 1)) if part]
        amounts = (*shown, *(part for part in below if part)) if shown else (sum(below),)
        rows = rows.say(reason, *[_part(rows.ladder, part) for part in amounts], later=later)
    return rows


def _unsuited(state: ProductState) -> Unsuited | None:
    if state.part_of_money:
        return NotSoManyTimes()
    if not all(stands_in_digits(one) and one.parts for one in (state.left, state.right)):
        return NoColumns()
    above, _ = upper_and_lower(state)
    return NoColumns() if len(above.counts) == 1 else None


def _offered(state: ProductState) -> bool:
    above, below = (len(_digits(number)) for number in upper_and_lower(state))
    return above > 1 and above <= MOST_ABOVE and below <= MOST_BELOW


MULTIPLY_IN_COLUMNS = ProductWay(
    key="multiply_in_columns",
    name="Multiply in columns",
    steps=(ProductStep("laid", laid), ProductStep("digit_by_digit", digit_by_digit)),
    unsuited=_unsuited,
    offered=_offered,
)
