import pytest

from onewhole.sheets.document import Instruction
from onewhole.sheets.faded_example import faded_example
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import STRATEGIES, strategy_named
from onewhole.working.strategy import Strategy


@pytest.mark.parametrize(
    ("taught", "lines"),
    [
        ("regroup_first", "7 2/6 - 3 5/6 = 6 8/6 - 3 5/6 = ____"),
        ("count_up", "7 2/6 - 3 5/6 = 1/6 + 3 + 2/6 = ____"),
        ("equal_shift", "7 2/6 - 3 5/6 = 7 3/6 - 4 = ____"),
    ],
)
def test_the_last_line_is_left_out(taught: str, lines: str) -> None:
    """What a pupil writes, as the class was taught."""
    words = faded_example(read_statement("7 2/6 - 3 5/6"), strategy_named(taught))
    assert words == f"Here is one to finish: {lines}"


@pytest.mark.parametrize("taught", STRATEGIES, ids=lambda one: one.key)
@pytest.mark.parametrize("typed", ["12 1/100 - 11 99/100", "11 11/12 + 10 10/12"])
def test_an_example_stands_on_one_line_of_a_sheet(taught: Strategy, typed: str) -> None:
    """Even with the longest numbers that are composed."""
    words = faded_example(read_statement(typed), taught)
    assert words is not None
    assert Instruction(words).words == words


def test_what_is_not_worked_has_no_example() -> None:
    """1 + 2 ? 4 is not worked line by line."""
    assert faded_example(read_statement("1 + 2 ? 4"), REGROUP_FIRST) is None
