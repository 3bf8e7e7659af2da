"""Products of whole numbers, and of fractions: what a question may name of them."""

from collections.abc import Callable

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.fraction_products import fraction_factors
from onewhole.misconceptions.wrong_steps.part_of_amount import how_much_of, part_of
from onewhole.misconceptions.wrong_steps.products import Factors, factors
from onewhole.number.ladder import TEN
from onewhole.number.quantity import Quantity
from onewhole.working.products.product_state import ProductState


def _found(case: Case) -> Factors:
    found = factors(case.statement)
    if found is None:
        msg = "this problem is no product of whole numbers"
        raise LookupError(msg)
    return found


def on_top(case: Case) -> Quantity:
    """Return the number on top: the one of as many digits or more."""
    return _found(case).top


def multiplier(case: Case) -> Quantity:
    """Return the other one."""
    return _found(case).by


def multiplier_count(case: Case) -> int:
    """Return it as a count."""
    return _found(case).by.parts


def _makes_ten(case: Case) -> tuple[int, int, int]:
    """Return the first digit that makes ten or more, its multiplier, and the digit beside it."""
    found = _found(case)
    for by in found.multipliers:
        for at, digit in enumerate(found.digits[:-1]):
            if digit * by >= TEN:
                return digit, by, found.digits[at + 1]
    msg = "no digit makes ten"
    raise LookupError(msg)


def digit_that_makes_ten(case: Case) -> int:
    """Return a digit on top that makes ten or more."""
    return _makes_ten(case)[0]


def its_multiplier(case: Case) -> int:
    """Return the digit that multiplies it."""
    return _makes_ten(case)[1]


def digit_beside(case: Case) -> int:
    """Return the digit to the left of it."""
    return _makes_ten(case)[2]


def other_than_zero(case: Case) -> int:
    """Return a digit that is multiplied by a zero."""
    found = _found(case)
    if 0 in found.digits:
        return next(digit for digit in found.multipliers if digit)
    return next(digit for digit in found.digits if digit)


def fraction_factor(at: int) -> Callable[[Case], Quantity]:
    """Return what gives one of two fractions that are multiplied."""

    def of(case: Case) -> Quantity:
        found = fraction_factors(case.statement)
        if found is None:
            msg = "this problem is no product of fractions"
            raise LookupError(msg)
        _, first, second = found
        return second if at else first

    return of


def wholes_of_first(case: Case) -> int:
    """Return the wholes of the first of them."""
    return fraction_factor(0)(case).amounts[0]


def _both(case: Case) -> tuple[Quantity, Quantity]:
    return fraction_factor(0)(case), fraction_factor(1)(case)


def below_one(case: Case) -> Quantity:
    """Return the one that is less."""
    return min(_both(case), key=lambda number: number.value)


def above_one(case: Case) -> Quantity:
    """Return the one that is more."""
    return max(_both(case), key=lambda number: number.value)


def fraction_taken(case: Case) -> Quantity:
    """Return the fraction that is taken of a measure or of a price."""
    return _part_of(case).left


def amount_taken_of(case: Case) -> Quantity:
    """Return the measure or the price that a fraction is taken of."""
    return _part_of(case).right


def whole_times(case: Case) -> int:
    """Return how many whole times a measure or a price is taken: once of 1 1/2 x 2 ft."""
    return int(_much_of(case).left.value)


def amount_taken(case: Case) -> Quantity:
    """Return the measure or the price that is taken so many times and a part."""
    return _much_of(case).right


def _much_of(case: Case) -> ProductState:
    found = how_much_of(case.statement)
    if found is None:
        msg = "this problem takes no measure or price so many times and a part"
        raise LookupError(msg)
    return found


def _part_of(case: Case) -> ProductState:
    found = part_of(case.statement)
    if found is None:
        msg = "this problem takes no part of a measure or of a price"
        raise LookupError(msg)
    return found
