"""Stories: what a question may name of their numbers."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.stories import ToldNumbers, told_numbers
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import WithRemainder


def _found(case: Case) -> ToldNumbers:
    found = told_numbers(case.statement)
    if found is None:
        msg = "nothing is chosen in this problem"
        raise LookupError(msg)
    return found


def first_told(case: Case) -> Quantity:
    """Return the first number of the equation. Raises LookupError where nothing is chosen."""
    return _found(case).numbers[0]


def second_told(case: Case) -> Quantity:
    """Return the second number of the equation. Raises LookupError where nothing is chosen."""
    return _found(case).numbers[1]


def answer_told(case: Case) -> Quantity:
    """Return the number that was written, without what is left over. Raises LookupError where it is none."""
    match case.wrote:
        case Quantity() as wrote:
            return wrote
        case WithRemainder(quotient):
            return quotient
        case other:
            msg = f"no number was written: {other}"
            raise LookupError(msg)
