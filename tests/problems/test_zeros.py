import pytest
from hypothesis import given

from onewhole.problems.zeros import Zeros, zeros
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement
from tests.kit.statements import statements


@pytest.mark.parametrize(
    ("problem", "taken_from", "passed"),
    [
        ("3 - 2 1/5", 1, 0),
        ("3 1/5 - 2", 0, 0),
        ("50 - 27", 1, 0),
        ("507 - 49", 0, 1),
        ("400 - 128", 1, 1),
        ("1000 - 7", 1, 2),
        ("408 - 108", 0, 0),
        ("407 - 302", 0, 0),
        ("20 - 7.70", 1, 1),
        ("5 ft - 2 ft 8 in", 1, 0),
        ("50 + 27", 0, 0),
        ("48 + 2 - 27", 1, 0),  # 50 - 27
        ("2 - 5 + 4", 0, 0),
        ("? + 2 1/5 = 3", 1, 0),
        ("3 - ? = 2 1/5", 1, 0),
        ("3/4 ? 1/2", 0, 0),
        ("7", 0, 0),
    ],
)
def test_zeros_in_the_way(problem: str, taken_from: int, passed: int) -> None:
    """Those from which something is taken, and those that are opened first; the first digit is none."""
    assert zeros(read_statement(problem)) == Zeros(taken_from, passed)


@given(statements())
def test_any_statement_has_a_number_of_them(statement: Statement) -> None:
    """No statement that can be read is refused."""
    found = zeros(statement)
    assert min(found.taken_from, found.passed) >= 0
