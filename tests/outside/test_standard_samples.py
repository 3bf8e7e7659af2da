"""What the standards show about taking a number apart and naming it again.

Source: Common Core State Standards for Mathematics (2010), by the code at each check; *Progressions for the
Common Core: Number and Operations - Fractions, 3-5*, grade 4 part, from memory where it says so.
"""

import pytest

from onewhole.number.ladder import measure
from onewhole.number.quantity import Quantity
from onewhole.statements.reading import read_chains, read_expression, read_quantity, read_statement
from onewhole.working.questions import work_question
from onewhole.working.strategies.table import strategy_named
from onewhole.working.strategies.units_apart import UNITS_APART
from onewhole.working.work import work
from onewhole.working.working import Working, equal_forms
from tests.kit.exact import amount
from tests.kit.worked import question


def says(working: Working) -> list[object]:
    """What stands on the lines after the problem."""
    return [line.says for line in working.lines[1:]]


@pytest.mark.parametrize(
    "chain",
    [
        "3/8 = 1/8 + 1/8 + 1/8",
        "3/8 = 1/8 + 2/8",
        "2 1/8 = 1 + 1 + 1/8",
        "2 1/8 = 8/8 + 8/8 + 1/8",
    ],
)
def test_a_fraction_is_a_sum_in_more_than_one_way(chain: str) -> None:
    """4.NF.B.3.b: the standard's own samples are true."""
    (found,) = read_chains(chain)
    assert found.first_false() is None


@pytest.mark.parametrize("typed", ["2 1/8", "7 2/6", "9 5/8", "4 0/3"])
def test_every_way_to_name_a_mixed_number_with_its_pieces(typed: str) -> None:
    """4.NF.B.3.b: w n/d = (w - k) (n + k x d)/d, for every number k of wholes that can be opened."""
    number = read_quantity(typed)
    (wholes, pieces), parts = number.amounts, number.ladder.denominator
    ways = [number.regroup(0, times) for times in range(wholes + 1)]
    assert [way.counts for way in ways] == [(wholes - k, pieces + k * parts) for k in range(wholes + 1)]
    assert {amount(way) for way in ways} == {amount(number)}
    assert len(set(ways)) == wholes + 1


@pytest.mark.parametrize(
    ("typed", "product", "low"),
    [
        ("5 x 1/4", "5/4", 1),  # 4.NF.B.4.a
        ("3 x 2/5", "6/5", 1),  # 4.NF.B.4.b
        ("5 x 3/8", "15/8", 1),  # 4.NF.B.4.c, "between which two whole numbers": 1 and 2
    ],
)
def test_whole_number_times_fraction(typed: str, product: str, low: int) -> None:
    """4.NF.B.4.a-c: the value, and the two whole numbers it lies between."""
    found = amount(read_expression(typed))
    assert found == amount(read_quantity(product))
    assert low < found < low + 1


def test_a_mixed_number_as_one_fraction() -> None:
    """Progressions, grade 4 (from memory): 7 1/5 = 7 + 1/5 = 35/5 + 1/5 = 36/5."""
    working = work(read_statement("7 1/5 = ?/5"), strategy_named("regroup_first"))
    assert working.answer == read_quantity("36")
    wanted = ("7 + 1/5 = ?/5", "35/5 + 1/5 = ?/5", "36/5 = ?/5")
    assert says(working) == [read_statement(line) for line in wanted]
    assert read_quantity("36/5") in equal_forms(read_quantity("7 1/5"))


@pytest.mark.parametrize(
    ("typed", "lines"),
    [
        ("5/3", ("3/3 + 2/3", "1 2/3")),
        ("47/6", ("42/6 + 5/6", "7 5/6")),
    ],
)
def test_a_fraction_greater_than_one_as_a_mixed_number(typed: str, lines: tuple[str, ...]) -> None:
    """Progressions, grade 4 (from memory): by taking it apart, 5/3 = 3/3 + 2/3 = 1 2/3, and 47/6 = 7 5/6."""
    working = work_question(question(typed), UNITS_APART)
    assert says(working) == [read_expression(line) for line in lines]


def test_unlike_denominators_through_equal_fractions() -> None:
    """5.NF.A.1: 2/3 + 5/4 goes through 8/12 + 15/12 to 23/12, each piece cut again."""
    working = work_question(question("2/3 + 5/4"), strategy_named("to_fractions"))
    wanted = ("(2 x 4)/(3 x 4) + (5 x 3)/(4 x 3)", "8/12 + 15/12", "(8 + 15)/12", "23/12")
    assert says(working)[:4] == [read_expression(line) for line in wanted]


def test_tenths_and_hundredths() -> None:
    """4.NF.C.5: 3/10 + 4/100 = 34/100, tenths named as hundredths first."""
    working = work_question(question("3/10 + 4/100"), UNITS_APART)
    wanted = ("(3 x 10)/(10 x 10) + 4/100", "30/100 + 4/100", "(30 + 4)/100", "34/100")
    assert says(working) == [read_expression(line) for line in wanted]


def test_a_sum_seen_to_be_wrong() -> None:
    """5.NF.A.2: 2/5 + 1/2 cannot be 3/7, because 3/7 < 1/2; it is 9/10."""
    (chain,) = read_chains("2/5 + 1/2 = 3/7")
    assert chain.first_false() == 0
    assert work(read_statement("3/7 < 1/2"), UNITS_APART).answer == "<"
    assert amount(read_expression("2/5 + 1/2")) == amount(read_quantity("9/10"))


@pytest.mark.parametrize(
    ("marks", "ratio"),
    [
        (("yd", "ft"), 3),
        (("ft", "in"), 12),
        (("lb", "oz"), 16),
        (("h", "min"), 60),
    ],
)
def test_the_ratios_of_measures(marks: tuple[str, str], ratio: int) -> None:
    """4.MD.A.1: a larger unit in terms of a smaller one, as in a two-column table."""
    ladder = measure(*marks)
    assert ladder.ratios == (ratio,)
    for count in range(1, 13):
        assert Quantity(ladder, (count, 0)).regroup(0, count).counts == (0, count * ratio)
