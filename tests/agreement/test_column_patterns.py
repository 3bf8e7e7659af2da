"""Two roads over whole-number differences: each column pattern by its wrong step and by its definition."""

import random
from collections import Counter
from itertools import pairwise

import pytest

from onewhole.misconceptions.attempt import line_claim
from onewhole.misconceptions.catalogue import shows
from onewhole.number.quantity import Quantity, whole
from onewhole.statements.expression import minus
from onewhole.statements.statement import Question
from tests.agreement.by_definition_columns import answers
from tests.kit.how_much import WHOLE, sample

#: So many of the larger ones; `make walk` takes twenty times as many.
SAMPLE = 6000 if WHOLE else 150


def _space(largest: int) -> list[tuple[int, int]]:
    """Every difference of one- and two-digit numbers, or a seeded sample of larger ones, many with zeros."""
    if largest < 100:
        return [(first, second) for first in range(largest + 1) for second in range(first + 1)]
    chance = random.Random(largest)
    found: list[tuple[int, int]] = []
    while len(found) < SAMPLE:
        pair = [_with_zeros(chance, chance.randint(1, len(str(largest)))) for _ in range(2)]
        found.append((max(pair), min(pair)))
    return found


def _with_zeros(chance: random.Random, digits: int) -> int:
    return int("".join(chance.choice("0001123456789") for _ in range(digits)))


@pytest.mark.slow
@pytest.mark.parametrize(("largest", "shown"), [(30, 20), (999, sample(30, 30, 31)), (99999, 31)])
def test_columns_agree_and_break_once(largest: int, shown: int) -> None:
    """Every pattern writes what its definition says, and the right answer never counts."""
    done: Counter[str] = Counter()
    for first, second in _space(largest):
        slips = shows(Question(minus(whole(first), whole(second))))
        wrote = {slip.pattern: slip.wrote for slip in slips}
        wanted = {key: whole(n) for key, n in answers(first, second).items() if n != first - second}
        assert wrote == wanted, (first, second)
        for slip in slips:
            said = [line_claim(line.says) for line in slip.lines]
            assert sum(a != b for a, b in pairwise(said)) == 1
            assert isinstance(slip.wrote, Quantity)
        done.update(wrote.keys())
    print(largest, dict(done))
    assert len(done) == shown
