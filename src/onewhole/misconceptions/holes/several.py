"""Three numbers and more: what a question may name of them."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.several import several_of
from onewhole.number.quantity import Quantity


def last_number(case: Case) -> Quantity:
    """Return the last of the numbers. Raises LookupError where there are fewer than three."""
    signed = several_of(case.statement)
    if not signed:
        msg = "this problem has no three numbers"
        raise LookupError(msg)
    return signed[-1][0]
