"""Finding out whether a number is prime, composite or neither, and whether it is a multiple of another.

Source: 4.OA.B.4 (prime or composite; a multiple of a one-digit number), CCSSM (2010). Trying divisors in
order, and stopping where one times itself is more than the number: common practice, no source.
"""

from collections.abc import Iterator
from itertools import count

from onewhole.number.factors import factors
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import Sum, Term, Times
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.statement import Comparison, Relation
from onewhole.working.line import Line
from onewhole.working.reason import Reason
from onewhole.working.reasons.listing import (
    CountingMeets,
    FactorTried,
    NoOtherFactor,
    OneFactorOnly,
    OtherFactor,
)
from onewhole.working.working import Working

KEY = "try_in_order"
COUNTED = "count_groups"


def work_factor_question(asked: FactorQuestion) -> Working:
    """Try what goes into a number line by line, the smallest first, as long as it can be the smaller factor.

    >>> [len(work_factor_question(FactorQuestion(whole(number))).lines) for number in (1, 2, 37, 91)]
    [2, 2, 5, 6]
    """
    number = asked.number.parts
    ends: Reason
    if asked.step is not None:
        step = asked.step.parts
        tries, ends, key = [FactorTried(number, step)], CountingMeets(number, step), COUNTED
    else:
        tries, ends, key = [*_tries(number)], _decides(number), KEY
    lines = (Line(_as_product(asked.number, tried), tried) for tried in tries)
    answer = asked.found
    return Working(key, asked, (Line(asked), *lines, Line(asked.answered(answer), ends)), answer)


def _tries(number: int) -> Iterator[FactorTried]:
    """Yield what is tried: primes in order, up to the first factor or as long as a square is no more."""
    skipped: list[int] = []
    for by in count(2):
        if by * by > number:
            return
        if factors(by) != (by,):
            skipped.append(by)
            continue
        yield FactorTried(number, by, tuple(skipped))
        if not number % by:
            return
        skipped = []


def _decides(number: int) -> Reason:
    primes = factors(number)
    if not primes:
        return OneFactorOnly()
    if primes[1:]:
        return OtherFactor(number, primes[0])
    return NoOtherFactor(number, next(by for by in count(2) if by * by > number))


def _as_product(number: Quantity, tried: FactorTried) -> Comparison:
    """Write a number as what goes into it so many times, and what is left over."""
    product = Times(whole(tried.by), whole(tried.times))
    made = Sum((Term(product), Term(whole(tried.left)))) if tried.left else product
    return Comparison(number, made, Relation.EQUAL)
