"""Two roads over sums of whole numbers, decimals and measures: by wrong steps and by definitions."""

import random
from collections import Counter
from decimal import Decimal
from itertools import product

import pytest

from onewhole.misconceptions.catalogue import patterns, shows
from onewhole.misconceptions.pattern import Luck
from onewhole.notations.text import text
from onewhole.number.ladder import measure
from onewhole.number.quantity import Quantity, trimmed, whole
from onewhole.statements.expression import plus
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Relation
from tests.agreement.by_definition_sums import answers, decimal_answers, measure_answers
from tests.kit.how_much import sample

#: So many of the larger ones; `make walk` takes forty times as many.
SAMPLE = sample(40, 100, 4000)
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
        lucky = {pattern.id for pattern in SUMS if pattern.meets(statement) is Luck.RIGHT}
        assert lucky == {key for key, n in wanted.items() if n == first + second}, (first, second)
        done.update(wrote.keys())
    print(largest, dict(done))
    assert len(done) == shown


def _decimals() -> list[tuple[str, str]]:
    """Every sum of decimals with a place and one or two ones, and a seeded sample of longer ones."""
    short = [f"{ones}.{tenths}" for ones in (0, 3, 9, 12) for tenths in range(10)]
    pairs = [(one, other) for one in short[::3] for other in (*short[::4], "0", "7", "25")]
    chance = random.Random(5)
    return pairs + [(_drawn(chance), _drawn(chance)) for _ in range(SAMPLE)]


def _drawn(chance: random.Random) -> str:
    ones, places = str(chance.choice((0, 4, 9, 38, 95))), chance.randint(0, 3)
    return f"{ones}.{chance.randint(0, 10**places - 1):0{places}}" if places else ones


def test_decimal_sums_agree() -> None:
    """I02 to I07 write what their definitions say."""
    done: Counter[str] = Counter()
    for first, second in _decimals():
        if "." not in first + second:
            continue
        statement = read_statement(f"{first} + {second}")
        right = Decimal(first) + Decimal(second)
        wrote = {
            slip.pattern: text(slip.wrote)
            for slip in shows(statement)
            if slip.pattern[0] == "I" and not isinstance(slip.wrote, Relation)
        }
        wanted = decimal_answers(first, second)
        assert wrote == {key: said for key, said in wanted.items() if Decimal(said) != right}, (first, second)
        done.update(wrote.keys())
    assert len(done) == 6


@pytest.mark.parametrize(
    ("big", "small", "ratio"), [("ft", "in", 12), ("yd", "ft", 3), ("lb", "oz", 16), ("h", "min", 60)]
)
def test_measure_sums_agree(big: str, small: str, ratio: int) -> None:
    """J01 to J05 write what their definitions say, on sums of up to 3 larger units and some smaller ones."""
    numbers = [(b, s) for b in (0, 1, 3) for s in range(0, ratio, max(1, ratio // 12))]
    done: Counter[str] = Counter()
    for first, second in product(numbers, repeat=2):
        if not all(map(any, (first, second))) or not (any(n[0] for n in (first, second))):
            continue
        one, other = (trimmed(Quantity(measure(big, small), pair)) for pair in (first, second))
        if {unit.mark for number in (one, other) for unit in number.ladder.units} != {big, small}:
            continue
        slips = {slip.pattern: slip for slip in shows(Question(plus(one, other)))}
        wanted = measure_answers(first, second, ratio)
        total = (first[0] + second[0]) * ratio + first[1] + second[1]
        for key, (b, s) in wanted.items():
            if (b * ratio + s == total) != (key == "J03"):
                assert key not in slips
                continue
            assert slips[key].wrote == trimmed(Quantity(measure(big, small), (b, s)))
            done[key] += 1
        assert {key for key in slips if key[0] == "J"} <= set(wanted)
    assert set(done) >= {"J03", "J04", "J05"}
    assert ("J01" in done) == (ratio == 60)
    assert ("J02" in done) == (ratio in {12, 16})
