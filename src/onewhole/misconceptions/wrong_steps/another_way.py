"""One number written another way by a wrong rule: a mixed number as one fraction, and one fraction as a mixed
number.

The rules are described for two numbers that are turned into fractions before they are subtracted. That they
serve one number by itself is ours.
"""

from collections.abc import Callable

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.wrong_steps.one_number import one_number
from onewhole.number.ladder import Style, mixed
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Expression, Over, Times, plus, value
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.statement import MissingNumber, Statement
from onewhole.working.line import Line

#: From wholes, numerator and denominator: what is written as the numerator of one fraction.
Top = Callable[[int, int, int], Expression]


def as_one_fraction(top: Top) -> Try:
    """Return the attempt at ``2 3/4 = ?`` or ``2 3/4 = ?/4``, the numerator made by a wrong rule."""

    def attempt(statement: Statement) -> Attempt | None:
        number = _mixed_number(statement)
        if number is None:
            return None
        (wholes, pieces), bottom = number.amounts, number.ladder.denominator
        says = top(wholes, pieces, bottom)
        count = value(says).numerator
        if isinstance(statement, MissingNumber):
            found = whole(count)
            return Attempt((Line(statement), *_once(says, found)), found)
        fraction = Quantity(mixed(bottom), (None, count))
        shown = fraction if isinstance(says, Quantity) else Over(says, whole(bottom))
        return Attempt((Line(number), *_once(shown, fraction)), fraction)

    return attempt


def swapped_about(statement: Statement) -> Attempt | None:
    """Write 11/4 with the remainder as wholes and the quotient as numerator: 3 2/4."""
    fraction = one_number(statement, NumberForm.MIXED)
    if fraction is None or fraction.ladder.style is not Style.MIXED:
        return None
    wholes, rest = divmod(fraction.parts, fraction.ladder.denominator)
    if fraction.counts[0] is not None or not wholes or not rest:
        return None
    answer = Quantity(fraction.ladder, (rest, wholes))
    return Attempt((Line(fraction), Line(answer)), answer)


def added_together(wholes: int, top: int, _: int) -> Expression:
    """2 3/4 is said to be (2 + 3)/4."""
    return plus(whole(wholes), whole(top))


def multiplied_together(wholes: int, top: int, _: int) -> Expression:
    """2 3/4 is said to be (2 x 3)/4."""
    return Times(whole(wholes), whole(top))


def wholes_alone(wholes: int, _: int, bottom: int) -> Expression:
    """2 3/4 is said to be (2 x 4)/4."""
    return Times(whole(wholes), whole(bottom))


def digits_together(wholes: int, top: int, _: int) -> Expression:
    """2 3/4 is said to be 23/4."""
    return whole(int(f"{wholes}{top}"))


def _once(says: Expression, found: Quantity) -> tuple[Line, ...]:
    return (Line(found),) if says == found else (Line(says), Line(found))


def _mixed_number(statement: Statement) -> Quantity | None:
    """Return the mixed number that one fraction is asked for, or None."""
    number = one_number(statement, NumberForm.FRACTION)
    match statement:
        case MissingNumber(Quantity() as known, gap, beside=()) if not statement.gap_taken:
            number = known if gap == Gap(None, HOLE, known.ladder.finest.denominator) else None
        case _:
            pass
    if number is None:
        return None
    return number if number.ladder.style is Style.MIXED and all(number.amounts) else None
