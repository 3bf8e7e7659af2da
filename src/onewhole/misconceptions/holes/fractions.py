"""Fractions with unlike denominators, renamed, compared or multiplied: what a question may name of them."""

from msgspec import Struct

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.holes.parts import typed_pair
from onewhole.misconceptions.wrong_steps.renaming import Asked, asked_of, crossed_out
from onewhole.misconceptions.wrong_steps.unlike import moved
from onewhole.number.factors import common_denominator
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.statements.expression import Times
from onewhole.statements.statement import AnotherName, Comparison, Question, Relation


def both(case: Case) -> tuple[Quantity, Quantity]:
    """Return the two fractions of a sum, a difference or a comparison."""
    match case.statement:
        case Comparison(Quantity() as left, Quantity() as right):
            return left, right
        case _:
            pair = typed_pair(case)
            return pair.first, pair.second


def left(case: Case) -> Quantity:
    """Return the first of both."""
    return both(case)[0]


def right(case: Case) -> Quantity:
    """Return the second of both."""
    return both(case)[1]


def left_wholes(case: Case) -> int:
    """Return the wholes of the first."""
    return left(case).amounts[0]


def left_large(case: Case) -> Unit:
    """Return the larger unit of the first: the whole."""
    return left(case).ladder.units[0]


def single_fraction(case: Case) -> Quantity:
    """Return the one of both that is written as one fraction."""
    return next(one for one in both(case) if one.ladder.style is Style.MIXED and not one.amounts[0])


def single_piece(case: Case) -> Unit:
    """Return the piece of that fraction."""
    return single_fraction(case).ladder.units[-1]


def single_large(case: Case) -> Unit:
    """Return the whole that is made of such pieces."""
    return single_fraction(case).ladder.units[0]


def left_piece(case: Case) -> Unit:
    """Return the piece of the first."""
    return left(case).ladder.units[-1]


def right_piece(case: Case) -> Unit:
    """Return the piece of the second."""
    return right(case).ladder.units[-1]


def _bottoms(case: Case) -> tuple[int, int]:
    return left(case).ladder.denominator, right(case).ladder.denominator


def larger_of_bottoms(case: Case) -> int:
    """Return the larger denominator."""
    return max(_bottoms(case))


def bigger_piece(case: Case) -> Unit:
    """Return the bigger piece: that of the smaller denominator."""
    return mixed(min(_bottoms(case))).units[1]


def smaller_piece(case: Case) -> Unit:
    """Return the smaller piece."""
    return mixed(max(_bottoms(case))).units[1]


def common_piece(case: Case) -> Unit:
    """Return the piece of the smallest common denominator."""
    return mixed(common_denominator(list(_bottoms(case)))).units[1]


def product_piece(case: Case) -> Unit:
    """Return the piece whose denominator is the product of both."""
    one, other = _bottoms(case)
    return mixed(one * other).units[1]


def to_be_cut(case: Case) -> Quantity:
    """Return the fraction, without wholes, that is not in the common pieces yet."""
    common = common_denominator(list(_bottoms(case)))
    number = next((one for one in both(case) if one.ladder.denominator != common), left(case))
    return fraction_alone(number)


def first_fraction(case: Case) -> Quantity:
    """Return the fraction of the first number, without its wholes."""
    return fraction_alone(left(case))


def first_over_turned(case: Case) -> Quantity:
    """Return that fraction turned over. Raises ValueError where its numerator is 0."""
    fraction = first_fraction(case)
    return Quantity(mixed(fraction.amounts[1]), (None, fraction.ladder.denominator))


def one_fraction(case: Case) -> Quantity:
    """Return the one fraction that is asked for. Raises LookupError where there is none."""
    match case.statement:
        case Question(Quantity() as fraction) | AnotherName(fraction):
            return fraction
        case _:
            msg = "this problem asks for no one fraction"
            raise LookupError(msg)


def top_of_one_fraction(case: Case) -> int:
    """Return the numerator of that fraction."""
    return one_fraction(case).amounts[-1]


def one_fraction_piece(case: Case) -> Unit:
    """Return the piece of that fraction."""
    return one_fraction(case).ladder.units[-1]


def fraction_alone(number: Quantity) -> Quantity:
    """Return a number's fraction without its wholes.

    >>> fraction_alone(Quantity(mixed(4), (2, 3))).counts
    (None, 3)
    """
    return Quantity(number.ladder, (None, number.amounts[-1]))


def renamed_by_adding(case: Case) -> tuple[Quantity, Quantity]:
    """Return the fraction with the smaller denominator, and what it is said to equal."""
    number = min(both(case), key=lambda one: one.ladder.denominator)
    return fraction_alone(number), fraction_alone(moved(number, larger_of_bottoms(case)))


def before_renaming(case: Case) -> Quantity:
    """Return the fraction that is renamed."""
    return renamed_by_adding(case)[0]


def after_renaming(case: Case) -> Quantity:
    """Return what it is said to equal."""
    return renamed_by_adding(case)[1]


# ---- a number is missing in n/d = ?/new or n/d = new/? ----


