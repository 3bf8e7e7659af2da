"""Multiplication of whole numbers in columns: how a digit is multiplied, and what becomes of its tens.

The columns are rungs of a ladder of places, so ten is the ratio throughout.
"""

from collections.abc import Callable, Sequence

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt, finished, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.number.ladder import TEN, Style
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Expression, Times, plus, value
from onewhole.statements.statement import Question, Statement
from onewhole.working.pair_state import PairState

_TWO = 2


class Factors(Struct, frozen=True):
    """Two whole numbers that are multiplied: the one on top, and the multiplier of no more digits."""

    asked: Times
    top: Quantity
    by: Quantity

    @property
    def digits(self) -> tuple[int, ...]:
        """Return the digits on top, ones first."""
        return self.top.amounts[::-1]

    @property
    def multipliers(self) -> tuple[int, ...]:
        """Return the digits of the multiplier, ones first."""
        return self.by.amounts[::-1]

    @property
    def one_digit(self) -> int | None:
        """Return the multiplier where it has one digit and the number on top has more; else None."""
        single = len(self.multipliers) == 1 < len(self.digits)
        return self.multipliers[0] if single else None


#: What is written instead, still to be worked out; None where a rule does not apply.
Product = Callable[[Factors], Expression | None]
#: From a digit on top, the multiplier and what is carried to it: what the digit makes.
DigitTimes = Callable[[int, int, int], int]
#: From the digits on top and a digit of the multiplier: what is written, the largest place first.
Row = Callable[[Sequence[int], int], int]


def factors(statement: Statement) -> Factors | None:
    """Return the whole numbers of a product, or None for anything else.

    >>> from onewhole.statements.reading import read_statement
    >>> factors(read_statement("6 x 47")).digits
    (7, 4)
    """
    match statement:
        case Question(Times(Quantity() as one, Quantity() as other) as asked):
            pass
        case _:
            return None
    if {one.ladder.style, other.ladder.style} != {Style.PLACES} or one.ladder.mark or other.ladder.mark:
        return None
    if max(*one.amounts, *other.amounts) >= TEN or not one.parts or not other.parts:
        return None
    swapped = len(one.amounts) < len(other.amounts)
    return Factors(asked, *((other, one) if swapped else (one, other)))


def on_products(product: Product) -> Try:
    """Return the attempt at a product of whole numbers, its false line written by a rule."""

    def attempt(statement: Statement) -> Attempt | None:
        found = factors(statement)
        says = None if found is None else product(found)
        if found is None or says is None:
            return None
        wrote = whole(value(says).numerator)
        state = PairState(found.top, found.by, taken=False)
        return finished(found.asked, wrongly(wrongly(state, says).now(result=wrote), wrote))

    return attempt


def by_rows(row: Row, when: Callable[[Factors], bool] = lambda _: True) -> Try:
    """Return the attempt that multiplies by each digit of the multiplier and adds the rows in their places.

    It applies where some row comes out otherwise than it should.
    """

    def product(found: Factors) -> Expression | None:
        rows = [row(found.digits, by) for by in found.multipliers]
        rightly = [found.top.parts * by for by in found.multipliers]
        if rows == rightly or not when(found):
            return None
        placed = [whole(made * TEN**at) for at, made in enumerate(rows)]
        return plus(*reversed(placed)) if len(placed) > 1 else placed[0]

    return on_products(product)


def one_digit(row: Row) -> Try:
    """Return the same for a multiplier of one digit alone."""
    return by_rows(row, lambda found: found.one_digit is not None)


def columns(digit: DigitTimes, *, keeps: Callable[[int], tuple[int, int]] | None = None) -> Row:
    """Return the row that multiplies from the right; the left-most digit is written in full.

    ``keeps`` parts what a digit makes into what is carried and what is written: the tens and the ones.
    """
    part = keeps or (lambda made: divmod(made, TEN))

    def row(digits: Sequence[int], by: int) -> int:
        coming, told = 0, ""
        for top in digits[:-1]:
            coming, written = part(digit(top, by, coming))
            told = f"{written}{told}"
        return int(f"{digit(digits[-1], by, coming)}{told}")

    return row


