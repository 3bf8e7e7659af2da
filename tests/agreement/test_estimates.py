"""Two roads over estimates: easy numbers by the standard library's decimal, bounds by the amounts alone.

The space: every sum and difference of two proper fractions of the grade's denominators, like and unlike, and
seeded whole numbers to 1,000,000, decimals and measures. `make test` walks a part, ONEWHOLE_WHOLE_WALK=1
(`make walk`) all of it.
"""

import os
import random
from collections.abc import Iterator
from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from itertools import product

from onewhole.number.ladder import decimal, mixed
from onewhole.number.quantity import Quantity, usual, whole
from onewhole.statements.expression import Sum, Term, value
from onewhole.statements.statement import Question
from onewhole.working.checks import Estimate
from onewhole.working.questions import work_as_taught
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from tests.kit.how_much import sample

EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
STEP = 1 if EVERYTHING else 23
SAMPLE = sample(40, 80, 3_000)
HALF, QUARTER = Fraction(1, 2), Fraction(1, 4)


def estimate_of(first: Quantity, second: Quantity, *, taken: bool) -> tuple[Estimate, Fraction]:
    """Return the estimate of a sum or a difference, and the answer."""
    asked = Sum((Term(first), Term(second, taken)))
    estimate = work_as_taught(Question(asked), REGROUP_FIRST).checks[0]
    assert isinstance(estimate, Estimate)
    return estimate, value(asked)


def to_halves(amount: Fraction) -> Fraction:
    """Round to 0, 1/2 and 1, half up."""
    halves = Decimal(2 * amount.numerator) / Decimal(amount.denominator)
    return Fraction(int(halves.quantize(Decimal(1), ROUND_HALF_UP)), 2)


def fractions() -> Iterator[tuple[Quantity, Quantity, bool]]:
    """Two proper fractions, the larger first where the second is taken away."""
    known = [Quantity(mixed(d), (None, n)) for d in (2, 3, 4, 5, 6, 8, 10, 12) for n in range(1, d)]
    for first, second in list(product(known, known))[::STEP]:
        yield first, second, False
        if first.value >= second.value:
            yield first, second, True


def test_fractions_are_estimated_by_halves() -> None:
    """Easy numbers are 0, 1/2 and 1; the answer is within bounds at most half a whole apart."""
    seen = 0
    for first, second, taken in fractions():
        estimate, answer = estimate_of(first, second, taken=taken)
        easy = to_halves(first.value) + (-1 if taken else 1) * to_halves(second.value)
        assert estimate.about is not None
        assert estimate.about.value == easy
        assert estimate.easy is not None
        assert value(estimate.easy) == easy
        assert estimate.low.value <= answer <= estimate.high.value
        assert estimate.high.value - estimate.low.value <= HALF
        assert abs(easy - answer) <= HALF
        seen += 1
    assert seen > 90


def test_places_are_estimated_by_one_place() -> None:
    """Both numbers are rounded to one power of ten; each adds half of it to how far the bounds are apart."""
    chance = random.Random(5)
    for _ in range(SAMPLE):
        high, low = sorted((chance.randrange(1, 10 ** chance.randint(1, 6)) for _ in range(2)), reverse=True)
        after = chance.choice((0, 0, 1, 2))
        first, second = (_number(count, after) for count in (high, low))
        taken = chance.random() < HALF
        estimate, answer = estimate_of(first, second, taken=taken)
        assert isinstance(estimate.easy, Sum)
        assert estimate.about is not None
        assert estimate.low.value <= answer <= estimate.high.value
        assert value(estimate.easy) == estimate.about.value
        steps = [
            Fraction(10) ** power
            for power in range(-2, 7)
            if all(value(term.part) % Fraction(10) ** power == 0 for term in estimate.easy.terms)
        ]
        near = [
            abs(value(term.part) - one.value)
            for term, one in zip(estimate.easy.terms, (first, second), strict=True)
        ]
        assert any(
            all(2 * off <= step for off in near) and estimate.high.value - estimate.low.value <= step
            for step in steps
        ), (first, second, estimate)


def _number(count: int, after: int) -> Quantity:
    return usual(decimal(1, after), Fraction(count, 10**after)) if after else whole(count)
