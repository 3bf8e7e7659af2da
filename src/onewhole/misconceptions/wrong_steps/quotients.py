"""Numbers that are divided by a wrong rule: digit by digit, with the remainder lost, or turned over."""

from collections.abc import Callable, Sequence

from msgspec import Struct

from onewhole.misconceptions.attempt import Attempt, Outcome, finished, wrongly
from onewhole.misconceptions.bend import Try
from onewhole.misconceptions.wrong_steps.fraction_products import FactorParts, factor_parts, multiplied
from onewhole.number.ladder import TEN, Style, decimal, mixed
from onewhole.number.quantity import Quantity, trimmed, usual_in_parts, whole
from onewhole.statements.expression import Expression, Over, Quotient, WithRemainder, value
from onewhole.statements.statement import Question, Statement
from onewhole.working.line import Line
from onewhole.working.pair_state import PairState
from onewhole.working.quotients.remainder_shared import both_shared

_TWO = 2


class Divided(Struct, frozen=True):
    """A number and what it is divided by."""

    asked: Quotient
    left: Quantity
    right: Quantity

    @property
    def number(self) -> int:
        """Return the number that is divided, counted in its smallest unit."""
        return self.left.parts

    @property
    def by(self) -> int:
        """Return what it is divided by, counted in its smallest unit."""
        return self.right.parts

    @property
    def quotient(self) -> int:
        """Return the quotient of whole numbers, without what is left."""
        return self.number // self.by

    @property
    def over(self) -> int:
        """Return what is left."""
        return self.number % self.by


#: What is written instead; None where a rule does not apply.
Written = Callable[[Divided], Outcome | None]
#: Numerator and denominator of what is written instead, still to be worked out.
TopAndBottom = tuple[Expression, Expression]
Parts = Callable[[Divided], TopAndBottom | None]


def division(statement: Statement) -> Divided | None:
    """Return the numbers of a quotient, or None for anything else."""
    match statement:
        case Question(Quotient(Quantity() as left, Quantity() as right) as asked):
            return Divided(asked, left, right) if right.parts and left.parts else None
        case _:
            return None


def in_wholes(statement: Statement) -> Divided | None:
    """Return plain whole numbers of which one is divided by another.

    >>> from onewhole.statements.reading import read_statement
    >>> in_wholes(read_statement("87 / 4")).over
    3
    """
    found = division(statement)
    return found if found is not None and found.left.plain and found.right.plain else None


def shares_wholes(rule: Written) -> Try:
    """Return the attempt at a quotient of whole numbers of one or more, its false line written by a rule."""

    def attempt(statement: Statement) -> Attempt | None:
        found = in_wholes(statement)
        return None if found is None or found.number < found.by else _attempt(found, rule(found))

    return attempt


def divides(rule: Written) -> Try:
    """Return the attempt at any quotient, its false line written by a rule."""

    def attempt(statement: Statement) -> Attempt | None:
        found = division(statement)
        return None if found is None else _attempt(found, rule(found))

    return attempt


def makes_fraction(rule: Parts) -> Try:
    """Return the attempt at any quotient, written as a fraction whose parts are still to be worked out."""

    def attempt(statement: Statement) -> Attempt | None:
        found = division(statement)
        made = None if found is None else rule(found)
        if found is None or made is None:
            return None
        top, bottom = made
        wrote = trimmed(Quantity(mixed(value(bottom).numerator), (None, value(top).numerator)))
        worked = isinstance(top, Quantity) and isinstance(bottom, Quantity)
        state = PairState(wrote, wrote, taken=False, result=wrote)
        state = state if worked else wrongly(state, Over(top, bottom))
        return finished(found.asked, wrongly(state, wrote))

    return attempt


def divides_fractions(rule: Callable[[FactorParts, FactorParts], TopAndBottom | None]) -> Try:
    """Return the attempt at a fraction divided by a fraction, none of them with wholes or a unit."""

    def parts(found: Divided) -> TopAndBottom | None:
        both = (found.left, found.right)
        if any(number.ladder.style is not Style.MIXED or number.ladder.mark for number in both):
            return None
        one, other = map(factor_parts, both)
        return None if one.w or other.w else rule(one, other)

    return makes_fraction(parts)


