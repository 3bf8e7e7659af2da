"""Two roads over whole-number sums: each pattern by its wrong step and by its definition."""

import os
import random
from collections import Counter

import pytest

from onewhole.misconceptions.catalogue import patterns, shows
from onewhole.misconceptions.pattern import luck
from onewhole.number.quantity import whole
from onewhole.statements.expression import plus
from onewhole.statements.statement import Question
from tests.agreement.by_definition_sums import answers

#: So many of the larger ones; `make walk` takes forty times as many.
SAMPLE = 4000 if os.environ.get("ONEWHOLE_WHOLE_WALK") == "1" else 100
SUMS = [pattern for pattern in patterns() if pattern.id[0] == "H"]


def _space(largest: int) -> list[tuple[int, int]]:
    """Every sum of small numbers, or a seeded sample of larger ones, many with zeros and of many lengths."""
    if largest < 100:
        return [(first, second) for first in range(largest + 1) for second in range(largest + 1)]
    chance = random.Random(largest)
    return [
        (_with_zeros(chance, len(str(largest))), _with_zeros(chance, len(str(largest))))
        for _ in range(SAMPLE)
    ]


def _with_zeros(chance: random.Random, most: int) -> int:
    digits = chance.randint(1, most)
    return int("".join(chance.choice("000123456789") for _ in range(digits)))


@pytest.mark.parametrize(("largest", "shown"), [(25, 12), (9999, 14), (999999, 14)])
def test_sums_agree(largest: int, shown: int) -> None:
    """Every pattern writes what its definition says, and is right by luck where that is right."""
    done: Counter[str] = Counter()
    for first, second in _space(largest):
        statement = Question(plus(whole(first), whole(second)))
        wanted = answers(first, second)
        wrote = {slip.pattern: slip.wrote for slip in shows(statement)}
        assert wrote == {key: whole(n) for key, n in wanted.items() if n != first + second}, (first, second)
        lucky = {pattern.id for pattern in SUMS if luck(pattern, statement)}
        assert lucky == {key for key, n in wanted.items() if n == first + second}, (first, second)
        done.update(wrote.keys())
    print(largest, dict(done))
    assert len(done) == shown
