"""Conversions by another road: a table of ratios, and the definitions of the wrong rules in plain numbers.

Source of the definitions J06 to J13: a second collection of error patterns (see
``tests/outside/test_second_collection.py``).
"""

from itertools import product

import pytest

from onewhole.misconceptions.catalogue import patterns
from onewhole.notations.text import text
from onewhole.problems.answer import answer
from onewhole.statements.reading import read_statement

#: The larger unit, the smaller one, and how many make one.
RATIOS = (
    ("ft", "in", 12),
    ("yd", "ft", 3),
    ("lb", "oz", 16),
    ("gal", "qt", 4),
    ("pt", "c", 2),
    ("h", "min", 60),
    ("wk", "d", 7),
    ("km", "m", 1000),
    ("m", "cm", 100),
    ("cm", "mm", 10),
    ("kg", "g", 1000),
    ("L", "mL", 1000),
)
HERE = tuple(pattern for pattern in patterns() if pattern.id in {f"J{at:02}" for at in range(6, 14)})


def wrote(problem: str) -> dict[str, str]:
    """Return what the patterns write on a problem, and hold that none writes the right answer."""
    statement = read_statement(problem)
    found = {one.id: text(slip.wrote) for one in HERE if (slip := one.slip(statement))}
    assert text(answer(statement)) not in found.values()
    return found


@pytest.mark.parametrize(("large", "small", "ratio"), RATIOS)
def test_larger_units_in_smaller_ones(large: str, small: str, ratio: int) -> None:
    """Right is times the ratio; J07 divides, J08 takes ten, J09 a hundred."""
    for count in (*range(1, 13), 24, 36, 60, 120):
        problem = f"{count} {large} = ? {small}"
        assert text(answer(read_statement(problem))) == f"{count * ratio} {small}"
        wanted = {"J08": count * 10, "J09": count * 100}
        if count % ratio == 0:
            wanted["J07"] = count // ratio
        assert wrote(problem) == {
            key: f"{said} {small}" for key, said in wanted.items() if said != count * ratio
        }


@pytest.mark.parametrize(("large", "small", "ratio"), RATIOS)
def test_smaller_units_in_larger_ones(large: str, small: str, ratio: int) -> None:
    """Right is divided by the ratio; J06 multiplies."""
    for count in range(1, 9):
        problem = f"{count * ratio} {small} = ? {large}"
        assert text(answer(read_statement(problem))) == f"{count} {large}"
        assert wrote(problem) == {"J06": f"{count * ratio**2} {large}"}


@pytest.mark.parametrize(("large", "small", "ratio"), RATIOS)
def test_two_units_in_the_smaller_one(large: str, small: str, ratio: int) -> None:
    """J11 leaves the smaller ones out, J12 adds the counts, J13 writes them side by side."""
    for big, little in product((1, 2, 5, 8), range(1, min(ratio, 12))):
        right = big * ratio + little
        wanted = {"J11": big * ratio, "J12": big + little, "J13": int(f"{big}{little}")}
        assert wrote(f"{big} {large} {little} {small} = ? {small}") == {
            key: f"{said} {small}" for key, said in wanted.items() if said != right
        }


@pytest.mark.parametrize(("large", "small", "ratio"), RATIOS)
def test_smaller_units_in_two(large: str, small: str, ratio: int) -> None:
    """As many larger ones as can be, and what is over."""
    for count in (ratio + 1, 2 * ratio + 1, 5 * ratio + ratio - 1):
        big, little = divmod(count, ratio)
        name = f"{count} {small} = ? {large} ? {small}"
        assert text(answer(read_statement(name))) == f"{big} {large} {little} {small}"
