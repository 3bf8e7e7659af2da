"""Quotients: what a question may name of them."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.quotients import Divided, division
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import WithRemainder


def _found(case: Case) -> Divided:
    found = division(case.statement)
    if found is None:
        msg = "this problem is no quotient"
        raise LookupError(msg)
    return found


def shared_number(case: Case) -> Quantity:
    """Return the number that is divided."""
    return _found(case).left


def divisor(case: Case) -> Quantity:
    """Return what it is divided by."""
    return _found(case).right


def left_over(case: Case) -> Quantity:
    """Return what is left when it is divided rightly."""
    return whole(_found(case).over)


def written_quotient(case: Case) -> Quantity:
    """Return what was written, without its remainder."""
    match case.wrote:
        case Quantity() as written:
            return written
        case WithRemainder(quotient):
            return quotient
        case other:
            msg = f"no quotient was written: {other}"
            raise LookupError(msg)


def written_remainder(case: Case) -> Quantity:
    """Return the remainder that was written."""
    if isinstance(case.wrote, WithRemainder):
        return case.wrote.left
    msg = f"no remainder was written: {case.wrote}"
    raise LookupError(msg)


def small_pieces(case: Case) -> Quantity:
    """Return the pieces of the number that is divided, without its wholes."""
    number = _found(case).left
    return Quantity(number.ladder, (None, number.amounts[1]))
