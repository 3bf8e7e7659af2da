"""Expressions and statements as the reader can make them, for Hypothesis and for walking a space whole."""

from collections.abc import Iterator
from functools import cache

from hypothesis import assume, reject
from hypothesis import strategies as st

from onewhole.errors import OnewholeError
from onewhole.number.digits import in_digits
from onewhole.number.ladder import Style, measure, mixed
from onewhole.number.name_wanted import NumberForm, Wanted, named_as
from onewhole.number.quantity import NotOnLadderError, Quantity
from onewhole.number.unit import MEASURES, Kind
from onewhole.statements.expression import Expression, Over, Sum, Term, Times, minus, plus, value
from onewhole.statements.gap import HOLE, Gap, NoSuchNumberError, type_hole
from onewhole.statements.rounding import Rounding, halfway, units_to_round_to
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    Ordering,
    Question,
    Relation,
    Statement,
    gap_amount,
)
from tests.kit.numbers import (
    DENOMINATORS,
    SMALL_COUNTS,
    amounts_of,
    every_mixed_number,
    plain_numbers,
    quantities,
)

KINDS = tuple(Kind)


@cache  # a strategy is looked through once, not at each draw
def expressions(kind: Kind = Kind.NUMBER, depth: int = 3) -> st.SearchStrategy[Expression]:
    """Sums, differences, products and worked fractions of one kind, up to some depth, with a value."""
    return _expressions(kind, depth).filter(_has_value)


def any_expressions() -> st.SearchStrategy[Expression]:
    """Expressions of any kind."""
    return st.sampled_from(KINDS).flatmap(expressions)


@cache
def _expressions(kind: Kind, depth: int) -> st.SearchStrategy[Expression]:
    leaf: st.SearchStrategy[Expression] = amounts_of(kind)
    if not depth:
        return leaf
    part = st.deferred(lambda: _expressions(kind, depth - 1))
    number = st.deferred(lambda: _expressions(Kind.NUMBER, depth - 1))
    grown: list[st.SearchStrategy[Expression]] = [leaf, _sums(part), st.builds(Times, number, part)]
    if kind is Kind.NUMBER:
        grown.append(st.builds(Over, number, number))
    else:
        grown.append(st.builds(Times, part, number))
    return st.one_of(grown)


def _sums(part: st.SearchStrategy[Expression]) -> st.SearchStrategy[Expression]:
    later = st.lists(st.builds(Term, part, st.booleans()), min_size=1, max_size=3)
    return st.builds(lambda first, rest: Sum((Term(first), *rest)), part, later)


def _has_value(expression: Expression) -> bool:
    try:
        value(expression)
    except ZeroDivisionError:
        return False
    return True


def questions() -> st.SearchStrategy[Question]:
    """Questions with a result of 0 or more."""
    return any_expressions().filter(lambda asked: value(asked) >= 0).map(Question)


@st.composite
def comparisons(draw: st.DrawFn) -> Comparison:
    """Comparisons of two amounts of one kind, with a sign (true or not) or without."""
    side = _sides(draw(st.sampled_from(KINDS)))
    return Comparison(draw(side), draw(side), draw(st.one_of(st.none(), st.sampled_from(Relation))))


@cache
def _sides(kind: Kind) -> st.SearchStrategy[Expression]:
    return expressions(kind, depth=2).filter(lambda found: value(found) >= 0)


@st.composite
def gaps(draw: st.DrawFn) -> Gap:
    """Numbers with one part missing."""
    top, bottom = draw(SMALL_COUNTS), draw(DENOMINATORS)
    wholes = draw(st.one_of(st.none(), SMALL_COUNTS))
    forms: list[tuple[int | type_hole | None, int | type_hole | None, int | type_hole | None]] = [
        (HOLE, None, None),
        (HOLE, top, bottom),
        (wholes, HOLE, bottom),
        (wholes, top, HOLE),
    ]
    return Gap(*draw(st.sampled_from(forms)))


