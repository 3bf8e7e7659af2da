"""Decimals that are added: what is carried over the point, and where the point is put."""

from onewhole.misconceptions.pair import Pair
from onewhole.misconceptions.wrong_steps.pointed import Pointed, pointed
from onewhole.misconceptions.wrong_steps.sums import carry_forgotten, sum_columns
from onewhole.number.ladder import TEN, decimal, joined
from onewhole.number.quantity import Quantity, usual, usual_in_parts, whole
from onewhole.statements.expression import Expression, plus

Found = tuple[Expression, Quantity] | None


def _places(first: Pointed, second: Pointed) -> int:
    return max(len(first.digits), len(second.digits))


def _after(number: Pointed, places: int) -> int:
    """Return the digits after the point as a whole number, with zeros filled in on the right."""
    return int(number.digits.ljust(places, "0"))


def lost_at_the_point(_: Pair, first: Pointed, second: Pointed) -> Found:
    """Add the digits after the point, drop what goes over one whole, and add the wholes apart."""
    places = _places(first, second)
    over, rest = divmod(_after(first, places) + _after(second, places), TEN**places)
    if not over:
        return None
    answer = pointed(first.wholes + second.wholes, f"{rest:0{places}}")
    return answer, answer


def columns_without_carry(pair: Pair, _: Pointed, __: Pointed) -> Found:
    """Write each column without its ten, the points in line, and carry nothing."""
    found = carry_forgotten(sum_columns(pair))
    if found is None:
        return None
    ladder = joined(pair.first.ladder, pair.second.ladder)
    left = found[-1] * TEN ** (len(found) - 1)
    answer = usual_in_parts(ladder, left + sum(digit * TEN**at for at, digit in enumerate(found[:-1])))
    return answer, answer


def places_of_both(pair: Pair, first: Pointed, second: Pointed) -> Found:
    """Add rightly, and mark off as many places as both numbers have together."""
    if not first.digits or not second.digits:
        return None
    digits = pair.state(joined(pair.first.ladder, pair.second.ladder))
    ladder = decimal(1, len(first.digits) + len(second.digits))
    answer = usual_in_parts(ladder, digits.first.parts + digits.second.parts)
    return answer, answer


def whole_numbers_after_the_point(_: Pair, first: Pointed, second: Pointed) -> Found:
    """Add the digits after the point as whole numbers, and carry what fills the places of the longer."""
    if len(first.digits) == len(second.digits):
        return None
    places = _places(first, second)
    over, rest = divmod(first.count + second.count, TEN**places)
    answer = pointed(first.wholes + second.wholes + over, f"{rest:0{places}}")
    return answer, answer


def whole_number_as_tenths(pair: Pair, first: Pointed, second: Pointed) -> Found:
    """Add the whole number in the column of the tenths."""
    if bool(first.digits) == bool(second.digits):
        return None
    numbers = [
        number if typed.digits else usual(decimal(1, 1), number.value / TEN)
        for number, typed in ((pair.first, first), (pair.second, second))
    ]
    ladder = joined(numbers[0].ladder, numbers[1].ladder)
    return plus(*numbers), usual(ladder, numbers[0].value + numbers[1].value)


def no_point(pair: Pair, _: Pointed, __: Pointed) -> Found:
    """Add rightly, and leave the point out."""
    state = pair.state(joined(pair.first.ladder, pair.second.ladder))
    answer = whole(state.first.parts + state.second.parts)
    return answer, answer
