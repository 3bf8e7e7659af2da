"""What a statement asks for, seen as a story: which number is unknown, and what is known."""

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction
from typing import assert_never

from onewhole.errors import InputError
from onewhole.misconceptions.pair import pair_of
from onewhole.number.digits import in_digits
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Sum, Term
from onewhole.statements.gap import HOLE, Gap
from onewhole.statements.statement import Comparison, MissingNumber, Question, Statement, meaning

#: What a refusal offers to do.
REMEDY = "Give one sum, difference or comparison of two numbers, or one missing number: 5 1/3 - 2 2/3."


class NoStoryError(InputError):
    """No story is told about this statement."""


class Asks(Enum):
    """The unknown of a story; *a* is told before *b*."""

    DIFFERENCE = "a - b = ?"
    SUM = "a + b = ?"
    WHICH = "a ? b"
    CHANGE_TAKEN = "a - ? = b"
    CHANGE_ADDED = "a + ? = b"
    START_TAKEN = "? - a = b"
    START_ADDED = "? + a = b"
    RENAMED = "a = b pieces"
    ALL_THREE = "a + b + c = ?"
    MORE_THEN_LESS = "a + b - c = ?"


@dataclass(frozen=True, slots=True)
class StoryQuestion:
    """A statement with its two parts in the order in which a story tells them.

    ``second`` is the number with the gap where an amount is asked for in other pieces (7 2/6 = 6 ?/6).
    ``third`` is the last of three numbers.
    """

    asks: Asks
    first: Quantity
    second: Quantity | Gap
    third: Quantity | None = None

    @property
    def numbers(self) -> tuple[Quantity, ...]:
        """Return the numbers that are known as amounts."""
        return tuple(part for part in (self.first, self.second, self.third) if isinstance(part, Quantity))

    @property
    def under_one(self) -> bool:
        """Say whether the unknown is a part of an amount under one."""
        match self.asks:
            case Asks.DIFFERENCE | Asks.CHANGE_TAKEN:
                within: Quantity | Gap = self.first
            case Asks.CHANGE_ADDED | Asks.START_ADDED:
                within = self.second
            case Asks.SUM | Asks.WHICH | Asks.START_TAKEN | Asks.RENAMED | Asks.ALL_THREE:
                return False
            case Asks.MORE_THEN_LESS:
                return sum((number.value for number in self.numbers[:-1]), Fraction(0)) < 1
            case _:
                assert_never(self.asks)
        return isinstance(within, Quantity) and within.value < 1


def asked(statement: Statement) -> StoryQuestion:
    """Return what a statement asks for.

    Raises NoStoryError for more than three numbers, for three of which the first two are not added, products,
    a sign that is given already, an amount of 0, a result below zero, a count that overfills its place
    (4 tens 12 ones), and gaps in a denominator or before a fraction.

    >>> from onewhole.statements.reading import read_statement
    >>> [asked(read_statement(typed)).asks.value for typed in ("5 - 1 3/8", "5 = ? + 2", "9 - ? = 3 1/2")]
    ['a - b = ?', '? + a = b', 'a - ? = b']
    >>> [asked(read_statement(typed)).asks.value for typed in ("345 + 128 + 67", "5 + 2 - 1")]
    ['a + b + c = ?', 'a + b - c = ?']
    """
    found = _asked(statement)
    if found is None:
        msg = "no story is told about this problem"
        raise NoStoryError(msg, remedy=REMEDY)
    told = meaning(statement)
    if isinstance(told, int | Fraction) and told < 0:
        msg = "the result is below zero, and no story ends there"
        raise NoStoryError(msg, remedy="Put the larger number first.")
    for number in found.numbers:
        if not number.value:
            msg = "no story is told about an amount of 0"
            raise NoStoryError(msg, remedy="Use two amounts above 0.")
        if number.ladder.style in {Style.PLACES, Style.DECIMAL} and not in_digits(number):
            msg = "a number with an overfull place does not stand in a story"
            raise NoStoryError(msg, remedy="Write it in digits: 52 and not 4 tens 12 ones.")
    return found


def _asked(statement: Statement) -> StoryQuestion | None:
    pair = pair_of(statement)
    if pair is not None:
        return StoryQuestion(Asks.DIFFERENCE if pair.taken else Asks.SUM, pair.first, pair.second)
    match statement:
        case Question(
            Sum(
                (
                    Term(Quantity() as first, False),
                    Term(Quantity() as second, False),
                    Term(Quantity() as third, taken),
                )
            )
        ):
            return StoryQuestion(Asks.MORE_THEN_LESS if taken else Asks.ALL_THREE, first, second, third)
        case Comparison(Quantity() as left, Quantity() as right, None):
            return StoryQuestion(Asks.WHICH, left, right)
        case MissingNumber(Quantity() as rest, gap, beside=((Quantity() as part, taken),)) if gap.alone:
            return StoryQuestion(_missing(statement, taken=taken), part, rest)
        case MissingNumber(Quantity() as rest, Gap(_, top) as gap, beside=()) if (
            top is HOLE and rest.ladder.style in {Style.MIXED, Style.PLACES}
        ):
            return StoryQuestion(Asks.RENAMED, rest, gap)
        case _:
            return None


def _missing(statement: MissingNumber, *, taken: bool) -> Asks:
    """Say which part of an equation is missing: what is changed, or what was there at first."""
    if statement.before:
        return Asks.CHANGE_TAKEN if statement.gap_taken else Asks.CHANGE_ADDED
    return Asks.START_TAKEN if taken else Asks.START_ADDED
