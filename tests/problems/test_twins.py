"""Twins ask one thing with the same differences."""

import pytest
from hypothesis import given

from onewhole.problems.twins import twin_key
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement
from tests.kit.statements import statements


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("7 2/6 - 3 5/6", "8 1/6 - 4 4/6"),
        ("2 4/5 + 1 3/5", "1 3/5 + 2 4/5"),
        ("4 - 1 3/8", "5 - 2 3/8"),
        ("52 - 27", "63 - 38"),
        ("5/6 ? 7/8", "7/8 ? 5/6"),
        ("7 2/6 = 6 ?/6", "7 2/6 = 6 ?/6"),
        ("5 ft 2 in - 2 ft 7 in", "6 ft 3 in - 3 ft 8 in"),
    ],
)
def test_are_twins(one: str, other: str) -> None:
    """(w1 - w2, n1 - n2, d) agree."""
    assert twin_key(read_statement(one)) == twin_key(read_statement(other))


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("7 2/6 - 3 5/6", "7 2/8 - 3 5/8"),
        ("7 2/6 - 3 5/6", "7 2/6 - 3 4/6"),
        ("7 2/6 - 3 5/6", "7 5/6 + 3 2/6"),
        ("7 5/6 - 3 2/6", "7 2/6 - 3 5/6"),
        ("3/4 - 1/8", "6/8 - 1/8"),
        ("52 - 27", "5.2 - 2.7"),
        ("7 2/6 = 6 ?/6", "7 2/6 = 5 ?/6"),
        ("2 + 3 - 1", "2 - 1 + 3"),
    ],
)
def test_are_no_twins(one: str, other: str) -> None:
    """Another difference, another size of piece, another operation."""
    assert twin_key(read_statement(one)) != twin_key(read_statement(other))


@given(statements())
def test_every_statement_is_its_own_twin(statement: Statement) -> None:
    """The key exists and can be looked up."""
    assert {twin_key(statement): 1}[twin_key(statement)] == 1
