"""Which part of an expression with several operations is worked next, by the usual order."""

from collections.abc import Callable, Iterator
from typing import assert_never

from msgspec import Struct
from msgspec.structs import replace

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
)
from onewhole.working.reasons.stepping import OneStep, WhyFirst

PAIR = 2

#: Writes the whole with another part in the place of the one that is worked.
Put = Callable[[Expression], Expression]


class NextStep(Struct, frozen=True):
    """The part that is worked next, why it comes first, and how the whole is written with its result."""

    part: OneStep
    why: WhyFirst
    put: Put

    def within(self, put: Put) -> "NextStep":
        """Return the step as one of a larger expression."""
        inner = self.put
        return replace(self, put=lambda part: put(inner(part)))


class PartAt(Struct, frozen=True):
    """A part of an expression, whether it stands in brackets, and how the whole is written with another."""

    part: Expression
    bracketed: bool
    put: Put


def next_step(asked: Expression) -> NextStep | None:
    """Return the part that is worked next; None where nothing is left to be worked.

    What stands in brackets comes first, the innermost and leftmost of it; then products and quotients, then
    sums and differences, each from left to right. Source: 5.OA.A.1 and the note to 3.OA.D.8, CCSSM (2010).

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_expression
    >>> found = next_step(read_expression("18 / 6 + 4 x (5 - 2)"))
    >>> text(found.part), found.why.name, text(found.put(read_expression("3")))
    ('5 - 2', 'BRACKETS', '18 ÷ 6 + 4 x 3')
    """
    return _bracketed(asked) or _multiplied(asked) or _summed(asked)


def _bracketed(asked: Expression) -> NextStep | None:
    """Return the next step of what stands in brackets."""
    for place in places(asked):
        found = next_step(place.part) if place.bracketed else _bracketed(place.part)
        if found is None:
            continue
        if place.bracketed and found.why is WhyFirst.ONLY_PART:
            found = replace(found, why=WhyFirst.BRACKETS)
        return found.within(place.put)
    return None


def _multiplied(asked: Expression) -> NextStep | None:
    """Return the leftmost product or quotient of two numbers."""
    for place in places(asked):
        if (found := _multiplied(place.part)) is not None:
            outer = isinstance(asked, Sum) and found.why in {WhyFirst.ONLY_PART, WhyFirst.FROM_THE_LEFT}
            why = _before_adding(found.part) if outer else WhyFirst.FROM_THE_LEFT
            return replace(found.within(place.put), why=found.why if found.why in _NAMED else why)
    match asked:
        case Times(Quantity(), Quantity()) | Quotient(Quantity(), Quantity()):
            return NextStep(asked, WhyFirst.ONLY_PART, _itself)
        case _:
            return None


_NAMED = {WhyFirst.BRACKETS, WhyFirst.MULTIPLIED, WhyFirst.DIVIDED}


def _before_adding(part: OneStep) -> WhyFirst:
    return WhyFirst.MULTIPLIED if isinstance(part, Times) else WhyFirst.DIVIDED


def _summed(asked: Expression) -> NextStep | None:
    """Return the first two numbers of a sum; all of it where there are no more, None for other parts."""
    if not isinstance(asked, Sum) or not all(isinstance(term.part, Quantity) for term in asked.terms[:PAIR]):
        return None
    if len(asked.terms) == PAIR:
        return NextStep(asked, WhyFirst.ONLY_PART, _itself)
    first, rest = Sum(asked.terms[:PAIR]), asked.terms[PAIR:]
    return NextStep(first, WhyFirst.FROM_THE_LEFT, lambda part: Sum((*_terms(part), *rest)))


def _terms(part: Expression) -> tuple[Term, ...]:
    """Return what stands at the left end of a sum without brackets."""
    return part.terms if isinstance(part, Sum) else (Term(part),)


def _itself(part: Expression) -> Expression:
    return part


def places(asked: Expression) -> Iterator[PartAt]:
    """Yield the parts of an expression from left to right."""
    match asked:
        case Quantity() | WithRemainder():
            return
        case InBrackets(inside):
            yield PartAt(inside, bracketed=True, put=_in_brackets_again)
        case Sum(terms):
            for at, term in enumerate(terms):
                yield PartAt(term.part, isinstance(term.part, Sum), _in_sum(terms, at))
        case Times(left, right):
            operation = isinstance(right, Times | Quotient)
            yield PartAt(left, isinstance(left, Sum), lambda part: Times(part, right))
            yield PartAt(right, operation or isinstance(right, Sum), lambda part: Times(left, part))
        case Quotient(left, right):
            operation = isinstance(right, Times | Quotient)
            yield PartAt(left, isinstance(left, Sum), lambda part: Quotient(part, right))
            yield PartAt(right, operation or isinstance(right, Sum), lambda part: Quotient(left, part))
        case Over(top, bottom):
            yield PartAt(top, bracketed=True, put=lambda part: Over(part, bottom))
            yield PartAt(bottom, bracketed=True, put=lambda part: Over(top, part))
        case _:
            assert_never(asked)


def _in_sum(terms: tuple[Term, ...], at: int) -> Put:
    """Put a part in the place of a term; it keeps the sign of the term."""
    return lambda part: Sum((*terms[:at], replace(terms[at], part=part), *terms[at + 1 :]))


def _in_brackets_again(part: Expression) -> Expression:
    """Keep the brackets of a product while it is being worked; a sum in a sum has brackets by itself."""
    return InBrackets(part) if isinstance(part, Times | Quotient) else part
