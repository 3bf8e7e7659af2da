"""Factors and multiples: what a question may name of them."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.number.quantity import Quantity
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.statement import NumberRow


def number(case: Case) -> int:
    """Return the number whose factors or multiples are asked for. Raises LookupError for all else."""
    match case.statement:
        case FactorQuestion(number=asked):
            return asked.parts
        case _:
            return _asked(case).number.parts


def step(case: Case) -> int:
    """Return what a number may be a multiple of. Raises LookupError for all else."""
    match case.statement:
        case FactorQuestion(step=Quantity() as asked):
            return asked.parts
        case _:
            msg = "this problem asks for no multiple"
            raise LookupError(msg)


def multiple_and_factor(case: Case) -> RuleThought:
    """Return what is thought of the word that is asked about: what a multiple is, or what a factor is."""
    match case.statement:
        case FactorQuestion(of_factor=True):
            return RuleThought.FACTOR_IS_MORE
        case _:
            return RuleThought.MULTIPLE_IS_LESS


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
