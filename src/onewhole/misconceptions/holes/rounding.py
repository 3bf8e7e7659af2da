"""A number that is rounded: what a question may name of it."""

from onewhole.misconceptions.case import Case
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.rounding import Rounding


def _asked(case: Case) -> Rounding:
    """Return what is to be rounded. Raises LookupError for any other problem."""
    match case.statement:
        case Rounding() as asked:
            return asked
        case _:
            msg = "nothing is rounded in this problem"
            raise LookupError(msg)


def rounded_number(case: Case) -> Quantity:
    """Return the number as it is typed."""
    return _asked(case).number


def rounded_unit(case: Case) -> Unit:
    """Return the unit that is rounded to."""
    return _asked(case).to


def low_neighbor(case: Case) -> Quantity:
    """Return the smaller neighbor."""
    return _asked(case).low


def high_neighbor(case: Case) -> Quantity:
    """Return the larger neighbor."""
    return _asked(case).high
