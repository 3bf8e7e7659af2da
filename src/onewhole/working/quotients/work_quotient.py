"""Working a quotient by a way to divide, with its checks."""

from collections.abc import Iterable

from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Expression, Quotient, Sum, Term, Times, WithRemainder, value
from onewhole.statements.statement import Question
from onewhole.working.checks import Check, Undone, agreement, estimated_quotient
from onewhole.working.line import Line, without_repeats
from onewhole.working.quotients.quotient_state import QuotientState
from onewhole.working.quotients.quotient_way import QuotientWay
from onewhole.working.quotients.table import QUOTIENT_WAYS
from onewhole.working.working import Working


def divided(asked: Expression) -> QuotientState | None:
    """Return the two numbers of a quotient; None for anything else.

    >>> from onewhole.statements.reading import read_expression
    >>> divided(read_expression("7 2/6 / 4")).shares
    4
    """
    match asked:
        case Quotient(Quantity() as left, Quantity() as right):
            return QuotientState(left, right)
        case _:
            return None


def ways_to_divide(asked: QuotientState) -> tuple[QuotientWay, ...]:
    """Return the ways that suit two numbers and that a teacher would use, in the order of the table.

    >>> from onewhole.statements.reading import read_expression
    >>> [way.key for way in ways_to_divide(divided(read_expression("87 / 4")))]
    ['share_units', 'partial_quotients', 'long_division']
    """
    return tuple([way for way in QUOTIENT_WAYS if way.unsuited(asked) is None and way.offered(asked)])


def quotient_found(asked: QuotientState) -> Quantity | WithRemainder:
    """Return what a number divided by another is, as the first way that suits writes it.

    >>> from onewhole.statements.reading import read_expression
    >>> found = quotient_found(divided(read_expression("87 / 4")))
    >>> found.quotient.parts, found.left.parts
    (21, 3)
    """
    return ways_to_divide(asked)[0].run(asked).found()


def work_quotient(question: Question, asked: QuotientState, way: QuotientWay, *, checked: bool) -> Working:
    """Work a quotient by a way that suits it."""
    state = way.run(asked)
    answer = state.found()
    checks = tuple(_checks(asked, way, answer)) if checked else ()
    return Working(way.key, question, without_repeats((Line(question.asked), *state.lines)), answer, checks)


def _checks(asked: QuotientState, way: QuotientWay, answer: Quantity | WithRemainder) -> Iterable[Check]:
    if (estimate := estimated_quotient(asked.left, asked.right, value(answer))) is not None:
        yield estimate
    yield Undone((_multiplied(asked, answer), asked.left))
    reached = (
        (other.key, other.run(asked).found())
        for other in QUOTIENT_WAYS
        if other.key != way.key and other.unsuited(asked) is None
    )
    yield from agreement(way.key, answer, reached)


def _multiplied(asked: QuotientState, answer: Quantity | WithRemainder) -> Expression:
    """Return what undoes a quotient: 21 x 4 + 3.

    Source: in the standards the reason for a quotient is the product that undoes it (5.NF.B.7, CCSSM 2010).
    """
    if isinstance(answer, Quantity):
        return Times(answer, asked.right)
    product = Times(answer.quotient, asked.right)
    return Sum((Term(product), Term(answer.left))) if answer.left.parts else product
