"""Measures in three units by another road: the definitions G01 to G06 and J01 to J05 in plain numbers.

The definitions speak of two units. With three they are met at every smaller unit in turn, the smallest first
(our own reading): of the smallest one that lacks or fills, a question is asked. A rule shows where too few of
that unit are there and one of the next makes enough, or where they fill one of the next.
"""

import random
from collections.abc import Callable

import pytest

from onewhole.misconceptions.catalogue import patterns
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from tests.kit.how_much import sample

LADDERS = ((("yd", "ft", "in"), (3, 12)), (("h", "min", "s"), (60, 60)), (("gal", "qt", "pt"), (4, 2)))
HERE = [pattern for pattern in patterns() if pattern.id in {f"G0{n}" for n in range(1, 7)} | {"J01", "J02"}]
HERE += [pattern for pattern in patterns() if pattern.id in {"J03", "J04", "J05"}]
Counts = list[int]
#: From a count and how many make one of the next unit: how many the next loses or gets, and what is left.
Rule = Callable[[int, int], tuple[int, int]]


def taken(first: Counts, second: Counts, ratios: tuple[int, int]) -> dict[str, Counts]:
    """What G01 to G06 write for a difference; a count below zero is no answer."""
    short = [rung for rung in (1, 2) if first[rung] < second[rung]]
    if not short:
        return {}
    at = max(short)
    enough = second[at] <= first[at] + ratios[at - 1]
    turned = [first[0] - second[0], *(abs(first[rung] - second[rung]) for rung in (1, 2))]
    found = {"G03": turned} if enough else {}
    if first[at] == 0:
        found["G06"] = [
            first[rung] - second[rung] if rung == 0 or first[rung] else second[rung] for rung in range(3)
        ]
    if enough:
        found["G02"] = opened(first, second, lambda have, _: (1, have + 10), ratios)
        found["G04"] = opened(first, second, lambda have, ratio: (0, have + ratio), ratios)
        if first[at]:
            found["G05"] = opened(first, second, lambda _, ratio: (1, ratio), ratios)
        if ratios[at - 1] == 60:
            found["G01"] = opened(first, second, lambda have, _: (1, have + 100), ratios)
    return {key: made for key, made in found.items() if min(made) >= 0}


def opened(first: Counts, second: Counts, rule: Rule, ratios: tuple[int, int]) -> Counts:
    """Open one of the next unit by a rule wherever there are too few, the smallest first, and take."""
    have = list(first)
    for rung in (2, 1):
        if have[rung] < second[rung]:
            lost, have[rung] = rule(have[rung], ratios[rung - 1])
            have[rung - 1] -= lost
    return [have[0] - second[0], have[1] - second[1], have[2] - second[2]]


def added(first: Counts, second: Counts, ratios: tuple[int, int]) -> dict[str, Counts]:
    """What J01 to J05 write for a sum."""
    sums = [one + other for one, other in zip(first, second, strict=True)]
    full = [rung for rung in (1, 2) if sums[rung] >= ratios[rung - 1]]
    at = max(full, default=2)
    found = {}
    if sums[at] >= 100 > ratios[at - 1]:
        found["J01"] = carried(sums, lambda n, _: divmod(n, 100), ratios)
    if sums[at] >= 10 and ratios[at - 1] in {12, 16}:
        found["J02"] = carried(sums, lambda n, ratio: (1, n - 10) if n >= 10 else divmod(n, ratio), ratios)
    if full:
        found["J03"] = sums
        found["J04"] = carried(sums, lambda n, ratio: (0, n - ratio) if n >= ratio else (0, n), ratios)
        found["J05"] = carried(sums, lambda n, ratio: (1, n) if n >= ratio else (0, n), ratios)
    return found


def carried(sums: Counts, rule: Rule, ratios: tuple[int, int]) -> Counts:
    """Carry by a rule, the smallest unit first."""
    found = list(sums)
    for rung in (2, 1):
        up, found[rung] = rule(found[rung], ratios[rung - 1])
        found[rung - 1] += up
    return found


@pytest.mark.parametrize(("units", "ratios"), LADDERS, ids=[units[0] for units, _ in LADDERS])
@pytest.mark.parametrize("sign", ["+", "-"])
def test_every_rule_on_three_units(units: tuple[str, ...], ratios: tuple[int, int], sign: str) -> None:
    """Each writes what its definition writes, and no other shows; the amount is right for J03 alone."""
    chance = random.Random(f"{units} {sign}")
    done = 0
    for _ in range(sample(120, 400, 3000)):
        first, second = (
            [chance.randrange(1, 9), *(chance.choice((0, chance.randrange(ratio))) for ratio in ratios)]
            for _ in "ab"
        )
        first, second = max(first, second), min(first, second)
        if first == second or not (first[1] or second[1]) or not (first[2] or second[2]):
            continue
        asked = read_statement(f"{written(first, units)} {sign} {written(second, units)}")
        sizes = (ratios[0] * ratios[1], ratios[1], 1)
        worth = sum(
            size * (a - b if sign == "-" else a + b) for size, a, b in zip(sizes, first, second, strict=True)
        )
        rules = (taken if sign == "-" else added)(first, second, ratios)
        wanted = {
            key: written(made, units)
            for key, made in rules.items()
            if (sum(size * n for size, n in zip(sizes, made, strict=True)) == worth) == (key == "J03")
        }
        slips = {one.id: slip for one in HERE if (slip := one.slip(asked))}
        assert {key: text(slip.wrote) for key, slip in slips.items()} == wanted
        done += len(wanted)
    assert done > 20


def written(counts: Counts, units: tuple[str, ...]) -> str:
    """A measure as it is typed, empty units left out."""
    parts = [f"{count} {unit}" for count, unit in zip(counts, units, strict=True) if count]
    return " ".join(parts) or f"0 {units[-1]}"
