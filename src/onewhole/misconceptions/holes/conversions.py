"""A measure that is to be written in another unit: what a question may name of it."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.conversions import Conversion, conversion
from onewhole.number.unit import Unit


def _found(case: Case) -> Conversion:
    found = conversion(case.statement)
    if found is None:
        msg = "this problem asks for no other unit"
        raise LookupError(msg)
    return found


def larger(case: Case) -> Unit:
    """Return the larger of the two units."""
    return _found(case).large


def smaller(case: Case) -> Unit:
    """Return the smaller of the two units."""
    return _found(case).small


def beside(case: Case) -> int:
    """Return how many of the smaller unit stand beside the larger ones."""
    return _found(case).beside or 0
