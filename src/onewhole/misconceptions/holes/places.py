"""Columns of digits, and places after the point: what a question may name of them."""

from collections.abc import Callable

from onewhole.misconceptions.asks.pieces import TenthsInAll
from onewhole.misconceptions.asks.sizes import LastDigits
from onewhole.misconceptions.case import Case
from onewhole.misconceptions.holes.parts import typed_pair, wrote
from onewhole.misconceptions.wrong_steps.columns import Columns, laid_out, opens
from onewhole.misconceptions.wrong_steps.pointed import Pointed, pointed, taken_apart, tenths_make_ten
from onewhole.number.ladder import Ladder, joined
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.statement import Comparison

#: Whether a column, counted from the right, is the one that is asked about.
Which = Callable[[Columns, int], bool]


def short(columns: Columns, at: int) -> bool:
    """The top digit is too small."""
    return columns.short(at)


def short_again(columns: Columns, at: int) -> bool:
    """The top digit is too small, and some column was opened before."""
    return columns.short(at) and columns.paid > 0


def short_with_one(columns: Columns, at: int) -> bool:
    """The top digit is 1 and too small."""
    return columns.short(at) and columns.tops[at] == 1


def short_beside_zero(columns: Columns, at: int) -> bool:
    """The top digit is too small, and the one to trade from is 0."""
    return columns.short(at) and at + 1 < len(columns.tops) and columns.tops[at + 1] == 0


def zero_over_digit(columns: Columns, at: int) -> bool:
    """A 0 was typed over a digit."""
    return columns.typed[at] == 0 < columns.below(at)


def digit_over_zero(columns: Columns, at: int) -> bool:
    """A digit stands over a 0 that is written."""
    return columns.bottoms[at] == 0 < columns.tops[at]


def equal_digits(columns: Columns, at: int) -> bool:
    """Both digits are the same, and not 0."""
    return columns.tops[at] == columns.bottoms[at] != 0


def over_a_blank(columns: Columns, at: int) -> bool:
    """Nothing stands below the digit."""
    return columns.blank(at)


def _found(case: Case, which: Which) -> tuple[Columns, int, Ladder]:
    """Work the columns rightly until one is the one asked about. Raises LookupError where none is."""
    pair = typed_pair(case)
    ladder = joined(pair.first.ladder, pair.second.ladder)
    written = len(pair.second.counts) + ladder.after - pair.second.ladder.after
    columns = laid_out(pair.state(ladder), written)
    answer = opens()
    for at in range(len(columns.tops)):
        if which(columns, at):
            return columns, at, ladder
        answer(columns, at)
    msg = "no column is as asked"
    raise LookupError(msg)


def place(which: Which) -> Callable[[Case], Unit]:
    """Return what names the place of a column."""

    def of(case: Case) -> Unit:
        _, at, ladder = _found(case, which)
        return ladder.units[-1 - at]

    return of


def next_place(which: Which) -> Callable[[Case], Unit]:
    """Return what names the place to the left of a column."""

    def of(case: Case) -> Unit:
        _, at, ladder = _found(case, which)
        return ladder.units[-2 - at]

    return of


def opened_place(which: Which) -> Callable[[Case], Unit]:
    """Return what names the place that is opened for a column: the first to its left that is not 0."""

    def of(case: Case) -> Unit:
        columns, at, ladder = _found(case, which)
        opened = next(left for left in range(at + 1, len(columns.tops)) if columns.tops[left])
        return ladder.units[-1 - opened]

    return of


def digit_above(which: Which) -> Callable[[Case], int]:
    """Return what gives the top digit of a column, as it is when the column comes."""

    def of(case: Case) -> int:
        columns, at, _ = _found(case, which)
        return columns.tops[at]

    return of


def digit_below(which: Which) -> Callable[[Case], int]:
    """Return what gives the bottom digit of a column."""

    def of(case: Case) -> int:
        columns, at, _ = _found(case, which)
        return columns.below(at)

    return of


def front_place(case: Case) -> Unit:
    """Return the largest place of the first number."""
    return typed_pair(case).first.ladder.units[0]


# ---- digits after the point ----


def _apart(case: Case) -> tuple[Pointed, Pointed]:
    first, second = both(case)
    return taken_apart(first), taken_apart(second)


def both(case: Case) -> tuple[Quantity, Quantity]:
    """Return the two decimals of a sum, a difference or a comparison."""
    match case.statement:
        case Comparison(Quantity() as left, Quantity() as right):
            return left, right
        case _:
            pair = typed_pair(case)
            return pair.first, pair.second


def first_after_point(case: Case) -> Quantity:
    """Return what the first number has after the point, by itself: 0.31."""
    return pointed(0, _apart(case)[0].digits)


def second_after_point(case: Case) -> Quantity:
    """Return what the second number has after the point, by itself."""
    return pointed(0, _apart(case)[1].digits)


def first_digits(case: Case) -> int:
    """Return the digits of the first number after the point, read as a whole number."""
    return _apart(case)[0].count


def second_digits(case: Case) -> int:
    """Return the digits of the second number after the point, read as a whole number."""
    return _apart(case)[1].count


def first_ones(case: Case) -> int:
    """Return what the first number has before the point."""
    return _apart(case)[0].wholes


def second_ones(case: Case) -> int:
    """Return what the second number has before the point."""
    return _apart(case)[1].wholes


def largest_to_take(case: Case) -> Unit:
    """Return the largest place after the point of which the second number has some."""
    second = typed_pair(case).second
    places = zip(second.ladder.units, second.amounts, strict=True)
    return next((unit for unit, count in places if unit.size < 1 and count), second.ladder.units[-1])


def first_decimal(case: Case) -> Quantity:
    """Return the first of two numbers."""
    return both(case)[0]


def second_decimal(case: Case) -> Quantity:
    """Return the second of two numbers."""
    return both(case)[1]


def longer(case: Case) -> Quantity:
    """Return the number with more places after the point."""
    return max(both(case), key=lambda number: number.ladder.after)


def shorter(case: Case) -> Quantity:
    """Return the number with fewer places after the point."""
    return min(both(case), key=lambda number: number.ladder.after)


def longer_tenth(case: Case) -> Unit:
    """Return the first place after the point of the number with more places."""
    ladder = longer(case).ladder
    return ladder.units[-ladder.after]


def hundredth(case: Case) -> Unit:
    """Return the second place after the point of the number with more places."""
    ladder = longer(case).ladder
    return ladder.units[1 - ladder.after]


def longer_place(case: Case) -> Unit:
    """Return the smallest place of the number with more places."""
    return longer(case).ladder.units[-1]


def shorter_place(case: Case) -> Unit:
    """Return the smallest place of the number with fewer places."""
    return shorter(case).ladder.units[-1]


def tenth(case: Case) -> Unit:
    """Return the first place after the point."""
    ladder = wrote(case).ladder
    return ladder.units[-ladder.after]


def before_point(case: Case) -> Unit:
    """Return the last place before the point: ones, or dollars."""
    ladder = wrote(case).ladder
    return ladder.units[-ladder.after - 1]


def tenths_or_last_digits(case: Case) -> TenthsInAll | LastDigits:
    """Ask about the tenths where they make ten, and about the last digits where one number is longer."""
    if tenths_make_ten(*_apart(case)):
        return TenthsInAll(tenth(case), before_point(case))
    return LastDigits(*both(case))