def _attempt(found: Divided, wrote: Outcome | None) -> Attempt | None:
    match wrote:
        case None:
            return None
        case WithRemainder(left=left):
            also = both_shared(wrote) if left.parts < found.by else ()
            return Attempt((Line(found.asked), Line(wrote)), wrote, also)
        case Quantity():
            state = PairState(wrote, wrote, taken=False, result=wrote)
            return finished(found.asked, wrongly(state, wrote))
        case _:
            msg = f"no rule of division writes {wrote}"
            raise TypeError(msg)


def _digits(number: int) -> tuple[int, ...]:
    """Return the digits of a number, the largest place first."""
    return whole(number).amounts


def _number(digits: Sequence[int]) -> int:
    """Return the number that digits stand for; what is ten or more goes into the places before it."""
    return sum(digit * TEN**place for place, digit in enumerate(reversed(digits)))


def _with(found: Divided, quotient: int, over: int) -> Outcome:
    return WithRemainder(whole(quotient), whole(over), found.right) if over else whole(quotient)


def quotient_zeros_left_out(found: Divided) -> Outcome | None:
    """824 / 4 is said to be 26."""
    digits = _digits(found.quotient)
    short = [one for one in digits if one]
    return _with(found, _number(short), found.over) if 0 < len(short) < len(digits) else None


def remainder_dropped(found: Divided) -> Outcome | None:
    """87 / 4 is said to be 21."""
    return whole(found.quotient) if found.over else None


def remainder_behind_point(found: Divided) -> Outcome | None:
    """87 / 4 is said to be 21.3."""
    if not found.over:
        return None
    after = len(_digits(found.over))
    return usual_in_parts(decimal(1, after), found.quotient * TEN**after + found.over)


def digits_turned_round(found: Divided) -> Outcome | None:
    """84 / 3 is said to be 82."""
    turned = _number(_digits(found.quotient)[::-1])
    return _with(found, turned, found.over) if found.quotient >= TEN else None


