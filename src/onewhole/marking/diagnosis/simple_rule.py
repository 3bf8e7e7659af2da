"""A simple rule outside the catalogue that would write all wrong answers of a pupil, where there is one.

Wholes, pieces and the size of the pieces are looked at one by one: each may come from the numbers of the
problem in a few simple ways. The family is our own, and small on purpose: a rule is told only when it writes
every wrong answer, on so many problems that a chance agreement is out of the question.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence

from onewhole.findings.in_answer import Remark
from onewhole.findings.simple_rule import PartMade, SimpleRule
from onewhole.marking.reading.expected import Expected
from onewhole.marking.reading.mark import Mark, Verdict
from onewhole.number.quantity import Quantity
from onewhole.problems.two_numbers import Parts, TwoNumbers, parts_of, two_numbers

#: A rule must write so many wrong answers: two numbers and a choice of a few ways agree too easily on fewer.
FEWEST = 3


_Way = Callable[[int, int, bool], int]

#: What each way makes of two counts, and whether something is taken away; the simplest first.
_OF_COUNTS: Mapping[PartMade, _Way] = {
    PartMade.WORKED: lambda one, other, taken: one - other if taken else one + other,
    PartMade.ADDED: lambda one, other, _: one + other,
    PartMade.APART: lambda one, other, _: abs(one - other),
    PartMade.FIRST: lambda one, _, __: one,
    PartMade.SECOND: lambda _, other, __: other,
    PartMade.LARGER: lambda one, other, _: max(one, other),
    PartMade.SMALLER: lambda one, other, _: min(one, other),
    PartMade.TIMES: lambda one, other, _: one * other,
    PartMade.ONE_FEWER: lambda one, other, taken: (one - other if taken else one + other) - 1,
    PartMade.TWO_FEWER: lambda one, other, taken: (one - other if taken else one + other) - 2,
    PartMade.TWICE_FIRST: lambda one, _, __: 2 * one,
    PartMade.NOTHING: lambda _, __, ___: 0,
}


def simple_rule(expected: Sequence[Expected], marks: Sequence[Mark]) -> SimpleRule | None:
    r"""Return the simplest rule that writes every wrong answer that is no slip; None where there is none.

    >>> from onewhole.marking.reading.answers_table import read_answers
    >>> from onewhole.marking.reading.mark import mark_class
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> typed = ("9 5/8 - 4 6/8", "8 1/6 - 3 5/6", "6 1/4 - 3 2/4")
    >>> asked = [Problem(str(at), read_statement(one), one) for at, one in enumerate(typed, start=1)]
    >>> marked = mark_class(read_answers("pupil,1,2,3\nK01,5 6/8,5 5/6,3 2/4", asked))
    >>> rule = simple_rule(marked.expected, marked.pupils[0].marks)
    >>> (rule.wholes.value, rule.pieces.value, rule.size.value) if rule else None
    ('worked as asked', 'of the second number', 'of the first number')
    """
    wrong = [
        (two_numbers(asked.problem.statement), mark.written.read)
        for asked, mark in zip(expected, marks, strict=True)
        if mark.verdict is Verdict.WRONG and Remark.MAY_BE_SLIP not in mark.remarks
    ]
    cases = []
    for numbers, read in wrong:
        wrote = parts_of(read) if isinstance(read, Quantity) else None
        if numbers is None or wrote is None:
            return None
        cases.append((numbers, wrote))
    if len(cases) < FEWEST:
        return None
    found = [_first(part, cases) for part in (_wholes, _pieces, _sizes)]
    wholes, pieces, size = found
    return SimpleRule(wholes, pieces, size) if wholes and pieces and size else None


_Made = Iterator[tuple[PartMade, int]]


def _first(
    part: Callable[[TwoNumbers, Parts], tuple[int | None, _Made]],
    cases: Sequence[tuple[TwoNumbers, Parts]],
) -> PartMade | None:
    """Return the first way that makes a part of every answer."""
    fits: list[PartMade] | None = None
    for numbers, parts in cases:
        wrote, made = part(numbers, parts)
        if wrote is not None:
            here = [makes for makes, count in made if count == wrote]
            fits = here if fits is None else [makes for makes in fits if makes in here]
    if fits is None:
        return PartMade.FIRST
    return fits[0] if fits else None


def _wholes(numbers: TwoNumbers, wrote: Parts) -> tuple[int | None, _Made]:
    return wrote[0], _counts(numbers.w1, numbers.w2, taken=numbers.taken)


def _pieces(numbers: TwoNumbers, wrote: Parts) -> tuple[int | None, _Made]:
    def made() -> _Made:
        yield from _counts(numbers.n1, numbers.n2, taken=numbers.taken)
        yield PartMade.MISSING, numbers.d1 - numbers.n1 + numbers.d2 - numbers.n2
        yield PartMade.SIZE, numbers.d1

    return wrote[1], made()


def _sizes(numbers: TwoNumbers, wrote: Parts) -> tuple[int | None, _Made]:
    """Where no pieces were written, any size will do."""

    def made() -> _Made:
        yield PartMade.FIRST, numbers.d1
        yield PartMade.SECOND, numbers.d2
        yield PartMade.LARGER, max(numbers.d1, numbers.d2)
        yield PartMade.SMALLER, min(numbers.d1, numbers.d2)
        yield PartMade.ADDED, numbers.d1 + numbers.d2
        yield PartMade.TIMES, numbers.d1 * numbers.d2
        yield PartMade.PIECES_ADDED, numbers.n1 + numbers.n2
        yield PartMade.WHOLE, numbers.w1

    return wrote[2] or None, made()


def _counts(one: int, other: int, *, taken: bool) -> _Made:
    for makes, way in _OF_COUNTS.items():
        yield makes, way(one, other, taken)