@st.composite
def missing_numbers(draw: st.DrawFn) -> MissingNumber:
    """Equations with one number missing that has an answer.

    The known side is worked backwards from a filling, so that a gap that wants a whole number gets one.
    """
    gap = draw(gaps())
    kind = draw(st.sampled_from(KINDS)) if gap.alone else Kind.NUMBER
    part = expressions(kind, depth=1)
    beside = tuple(draw(st.lists(st.tuples(part, st.booleans()), max_size=2)))
    before = draw(st.integers(0, len(beside)))
    if before:
        beside = ((beside[0][0], False), *beside[1:])
    gap_taken = before > 0 and draw(st.booleans())
    gap_left = draw(st.booleans()) or (gap.alone and not beside)
    rest: Expression = draw(part)
    if not gap.alone:
        terms = [Term(draw(_filled(gap))), *(Term(other, taken) for other, taken in beside)]
        rest = Sum(tuple(terms)) if len(terms) > 1 else terms[0].part
        gap_taken = False
    found = MissingNumber(rest, gap, beside, before, gap_taken, gap_left)
    assume(value(found.rest) >= 0)
    try:
        found.gap.filling(gap_amount(found))
    except NoSuchNumberError:
        reject()
    return found


def _filled(gap: Gap) -> st.SearchStrategy[Quantity]:
    """Write the number with a gap with some count in the hole."""
    return st.integers(1, 30).map(lambda count: _with(gap, count))


def _with(gap: Gap, count: int) -> Quantity:
    wholes, top, bottom = (count if part is HOLE else part for part in (gap.wholes, gap.top, gap.bottom))
    return Quantity(mixed(bottom or 1), (wholes, top or 0))


@st.composite
def other_names(draw: st.DrawFn) -> AnotherName:
    """Numbers that are to be written in a form, and measures in other units, where that can be done."""
    number = draw(st.sampled_from(KINDS).flatmap(amounts_of))
    wanted: Wanted = draw(st.sampled_from(NumberForm))
    if number.kind is not Kind.NUMBER:
        marks = [unit.mark for unit in MEASURES if unit.kind is number.kind]
        chosen = draw(st.sets(st.sampled_from(marks), min_size=1))
        wanted = measure(*(mark for mark in marks if mark in chosen))
    try:
        named_as(number, wanted)
    except OnewholeError:
        reject()
    return AnotherName(number, wanted)


def statements() -> st.SearchStrategy[Statement]:
    """Any statement that the reader can make."""
    return st.one_of(questions(), comparisons(), missing_numbers(), other_names(), roundings(), orderings())


@st.composite
def orderings(draw: st.DrawFn) -> Ordering:
    """Two to eight numbers of one kind, written in digits, to be put in order from either end."""
    numbers = amounts_of(draw(st.sampled_from(KINDS))).filter(_said_in_one_go)
    return Ordering(tuple(draw(st.lists(numbers, min_size=2, max_size=8))), draw(st.booleans()))


def _said_in_one_go(number: Quantity) -> bool:
    """Say whether a number is said without a rest in it, as place words have one."""
    return number.ladder.style in {Style.MIXED, Style.MEASURE} or in_digits(number)


@st.composite
def roundings(draw: st.DrawFn) -> Rounding:
    """A number of any writing, to be rounded to a unit that it can be rounded to."""
    number = draw(quantities())
    known = units_to_round_to(number)
    assume(known)
    found = Rounding(number, draw(st.sampled_from(known)))
    try:
        halfway(found)
    except NotOnLadderError:
        reject()
    return found


def plain_questions() -> st.SearchStrategy[Question]:
    """One operation on two plain numbers, the larger first."""

    def built(first: Quantity, second: Quantity, taken: bool) -> Question:
        high, low = (first, second) if first.value >= second.value else (second, first)
        return Question(minus(high, low) if taken else plus(first, second))

    return st.builds(built, plain_numbers(), plain_numbers(), st.booleans())


def every_question(denominator: int, wholes: int) -> Iterator[Question]:
    """Every sum and every difference of two numbers up to so many wholes with one denominator."""
    numbers = tuple(every_mixed_number(denominator, wholes))
    for first in numbers:
        for second in numbers:
            yield Question(plus(first, second))
            if first.value >= second.value:
                yield Question(minus(first, second))
