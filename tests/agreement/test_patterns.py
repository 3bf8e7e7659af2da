"""Two roads over all problems: every pattern's raw answer, from its bent strategy and from its definition.

The space: denominators 2, 3, 4, 5, 6, 8, 10 and 12 and numbers from 0 up to 9 wholes and all but one piece;
for unlike denominators every pair of these, with 0 to 2 wholes. Some denominators are walked whole and the
others in a seeded sample; ONEWHOLE_WHOLE_WALK=1 walks everything.
"""

import os
import random
from collections import Counter
from collections.abc import Iterable
from fractions import Fraction
from itertools import pairwise, permutations, product

import pytest

from onewhole.misconceptions.catalogue import shows
from onewhole.misconceptions.slip import Slip
from onewhole.notations.text import text
from onewhole.number.impossible import Impossible
from onewhole.number.ladder import Style, mixed
from onewhole.number.quantity import Quantity, trimmed
from onewhole.statements.expression import Sum, minus, plus
from onewhole.statements.statement import Question, asked_quantities
from onewhole.working.line import WholeLine
from tests.agreement.by_definition import Answer, added, subtracted, unlike_added, unlike_subtracted
from tests.kit.exact import amount
from tests.kit.how_much import sample
from tests.kit.statements import every_question

DENOMINATORS = (2, 3, 4, 5, 6, 8, 10, 12)
WHOLES = 9
WHOLE_ALWAYS = (2,)
SAMPLE = sample(40, 120)
EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
FORMS = ("A34", "A35", "P10")
TOPICS = ("A", "P", "B")


def some(questions: list[Question], seed: int, *, whole: bool) -> Iterable[Question]:
    """All questions, or a seeded sample of them."""
    return questions if EVERYTHING or whole else random.Random(seed).sample(questions, SAMPLE)


def written(slips: Iterable[Slip]) -> dict[str, str]:
    """Return what each pattern writes, as text."""
    found: dict[str, str] = {}
    for slip in slips:
        if slip.pattern[0] in TOPICS:
            assert isinstance(slip.wrote, Quantity | Impossible)
            found[slip.pattern] = text(slip.wrote)
    return found


def by_definition(question: Question) -> dict[str, str]:
    """Return what each pattern writes by its definition, answers that are right by luck left out."""
    assert isinstance(question.asked, Sum)
    signed = asked_quantities(question)
    assert signed is not None
    (first, _), (second, taken) = signed
    right = first.value - second.value if taken else first.value + second.value
    d1, d2 = (_denominator(number) for number in (first, second))
    if d1 and d2 and d1 != d2:
        unlike = unlike_subtracted if taken else unlike_added
        return _wrong(unlike(*_parts(first), d1, *_parts(second), d2), right)
    if not (d1 or d2):
        return {}
    like = subtracted if taken else added
    return _wrong(like(*_parts(first), *_parts(second), d1 or d2), right)


def _denominator(number: Quantity) -> int:
    return number.ladder.denominator if number.ladder.style is Style.MIXED else 0


def _parts(number: Quantity) -> tuple[int, int]:
    if number.ladder.style is Style.MIXED:
        wholes, pieces = number.counts
        assert pieces is not None
        return wholes or 0, pieces
    return int(text(number)), 0


def _wrong(answers: dict[str, Answer], right: Fraction) -> dict[str, str]:
    return {key: raw for key, (raw, amount) in answers.items() if (amount == right) == (key in FORMS)}


def breaks_once(question: Question, slip: Slip) -> None:
    """A slip begins with the problem, ends with its answer and is false in one place, or of form in none."""
    said = [line.says for line in slip.lines]
    assert said[0] == question.asked
    amounts = [amount(says) for says in said if not isinstance(says, WholeLine)]
    assert len(amounts) == len(said)
    false = sum(a != b for a, b in pairwise(amounts))
    assert false + isinstance(slip.wrote, Impossible) == (slip.pattern not in FORMS)
    if isinstance(slip.wrote, Quantity):
        assert said[-1] == slip.wrote


@pytest.mark.slow
@pytest.mark.parametrize("denominator", DENOMINATORS)
def test_like_denominators_agree_and_break_once(denominator: int) -> None:
    """Every pattern writes what its definition says on every problem, and breaks exactly one line."""
    done: Counter[str] = Counter()
    questions = list(every_question(denominator, WHOLES))
    for question in some(questions, denominator, whole=denominator in WHOLE_ALWAYS):
        slips = shows(question)
        assert written(slips) == by_definition(question), text(question)
        for slip in slips:
            breaks_once(question, slip)
        done.update(slip.pattern for slip in slips)
    print(f"denominator {denominator}:", dict(done))
    assert len(done) > 30


@pytest.mark.slow
def test_unlike_denominators_agree_and_break_once() -> None:
    """The same where the denominators differ."""
    done: Counter[str] = Counter()
    questions = [
        Question((minus if taken else plus)(first, second))
        for d1, d2 in permutations(DENOMINATORS, 2)
        for first, second in product(_numbers(d1), _numbers(d2))
        for taken in (True, False)
        if not taken or first.value >= second.value
    ]
    for question in some(questions, 1, whole=False):
        slips = shows(question)
        assert written(slips) == by_definition(question), text(question)
        for slip in slips:
            breaks_once(question, slip)
        done.update(slip.pattern for slip in slips)
    print("unlike:", len(questions), dict(done))
    opening = {*(f"A{number:02}" for number in range(1, 12)), "A36"}
    assert set(done) == {"A12", "A17", *opening, *(f"B{number:02}" for number in range(1, 14))}


def test_two_plain_fractions_agree_and_break_once() -> None:
    """The same on every sum and difference of two fractions without wholes, down from sixths."""
    every = [Quantity(mixed(d), (None, n)) for d in (2, 3, 4, 5, 6) for n in range(1, d)]
    done: Counter[str] = Counter()
    for first, second in product(every, repeat=2):
        both = [Question(plus(first, second))]
        if first.value >= second.value:
            both.append(Question(minus(first, second)))
        for question in both:
            slips = shows(question)
            assert written(slips) == by_definition(question), text(question)
            for slip in slips:
                breaks_once(question, slip)
            done.update(slip.pattern for slip in slips)
    assert set(done) >= {"A17", "B11", "B12", "B13"}


def _numbers(denominator: int) -> list[Quantity]:
    ladder = mixed(denominator)
    return [trimmed(Quantity(ladder, (w, n))) for w in range(3) for n in range(1, denominator)]
