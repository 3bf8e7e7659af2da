"""Several steps: worked in another order than the usual one, without the brackets, or not to the end."""

from collections.abc import Callable, Iterator
from typing import assert_never

from msgspec import Struct
from msgspec.structs import replace

from onewhole.errors import OnewholeError
from onewhole.misconceptions.attempt import Attempt, BelowZeroError, Outcome
from onewhole.misconceptions.bend import Try
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import (
    Expression,
    InBrackets,
    Over,
    Quotient,
    Sum,
    Term,
    Times,
    WithRemainder,
    in_brackets,
    value,
)
from onewhole.statements.statement import Question, Statement
from onewhole.working.line import Line, LineContent
from onewhole.working.questions import steps_found, work_as_taught
from onewhole.working.steps.next_step import next_step
from onewhole.working.steps.work_steps import bars_as_divisions, has_steps
from onewhole.working.strategies.regroup_first import REGROUP_FIRST

_FEWEST = 3

#: What is worked instead of an expression; None where a rule does not apply.
Instead = Callable[[Expression], Expression | None]


class _Sign(Struct, frozen=True):
    """What is done with the number behind it, in the order in which they stand: + - x and divided by."""

    operation: type[Sum] | type[Times] | type[Quotient]
    operand: Expression
    taken: bool = False


def in_order(instead: Instead) -> Try:
    """Return the attempt at several steps that works another expression instead."""

    def attempt(statement: Statement) -> Attempt | None:
        asked = asked_in_steps(statement)
        says = instead(bars_as_divisions(asked)) if asked is not None else None
        return None if asked is None or says is None or says == asked else worked_instead(asked, says)

    return attempt


def worked_instead(asked: LineContent, says: Expression) -> Attempt | None:
    """Return the attempt that works another expression instead of what is asked; None where it cannot be.

    Raises BelowZeroError where more would be taken away than there is.
    """
    try:
        if value(says) < 0:
            msg = "more would be taken away than there is"
            raise BelowZeroError(msg)
        wrote = comes_to(says)
    except BelowZeroError:
        raise
    except (OnewholeError, ZeroDivisionError):
        return None
    lines = (Line(says),) if says != wrote else ()
    return Attempt((Line(asked), *lines, Line(wrote)), wrote)


def asked_in_steps(statement: Statement) -> Expression | None:
    """Return the expression of several steps, or of three numbers that are added and taken away; else None.

    >>> from onewhole.statements.reading import read_statement
    >>> [asked_in_steps(read_statement(typed)) is None for typed in ("2 + 3 x 4", "9 - 3 + 2", "9 - 3")]
    [False, False, True]
    """
    if not isinstance(statement, Question):
        return None
    asked = statement.asked
    several = isinstance(asked, Sum) and len(asked.terms) >= _FEWEST
    return asked if has_steps(asked) or several else None


def comes_to(says: Expression) -> Quantity | WithRemainder:
    """Return what an expression comes to, as its working writes it."""
    if has_steps(says):
        return steps_found(says)
    found: Outcome | object = work_as_taught(Question(says), REGROUP_FIRST, checked=False).answer
    assert isinstance(found, Quantity | WithRemainder), "a question is answered by a number"
    return found


def from_left_to_right(asked: Expression) -> Expression | None:
    """Work every sign in the order in which it stands: 4 + 3 x 7 as (4 + 3) x 7."""
    if not has_steps(asked):
        return None
    first, *signs = _signs(asked)
    found = _inside(first.operand)
    for sign in signs:
        operand = _inside(sign.operand)
        if sign.operation is not Sum:
            found = Times(found, operand) if sign.operation is Times else Quotient(found, operand)
            continue
        terms = found.terms if isinstance(found, Sum) else (Term(found),)
        found = Sum((*terms, Term(operand, sign.taken)))
    return found


def _inside(operand: Expression) -> Expression:
    """Work from left to right inside brackets too."""
    if isinstance(operand, Quantity | Over):
        return operand
    bare = operand.inside if isinstance(operand, InBrackets) else operand
    found = from_left_to_right(bare) or bare
    return in_brackets(found) if isinstance(operand, InBrackets) else found


def without_the_brackets(asked: Expression) -> Expression | None:
    """Leave the brackets out, and work by the usual order: 3 x (2 + 5) as 3 x 2 + 5."""
    if not has_steps(asked):
        return None
    terms: list[Term] = []
    for sign in _bare_signs(asked):
        if sign.operation is Sum:
            terms.append(Term(sign.operand, sign.taken))
            continue
        last = terms[-1]
        joined = Times if sign.operation is Times else Quotient
        terms[-1] = replace(last, part=joined(last.part, sign.operand))
    return Sum(tuple(terms)) if len(terms) > 1 else terms[0].part


def times_before_divided(asked: Expression) -> Expression | None:
    """Multiply before dividing, though the division stands first: 18 / 9 x 2 as 18 / (9 x 2)."""
    match asked:
        case Times(Quotient(left, by), right):
            return Quotient(left, Times(by, right))
        case Sum(terms):
            for at, term in enumerate(terms):
                if (found := times_before_divided(term.part)) is not None:
                    return Sum((*terms[:at], replace(term, part=found), *terms[at + 1 :]))
            return None
        case _:
            return None


def added_before_taken(asked: Expression) -> Expression | None:
    """Add what stands behind what is taken away before taking it away: 10 - 3 + 2 as 10 - (3 + 2)."""
    if not isinstance(asked, Sum):
        return None
    at = next((at for at, term in enumerate(asked.terms) if term.taken), len(asked.terms))
    end = next((end for end in range(at + 1, len(asked.terms)) if asked.terms[end].taken), len(asked.terms))
    if end - at <= 1:
        return None
    together = Sum(tuple([Term(term.part) for term in asked.terms[at:end]]))
    return Sum((*asked.terms[:at], Term(together, taken=True), *asked.terms[end:]))


def first_step_only(asked: Expression) -> Expression | None:
    """Work the first step and stop."""
    step = next_step(asked) if has_steps(asked) else None
    return step.part if step else None


def _signs(asked: Expression) -> Iterator[_Sign]:
    """Yield the signs of an expression from left to right, each with the number or the brackets behind it."""
    match asked:
        case Sum(terms):
            for term in terms:
                if isinstance(term.part, Sum):
                    yield _Sign(Sum, term.part, term.taken)
                    continue
                first, *more = _signs(term.part)
                yield replace(first, taken=term.taken)
                yield from more
        case Times(left, right):
            yield from (_Sign(Sum, left),) if isinstance(left, Sum) else _signs(left)
            yield _Sign(Times, right)
        case Quotient(left, right):
            yield from (_Sign(Sum, left),) if isinstance(left, Sum) else _signs(left)
            yield _Sign(Quotient, right)
        case Quantity() | InBrackets() | Over() | WithRemainder():
            yield _Sign(Sum, asked)
        case _:
            assert_never(asked)


def _bare_signs(asked: Expression) -> Iterator[_Sign]:
    """Yield the signs as they stand when no brackets are seen."""
    for sign in _signs(asked):
        match sign.operand:
            case Sum() | Times() | Quotient() | InBrackets():
                bare = sign.operand.inside if isinstance(sign.operand, InBrackets) else sign.operand
                first, *more = _bare_signs(bare)
                yield replace(sign, operand=first.operand)
                yield from more
            case _:
                yield sign
