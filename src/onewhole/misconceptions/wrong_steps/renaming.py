"""Equal fractions said to be equal by a wrong rule: the number that is then put in the place of the ?."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Expression, Over, Times, minus, plus, value
from onewhole.statements.gap import HOLE
from onewhole.statements.statement import MissingNumber, Statement
from onewhole.working.line import Line


class Asked(Struct, frozen=True):
    """n/d = ?/new or n/d = new/?: the known fraction, and the new number that is given."""

    top: int
    bottom: int
    given: int
    top_given: bool

    @property
    def from_(self) -> int:
        """Return the known part that turns into the given number."""
        return self.top if self.top_given else self.bottom

    @property
    def other(self) -> int:
        """Return the known part that turns into the missing number."""
        return self.bottom if self.top_given else self.top


#: What a rule puts in the place of the ?, still to be worked out; None where it does not apply.
Fill = Callable[[Asked], Expression | None]


def fills(fill: Fill) -> Try:
    """Return the attempt at one fraction renamed, with its numerator or denominator missing."""

    def attempt(statement: Statement) -> Attempt | None:
        asked = asked_of(statement)
        says = None if asked is None else fill(asked)
        if says is None:
            return None
        amount = value(says)
        if amount.denominator != 1 or amount < 0:
            return None
        found = whole(amount.numerator)
        lines = (Line(says),) if says != found else ()
        return Attempt((Line(_as_missing(statement)), *lines, Line(found)), found)

    return attempt


def _as_missing(statement: Statement) -> MissingNumber:
    assert isinstance(statement, MissingNumber)
    return statement


def asked_of(statement: Statement) -> Asked | None:
    """Return what a renaming with one number missing asks, or None for anything else."""
    match statement:
        case MissingNumber(Quantity() as known, gap, beside=()) if not statement.gap_taken:
            pass
        case _:
            return None
    if known.ladder.style is not Style.MIXED or known.amounts[0] or gap.wholes is not None:
        return None
    top, bottom = known.amounts[1], known.ladder.denominator
    if gap.top is HOLE and isinstance(gap.bottom, int):
        return Asked(top, bottom, gap.bottom, top_given=False)
    if gap.bottom is HOLE and isinstance(gap.top, int):
        return Asked(top, bottom, gap.top, top_given=True)
    return None


def adds_the_same(asked: Asked) -> Expression | None:
    """Add to both parts what makes the known one the given one."""
    by = asked.given - asked.from_
    return plus(whole(asked.other), whole(by)) if by > 0 else None


def subtracts_the_same(asked: Asked) -> Expression | None:
    """Take from both parts what makes the known one the given one."""
    by = asked.from_ - asked.given
    return minus(whole(asked.other), whole(by)) if by > 0 else None


def multiplies_the_top_only(asked: Asked) -> Expression | None:
    """Multiply the numerator and keep the denominator."""
    return whole(asked.bottom) if asked.top_given and _times(asked.top, asked.given) else None


def multiplies_the_bottom_only(asked: Asked) -> Expression | None:
    """Multiply the denominator and keep the numerator."""
    return whole(asked.top) if not asked.top_given and _times(asked.bottom, asked.given) else None


def divides_the_top_only(asked: Asked) -> Expression | None:
    """Divide the numerator and keep the denominator."""
    return whole(asked.bottom) if asked.top_given and _times(asked.given, asked.top) else None


def divides_one_multiplies_other(asked: Asked) -> Expression | None:
    """Divide the numerator by what the denominator is multiplied by."""
    if asked.top_given:
        by = _times(asked.given, asked.top)
        return Times(whole(asked.bottom), whole(by)) if by else None
    by = _times(asked.bottom, asked.given)
    return Over(whole(asked.top), whole(by)) if by and asked.top % by == 0 else None


def crosses_out_a_digit(asked: Asked) -> Expression | None:
    """Cross out a digit that stands in both, where that leaves the given number."""
    digit = crossed_out(asked)
    return None if digit is None else whole(_without(digit, asked)[asked.top_given])


def crossed_out(asked: Asked) -> str | None:
    """Return the digit that is crossed out of both, or None where that does not leave the given number."""
    top, bottom = str(asked.top), str(asked.bottom)
    for digit in dict.fromkeys(top):
        shared = len(top) > 1 and len(bottom) > 1 and digit in bottom
        if shared and _without(digit, asked)[not asked.top_given] == asked.given:
            return digit
    return None


def _without(digit: str, asked: Asked) -> tuple[int, int]:
    """Return numerator and denominator without a digit."""
    top, bottom = (int(str(part).replace(digit, "", 1)) for part in (asked.top, asked.bottom))
    return top, bottom


def _times(small: int, large: int) -> int:
    """Return how many times a number goes into a larger one exactly, or 0."""
    return large // small if 0 < small < large and large % small == 0 else 0
