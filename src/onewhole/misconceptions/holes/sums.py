"""Columns that are added: what a question may name of them."""

from collections.abc import Callable

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.holes.parts import typed_pair
from onewhole.misconceptions.wrong_steps.sums import SumColumns, sum_columns
from onewhole.number.ladder import TEN, joined
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit

#: Whether a column, counted from the right, is the one that is asked about.
WhichSum = Callable[[SumColumns, int], bool]


def makes_ten(columns: SumColumns, at: int) -> bool:
    """The column makes ten by itself, and is not the left-most."""
    return columns.sums[at] >= TEN and at < len(columns) - 1


def makes_ten_anywhere(columns: SumColumns, at: int) -> bool:
    """The column makes ten by itself, and is not that of the ones."""
    return columns.sums[at] >= TEN and at > 0


def carries(columns: SumColumns, at: int) -> bool:
    """The column makes ten when it is added rightly, and is not the left-most."""
    return bool(columns.carries[at + 1]) and at < len(columns) - 1


def carries_again(columns: SumColumns, at: int) -> bool:
    """The column makes ten when it is added rightly, and one to its right did."""
    return carries(columns, at) and any(columns.carries[1 : at + 1])


def carries_nothing(columns: SumColumns, at: int) -> bool:
    """The column makes no ten when it is added rightly, and is not the left-most."""
    return not columns.carries[at + 1] and at < len(columns) - 1


def carries_over_a_blank(columns: SumColumns, at: int) -> bool:
    """The column makes ten when it is added rightly, and in the next a digit stands alone."""
    return carries(columns, at) and columns.blank(at + 1)


def zero_and_digit(columns: SumColumns, at: int) -> bool:
    """A 0 stands over or under a digit."""
    return not columns.blank(at) and 0 in {columns.tops[at], columns.bottoms[at]}


def at_the_ones(_: SumColumns, at: int) -> bool:
    """The column of the ones."""
    return at == 0


def _found(case: Case, which: WhichSum) -> tuple[SumColumns, int]:
    """Return the columns and the first of them that is as asked. Raises LookupError where none is."""
    columns = sum_columns(typed_pair(case))
    for at in range(len(columns)):
        if which(columns, at):
            return columns, at
    msg = "no column is as asked"
    raise LookupError(msg)


def sum_place(which: WhichSum) -> Callable[[Case], Unit]:
    """Return what names the place of a column."""

    def of(case: Case) -> Unit:
        pair = typed_pair(case)
        return joined(pair.first.ladder, pair.second.ladder).units[-1 - _found(case, which)[1]]

    return of


def place_after(which: WhichSum) -> Callable[[Case], Unit]:
    """Return what names the place to the left of a column."""

    def of(case: Case) -> Unit:
        pair = typed_pair(case)
        return joined(pair.first.ladder, pair.second.ladder).units[-2 - _found(case, which)[1]]

    return of


def column_total(which: WhichSum) -> Callable[[Case], int]:
    """Return what a column makes by itself."""

    def of(case: Case) -> int:
        columns, at = _found(case, which)
        return columns.sums[at]

    return of


def of_many_digits(case: Case) -> Quantity:
    """Return the first number that has two digits or more."""
    pair = typed_pair(case)
    return pair.first if len(pair.first.counts) > 1 else pair.second


def of_one_digit(case: Case) -> Quantity:
    """Return the number that has one digit."""
    pair = typed_pair(case)
    return pair.first if len(pair.first.counts) == 1 else pair.second
