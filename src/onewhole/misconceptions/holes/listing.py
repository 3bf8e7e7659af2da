"""Factors and multiples: what a question may name of them."""

from onewhole.misconceptions.case import Case
from onewhole.statements.listing import Listing
from onewhole.statements.statement import NumberRow


def number(case: Case) -> int:
    """Return the number whose factors or multiples are asked for. Raises LookupError for all else."""
    return _asked(case).number.parts


def first_missing(case: Case) -> int:
    """Return the first number that is left out; the first one of all where none is."""
    wrote = case.wrote
    there = {int(part) for part in wrote.values} if isinstance(wrote, NumberRow) else set()
    found = _asked(case).found
    return next((one for one in found if one not in there), found[0])


def first_too_many(case: Case) -> int:
    """Return the last number that is listed and does not belong there; the last of all where none does."""
    wrote = case.wrote
    there = [int(part) for part in wrote.values] if isinstance(wrote, NumberRow) else []
    found = _asked(case).found
    return next((one for one in reversed(there) if one not in found), found[-1])


def smallest_listed(case: Case) -> int:
    """Return the first number that is listed."""
    wrote = case.wrote
    return int(wrote.values[0]) if isinstance(wrote, NumberRow) else _asked(case).found[0]


def _asked(case: Case) -> Listing:
    match case.statement:
        case Listing() as asked:
            return asked
        case _:
            msg = "this problem lists no numbers"
            raise LookupError(msg)
