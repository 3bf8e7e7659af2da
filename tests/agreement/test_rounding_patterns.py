"""Two roads over the patterns of rounding: their definitions in digits and whole numbers alone.

The examples and the problems that tell them apart are those of a second collection of error patterns; the
sources of the rules stand with each pattern.
"""

import os
import random

import pytest

from onewhole.marking.reading.expected import expect
from onewhole.misconceptions.catalogue import by_id, patterns, shows
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.problem import Problem
from onewhole.statements.reading import read_answer, read_statement

EVERYTHING = os.environ.get("ONEWHOLE_WHOLE_WALK") == "1"
HERE = [pattern for pattern in patterns() if pattern.id[0] == "R"]
NAMES = {10: "ten", 100: "hundred", 1000: "thousand", 10000: "ten thousand", 100000: "hundred thousand"}

#: Id, a number, the place it is rounded to, right, written; then a problem that tells it apart.
COLLECTED = (
    ("R01", (3472, 100, "3500", "3400"), (3669, 100, "3700", "3600")),
    ("R02", (3431, 100, "3400", "3500"), (1444, 100, "1400", "1500")),
    ("R03", (3446, 100, "3400", "3500"), None),
    ("R04", (74580, 10000, "70000", "75000"), (7649, 100, "7600", "7650")),
    ("R05", (3472, 100, "3500", "3000"), (1447, 100, "1400", "1000")),
    ("R06", (3472, 100, "3500", "3572"), (8746, 100, "8700", "8746")),
    ("R07", (3428, 100, "3400", "3500"), (1174, 100, "1200", "1100")),
    ("R08", (3472, 100, "3500", "35"), (2448, 100, "2400", "24")),
    ("R09", (3432, 100, "3400", "3300"), (5748, 100, "5700", "5600")),
)


def half_up(number: int, place: int) -> int:
    """Round by the digit on the right of the place: up from 5."""
    digits = str(number).rjust(len(str(place)), "0")
    at = len(digits) - len(str(place)) + 1
    return number // place * place + (place if digits[at] >= "5" else 0)


def defined(number: int, place: int) -> dict[str, str]:
    """What each rule writes, without what is right: either neighbor of a number exactly halfway."""
    low = number // place * place
    rest = number - low
    right = {half_up(number, place)} | ({low} if 2 * rest == place else set())
    found: dict[str, int] = {}
    if 2 * rest > place:
        found["R01"] = low
    if 0 < 2 * rest < place:
        found["R02"] = low + place
        if low:
            found["R09"] = low - place
    if rest and len(right) == 1:
        found["R06"] = half_up(number, place) + rest
    chain, step = number, 10
    while step <= place:
        chain, step = half_up(chain, step), step * 10
    if len(right) == 1:
        found["R03"] = chain
    if place >= 100:
        found["R04"] = half_up(number, place // 10)
        if rest:
            found["R07"] = low + place if str(number)[-1] in "56789" else low
    if place * 10 <= number:
        found["R05"] = half_up(number, place * 10)
    if half_up(number, place):
        found["R08"] = half_up(number, place) // place
    return {key: str(wrote) for key, wrote in sorted(found.items()) if wrote not in right}


def wrote(number: int, place: int) -> dict[str, str]:
    """What the catalogue writes."""
    statement = read_statement(f"round {number} to the nearest {NAMES[place]}")
    found = {}
    for pattern in HERE:
        if slip := pattern.slip(statement):
            assert isinstance(slip.wrote, Quantity)
            found[slip.pattern] = text(slip.wrote)
    return found


def test_whole_numbers_are_rounded_wrongly_as_defined() -> None:
    """Every number below 10,000 to tens, hundreds and thousands and seeded larger ones."""
    chance = random.Random(9)
    space = [
        (number, place) for number in range(0, 10_000, 1 if EVERYTHING else 61) for place in (10, 100, 1000)
    ]
    space += [
        (chance.randrange(1_000_000), chance.choice(list(NAMES))) for _ in range(5_000 if EVERYTHING else 100)
    ]
    for number, place in space:
        assert wrote(number, place) == defined(number, place), (number, place)


@pytest.mark.parametrize(("key", "example", "apart"), COLLECTED)
def test_the_collected_examples(
    key: str, example: tuple[int, int, str, str], apart: tuple[int, int, str, str] | None
) -> None:
    """The example and the problem that tells the rule apart write what the collection says."""
    for number, place, right, wrong in filter(None, (example, apart)):
        typed = f"round {number} to the nearest {NAMES[place]}"
        statement = read_statement(typed)
        assert expect(Problem("1", statement, typed)).right == read_answer(right)
        assert {slip.pattern: text(slip.wrote) for slip in shows(statement)}[key] == wrong


def test_rounding_in_a_chain_by_luck() -> None:
    """3,518 comes out right in a chain too: no evidence."""
    assert by_id("R03").slip(read_statement("round 3518 to the nearest hundred")) is None


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("round 3.46 to tenths", {"R01": "3.4", "R05": "3", "R06": "3.56"}),
        ("round 18.379 to tenths", {"R01": "18.3", "R04": "18.38", "R05": "18", "R06": "18.479"}),
        ("round 2 5/8 to wholes", {"R01": "2", "R06": "3 5/8"}),
        ("round 2 1/8 to wholes", {"R02": "3", "R06": "2 1/8", "R09": "1"}),
        ("round 5 ft 8 in to feet", {"R01": "5 ft", "R06": "6 ft 8 in"}),
        ("round 2 h 30 min to hours", {}),
    ],
)
def test_decimals_pieces_and_measures(typed: str, found: dict[str, str]) -> None:
    """Worked out by hand: rules about places do not show on pieces and measures."""
    slips = shows(read_statement(typed))
    assert {slip.pattern: text(slip.wrote) for slip in slips} == found
