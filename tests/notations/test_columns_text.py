"""Columns in plain text."""

import pytest

from onewhole.notations.columns_text import columns_text
from onewhole.pictures.columns_state import columns_states
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.work import work

WRITTEN = {
    "12.05 - 3.8": (
        "   0 11  10",
        "   1  2.  0  5",
        "-     3.  8  0",
        "--------------",
        "      8.  2  5",
    ),
    "1234 + 2876 + 777": ("  1 1 1", "  1 2 3 4", "  2 8 7 6", "+   7 7 7", "---------", "  4 8 8 7"),
    "43 - 21": ("  4 3", "- 2 1", "-----", "  2 2"),
}


@pytest.mark.parametrize("problem", WRITTEN)
def test_digits_stand_under_each_other(problem: str) -> None:
    """What is above, the numbers, a rule and the answer, with the points in line."""
    assert columns_text(columns_states(work(read_statement(problem), COLUMNS))[-1]) == WRITTEN[problem]


def test_before_anything_is_written_there_are_the_numbers_alone() -> None:
    """The first line of a working: no small numbers and no answer."""
    assert columns_text(columns_states(work(read_statement("43 - 21"), COLUMNS))[0]) == WRITTEN["43 - 21"][:3]
