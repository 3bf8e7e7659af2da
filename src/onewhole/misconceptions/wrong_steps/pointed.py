"""Decimals: worked in two parts at the point, not lined up by places, or with the point misplaced."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt, finished, written, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.pair import Pair, pair_of
from onewhole.misconceptions.wrong_steps.apart import apart, smaller_from_larger
from onewhole.misconceptions.wrong_steps.one_number import one_number
from onewhole.misconceptions.wrong_steps.one_unit import each_number
from onewhole.number.factors import simplest
from onewhole.number.ladder import TEN, Style, decimal, joined
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity, usual, whole, with_mark
from onewhole.statements.expression import Expression, minus, plus
from onewhole.statements.statement import AnotherName, Statement
from onewhole.working.line import Line
from onewhole.working.pair_state import PairState

#: Denominators of decimal places; the denominator of every fraction with three places at most divides the
#: last.
_PLACES = (10, 100, 1000)
_LONGEST = _PLACES[-1]


class Pointed(Struct, frozen=True):
    """A number as its digits stand: the whole part, and the digits after the point (none for a whole number).

    >>> taken_apart(pointed(7, "31"))
    Pointed(wholes=7, digits='31')
    """

    wholes: int
    digits: str

    @property
    def count(self) -> int:
        """Return the digits after the point read as a whole number; 0 when there are none."""
        return int(self.digits or "0")


def taken_apart(number: Quantity) -> Pointed:
    """Read the digits before and after the point."""
    ladder = number.ladder
    digits = "".join(str(count) for count in number.amounts)
    at = len(digits) - ladder.after
    return Pointed(int(digits[:at]), digits[at:])


def pointed(wholes: int, digits: str) -> Quantity:
    """Write a whole part and digits after the point; a whole number when there are none.

    >>> pointed(1, "27").counts
    (1, 2, 7)
    """
    if not digits:
        return whole(wholes)
    before = str(wholes)
    counts = tuple(int(digit) for digit in before + digits)
    return Quantity(decimal(len(before), len(digits)), counts)


#: What two numbers become: the false line, and the answer. None where the pattern does not apply.
Work = Callable[[Pair, Pointed, Pointed], tuple[Expression, Quantity] | None]


def on_decimals(work: Work, *, taken: bool) -> Try:
    """Return the attempt at a sum or difference of decimals, one of which may be a whole number.

    A unit that both have stays.
    """

    def attempt(statement: Statement) -> Attempt | None:
        pair = pair_of(statement)
        if pair is None or pair.taken != taken or not _in_digits(pair):
            return None
        found = work(pair, taken_apart(pair.first), taken_apart(pair.second))
        if found is None:
            return None
        mark = pair.first.ladder.mark
        says = each_number(found[0], lambda number: with_mark(number, mark))
        answer = with_mark(found[1], mark)
        state = wrongly(PairState(pair.first, pair.second, taken), says)
        return finished(pair.asked, wrongly(state.now(result=answer), answer))

    return attempt


def _in_digits(pair: Pair) -> bool:
    digits = max(*pair.first.amounts, *pair.second.amounts) < TEN
    return digits and Style.DECIMAL in pair.styles and pair.styles <= {Style.DECIMAL, Style.PLACES}


def point_as_wall(_: Pair, first: Pointed, second: Pointed) -> tuple[Expression, Quantity] | None:
    """Take wholes from wholes, and the digits after the point from one another as whole numbers."""
    if len(first.digits) == len(second.digits):
        return None
    wholes, digits = first.wholes - second.wholes, first.count - second.count
    written(decimal(1, 1), (wholes, digits))
    answer = pointed(wholes, str(digits))
    return answer, answer


def nothing_carried_over_the_point(
    _: Pair, first: Pointed, second: Pointed
) -> tuple[Expression, Quantity] | None:
    """Add wholes to wholes, and the digits after the point to one another as whole numbers."""
    if not first.digits or not second.digits:
        return None
    if len(first.digits) == len(second.digits) and not tenths_make_ten(first, second):
        return None
    answer = pointed(first.wholes + second.wholes, str(first.count + second.count))
    return answer, answer


def tenths_make_ten(first: Pointed, second: Pointed) -> bool:
    """Say whether the tenths of two decimals make ten or more."""
    return int(first.digits[0]) + int(second.digits[0]) >= TEN


def lined_up_on_the_right(pair: Pair, first: Pointed, second: Pointed) -> tuple[Expression, Quantity] | None:
    """Work the digits as whole numbers, right under right, and put the point back."""
    after = max(len(first.digits), len(second.digits))
    if len(first.digits) == len(second.digits):
        return None
    one, other = (int(f"{number.wholes}{number.digits}") for number in (first, second))
    total = one - other if pair.taken else one + other
    ladder = decimal(1, after)
    written(ladder, (*(0,) * after, total))
    shown = (_counted(one, after), _counted(other, after))
    return minus(*shown) if pair.taken else plus(*shown), _counted(total, after)


def _counted(count: int, after: int) -> Quantity:
    digits = str(count).rjust(after + 1, "0")
    return pointed(int(digits[:-after]), digits[-after:])


def digits_copied(_: Pair, first: Pointed, second: Pointed) -> tuple[Expression, Quantity] | None:
    """Take the wholes, and write down the digits of the second number."""
    if first.digits or not second.digits:
        return None
    written(decimal(1, 1), (first.wholes - second.wholes, 0))
    shown = minus(whole(first.wholes), whole(second.wholes)), pointed(0, second.digits)
    return plus(*shown), pointed(first.wholes - second.wholes, second.digits)


def whole_not_reduced(pair: Pair, first: Pointed, second: Pointed) -> tuple[Expression, Quantity] | None:
    """Work the digits after the point rightly with one whole opened, and keep counting that whole."""
    after = max(len(first.digits), len(second.digits))
    have, gone = (int(number.digits.ljust(after, "0")) for number in (first, second))
    if have >= gone:
        return None
    written(decimal(1, 1), (first.wholes - second.wholes, 0))
    opened = minus(pointed(1, f"{have:0{after}}"), pointed(0, f"{gone:0{after}}"))
    wholes = minus(whole(first.wholes), whole(second.wholes))
    answer = usual(joined(pair.first.ladder, pair.second.ladder), pair.first.value - pair.second.value + 1)
    return plus(wholes, opened), answer


def larger_less_smaller(pair: Pair, _: Pointed, __: Pointed) -> tuple[Expression, Quantity] | None:
    """Take the smaller digit from the larger in every column, with zeros filled in."""
    start = pair.state(joined(pair.first.ladder, pair.second.ladder))
    ladder = start.first.ladder
    if all(have >= take for have, take in zip(start.first.amounts, start.second.amounts, strict=True)):
        return None
    state = apart(smaller_from_larger, smaller_from_larger)(start)
    says = state.lines[-1].says
    found = state.found()
    assert isinstance(says, Expression)
    return says, usual(ladder, found.value)


def fraction_as_decimal(write: Callable[[int, int], Quantity]) -> Try:
    """Return the attempt at writing one fraction below a whole as a decimal, from numerator and denominator.

    A fraction of a whole or more is asked for as a mixed number, and one that can be simplified in fewer
    pieces: there a decimal is no other way to write it, unless the pieces are tenths or hundredths, or a
    decimal is asked for.
    """

    def attempt(statement: Statement) -> Attempt | None:
        fraction = one_number(statement, NumberForm.DECIMAL)
        if fraction is None or fraction.ladder.style is not Style.MIXED or fraction.counts[0] is not None:
            return None
        top, bottom = fraction.amounts[1], fraction.ladder.denominator
        asked_for = isinstance(statement, AnotherName) and 0 < top < bottom
        if not asked_for and not _written_as_a_decimal(top, bottom):
            return None
        decimal_ = write(top, bottom)
        return Attempt((Line(fraction), Line(decimal_)), decimal_)

    return attempt


def _written_as_a_decimal(top: int, bottom: int) -> bool:
    """Say whether a decimal is the other way to write a fraction."""
    if not 0 < top < bottom:
        return False
    return bottom in _PLACES or (simplest(top, bottom) == (top, bottom) and _LONGEST % bottom == 0)


def around_the_point(top: int, bottom: int) -> Quantity:
    """Write 3/4 as 3.4."""
    return pointed(top, str(bottom))


def top_after_the_point(top: int, _: int) -> Quantity:
    """Write 3/4 as 0.3."""
    return pointed(0, str(top))
