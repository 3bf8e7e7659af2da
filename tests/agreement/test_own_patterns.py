"""Patterns of our own by another road: V01 to V07 and J14 in plain numbers, and columns of one unit.

No source: common practice. A04 to A06 are here too, where one whole is opened in a name (7 2/6 = 6 ?/6).
"""

from itertools import product

import pytest

from onewhole.misconceptions.catalogue import patterns, shows
from onewhole.misconceptions.slip import Slip
from onewhole.notations.text import text
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Relation

#: The larger unit, the smaller one, and how many make one.
UNITS = (
    ("ft", "in", 12),
    ("yd", "ft", 3),
    ("lb", "oz", 16),
    ("h", "min", 60),
    ("wk", "d", 7),
    ("m", "cm", 100),
)


def wrote(problem: str) -> dict[str, str]:
    """Return what each pattern writes on a problem."""
    slips: tuple[Slip, ...] = shows(read_statement(problem))
    return {slip.pattern: text(slip.wrote) for slip in slips if not isinstance(slip.wrote, Relation)}


@pytest.mark.parametrize(("large", "small", "ratio"), UNITS)
def test_a_smaller_unit_in_two(large: str, small: str, ratio: int) -> None:
    """J14 puts what is over after a point, V04 takes tens, V05 hundreds, and V06 drops what is over."""
    for count in {*range(ratio, 3 * ratio + 1, max(1, ratio // 12)), 60, 99, 100, 130, 245}:
        whole, over = divmod(count, ratio)
        if not whole:
            continue
        wanted = {}
        if ratio != 100:
            key, ten = ("V04", 10) if count < 100 else ("V05", 100)
            larger, smaller = divmod(count, ten)
            if larger * ratio + smaller != count:
                wanted[key] = measured(larger, smaller, large, small)
            if over:
                wanted["J14"] = f"{whole}.{over} {large}"
        if over:
            wanted["V06"] = f"{whole} {large}"
        assert wrote(f"{count} {small} = ? {large} ? {small}") == wanted, count


def measured(larger: int, smaller: int, large: str, small: str) -> str:
    """A measure as it is typed."""
    parts = [f"{count} {unit}" for count, unit in ((larger, large), (smaller, small)) if count]
    return " ".join(parts) or f"0 {small}"


def test_a_whole_opened_in_a_name() -> None:
    """A04 to A06 and V01 on every mixed number with these denominators."""
    for w, d in product((2, 4, 7), (2, 3, 6, 8, 10, 12)):
        for n in range(d):
            found = wrote(f"{w} {n}/{d} = {w - 1} ?/{d}")
            wanted = {"A04": n + 10, "A05": n + 1, "A06": d, "V01": n}
            assert {key: told for key, told in found.items() if key in wanted} == {
                key: str(count) for key, count in wanted.items() if count != n + d
            }


def test_whole_numbers_as_fractions() -> None:
    """V02 writes a number over itself, V03 under a one."""
    for number in range(2, 30):
        assert wrote(f"{number} as a fraction") == {"V02": f"{number}/{number}", "V03": f"1/{number}"}
    assert wrote("1 as a fraction") == {}


@pytest.mark.parametrize("unit", ["¢", " ft", " min"])
def test_counts_of_one_unit_are_worked_in_columns(unit: str) -> None:
    """Each pattern of columns writes what it writes without the unit; V07 puts a point."""
    of_columns = {pattern.id for pattern in patterns() if pattern.id[0] in "EH"}
    seen = 0
    for (first, second), sign in product(((75, 50), (85, 47), (60, 35), (304, 128), (90, 8)), "+-"):
        found = wrote(f"{first}{unit} {sign} {second}{unit}")
        bare = {key: told for key, told in wrote(f"{first} {sign} {second}").items() if key in of_columns}
        cents = first + second if sign == "+" else first - second
        own = {"V07": f"{cents // 100}.{cents % 100:02}¢"} if unit == "¢" and cents >= 100 else {}
        assert found == {key: f"{told}{unit}" for key, told in bare.items()} | own
        seen += len(found)
    assert seen > 30