def smaller_into_larger(found: Divided) -> Outcome | None:
    """246 / 4 is said to be 211."""
    digits = _digits(found.number)
    if found.by >= TEN or len(digits) < _TWO:
        return None
    each = [max(one, found.by) // min(one, found.by) if one else 0 for one in digits]
    return whole(_number(each))


def left_thrown_away(found: Divided) -> Outcome | None:
    """74 / 2 is said to be 32."""
    digits = _digits(found.number)
    if found.by >= TEN or len(digits) < _TWO:
        return None
    return whole(_number([one // found.by for one in digits]))


def one_group_too_few(found: Divided) -> Outcome | None:
    """87 / 4 is said to be 20 r 7."""
    return _with(found, found.quotient - 1, found.over + found.by) if found.quotient >= _TWO else None


def two_digits_at_once(found: Divided) -> Outcome | None:
    """1211 / 7 is said to be 1613."""
    digits = _digits(found.quotient)
    if len(digits) < _TWO or not digits[-2]:
        return None
    wrote = _number([*digits[:-2], digits[-2] - 1, 1, digits[-1]])
    return _with(found, wrote, found.over)


def last_digit_not_used(found: Divided) -> Outcome | None:
    """95 / 4 is said to be 2 r 1."""
    return _with(found, *divmod(found.number // TEN, found.by)) if found.quotient >= TEN else None


def inner_zeros_skipped(found: Divided) -> Outcome | None:
    """705 / 5 is said to be 15."""
    first, *inside, last = (0, *_digits(found.number)) if found.number < TEN else _digits(found.number)
    inner = [one for one in inside if one]
    if len(inner) == len(inside):
        return None
    return _with(found, *divmod(_number([first, *inner, last]), found.by))


def larger_by_smaller(found: Divided) -> TopAndBottom | None:
    """3 / 4 is said to be 4/3."""
    both = found.left.plain and found.right.plain
    return (found.right, found.left) if both and found.number < found.by else None


def first_turned(one: FactorParts, other: FactorParts) -> TopAndBottom | None:
    """3/4 / 2/5 is said to be 4/3 x 2/5."""
    return multiplied(one.d, other.n), multiplied(one.n, other.d)


def both_turned(one: FactorParts, other: FactorParts) -> TopAndBottom | None:
    """3/4 / 2/5 is said to be 4/3 x 5/2."""
    return multiplied(one.d, other.d), multiplied(one.n, other.n)


def neither_turned(one: FactorParts, other: FactorParts) -> TopAndBottom | None:
    """2/7 / 3/5 is said to be 2/7 x 3/5."""
    return multiplied(one.n, other.n), multiplied(one.d, other.d)


def across_larger_first(one: FactorParts, other: FactorParts) -> TopAndBottom | None:
    """2/9 / 4/3 is said to be 2/3."""
    (high, low), (deep, flat) = (sorted(two, reverse=True) for two in ((one.n, other.n), (one.d, other.d)))
    return None if high % low or deep % flat else (whole(high // low), whole(deep // flat))


def tops_over_same_bottom(one: FactorParts, other: FactorParts) -> TopAndBottom | None:
    """6/8 / 2/8 is said to be 3/8."""
    return (whole(one.n // other.n), whole(one.d)) if one.d == other.d and one.n % other.n == 0 else None


def whole_over_bottom(found: Divided) -> TopAndBottom | None:
    """3 / 1/4 is said to be 3/4."""
    unit = found.right.ladder.style is Style.MIXED and found.right.amounts == (0, 1)
    return (found.left, whole(found.right.ladder.denominator)) if found.left.plain and unit else None


def top_times_whole(found: Divided) -> TopAndBottom | None:
    """1/3 / 4 is said to be 4/3."""
    if found.left.ladder.style is not Style.MIXED or not found.right.plain or found.by == 1:
        return None
    wholes, top = found.left.amounts
    return (multiplied(top, found.by), whole(found.left.ladder.denominator)) if top and not wholes else None


def wholes_only(found: Divided) -> Outcome | None:
    """6 3/4 / 3 is said to be 2 3/4."""
    if found.left.ladder.style is not Style.MIXED or not found.right.plain:
        return None
    wholes, top = found.left.amounts
    even = wholes and top and found.by > 1 and wholes % found.by == 0
    return Quantity(found.left.ladder, (wholes // found.by, top)) if even else None


def _smaller_units(found: Divided) -> bool:
    """Say whether a number of wholes and smaller units is divided by a whole number above 1."""
    return (
        found.left.ladder.style is not Style.PLACES
        and found.right.plain
        and found.by > 1
        and len(found.left.amounts) > 1
    )


def each_unit_alone(found: Divided) -> Outcome | None:
    """5 ft 2 in / 2 is said to be 2 ft 1 in, and 5.2 / 4 and 7 2/6 / 4 to be 1."""
    if not _smaller_units(found) or not any(one % found.by for one in found.left.amounts[:-1]):
        return None
    ladder = found.left.ladder
    each = Quantity(ladder, tuple([one // found.by for one in found.left.amounts]))
    if ladder.style is Style.DECIMAL and each.value.denominator == 1:
        each = whole(int(each.value), ladder.mark)
    return each if each.parts else None


def left_is_ten_smaller(found: Divided) -> Outcome | None:
    """5 ft 2 in / 2 is said to be 2 ft 6 in, as if the foot that is left were 10 inches."""
    if not _smaller_units(found) or found.left.ladder.style is not Style.MEASURE:
        return None
    each: list[int] = []
    over = 0
    for count in found.left.amounts:
        one, over = divmod(count + over * TEN, found.by)
        each.append(one)
    if over or not any(one % found.by for one in found.left.amounts[:-1]):
        return None
    return Quantity(found.left.ladder, tuple(each))


def point_left_out(found: Divided) -> Outcome | None:
    """5.2 / 4 is said to be 13."""
    pointed = found.left.ladder.style is Style.DECIMAL and found.left.ladder.after > 0
    if not pointed or not _smaller_units(found) or found.number % found.by:
        return None
    return whole(found.number // found.by, found.left.ladder.mark)
