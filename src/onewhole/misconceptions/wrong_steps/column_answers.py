"""Whole-number subtraction: a column is answered wrongly, or the wrong digit is reduced for a regrouping."""

from onewhole.misconceptions.attempt import BelowZeroError
from onewhole.misconceptions.wrong_steps.columns import Answer, Columns, opens, pays
from onewhole.number.ladder import TEN

_rightly = opens()


def larger_less_smaller(columns: Columns, at: int) -> int:
    """Take the smaller digit from the larger."""
    return abs(columns.tops[at] - columns.below(at))


def zero_top(write: Answer) -> Answer:
    """Return the answer that writes something else where a 0 was typed over a digit."""

    def answer(columns: Columns, at: int) -> int:
        if columns.typed[at] == 0 and columns.below(at):
            return write(columns, at)
        return _rightly(columns, at)

    return answer


def if_short(write: Answer, *, paid: bool = False) -> Answer:
    """Return the answer that writes something else where the top digit is too small, paid for or not."""

    def answer(columns: Columns, at: int) -> int:
        if not columns.short(at):
            return _rightly(columns, at)
        if paid:
            pays(columns, at + 1)
        return write(columns, at)

    return answer


def bottom_digit(columns: Columns, at: int) -> int:
    """Write the bottom digit."""
    return columns.below(at)


def top_digit(columns: Columns, at: int) -> int:
    """Write the top digit."""
    return columns.tops[at]


def zero_read_as_ten(columns: Columns, at: int) -> int:
    """Read a 0 that is still 0 when its column comes as 10, and pay for nothing."""
    if columns.typed[at] == columns.tops[at] == 0 < columns.below(at):
        columns.tops[at] = TEN
    return _rightly(columns, at)


def zero(_: Columns, __: int) -> int:
    """Write 0."""
    return 0


def zero_over_zero_below(columns: Columns, at: int) -> int:
    """Say that N - 0 is 0, where a 0 is written below."""
    return 0 if columns.bottoms[at] == 0 else _rightly(columns, at)


def equal_digits_stay(columns: Columns, at: int) -> int:
    """Say that N - N is N."""
    return columns.tops[at] if columns.tops[at] == columns.bottoms[at] else _rightly(columns, at)


def one_becomes_ten(columns: Columns, at: int) -> int:
    """Read a 1 that is opened into as 10, not 11."""
    if columns.short(at) and columns.tops[at] == 1:
        columns.tops[at] = 0
    return _rightly(columns, at)


def larger_less_smaller_at_a_zero(columns: Columns, at: int) -> int:
    """Take the smaller from the larger where the column that should pay is 0."""
    if columns.short(at) and at + 1 < len(columns.tops) and columns.tops[at + 1] == 0:
        return larger_less_smaller(columns, at)
    return _rightly(columns, at)


def leading_one_left_out(columns: Columns, at: int) -> int:
    """Do not copy down a 1 at the far left over a blank."""
    found = _rightly(columns, at)
    return 0 if at == len(columns.tops) - 1 and columns.blank(at) and found == 1 else found


def just_enough(columns: Columns, at: int) -> int:
    """Take from the next column exactly what is missing, and let exactly that arrive."""
    missing = columns.below(at) - columns.tops[at]
    if missing > 0:
        columns.has(at + 1)
        columns.tops[at + 1] -= missing
        columns.tops[at] += missing
        if columns.tops[at + 1] < 0:
            msg = "there is not so much to take from the next column"
            raise BelowZeroError(msg)
    return columns.tops[at] - columns.below(at)


def nobody_pays(_: Columns, __: int) -> None:
    """Add ten to the column and change nothing to its left."""


def zero_becomes_nine_and_stops(columns: Columns, at: int) -> None:
    """Make a lending 0 a 9 and go no further."""
    columns.has(at)
    columns.tops[at] = 9 if columns.tops[at] == 0 else columns.tops[at] - 1


def skips_zeros(columns: Columns, at: int) -> None:
    """Pass over zeros and take one from the next digit that is not 0."""
    columns.has(at)
    if columns.tops[at] == 0:
        skips_zeros(columns, at + 1)
    else:
        columns.tops[at] -= 1


def stops_at_zero(columns: Columns, at: int) -> None:
    """Leave a lending 0 and everything to its left as it is."""
    columns.has(at)
    columns.tops[at] -= columns.tops[at] > 0


def nobody_pays_for_the_zeros(columns: Columns, at: int) -> None:
    """Make every 0 on the way a 9, as one should, and take nothing from the digit that is opened."""
    columns.has(at)
    while at < len(columns.tops) and columns.tops[at] == 0:
        columns.tops[at] = 9
        at += 1
    columns.has(at)


def zeros_become_nines(columns: Columns, at: int) -> None:
    """Make every 0 on the way a 9 and take nothing from the digit behind them."""
    columns.has(at)
    if columns.tops[at]:
        columns.tops[at] -= 1
        return
    while at < len(columns.tops) and columns.tops[at] == 0:
        columns.tops[at] = 9
        at += 1


def zero_stays_ten(columns: Columns, at: int) -> None:
    """Give a lending 0 ten from its left and do not take the one that it lends."""
    columns.has(at)
    if columns.tops[at] == 0:
        zero_stays_ten(columns, at + 1)
        columns.tops[at] = TEN
    else:
        columns.tops[at] -= 1


def far_left_pays(columns: Columns, at: int) -> None:
    """Take one from the left-most digit, whichever column opens."""
    columns.has(at)
    columns.tops[-1] -= 1
    if columns.tops[-1] < 0:
        msg = "the left-most digit is 0 already"
        raise BelowZeroError(msg)


def pays_once(columns: Columns, at: int) -> None:
    """Pay for the first opening only."""
    if not columns.paid:
        pays(columns, at)


def not_over_a_blank(columns: Columns, at: int) -> None:
    """Pay only from a column that has a digit below."""
    columns.has(at)
    if columns.blank(at):
        return
    if columns.tops[at] == 0:
        not_over_a_blank(columns, at + 1)
        columns.tops[at] = TEN
    columns.tops[at] -= 1


def goes_up_where_short(columns: Columns, at: int) -> None:
    """Raise a lender that is itself too small, instead of lowering it."""
    columns.has(at)
    if columns.short(at):
        columns.tops[at] += 1
    else:
        pays(columns, at)


def blank_zero_becomes_one(columns: Columns, at: int) -> None:
    """Raise a lending 0 over a blank to 1, and go no further."""
    columns.has(at)
    if columns.tops[at] == 0 and columns.blank(at):
        columns.tops[at] = 1
    else:
        pays(columns, at)


def skips_zero_over_zero(columns: Columns, at: int) -> None:
    """Pass over a 0 that stands over a 0, and pay rightly otherwise."""
    columns.has(at)
    if columns.tops[at]:
        columns.tops[at] -= 1
        return
    skips_zero_over_zero(columns, at + 1)
    columns.tops[at] = 0 if columns.bottoms[at] == 0 else 9


def one_less_over_each_blank(columns: Columns) -> None:
    """Take one from every top digit over a blank before the work begins."""
    for at in range(len(columns.tops)):
        columns.tops[at] -= columns.blank(at)
        if columns.tops[at] < 0:
            msg = "there is nothing to take from a 0"
            raise BelowZeroError(msg)


def stutters(columns: Columns) -> None:
    """Write the left-most bottom digit under every blank too."""
    last = next(digit for digit in reversed(columns.bottoms) if digit is not None)
    columns.bottoms = [last if digit is None else digit for digit in columns.bottoms]
