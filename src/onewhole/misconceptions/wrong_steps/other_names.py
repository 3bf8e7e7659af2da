"""One number written another way: a fraction as a mixed number, in simplest form, as a decimal, and back."""

from collections.abc import Callable
from math import gcd

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.wrong_steps.one_number import one_number
from onewhole.misconceptions.wrong_steps.pointed import Pointed, pointed, taken_apart
from onewhole.number.ladder import Style, mixed
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.statements.expression import Expression, Times, plus
from onewhole.statements.statement import AnotherName, Statement
from onewhole.working.line import Line

#: What is written for a fraction, from its numerator and denominator; None where a rule does not apply.
Rename = Callable[[int, int], Quantity | None]

#: What is written for a decimal; None where a rule does not apply.
FromDecimal = Callable[[Pointed], Quantity | None]

_TWO_DIGITS = 10
_SECOND_PLACE = 2


def _written(number: Quantity, wrote: Quantity | None) -> Attempt | None:
    return None if wrote is None else Attempt((Line(number), Line(wrote)), wrote)


def as_mixed(rename: Rename) -> Try:
    """Return the attempt at writing a fraction of more than one whole as a mixed number."""

    def attempt(statement: Statement) -> Attempt | None:
        number = one_number(statement, NumberForm.MIXED)
        if number is None or number.ladder.style is not Style.MIXED or number.counts[0] is not None:
            return None
        top, bottom = number.amounts[1], number.ladder.denominator
        return _written(number, rename(top, bottom)) if top > bottom else None

    return attempt


def as_simplest(rename: Rename) -> Try:
    """Return the attempt at writing a fraction in simplest form, where it is not in it.

    Of one whole or more it is only where its simplest form is asked for: else it is a mixed number.
    """

    def attempt(statement: Statement) -> Attempt | None:
        number = one_number(statement, NumberForm.SIMPLEST)
        if number is None or number.ladder.style is not Style.MIXED or number.counts[0] is not None:
            return None
        top, bottom = number.amounts[1], number.ladder.denominator
        below_one = 0 < top < bottom or isinstance(statement, AnotherName)
        return _written(number, rename(top, bottom)) if below_one and gcd(top, bottom) > 1 else None

    return attempt


def whole_as_fraction(rename: Callable[[int], Quantity]) -> Try:
    """Return the attempt at writing a whole number above one as a fraction, where that is asked for."""

    def attempt(statement: Statement) -> Attempt | None:
        match statement:
            case AnotherName(number, NumberForm.FRACTION) if number.ladder.style is Style.PLACES:
                return _written(number, rename(number.parts)) if number.parts > 1 else None
            case _:
                return None

    return attempt


def over_itself(number: int) -> Quantity:
    """3 is said to be 3/3."""
    return Quantity(mixed(number), (None, number))


def under_one(number: int) -> Quantity:
    """3 is said to be 1/3."""
    return Quantity(mixed(number), (None, 1))


def decimal_as_fraction(rename: FromDecimal) -> Try:
    """Return the attempt at writing a decimal below one whole as a fraction."""

    def attempt(statement: Statement) -> Attempt | None:
        number = one_number(statement, NumberForm.FRACTION)
        if number is None or number.ladder.style is not Style.DECIMAL:
            return None
        typed = taken_apart(number)
        return _written(number, rename(typed)) if not typed.wholes and typed.count else None

    return attempt


def top_times_wholes_and_bottom(wholes: int, top: int, bottom: int) -> Expression:
    """4 2/5 is said to be (4 x 2 + 5)/5."""
    return plus(Times(whole(wholes), whole(top)), whole(bottom))


def left_over_over_wholes(top: int, bottom: int) -> Quantity | None:
    """Write what is left over the number of wholes: 17/5 is said to be 3 2/3."""
    wholes, rest = divmod(top, bottom)
    return Quantity(mixed(wholes), (wholes, rest)) if rest else None


def digits_split(top: int, bottom: int) -> Quantity | None:
    """Write the first digit as wholes and the other digits over the denominator: 17/5 is said to be 1 7/5."""
    if top < _TWO_DIGITS:
        return None
    first, rest = str(top)[0], str(top)[1:]
    return trimmed(Quantity(mixed(bottom), (int(first), int(rest))))


def one_whole_out(top: int, bottom: int) -> Quantity | None:
    """Take out one whole only: 17/5 is written 1 12/5."""
    return Quantity(mixed(bottom), (1, top - bottom)) if top > 2 * bottom else None


def left_over_dropped(top: int, bottom: int) -> Quantity | None:
    """Write the wholes and drop what is left over: 17/5 is said to be 3."""
    return whole(top // bottom) if top % bottom else None


def halved_once(top: int, bottom: int) -> Quantity | None:
    """Halve top and bottom once where more can be divided out: 12/16 is written 6/8."""
    if top % 2 or bottom % 2 or gcd(top, bottom) == 2:
        return None
    return Quantity(mixed(bottom // 2), (None, top // 2))


def bottom_divided_only(top: int, bottom: int) -> Quantity | None:
    """Divide the bottom only: 12/16 is said to be 12/4."""
    return Quantity(mixed(bottom // gcd(top, bottom)), (None, top))


def both_after_the_point(top: int, bottom: int) -> Quantity:
    """Write 1/4 as 0.14."""
    return pointed(0, f"{top}{bottom}")


def bottom_after_the_point(_: int, bottom: int) -> Quantity:
    """Write 1/4 as 0.4."""
    return pointed(0, str(bottom))


def digits_as_bottom(typed: Pointed) -> Quantity | None:
    """Write one over the digits after the point: 0.4 is said to be 1/4."""
    return None if typed.digits.startswith("0") else Quantity(mixed(typed.count), (None, 1))


def always_tenths(typed: Pointed) -> Quantity | None:
    """Write the digits after the point over ten: 0.35 is said to be 35/10."""
    return Quantity(mixed(10), (None, typed.count)) if len(typed.digits) >= _SECOND_PLACE else None
