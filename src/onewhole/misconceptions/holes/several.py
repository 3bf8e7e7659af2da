"""Three numbers and more: what a question may name of them."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.several import several_of
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Sum
from onewhole.statements.statement import Question


def last_number(case: Case) -> Quantity:
    """Return the last of the numbers. Raises LookupError where there are fewer than three."""
    signed = several_of(case.statement)
    if not signed:
        msg = "this problem has no three numbers"
        raise LookupError(msg)
    return signed[-1][0]


def first_amount(case: Case) -> Quantity:
    """Return the first of the numbers with its unit. Raises LookupError where none is added or taken away."""
    match case.statement:
        case Question(Sum((first, *_))) if isinstance(first.part, Quantity):
            return first.part
        case _:
            msg = "this problem has no two numbers"
            raise LookupError(msg)
