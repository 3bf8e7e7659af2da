"""What a problem needs."""

import pytest

from onewhole.number.unit import Kind
from onewhole.problems.needs import Operation, needs, runs_below_zero
from onewhole.statements.reading import read_expression, read_statement


@pytest.mark.parametrize(
    ("typed", "times"),
    [
        ("7 2/6 - 3 5/6", 1),
        ("7 5/6 - 3 2/6", 0),
        ("4 - 1 3/8", 1),
        ("4 - 1 4/3", 2),
        ("4 1/3 - 2 4/3", 1),
        ("3 1/2 - 2 3/2", 1),
        ("1 5/3 - 2 1/3", 1),
        ("3 3/8 - 2 5/6", 1),
        ("2 4/5 + 1 3/5", 1),
        ("2 1/5 + 1 3/5", 0),
        ("1 5/3 + 2 4/3", 3),
        ("52 - 27", 1),
        ("304 - 128", 2),
        ("5.2 - 2.7", 1),
        ("5.2 - 2.75", 2),
        ("5 ft 2 in - 2 ft 7 in", 1),
        ("5 ft - 2 in", 1),
        ("4 1/4 - 1 3/4 - 1 3/4", 2),
        ("2 hundreds 0 tens 50 ones - 2 hundreds 1 ten 5 ones", 2),
        ("7 2/6 = 6 ?/6", 1),
        ("7 2/6 = 7 ?/6", 0),
        ("3/4 = ?/12", 0),
        ("9 - ? = 3 1/2", 1),
        ("5/6 ? 7/8", 0),
        ("3 x 2/5", 0),
    ],
)
def test_units_opened_or_put_together(typed: str, times: int) -> None:
    """One a whole opened or made, on every ladder."""
    found = needs(read_statement(typed))
    assert found.regroupings == times
    assert found.regrouping == (times > 0)


@pytest.mark.parametrize(
    ("typed", "renamed"),
    [
        ("3/4 - 3/8", True),
        ("4 3/5 - 3 4/10", True),
        ("7 1/2 - 3.25", True),
        ("5.2 - 2.75", True),
        ("4 - 1 3/8", False),
        ("300.5 - 2", False),
        ("5 ft - 2 in", False),
        ("3/4 = ?/12", True),
    ],
)
def test_renaming(typed: str, renamed: bool) -> None:
    """Pieces of different sizes are renamed; a whole number beside pieces is not."""
    assert needs(read_statement(typed)).renaming == renamed


@pytest.mark.parametrize(
    ("typed", "first"),
    [
        ("4 - 1 3/8", True),
        ("50 - 27", True),
        ("5 ft - 2 ft 7 in", True),
        ("4 1/8 - 1 3/8", False),
        ("4 - 1", False),
    ],
)
def test_a_whole_number_first(typed: str, first: bool) -> None:
    """Nothing of the smaller unit stands on top and some is taken."""
    assert needs(read_statement(typed)).whole_first == first


def test_the_rest() -> None:
    """Numbers, operations, kind, denominators and fractions greater than one."""
    found = needs(read_statement("3 1/2 + 11/8 - 2 4/3"))
    assert found.kind is Kind.NUMBER
    assert found.operations == (Operation.ADD, Operation.SUBTRACT)
    assert found.numbers == 3
    assert found.denominators == (2, 3, 8)
    assert found.over_one == 2
    assert needs(read_statement("9 - ? = 3 1/2")).operations == (Operation.SUBTRACT, Operation.FIND)
    assert needs(read_statement("2 x 3 ft")).kind is Kind.LENGTH
    assert needs(read_statement("1/4 + 1/4 ? 3/8")).operations == (Operation.ADD, Operation.COMPARE)
    assert needs(read_statement("7 2/6 = 6 ?/6")).denominators == (6,)


def test_below_zero_on_the_way() -> None:
    """From left to right, not all together."""
    assert runs_below_zero(read_expression("2 - 5 + 4"))
    assert not runs_below_zero(read_expression("2 + 4 - 5"))
    assert needs(read_statement("2 - 5 + 4")).regroupings == 0
