"""What several steps ask, seen as a story: which of the shapes that are told an expression has."""

from onewhole.number.quantity import Quantity
from onewhole.number.unit import Kind
from onewhole.problems.answer import answer
from onewhole.problems.story_of_dividing import comes_out_even, shares
from onewhole.problems.story_question import Asks, StoryQuestion
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
    without_brackets,
)
from onewhole.statements.statement import Question


def of_steps(asked: Expression) -> StoryQuestion | None:
    """Return what several steps ask; None for a shape that is not told, and for a part below zero.

    None too where something is left over of what is shared.

    >>> from onewhole.statements.reading import read_expression
    >>> told = ("9 - 2 x 3/4", "3 x (20 + 7)", "7 - 3 - 2", "2 x 3 x 4")
    >>> [(found := of_steps(read_expression(one))) and found.asks.value for one in told]
    ['a - k x b', 'k x (a + b)', 'a - b - c', None]
    """
    match asked:
        case Sum(
            (Term(Quantity() as first), Term(Quantity() as second, True), Term(Quantity() as last, gone))
        ):
            found = StoryQuestion(Asks.LESS_LESS if gone else Asks.LESS_MORE, (first, second, last))
            return found if first.value >= second.value else None
        case Sum((Term(first), Term(second, taken))):
            return _of_two(without_brackets(first), without_brackets(second), taken=taken)
        case Times(first, second):
            return _times(without_brackets(first), without_brackets(second))
        case Quotient(Sum((Term(Quantity() as one), Term(Quantity() as other, gone))), Quantity() as by) if (
            shares(by)
        ):
            if (gone and one.value <= other.value) or isinstance(answer(Question(asked)), WithRemainder):
                return None
            return StoryQuestion(Asks.LEFT_SHARED if gone else Asks.BOTH_SHARED, (one, other, by))
        case InBrackets(inside):
            return of_steps(inside)
        case _:
            return None


def _of_two(first: Expression, second: Expression, *, taken: bool) -> StoryQuestion | None:
    """Return what a sum or a difference of two parts asks, one of which is worked first."""
    match first, second:
        case Quantity(), Sum((Term(Quantity() as more), Term(Quantity() as last, gone))) if taken:
            found = StoryQuestion(Asks.LESS_PART if gone else Asks.LESS_BOTH, (first, more, last))
            return found if not gone or more.value > last.value else None
        case Quantity(), Times(Quantity() as times, Quantity() as amount) if shares(times):
            return StoryQuestion(Asks.LESS_TIMES if taken else Asks.MORE_TIMES, (first, times, amount))
        case Times(Quantity() as times, Quantity() as amount), Quantity() if shares(times):
            return StoryQuestion(Asks.TIMES_LESS if taken else Asks.TIMES_MORE, (times, amount, second))
        case Quantity(), Quotient(Quantity() as amount, Quantity() as by) if comes_out_even(amount, by):
            return StoryQuestion(Asks.LESS_SHARE if taken else Asks.MORE_SHARE, (first, amount, by))
        case (
            Quotient(Quantity() as amount, Quantity() as by),
            Times(Quantity() as times, Sum((Term(Quantity() as more), Term(Quantity() as last, True)))),
        ) if not taken and comes_out_even(amount, by) and shares(times) and more.value > last.value:
            return StoryQuestion(Asks.SHARE_AND_TIMES, (amount, by, times, more, last))
        case _:
            return None


def _times(first: Expression, second: Expression) -> StoryQuestion | None:
    """Return what a product asks of which one factor is worked first."""
    match first, second:
        case Quantity(), Sum((Term(Quantity() as one), Term(Quantity() as other, gone))) if shares(first):
            asks = Asks.TIMES_LEFT if gone else Asks.TIMES_BOTH
            return StoryQuestion(asks, (first, one, other)) if not gone or one.value > other.value else None
        case Sum((Term(Quantity() as one), Term(Quantity() as other, gone))), Quantity() if shares(second):
            asks = Asks.LEFT_TIMES if gone else Asks.BOTH_TIMES
            return StoryQuestion(asks, (one, other, second)) if not gone or one.value > other.value else None
        case Quotient(Quantity() as amount, Quantity() as by), Quantity() if comes_out_even(amount, by):
            return StoryQuestion(Asks.SHARE_TIMES, (amount, by, second)) if shares(second) else None
        case _:
            return None


def same_kind(found: StoryQuestion) -> bool:
    """Say whether all amounts of a story of several steps measure the same; no time of day is told here."""
    counts = found.counts
    if any(number.ladder.clock for number in found.numbers):
        return False
    kinds = {number.kind for at, number in enumerate(found.numbers) if at not in counts}
    return len(kinds) == 1 and all(found.numbers[at].kind is Kind.NUMBER for at in counts)
