"""A measure that is to be written in another unit: what a question may name of it."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.conversions import (
    Conversion,
    InTwoUnits,
    conversion,
    in_two_units,
)
from onewhole.number.unit import Unit


def _found(case: Case) -> Conversion | InTwoUnits:
    found = conversion(case.statement) or in_two_units(case.statement)
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
    found = _found(case)
    return (found.beside or 0) if isinstance(found, Conversion) else found.parted[1]


def larger_there(case: Case) -> int:
    """Return how many of the larger unit fill up what is to be written in both."""
    found = _found(case)
    return found.count if isinstance(found, Conversion) else found.parted[0]
