"""What a line says: a question, a comparison, numbers to be ordered, found, rounded or named anew."""

from collections.abc import Iterator
from enum import StrEnum
from fractions import Fraction
from itertools import pairwise
from typing import assert_never

from msgspec import Struct

from onewhole.number.name_wanted import Wanted, has_form
from onewhole.number.quantity import Quantity
from onewhole.number.unit import KindError
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Times,
    WithRemainder,
    alike_marks,
    kind,
    unit_mark,
    value,
)
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.gap import Gap
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding
from onewhole.statements.whole_groups import GroupsMeaning, WholeGroups


class Relation(StrEnum):
    """Less than, equal to, greater than."""

    LESS = "<"
    EQUAL = "="
    GREATER = ">"


#: As many numbers as a child is asked to put in order. Common practice, no source.
FEWEST, MOST = 2, 8


class Question(Struct, frozen=True):
    """How much is this? 7 2/6 - 3 5/6"""

    asked: Expression


class Comparison(Struct, frozen=True):
    """Which is more? ``sign`` is None while it is still asked for: 5/6 ? 7/8"""

    left: Expression
    right: Expression
    sign: Relation | None = None


class MissingNumber(Struct, frozen=True):
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


class AnotherName(Struct, frozen=True):
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


class NumberRow(Struct, frozen=True):
    """Numbers in a row: parted by commas, or by the ``signs`` between them.

    ``signs`` are as many as there are gaps, or none. Raises ValueError for any other number of them.

    >>> from onewhole.number.quantity import whole
    >>> NumberRow((whole(3), whole(5)), (Relation.LESS,)).true
    True
    """

    parts: tuple[Quantity, ...]
    signs: tuple[Relation, ...] = ()

    def __post_init__(self) -> None:
        """Refuse signs for other gaps than there are."""
        if self.signs and len(self.signs) != len(self.parts) - 1:
            msg = "there is one sign between two numbers"
            raise ValueError(msg)

    @property
    def values(self) -> tuple[Fraction, ...]:
        """Return the amounts in the order in which they stand."""
        return tuple(part.value for part in self.parts)

    @property
    def true(self) -> bool:
        """Say whether every sign is true of the numbers beside it; so it is where there are none."""
        if not self.signs:
            return True
        found = (_sign(*pair) for pair in pairwise(self.values))
        return all(sign is wanted for sign, wanted in zip(self.signs, found, strict=True))

    def with_neighbors_changed(self) -> Iterator["NumberRow"]:
        """Yield the rows, without signs, in which two neighbors stand in each other's place.

        >>> from onewhole.number.quantity import whole
        >>> row = NumberRow((whole(3), whole(4), whole(5)))
        >>> [[int(value) for value in other.values] for other in row.with_neighbors_changed()]
        [[4, 3, 5], [3, 5, 4]]
        """
        for at in range(len(self.parts) - 1):
            first, second = self.parts[at : at + 2]
            yield NumberRow((*self.parts[:at], second, first, *self.parts[at + 2 :]))


class Ordering(Struct, frozen=True):
    """Put these numbers in order: from least to greatest, or ``falling`` from greatest to least.

    Raises ValueError for fewer than two numbers or more than eight, and KindError where they measure
    different things.

    >>> from onewhole.number.quantity import whole
    >>> [int(value) for value in Ordering((whole(5), whole(3), whole(4))).ordered.values]
    [3, 4, 5]
    """

    parts: tuple[Quantity, ...]
    falling: bool = False

    def __post_init__(self) -> None:
        """Refuse too few and too many numbers, and those that cannot be compared."""
        if not FEWEST <= len(self.parts) <= MOST:
            msg = f"{len(self.parts)} numbers cannot be put in order; {FEWEST} to {MOST} can"
            raise ValueError(msg)
        if len({part.kind for part in self.parts}) > 1:
            msg = "numbers that measure different things cannot be put in order"
            raise KindError(msg, remedy="Give every number the same unit, or leave all units off.")
        alike_marks([unit_mark(part) for part in self.parts])

    @property
    def ordered(self) -> NumberRow:
        """Return the numbers in order, with the signs between them; equal ones stay as they stood."""
        parts = tuple(sorted(self.parts, key=lambda part: part.value, reverse=self.falling))
        return NumberRow(parts, tuple(_sign(one.value, other.value) for one, other in pairwise(parts)))

    def is_right(self, row: NumberRow) -> bool:
        """Say whether a row has just these amounts in this order, and its signs are true.

        >>> from onewhole.number.quantity import whole
        >>> asked = Ordering((whole(5), whole(3)))
        >>> asked.is_right(NumberRow((whole(3), whole(5)))), asked.is_right(NumberRow((whole(5), whole(3))))
        (True, False)
        """
        same_kind = {part.kind for part in row.parts} == {self.parts[0].kind}
        return same_kind and row.true and row.values == self.ordered.values

    def is_reversed(self, row: NumberRow) -> bool:
        """Say whether a row has these amounts in the opposite order, which is not the order asked for."""
        wanted = self.ordered.values
        return row.values == wanted[::-1] != wanted


Statement = (
    Question
    | Comparison
    | Ordering
    | MissingNumber
    | AnotherName
    | Rounding
    | Listing
    | FactorQuestion
    | PlotQuestion
    | WholeGroups
)

#: What answers a statement: a number, a number with a remainder, the sign between two, numbers in order, or a
#: word.
RightAnswer = Quantity | Relation | NumberRow | WithRemainder | WordAnswer

#: What a line keeps when it is rewritten: an amount, an order of two or more, the number that is missing, the
#: word that answers, or a quotient with the whole number that is asked of it.
Meaning = Fraction | Relation | int | tuple[Fraction, ...] | WordAnswer | GroupsMeaning


def _sign(first: Fraction, second: Fraction) -> Relation:
    if first == second:
        return Relation.EQUAL
    return Relation.LESS if first < second else Relation.GREATER


def relation(left: Expression, right: Expression) -> Relation:
    """Return the sign that belongs between two expressions of one kind.

    >>> from onewhole.number.quantity import whole
    >>> relation(whole(3), whole(4)).value
    '<'
    """
    if kind(left) is not kind(right):
        msg = f"a {kind(left)} and a {kind(right)} cannot be compared"
        raise KindError(msg, remedy="Give both numbers the same unit, or leave the unit off both.")
    return _sign(value(left), value(right))


def meaning(statement: Statement) -> Meaning:
    """Return what a step of a working must keep: the amount, the order, the missing or rounded number.

    Raises NoSuchNumberError when nothing fits a gap, KindError when parts do not go together.
    """
    match statement:
        case Question(asked):
            return value(asked)
        case Comparison(left, right):
            return relation(left, right)
        case Ordering():
            return statement.ordered.values
        case MissingNumber():
            return statement.gap.filling(gap_amount(statement))
        case AnotherName(number):
            return number.value
        case Rounding():
            return statement.rounded
        case Listing():
            return statement.values
        case FactorQuestion():
            return statement.claims
        case PlotQuestion():
            return value(statement.leads_to)
        case WholeGroups():
            return statement.claims
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
        case Times() | Over() | Quotient() | InBrackets() | WithRemainder():
            return None
        case _:
            assert_never(statement.asked)
