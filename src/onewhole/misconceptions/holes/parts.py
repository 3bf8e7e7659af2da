"""Two numbers of wholes and pieces, or of a larger and a smaller unit: what a question may name of them."""

from msgspec import Struct

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.pair import Pair, like_parts, pair_of, renamed_parts
from onewhole.misconceptions.wrong_steps.one_unit import without_unit
from onewhole.misconceptions.wrong_steps.when import Counts, counts, place_of_two
from onewhole.number.ladder import Style, joined, mixed
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.number.unit import Unit
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Expression
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Statement,
)
from onewhole.working.pair_state import PairState


class CaseParts(Struct, frozen=True):
    """Both numbers on one ladder: ``first`` and ``second`` as they are shown, ``state`` with every rung.

    Unlike denominators are renamed. Where one number is asked about, it is both.
    """

    first: Quantity
    second: Quantity
    state: PairState

    @property
    def counts(self) -> Counts:
        """Return the counts of both, and how many of the small unit make one of the large one."""
        return counts(self.state)

    @property
    def place(self) -> int:
        """Return the rung of the small unit."""
        return place_of_two(self.state)

    @property
    def units(self) -> tuple[Unit, Unit]:
        """Return the large and the small unit."""
        large, small = self.state.first.ladder.units[self.place - 1 : self.place + 1]
        return large, small


def parts(case: Case) -> CaseParts:
    """Return the two numbers of a case. Raises LookupError where there are none."""
    pair = pair_of(case.statement)
    if pair is None:
        number = _one_number(case.statement)
        return CaseParts(number, number, PairState(number, number, taken=True))
    if pair.styles == {Style.MEASURE}:
        return _shown(pair, pair.state(joined(pair.first.ladder, pair.second.ladder)))
    if (like := like_parts(case.statement, taken=pair.taken)) is not None:
        return _shown(*like)
    if (renamed := renamed_parts(case.statement, taken=pair.taken)) is not None:
        state = renamed[1]
        return CaseParts(trimmed(state.first), trimmed(state.second), state)
    msg = "this problem has no two numbers of wholes and pieces"
    raise LookupError(msg)


def _shown(pair: Pair, state: PairState) -> CaseParts:
    return CaseParts(pair.first, pair.second, state)


def _one_number(statement: Statement) -> Quantity:
    match statement:
        case (
            Question(Quantity() as number)
            | MissingNumber(Quantity() as number)
            | AnotherName(number)
            | Rounding(number)
        ):
            return number
        case _:
            msg = "this problem asks about no one number"
            raise LookupError(msg)


def asked(case: Case) -> Expression:
    """Return what the problem asks to work."""
    match case.statement:
        case Question(expression) | AnotherName(expression):
            return expression
        case MissingNumber(rest):
            return rest
        case Comparison(left):
            return left
        case Rounding(number):
            return number
        case Ordering(parts):
            return parts[0]
        case AskedInWords():
            return case.statement.about


def typed_pair(case: Case) -> Pair:
    """Return the two numbers as they are typed, counts of one unit without it.

    Raises LookupError where there are none.
    """
    pair = pair_of(without_unit(case.statement) or case.statement)
    if pair is None:
        msg = "this problem has no two numbers"
        raise LookupError(msg)
    return pair


def typed_first(case: Case) -> Quantity:
    """Return the first number as it is typed."""
    return typed_pair(case).first


def typed_second(case: Case) -> Quantity:
    """Return the second number as it is typed."""
    return typed_pair(case).second


def first(case: Case) -> Quantity:
    """Return the first number, renamed where the denominators differ."""
    return parts(case).first


def second(case: Case) -> Quantity:
    """Return the second number, renamed where the denominators differ."""
    return parts(case).second


def large(case: Case) -> Unit:
    """Return the larger unit: the whole, the foot, the hour."""
    return parts(case).units[0]


def small(case: Case) -> Unit:
    """Return the smaller unit: the piece, the inch, the minute."""
    return parts(case).units[1]


