"""What a line says: a question, a comparison, a number missing, to be rounded or written another way."""

from dataclasses import dataclass
from enum import StrEnum
from fractions import Fraction
from typing import assert_never

from onewhole.number.name_wanted import Wanted, has_form
from onewhole.number.quantity import Quantity
from onewhole.number.unit import KindError
from onewhole.statements.expression import Expression, Over, Sum, Times, kind, value
from onewhole.statements.gap import Gap
from onewhole.statements.rounding import Rounding


class Relation(StrEnum):
    """Less than, equal to, greater than."""

    LESS = "<"
    EQUAL = "="
    GREATER = ">"


@dataclass(frozen=True, slots=True)
class Question:
    """How much is this? 7 2/6 - 3 5/6"""

    asked: Expression


@dataclass(frozen=True, slots=True)
class Comparison:
    """Which is more? ``sign`` is None while it is still asked for: 5/6 ? 7/8"""

    left: Expression
    right: Expression
    sign: Relation | None = None


@dataclass(frozen=True, slots=True)
class MissingNumber:
    """An equation with one number missing: 7 2/6 = 6 ?/6.

    ``rest`` is the side without the gap. ``beside`` are the parts added to (or taken from) the side with the
    gap, and ``before`` says how many of them stand in front of it.
    """

    rest: Expression
    gap: Gap
    beside: tuple[tuple[Expression, bool], ...] = ()
    before: int = 0
    gap_taken: bool = False
    gap_left: bool = False


@dataclass(frozen=True, slots=True)
class AnotherName:
    """Write this another way: 12/18 in simplest form, 11/4 as a mixed number, 3 ft = ? in."""

    number: Quantity
    wanted: Wanted

    def answered_by(self, written: Quantity) -> bool:
        """Say whether a number is this number written as it is wanted.

        >>> from onewhole.number.ladder import mixed
        >>> from onewhole.number.name_wanted import NumberForm
        >>> asked = AnotherName(Quantity(mixed(18), (None, 12)), NumberForm.SIMPLEST)
        >>> [asked.answered_by(Quantity(mixed(bottom), (None, top))) for top, bottom in ((2, 3), (4, 6))]
        [True, False]
        """
        alike = (written.kind, written.value) == (self.number.kind, self.number.value)
        return alike and has_form(written, self.wanted)


Statement = Question | Comparison | MissingNumber | AnotherName | Rounding

#: What a line keeps when it is rewritten: an amount, an order, or the number that is missing.
Meaning = Fraction | Relation | int


def relation(left: Expression, right: Expression) -> Relation:
    """Return the sign that belongs between two expressions of one kind.

    >>> from onewhole.number.quantity import whole
    >>> relation(whole(3), whole(4)).value
    '<'
    """
    if kind(left) is not kind(right):
        msg = f"a {kind(left)} and a {kind(right)} cannot be compared"
        raise KindError(msg, remedy="Give both numbers the same unit, or leave the unit off both.")
    first, second = value(left), value(right)
    if first == second:
        return Relation.EQUAL
    return Relation.LESS if first < second else Relation.GREATER


def meaning(statement: Statement) -> Meaning:
    """Return what a step of a working must keep: the amount, the order, the missing or rounded number.

    Raises NoSuchNumberError when nothing fits a gap, KindError when parts do not go together.
    """
    match statement:
        case Question(asked):
            return value(asked)
        case Comparison(left, right):
            return relation(left, right)
        case MissingNumber():
            return statement.gap.filling(gap_amount(statement))
        case AnotherName(number):
            return number.value
        case Rounding():
            return statement.rounded
        case _:
            assert_never(statement)


def gap_amount(statement: MissingNumber) -> Fraction:
    """Return how much the number with the gap must be worth."""
    beside = sum((-value(part) if taken else value(part) for part, taken in statement.beside), Fraction(0))
    amount = value(statement.rest) - beside
    return -amount if statement.gap_taken else amount


def asked_quantities(statement: Question) -> tuple[tuple[Quantity, bool], ...] | None:
    """Return the quantities of a flat sum or difference with their signs, or None for anything else.

    >>> from onewhole.number.quantity import whole
    >>> from onewhole.statements.expression import minus
    >>> [taken for _, taken in asked_quantities(Question(minus(whole(5), whole(2))))]
    [False, True]
    """
    match statement.asked:
        case Quantity():
            return ((statement.asked, False),)
        case Sum(terms):
            flat = tuple((term.part, term.taken) for term in terms if isinstance(term.part, Quantity))
            return flat if len(flat) == len(terms) else None
        case Times() | Over():
            return None
        case _:
            assert_never(statement.asked)