class Renamed(Struct, frozen=True):
    """The fraction that is given, and numerator and denominator of what it is said to equal."""

    known: Asked
    top: int
    bottom: int


def renamed(case: Case) -> Renamed:
    """Return both fractions of a renaming. Raises LookupError where the problem is none."""
    known = asked_of(case.statement)
    if known is None or not isinstance(case.wrote, Quantity):
        msg = "this problem renames no fraction"
        raise LookupError(msg)
    found = case.wrote.parts
    return Renamed(known, *((known.given, found) if known.top_given else (found, known.given)))


def known_fraction(case: Case) -> Quantity:
    """Return the fraction that is given."""
    known = renamed(case).known
    return Quantity(mixed(known.bottom), (None, known.top))


def said_fraction(case: Case) -> Quantity | Impossible:
    """Return the fraction that it is said to equal."""
    said = renamed(case)
    return Quantity(mixed(said.bottom), (None, said.top)) if said.bottom else Impossible(None, said.top)


def known_top(case: Case) -> int:
    """Return the numerator that is given."""
    return renamed(case).known.top


def known_bottom(case: Case) -> int:
    """Return the denominator that is given."""
    return renamed(case).known.bottom


def said_top(case: Case) -> int:
    """Return the numerator of what it is said to equal."""
    return renamed(case).top


def said_bottom(case: Case) -> int:
    """Return the denominator of what it is said to equal."""
    return renamed(case).bottom


def from_part(case: Case) -> int:
    """Return the part that turns into the given number."""
    return renamed(case).known.from_


def to_part(case: Case) -> int:
    """Return the given number."""
    return renamed(case).known.given


def other_part(case: Case) -> int:
    """Return the part that turns into the missing number."""
    return renamed(case).known.other


def found_part(case: Case) -> int:
    """Return what was written for the missing number."""
    said = renamed(case)
    return said.bottom if said.known.top_given else said.top


def known_piece(case: Case) -> Unit:
    """Return the piece of the fraction that is given."""
    return mixed(known_bottom(case)).units[1]


def said_piece(case: Case) -> Unit:
    """Return the piece of what it is said to equal."""
    return mixed(said_bottom(case)).units[1]


def shared_digit(case: Case) -> int:
    """Return the digit that is crossed out in both."""
    digit = crossed_out(renamed(case).known)
    if digit is None:
        msg = "no digit is crossed out"
        raise LookupError(msg)
    return int(digit)


# ---- which is more ----


def called_more(case: Case) -> Quantity:
    """Return the number that was called more; the first where they were called equal."""
    return right(case) if case.wrote is Relation.LESS else left(case)


def called_less(case: Case) -> Quantity:
    """Return the number that was called less; the second where they were called equal."""
    return left(case) if case.wrote is Relation.LESS else right(case)


def count_called_more(case: Case) -> int:
    """Return the first count of the measure that was called more."""
    return called_more(case).amounts[0]


def count_called_less(case: Case) -> int:
    """Return the first count of the measure that was called less."""
    return called_less(case).amounts[0]


def smallest_unit(case: Case) -> Unit:
    """Return the smallest unit of both."""
    return min((left_piece(case), right_piece(case)), key=lambda unit: unit.size)


def bottom_called_more(case: Case) -> int:
    """Return the denominator of the number that was called more."""
    return called_more(case).ladder.denominator


def bottom_called_less(case: Case) -> int:
    """Return the denominator of the number that was called less."""
    return called_less(case).ladder.denominator


def top_called_more(case: Case) -> int:
    """Return the numerator of the number that was called more."""
    return called_more(case).amounts[-1]


def top_called_less(case: Case) -> int:
    """Return the numerator of the number that was called less."""
    return called_less(case).amounts[-1]


# ---- a whole number times a fraction ----


def product(case: Case) -> tuple[int, Quantity]:
    """Return the whole number and the number that it multiplies. Raises LookupError without a product."""
    match case.statement:
        case Question(Times(Quantity() as one, Quantity() as other)):
            times, number = (other, one) if one.ladder.style is Style.MIXED else (one, other)
            return times.parts, number
        case _:
            msg = "this problem is no product"
            raise LookupError(msg)


def times(case: Case) -> int:
    """Return the whole number."""
    return product(case)[0]


def multiplied(case: Case) -> Quantity:
    """Return the number that it multiplies."""
    return product(case)[1]


def multiplied_piece(case: Case) -> Unit:
    """Return the piece of that number."""
    return multiplied(case).ladder.units[-1]


def multiplied_large(case: Case) -> Unit:
    """Return the larger unit of that number: the whole."""
    return multiplied(case).ladder.units[0]


def multiplied_wholes(case: Case) -> int:
    """Return the wholes of that number."""
    return multiplied(case).amounts[0]


def multiplied_top(case: Case) -> int:
    """Return the numerator of that number."""
    return multiplied(case).amounts[-1]


def multiplied_bottom(case: Case) -> int:
    """Return the denominator of that number."""
    return multiplied(case).ladder.denominator


def multiplied_fraction(case: Case) -> Quantity:
    """Return that number without its wholes."""
    return fraction_alone(multiplied(case))
