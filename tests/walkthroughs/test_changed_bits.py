"""What is new on a line is found, so that the board can mark it."""

import pytest

from onewhole.statements.reading import read_expression
from onewhole.walkthroughs.changed_bits import changed_bits


@pytest.mark.parametrize(
    ("before", "after", "new"),
    [
        ("7 2/6 - 3 5/6", "6 8/6 - 3 5/6", {0}),
        ("304 - 128", "304 - 128", set()),
        ("1/6 + 3 + 2/6", "3 3/6", set()),
        ("9/12 + 8/12", "17/12", set()),
        ("3 + 1 + 1/5 - 1 2/5", "3 + 5/5 + 1/5 - 1 2/5", {2}),
        ("0.45 + 0.3", "0.45 + 0.30", {2}),
    ],
)
def test_new_bits(before: str, after: str, new: set[int]) -> None:
    """The numbers that were not on the line before; none where all of them are new."""
    assert changed_bits(read_expression(before), read_expression(after)) == new
