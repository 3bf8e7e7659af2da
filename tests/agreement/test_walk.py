"""Two roads over all problems with one denominator: SymPy for every answer, Fractions for every line.

The space: denominators 2, 3, 4, 5, 6, 8, 10 and 12, numbers from 0 up to 9 wholes and all but one piece,
every sum, and every difference that is not below zero. `make test` walks one denominator whole and a seeded
sample of the others; ONEWHOLE_WHOLE_WALK=1 walks everything (`make walk`).
"""

import os
import random
from collections import Counter
from collections.abc import Iterable
from fractions import Fraction

import pytest
from sympy import Rational  # type: ignore[import-untyped]

from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import Sum, minus, plus
from onewhole.statements.statement import Question, asked_quantities
from onewhole.working.checks import Agreed, Estimate, Undone
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.strategy import fits
from onewhole.working.working import Working
from tests.kit.exact import amount, keeps
from tests.kit.how_much import sample
from tests.kit.statements import every_question
from tests.kit.worked import tried

DENOMINATORS = (2, 3, 4, 5, 6, 8, 10, 12)
WHOLES = 9
WHOLE_ALWAYS = (2,)
SAMPLE = sample(40, 120)
EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"


def walk(denominator: int) -> Iterable[Question]:
    """Every problem with this denominator, or a seeded sample of them."""
    questions = list(every_question(denominator, WHOLES))
    numbers = denominator * (WHOLES + 1)
    assert len(questions) == numbers**2 + numbers * (numbers + 1) // 2
    if EVERYTHING or denominator in WHOLE_ALWAYS:
        return questions
    return random.Random(denominator).sample(questions, SAMPLE)


@pytest.mark.slow
@pytest.mark.parametrize("denominator", DENOMINATORS)
def test_every_strategy_agrees_with_sympy_and_every_line_with_fractions(denominator: int) -> None:
    """Every answer is SymPy's, every line is worth the same, and a strategy refuses only where it says so."""
    done: Counter[str] = Counter()
    for question in walk(denominator):
        done["questions"] += 1
        first, second, taken = pair_of(question)
        wanted = by_sympy(first, second, taken=taken)
        for strategy in STRATEGIES:
            working = tried(question, strategy)
            suits = expected_to_suit(strategy.key, first, second, denominator, taken=taken)
            assert isinstance(working, Working) == suits, (question, strategy.key)
            assert working.strategy == strategy.key
            if not isinstance(working, Working):
                continue
            assert fits(strategy, taken=taken)
            done["workings"] += 1
            done["lines"] += len(working.lines)
            agree(working, wanted)
    print(f"denominator {denominator}:", dict(done))
    assert done["workings"] >= 2 * done["questions"]


def unlike() -> Iterable[Question]:
    """Seeded problems with any two of the denominators, and pieces for up to two wholes in either number."""
    chance = random.Random(5)
    found: list[Question] = []
    while len(found) < SAMPLE:
        first, second = (
            Quantity(mixed(parts), (chance.randint(0, WHOLES) or None, chance.randint(0, 2 * parts)))
            for parts in chance.choices(DENOMINATORS, k=2)
        )
        taken = amount(first) >= amount(second) and chance.random() < 0.7
        found.append(Question(minus(first, second) if taken else plus(first, second)))
    return found


def test_unlike_denominators_and_overfull_pieces_agree_with_sympy() -> None:
    """The same for numbers that are renamed first, and for 4 - 1 4/3: two strategies or more, all exact."""
    for question in unlike():
        first, second, taken = pair_of(question)
        wanted = by_sympy(first, second, taken=taken)
        workings = [found for one in STRATEGIES if isinstance(found := tried(question, one), Working)]
        assert len(workings) >= 2
        for working in workings:
            agree(working, wanted)


def agree(working: Working, wanted: Fraction) -> None:
    """The answer, every line and every check of a working say the same as the other road."""
    assert isinstance(working.answer, Quantity)
    assert amount(working.answer) == wanted
    assert working.lines[-1].says == working.answer
    assert all(keeps(line.says, wanted) for line in working.lines), working
    for line in working.lines:
        assert all(amount(left) == amount(right) for fact in line.facts for left, right in fact.steps)
    estimate, undone, agreed = working.checks
    assert isinstance(estimate, Estimate)
    assert amount(estimate.low) <= wanted <= amount(estimate.high)
    assert isinstance(undone, Undone)
    assert len({amount(link) for link in undone.links}) == 1
    assert isinstance(agreed, Agreed)
    assert agreed.strategy != working.strategy
    assert amount(agreed.answer) == wanted


def pair_of(question: Question) -> tuple[Quantity, Quantity, bool]:
    """Take a question of two numbers apart."""
    assert isinstance(question.asked, Sum)
    signed = asked_quantities(question)
    assert signed is not None
    (first, _), (second, taken) = signed
    return first, second, taken


def by_sympy(first: Quantity, second: Quantity, *, taken: bool) -> Fraction:
    """Let SymPy add or subtract, from the counts alone."""
    one, other = as_rational(first), as_rational(second)
    found = one - other if taken else one + other
    return Fraction(int(found.p), int(found.q))


def as_rational(quantity: Quantity) -> Rational:
    """Build SymPy's number from the counts: digits of a whole number, or wholes and pieces."""
    if len(quantity.counts) == 1:
        return Rational(quantity.counts[0])
    wholes, pieces = quantity.counts
    return Rational(wholes or 0) + Rational(pieces, quantity.ladder.denominator)


def expected_to_suit(key: str, first: Quantity, second: Quantity, parts: int, *, taken: bool) -> bool:
    """Say whether a strategy suits, from wholes and pieces as the strategies are described.

    Common practice, no source: to take the wholes first there must be wholes to take; to shift or to make a
    whole, something must be lacking; to take from the whole, it must be enough.
    """
    one, other = amount(first), amount(second)
    if one.denominator == other.denominator == 1:  # two numbers below ten have ones alone: nothing to open
        return key in ({"regroup_first", "count_up"} if taken else {"units_apart", "jump_on"})
    (w1, n1), (w2, n2) = divmod(int(one * parts), parts), divmod(int(other * parts), parts)
    match key:
        case "columns":
            return False
        case "to_fractions":
            return True
        case "regroup_first" | "count_up":
            return taken
        case "wholes_first":
            return taken and w2 > 0
        case "from_whole":
            return taken and n1 > 0 and w1 >= other
        case "equal_shift":
            return taken and n2 > 0
        case "units_apart" | "jump_on":
            return not taken
        case "make_a_whole":
            return not taken and n1 > 0 and n1 + w2 * parts + n2 >= parts
        case _:
            raise AssertionError(key)
