"""Comparisons that are decided by a part of the two numbers, or by how they are written."""

from collections.abc import Callable

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.wrong_steps.pointed import pointed, taken_apart
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.statement import Comparison, Relation, Statement, relation
from onewhole.working.line import Line

#: The two numbers that are looked at in the place of those asked about; None where a rule does not apply.
See = Callable[[Quantity, Quantity], tuple[Quantity, Quantity] | None]

#: The sign that is written at once; None where a rule does not apply.
Sign = Callable[[Quantity, Quantity], Relation | None]

_POINTED = frozenset({Style.DECIMAL, Style.PLACES})
_MONEY_PLACES = 2


class _Two(Struct, frozen=True):
    """A comparison of two numbers, its sign still asked for."""

    asked: Comparison
    left: Quantity
    right: Quantity


def _two(statement: Statement) -> _Two | None:
    match statement:
        case Comparison(Quantity() as left, Quantity() as right, None):
            return _Two(statement, left, right)
        case _:
            return None


def on_two_compared(see: See) -> Try:
    """Return the attempt at a comparison of two numbers by two others; the false line compares those."""

    def attempt(statement: Statement) -> Attempt | None:
        two = _two(statement)
        if two is None or (seen := see(two.left, two.right)) is None:
            return None
        sign = relation(*seen)
        signed = Comparison(two.asked.left, two.asked.right, sign)
        return Attempt((Line(two.asked), Line(Comparison(*seen)), Line(signed)), sign)

    return attempt


def on_sign_written(write: Sign) -> Try:
    """Return the attempt at a comparison of two numbers whose sign is written at once."""

    def attempt(statement: Statement) -> Attempt | None:
        two = _two(statement)
        if two is None or (sign := write(two.left, two.right)) is None:
            return None
        return Attempt((Line(two.asked), Line(Comparison(two.asked.left, two.asked.right, sign))), sign)

    return attempt


def sign_turned(left: Quantity, right: Quantity) -> Relation | None:
    """Write the opposite of the right sign, where the two are not equal."""
    return _TURNED.get(relation(left, right))


def whole_part_wins(left: Quantity, right: Quantity) -> Relation | None:
    """Call a number with a whole part larger than any that is written as one fraction."""
    single = [number.ladder.style is Style.MIXED and not number.amounts[0] for number in (left, right)]
    if sum(single) != 1 or not {left.ladder.style, right.ladder.style} <= {Style.MIXED, Style.PLACES}:
        return None
    if not (right if single[0] else left).amounts[0]:
        return None
    return Relation.LESS if single[0] else Relation.GREATER


_TURNED = {Relation.LESS: Relation.GREATER, Relation.GREATER: Relation.LESS}


# ---- mixed numbers ----


def _mixed_with_one_whole_part(left: Quantity, right: Quantity) -> bool:
    """Say whether both are mixed numbers with the same whole part and other fractions."""
    if {left.ladder.style, right.ladder.style} != {Style.MIXED}:
        return False
    fractions = [(number.amounts[1], number.ladder.denominator) for number in (left, right)]
    return 0 < left.amounts[0] == right.amounts[0] and fractions[0] != fractions[1]


def wholes_alone(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Look at the wholes only."""
    if not _mixed_with_one_whole_part(left, right):
        return None
    return whole(left.amounts[0]), whole(right.amounts[0])


def larger_bottom_beside_wholes(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Look at the denominators only, where the wholes are the same."""
    if not _mixed_with_one_whole_part(left, right) or left.ladder == right.ladder:
        return None
    return whole(left.ladder.denominator), whole(right.ladder.denominator)


def larger_top_beside_wholes(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Look at the numerators only, where the wholes are the same."""
    if not _mixed_with_one_whole_part(left, right) or left.amounts[1] == right.amounts[1]:
        return None
    return whole(left.amounts[1]), whole(right.amounts[1])


def fractions_first(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Look at the fractions of two numbers with different whole parts."""
    if {left.ladder.style, right.ladder.style} != {Style.MIXED} or left.amounts[0] == right.amounts[0]:
        return None
    if any(not 0 < number.amounts[1] < number.ladder.denominator for number in (left, right)):
        return None
    first, second = (Quantity(number.ladder, (None, number.amounts[1])) for number in (left, right))
    return first, second


def smaller_digits(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Call the fraction larger whose numerator and denominator are less together."""
    if {left.ladder.style, right.ladder.style} != {Style.MIXED} or left.amounts[0] or right.amounts[0]:
        return None
    first, second = (whole(number.amounts[1] + number.ladder.denominator) for number in (left, right))
    return second, first


# ---- decimals ----


def _one_whole_part(left: Quantity, right: Quantity) -> tuple[str, str] | None:
    """Return the digits after the points of two decimals with the same whole part, or None."""
    if {left.ladder.style, right.ladder.style} != {Style.DECIMAL}:
        return None
    first, second = taken_apart(left), taken_apart(right)
    return (first.digits, second.digits) if first.wholes == second.wholes else None


def longer_unless_zero(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Call one with no tenths smaller, and else compare the digits after the point as whole numbers."""
    digits = _one_whole_part(left, right)
    if digits is None:
        return None
    zero = [one.startswith("0") for one in digits]
    first, second = (whole(int(one if zero[0] == zero[1] else one[0])) for one in digits)
    return first, second


def longer_of_equals(left: Quantity, right: Quantity) -> Relation | None:
    """Call the longer of two equal decimals larger."""
    digits = _one_whole_part(left, right)
    if digits is None or left.value != right.value or len(digits[0]) == len(digits[1]):
        return None
    return Relation.GREATER if len(digits[0]) > len(digits[1]) else Relation.LESS


def zeros_left_out(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Leave out every 0 after the point, then compare."""
    digits = _one_whole_part(left, right)
    if digits is None or "0" not in "".join(digits):
        return None
    first, second = (pointed(0, one.replace("0", "")) for one in digits)
    return first, second


def two_places_only(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Compare tenths and hundredths only."""
    digits = _one_whole_part(left, right)
    if digits is None or max(map(len, digits)) <= _MONEY_PLACES:
        return None
    first, second = (pointed(0, one[:_MONEY_PLACES]) for one in digits)
    return first, second


def more_pieces_smaller(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Call the decimal smaller whose digits after the point are the larger whole number."""
    digits = _one_whole_part(left, right)
    if digits is None or not all(int(one) for one in digits):
        return None
    first, second = (whole(int(one)) for one in digits)
    return second, first


def point_left_out(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Compare the digits as whole numbers, without the point."""
    if not {left.ladder.style, right.ladder.style} <= _POINTED or left.ladder.after == right.ladder.after:
        return None
    return whole(left.parts), whole(right.parts)


# ---- measures ----


def numbers_alone(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Compare the first numbers of two measures that begin with different units."""
    if {left.ladder.style, right.ladder.style} != {Style.MEASURE}:
        return None
    first, second = left.amounts[0], right.amounts[0]
    if left.ladder.units[0] == right.ladder.units[0] or first == second:
        return None
    return whole(first), whole(second)


# ---- whole numbers ----


def first_digit(left: Quantity, right: Quantity) -> tuple[Quantity, Quantity] | None:
    """Compare the first digits of two whole numbers."""
    if {left.ladder.style, right.ladder.style} != {Style.PLACES} or left.amounts[0] == right.amounts[0]:
        return None
    return whole(left.amounts[0]), whole(right.amounts[0])
