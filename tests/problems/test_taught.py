"""A problem is worked the way the class was taught."""

import pytest

from onewhole.problems.taught import as_taught
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.table import strategy_named


@pytest.mark.parametrize(
    ("typed", "taught", "used"),
    [
        ("7 2/6 - 3 5/6", "count_up", "count_up"),
        ("2 4/5 + 1 3/5", "count_up", "jump_on"),
        ("4 - 1 3/8", "from_whole", "regroup_first"),
        ("5/6 ? 7/8", "count_up", "compare"),
        ("7 2/6 = 6 ?/6", "regroup_first", "find_the_missing_number"),
    ],
)
def test_the_strategy_its_partner_or_one_that_suits(typed: str, taught: str, used: str) -> None:
    """In this order."""
    working = as_taught(read_statement(typed), strategy_named(taught))
    assert working is not None
    assert working.strategy == used


@pytest.mark.parametrize("typed", ["2 - 5 + 4", "2 x 3 - 10 + 8", "5 ft ? 3 x 20 in"])
def test_none_where_nothing_is_worked_line_by_line(typed: str) -> None:
    """No guess is made."""
    assert as_taught(read_statement(typed), strategy_named("regroup_first")) is None
