"""When two answers are written alike, and how much an answer is."""

from collections.abc import Hashable
from fractions import Fraction
from typing import assert_never

from onewhole.misconceptions.attempt import Outcome
from onewhole.number.clock import shown
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Expression, InBrackets, Over, Quotient, Sum, Times, WithRemainder
from onewhole.statements.factor_question import WordAnswer
from onewhole.statements.statement import NumberRow, Relation

TEN = 10


def alike(outcome: Outcome) -> Hashable:
    """Return what answers that are written alike have in common; equal for them and only for them.

    4 8/5 and 5 3/5 are not alike, nor are 3/6 and 1/2, nor -1/2 and 1/-2. Empty parts make no difference:
    3 0/6 is 3, 0 3/6 is 3/6, 0 ft 7 in is 7 in, 12.30 is 12.3. Times of day are alike where a clock shows the
    same.

    >>> from onewhole.statements.reading import read_quantity as read
    >>> alike(read("4 8/5")) == alike(read("5 3/5")), alike(read("12.30")) == alike(read("12.3"))
    (False, True)
    """
    match outcome:
        case Quantity():
            return _quantity(outcome)
        case Impossible(wholes, top):
            return "over nothing", wholes or 0, top
        case WithMinus(unsigned, front, below):
            return "signed", front, below, alike(unsigned)
        case WithRemainder():
            return alike_line(outcome)
        case Relation() | WordAnswer():
            return outcome
        case NumberRow(parts):
            return "row", tuple(map(alike, parts))
        case _:
            assert_never(outcome)


def _quantity(written: Quantity) -> Hashable:
    counted = tuple(zip(written.ladder.units, written.amounts, strict=True))
    match written.ladder.style:
        case Style.MIXED:
            wholes, pieces = written.amounts
            return (wholes, pieces, written.ladder.denominator) if pieces else Fraction(wholes)
        case Style.PLACES | Style.DECIMAL:
            in_digits = all(count < TEN for count in written.amounts)
            return written.value if in_digits else tuple((unit.size, n) for unit, n in counted if n)
        case Style.MEASURE if written.ladder.clock:
            return "time of day", shown(written)
        case Style.MEASURE:
            return written.kind, tuple((unit.mark, n) for unit, n in counted if n)
        case _:
            assert_never(written.ladder.style)


def amount(outcome: Outcome) -> tuple[Kind, Fraction] | None:
    """Return how much an answer is, with what it measures; None for 3 3/0, a sign, a word, an order, 21 r 3.

    >>> from onewhole.statements.reading import read_answer as read
    >>> amount(read("-1/-2")) == amount(read("1/2")), str(amount(read("-3"))[1])
    (True, '-3')
    """
    match outcome:
        case Quantity() | WithMinus():
            worth = outcome.value
            return None if worth is None else (outcome.kind, worth)
        case _:
            return None


def alike_line(line: Expression) -> Hashable:
    """Return what lines that are written alike have in common, number by number in the same places.

    >>> from onewhole.statements.reading import read_expression as read
    >>> alike_line(read("6 8/6 - 3 0/6")) == alike_line(read("6 8/6 - 3"))
    True
    """
    match line:
        case Quantity():
            return _quantity(line)
        case Sum(terms):
            return "sum", tuple((term.taken, alike_line(term.part)) for term in terms)
        case Times(left, right):
            return "times", alike_line(left), alike_line(right)
        case Over(top, bottom):
            return "over", alike_line(top), alike_line(bottom)
        case Quotient(left, right):
            return "divided", alike_line(left), alike_line(right)
        case InBrackets(inside):
            return alike_line(inside)
        case WithRemainder(quotient, left):
            return "remainder", alike_line(quotient), alike_line(left)
        case _:
            assert_never(line)
