"""Divisions in groups: what a question may name of them."""

from onewhole.misconceptions.case import Case
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import WithRemainder
from onewhole.statements.whole_groups import WholeGroups


def group_size(case: Case) -> Quantity:
    """Return how many things a group holds. Raises LookupError where nothing is put in groups."""
    match case.statement:
        case WholeGroups(by=by):
            return by
        case other:
            msg = f"nothing is put in groups: {other}"
            raise LookupError(msg)


def number_given(case: Case) -> Quantity:
    """Return the number that was written. Raises LookupError where it is none."""
    match case.wrote:
        case Quantity() as wrote:
            return wrote
        case other:
            msg = f"no number was written: {other}"
            raise LookupError(msg)


def written_as_it_is(case: Case) -> Quantity | WithRemainder:
    """Return what was written, with its remainder. Raises LookupError where it is no number."""
    return case.wrote if isinstance(case.wrote, WithRemainder) else number_given(case)
