"""Equations with a number missing: what a question may name of them."""

from collections.abc import Callable

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.gaps import KnownNumbers, known_of
from onewhole.number.quantity import Quantity


def _known(case: Case) -> KnownNumbers:
    """Return the numbers that are there. Raises LookupError where no number is missing."""
    found = known_of(case.statement)
    if found is None:
        msg = "no number is missing here"
        raise LookupError(msg)
    return found[0]


def beside_gap(case: Case) -> Quantity:
    """Return the number beside the gap."""
    return _known(case).beside


def other_side(at: int) -> Callable[[Case], Quantity]:
    """Return what gives a number of the side without the gap."""

    def of(case: Case) -> Quantity:
        return _known(case).rest[at]

    return of
