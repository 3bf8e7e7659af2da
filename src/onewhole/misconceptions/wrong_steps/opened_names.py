"""A number written with a whole opened, 7 2/6 = 6 ?/6: how many pieces are said to be there then."""

from collections.abc import Callable

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.wrong_steps.regrouping import Rule
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.gap import HOLE
from onewhole.statements.statement import MissingNumber, Statement
from onewhole.working.line import Line

_ONE = 1


def opened(statement: Statement) -> Quantity | None:
    """Return the mixed number of which one whole is opened in its other name, or None for anything else.

    >>> from onewhole.statements.reading import read_statement
    >>> opened(read_statement("7 2/6 = 6 ?/6")).counts, opened(read_statement("7 2/6 = 5 ?/6"))
    ((7, 2), None)
    """
    match statement:
        case MissingNumber(Quantity() as number, gap, beside=()) if gap.top is HOLE:
            pass
        case _:
            return None
    if number.ladder.style is not Style.MIXED or gap.bottom != number.ladder.denominator:
        return None
    return number if isinstance(gap.wholes, int) and number.amounts[0] - gap.wholes == _ONE else None


def opens_a_name(rule: Rule) -> Try:
    """Return the attempt at another name with one whole opened, its pieces made by a rule."""

    def pieces(have: int, ratio: int) -> int:
        return rule(have, ratio)[1]

    return fills_a_name(pieces)


def fills_a_name(pieces: Callable[[int, int], int]) -> Try:
    """Return the attempt that writes so many pieces, from those there are and those that make a whole."""

    def attempt(statement: Statement) -> Attempt | None:
        number = opened(statement)
        if number is None or not isinstance(statement, MissingNumber):
            return None
        found = whole(pieces(number.amounts[1], number.ladder.denominator))
        return Attempt((Line(statement), Line(found)), found)

    return attempt


def as_they_were(have: int, _: int) -> int:
    """Cross off one whole, and keep the pieces as they were: 7 2/6 is said to be 6 2/6."""
    return have