def rightly(top: int, by: int, coming: int) -> int:
    """Multiply, then add what is carried."""
    return top * by + coming


def without_carry(top: int, by: int, _: int) -> int:
    """Multiply, and add nothing that is carried: 47 x 6 is 242."""
    return top * by


def carry_first(top: int, by: int, coming: int) -> int:
    """Add what is carried, then multiply: 47 x 6 is 482."""
    return (top + coming) * by


def zero_is_nothing_done(top: int, by: int, coming: int) -> int:
    """Take a number times zero for that number: 407 x 8 is 3336."""
    return (top or by if not top or not by else top * by) + coming


def carry_lost_at_zero(top: int, by: int, coming: int) -> int:
    """Write 0 for a zero, and lose what is carried to it: 407 x 8 is 3206."""
    return top * by + coming if top else 0


def every_digit_in_full(digits: Sequence[int], by: int) -> int:
    """Write what each digit makes in full, side by side: 47 x 6 is 2442."""
    return int("".join(str(top * by) for top in reversed(digits)))


def tens_written(made: int) -> tuple[int, int]:
    """Carry the ones and write the tens: 42 is written as 4, and 2 is carried."""
    tens, ones = divmod(made, TEN)
    return (ones, tens) if tens else (tens, ones)


def ones_multiplied(found: Factors) -> Expression | None:
    """Multiply the ones and keep the other digits: 47 x 6 is 42 + 40."""
    if found.one_digit is None:
        return None
    return plus(Times(whole(found.digits[0]), found.by), whole(found.top.parts - found.digits[0]))


def carry_times_tens(found: Factors) -> Expression | None:
    """Write the ones, and multiply what is carried by the tens: 63 x 8 is 12 tens 4."""
    if found.one_digit is None or len(found.digits) != _TWO:
        return None
    carried, ones = divmod(found.digits[0] * found.one_digit, TEN)
    return whole(carried * found.digits[1] * TEN + ones) if carried else None


def rows_not_moved(found: Factors) -> Expression | None:
    """Write every row in the place of the ones: 24 x 36 is 72 + 144."""
    if len(found.multipliers) < _TWO:
        return None
    return plus(*[whole(found.top.parts * by) for by in reversed(found.multipliers)])


def straight_down(found: Factors) -> Expression | None:
    """Multiply the digits straight above each other, with carrying: 24 x 36 is 84."""
    if len(found.digits) != len(found.multipliers) or len(found.digits) < _TWO:
        return None
    pairs = zip(found.digits, found.multipliers, strict=True)
    return whole(sum(top * by * TEN**at for at, (top, by) in enumerate(pairs)))


def matching_parts(found: Factors) -> Expression | None:
    """Multiply tens by tens and ones by ones: 24 x 36 is 600 + 24."""
    if not len(found.digits) == len(found.multipliers) == _TWO:
        return None
    (ones, tens), (by_ones, by_tens) = found.digits, found.multipliers
    return plus(Times(whole(tens * TEN), whole(by_tens * TEN)), Times(whole(ones), whole(by_ones)))


def zeros_left_out(found: Factors) -> Expression | None:
    """Leave out the zeros of the number on top, where one stands inside it: 407 x 8 is 47 x 8."""
    digits = found.top.amounts
    if 0 not in digits[1:-1]:
        return None
    return Times(whole(int("".join(str(digit) for digit in digits if digit))), found.by)


def end_zeros_left_out(found: Factors) -> Expression | None:
    """Leave out the zeros at the end of both numbers: 24 x 30 is 24 x 3."""
    one, other = (int(str(number.parts).rstrip("0")) for number in (found.top, found.by))
    return None if (one, other) == (found.top.parts, found.by.parts) else Times(whole(one), whole(other))


def added(found: Factors) -> Expression:
    """Add instead of multiplying: 24 x 36 is 24 + 36."""
    return plus(found.top, found.by)
