"""Numbers are taken out of a statement and put back."""

import pytest
from hypothesis import given

from onewhole.notations.text import text
from onewhole.number.quantity import whole
from onewhole.problems.numbers import numbers_of, with_numbers
from onewhole.statements.reading import read_statement
from onewhole.statements.sides import sides
from onewhole.statements.statement import Statement
from tests.kit.statements import statements


@given(statements())
def test_put_back_as_they_were_nothing_changes(statement: Statement) -> None:
    """For every statement the reader makes."""
    assert with_numbers(statement, numbers_of(statement)) == statement


def test_other_numbers_take_their_places() -> None:
    """In order, wherever they stand."""
    asked = read_statement("9 - (1 1/2 + 1) x 2 = 3/4 + ?")
    assert len(sides(asked)) == 2
    assert text(with_numbers(asked, [whole(n) for n in range(1, 6)])) == "1 - (2 + 3) x 4 = 5 + ?"


def test_too_few_or_too_many_are_refused() -> None:
    """No number is made up, none is dropped."""
    with pytest.raises(ValueError, match="do not fill"):
        with_numbers(read_statement("52 - 27"), [whole(1)])