def units_there(case: Case) -> tuple[Unit, ...]:
    """Return the units of which one of both numbers has some, the larger first."""
    two = parts(case).state
    rungs = zip(two.first.ladder.units, two.first.amounts, two.second.amounts, strict=True)
    return tuple(unit for unit, one, other in rungs if one or other)


def bottom(case: Case) -> int:
    """Return how many of the smaller unit make one of the larger one."""
    return parts(case).counts.d


def have(case: Case) -> int:
    """Return how many of the smaller unit the first number has beside its larger ones."""
    return parts(case).counts.n1


def need(case: Case) -> int:
    """Return how many of the smaller unit are to be taken or added."""
    return parts(case).counts.n2


def pieces(case: Case) -> int:
    """Return how many pieces both numbers have together, wholes left out."""
    return have(case) + need(case)


def wholes(case: Case) -> int:
    """Return how many of the larger unit the first number has."""
    return parts(case).counts.w1


def piece(case: Case) -> Quantity:
    """Return the second number's part in the smaller unit by itself: 3/8, 8 in."""
    two = parts(case)
    return trimmed(two.state.second.only(two.place))


def rest_of_one(case: Case) -> Quantity:
    """Return what is missing to one of the larger unit: 5/8 beside 3/8."""
    two = parts(case)
    return trimmed(Quantity(two.state.second.ladder, (0, two.counts.d - two.counts.n2)))


def as_many_pieces(case: Case) -> Quantity:
    """Return the first number's count of wholes read as pieces: 4/8 for 4."""
    two = parts(case)
    return Quantity(two.state.first.ladder, (None, two.counts.w1))


def next_whole(case: Case) -> Quantity:
    """Return the whole number above the second number."""
    return whole(parts(case).counts.w2 + 1)


def added_bottoms(case: Case) -> Unit:
    """Return the piece whose denominator is both denominators together."""
    return mixed(2 * bottom(case)).units[1]


def twice_bottom(case: Case) -> int:
    """Return both denominators together, where they are the same."""
    return 2 * bottom(case)


def number_with_wholes(case: Case) -> Quantity:
    """Return the first of both numbers that has wholes."""
    two = parts(case)
    return two.first if two.counts.w1 else two.second


def its_wholes(case: Case) -> int:
    """Return the wholes of that number."""
    two = parts(case).counts
    return two.w1 or two.w2


def its_top(case: Case) -> int:
    """Return the pieces of that number beside its wholes."""
    two = parts(case).counts
    return two.n1 if two.w1 else two.n2


def its_sum(case: Case) -> int:
    """Return wholes and pieces of that number added."""
    return its_wholes(case) + its_top(case)


def its_digits(case: Case) -> int:
    """Return wholes and pieces of that number side by side."""
    return int(f"{its_wholes(case)}{its_top(case)}")


def total_in_first(case: Case) -> int:
    """Return the pieces of the first number when one whole is opened."""
    return have(case) + bottom(case)


def total_unit(case: Case) -> Unit:
    """Return the piece that is called by that number."""
    return mixed(total_in_first(case)).units[1]


def result_in_pieces(case: Case) -> int:
    """Return the right answer in pieces."""
    two = parts(case)
    if pair_of(case.statement) is None:
        return two.first.parts
    first_, second_ = two.state.first.parts, two.state.second.parts
    return first_ - second_ if two.state.taken else first_ + second_


def result_wholes(case: Case) -> int:
    """Return the wholes of the right answer."""
    return result_in_pieces(case) // bottom(case)


def result_over(case: Case) -> int:
    """Return the pieces of the right answer beside its wholes."""
    return result_in_pieces(case) % bottom(case)


def wrote(case: Case) -> Quantity:
    """Return the amount that was written. Raises LookupError where no amount was."""
    match case.wrote:
        case Quantity() as found:
            return found
        case _:
            msg = "no amount was written"
            raise LookupError(msg)


def written_pieces(case: Case) -> int:
    """Return the pieces that were written beside the wholes."""
    return wrote(case).amounts[-1]


def written_wholes(case: Case) -> int:
    """Return the whole number that was written."""
    return wrote(case).parts
