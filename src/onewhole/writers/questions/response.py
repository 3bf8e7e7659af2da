"""How a problem is answered in another program, and how the answer is marked there."""

from fractions import Fraction

from msgspec import Struct

from onewhole.notations.text import printed, text
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.answer import also_right
from onewhole.problems.numbers import numbers_of
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.statement import MissingNumber, Question, Relation
from onewhole.working.form import ANY_FORM


class FractionBoxes(Struct, frozen=True):
    """Three boxes, for wholes, pieces and the size of the pieces: every equal form is right."""

    worth: Fraction
    parts: tuple[int, int, int]


class NumberBox(Struct, frozen=True):
    """One box for a whole number or a decimal: every number that is worth as much is right."""

    written: str
    whole: bool


class SignChoice(Struct, frozen=True):
    """A choice of less than, equal to and greater than."""

    right: Relation


class WrittenLine(Struct, frozen=True):
    """One line of text: right are these ways to write it, and no other."""

    right: tuple[str, ...]


Response = FractionBoxes | NumberBox | SignChoice | WrittenLine


def response_to(worked: WorkedProblem) -> Response:
    """Return how a problem is answered.

    A plain number whose form is free is marked by what it is worth; all else (a measure, a price, an order, a
    form that is wanted) by how it is written. Raises NotOnLadderError where there is no answer.

    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> response_to(WorkedProblem(Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8")))
    FractionBoxes(worth=Fraction(39, 8), parts=(4, 7, 8))
    >>> response_to(WorkedProblem(Problem("1", read_statement("5 ft - 7 in"), "5 ft - 7 in")))
    WrittenLine(right=('4 ft 5 in',))
    """
    right = worked.answer
    if isinstance(right, Relation):
        return SignChoice(right)
    if isinstance(right, Quantity) and _is_free(worked, right):
        if Style.MIXED in {one.ladder.style for one in (right, *numbers_of(worked.statement))}:
            return FractionBoxes(right.value, _boxes(right))
        if right.ladder.style in {Style.PLACES, Style.DECIMAL}:
            return NumberBox(text(right), whole=right.ladder.style is Style.PLACES)
    also = also_right(worked.statement)
    every = (right, *worked.forms, *((also,) if also else ()))
    return WrittenLine(tuple(dict.fromkeys(way(one) for one in every for way in (text, printed))))


def _boxes(right: Quantity) -> tuple[int, int, int]:
    """Return wholes, pieces and their size, with the pieces that a number has."""
    size = right.ladder.denominator if right.ladder.style is Style.MIXED else right.value.denominator
    wholes, rest = divmod(right.value * size, size)
    return int(wholes), int(rest), size


def _is_free(worked: WorkedProblem, right: Quantity) -> bool:
    """Say whether any form of an answer is right, and it is a number without a unit."""
    is_plain = right.kind is Kind.NUMBER and not right.ladder.mark and right.value >= 0
    asked = worked.statement
    named_anew = isinstance(asked, Question) and isinstance(asked.asked, Quantity)
    is_amount = isinstance(asked, Question | MissingNumber) and not named_anew
    return is_plain and is_amount and worked.wanted == ANY_FORM
