"""Measures by another road: every amount in the smallest unit, from a table of this file, in whole numbers.

The space: for every ladder below, sums and differences of counts that each stay below what makes one of the
next unit. `make test` walks a seeded sample of each; ONEWHOLE_WHOLE_WALK=1 takes 40 times as many.
"""

import os
import random
from datetime import timedelta
from itertools import pairwise

import pytest

from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.statements.expression import quantities
from onewhole.statements.reading import read_quantity
from onewhole.statements.statement import Question
from onewhole.working.strategies.table import STRATEGIES
from onewhole.working.working import Working
from tests.agreement.test_walk import agree
from tests.kit.exact import amount
from tests.kit.worked import question, tried

SAMPLE = 400 if os.environ.get("ONEWHOLE_WHOLE_WALK") == "1" else 10

#: How many of the smallest unit of its row each unit is, largest first.
WORTH = {
    "yards": {"yd": 36, "ft": 12, "in": 1},
    "miles": {"mi": 5280, "ft": 1},
    "miles and yards": {"mi": 1760, "yd": 1},
    "pounds": {"lb": 16, "oz": 1},
    "tons": {"T": 2000, "lb": 1},
    "gallons": {"gal": 16, "qt": 4, "pt": 2, "c": 1},
    "cups": {"c": 8, "fl oz": 1},
    "weeks": {"wk": 168, "d": 24, "h": 1},
    "hours": {"h": 3600, "min": 60, "s": 1},
    "kilometers": {"km": 1000, "m": 1},
    "meters": {"m": 1000, "cm": 10, "mm": 1},
    "kilograms": {"kg": 1000, "g": 1},
    "liters": {"L": 1000, "mL": 1},
}


def written(row: dict[str, int], amount: int) -> str:
    """Write so many of the smallest unit, largest units first, empty ones left out."""
    found = []
    for mark, worth in row.items():
        count, amount = divmod(amount, worth)
        found += [f"{count} {mark}"] if count else []
    return " ".join(found) or f"0 {[*row][-1]}"


def asked(name: str) -> list[tuple[Question, int]]:
    """Seeded problems on a ladder, each with its answer in the smallest unit."""
    row, chance = WORTH[name], random.Random(name)
    most = 9 * max(row.values())
    found: list[tuple[Question, int]] = []
    while len(found) < SAMPLE:
        first, second = chance.randint(1, most), chance.randint(1, most)
        taken = first > second
        typed = f"{written(row, first)} {'-' if taken else '+'} {written(row, second)}"
        found.append((question(typed), first - second if taken else first + second))
    return found


@pytest.mark.parametrize("name", WORTH)
def test_every_strategy_agrees_with_whole_numbers_of_the_smallest_unit(name: str) -> None:
    """Every line is worth the same, every answer is the one counted in smallest units, in the usual form."""
    done = 0
    for asks, wanted in asked(name):
        found = [one for way in STRATEGIES if isinstance(one := tried(asks, way), Working)]
        assert len(found) >= 2, text(asks)
        units = {unit for number in quantities(asks.asked) for unit in number.ladder.units}
        marks = {unit.mark for unit in units}
        for working in found:
            assert isinstance(working.answer, Quantity)
            agree(working, amount(read_quantity(f"{wanted} {[*WORTH[name]][-1]}")))
            used = {mark: worth for mark, worth in WORTH[name].items() if mark in marks}
            assert text(working.answer) == written(used, wanted)
        done += len(found)
    assert done > 2 * SAMPLE


def test_units_of_time_are_those_of_the_library() -> None:
    """A week, a day, an hour, a minute: the same number of seconds as Python's own durations have."""
    known = {
        "wk": timedelta(weeks=1),
        "d": timedelta(days=1),
        "h": timedelta(hours=1),
        "min": timedelta(minutes=1),
    }
    for mark, duration in known.items():
        seconds = amount(read_quantity(f"1 {mark}")) / amount(read_quantity("1 s"))
        assert seconds == duration.total_seconds()


def test_metric_units_go_in_tens() -> None:
    """Every step from a metric unit to the next is ten, a hundred or a thousand."""
    for row in (WORTH["kilometers"], WORTH["meters"], WORTH["kilograms"], WORTH["liters"]):
        for (one, _), (other, _) in pairwise(row.items()):
            assert amount(read_quantity(f"1 {one}")) / amount(read_quantity(f"1 {other}")) in {10, 100, 1000}
