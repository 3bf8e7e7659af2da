import pytest

from onewhole.sheets.candidates import LikePair, ProblemType
from onewhole.statements.reading import read_statement
from tests.kit.candidates import level_of, type_of


@pytest.mark.parametrize(
    ("like", "typed", "sort", "level"),
    [
        (LikePair(5, 4, 2, 1, 6, taken=True), "5 4/6 - 2 1/6", ProblemType.ENOUGH, 1),
        (LikePair(9, 5, 4, 6, 8, taken=True), "9 5/8 - 4 6/8", ProblemType.OPENED, 5),
        (LikePair(4, 0, 1, 3, 8, taken=True), "4 - 1 3/8", ProblemType.FROM_WHOLE, 7),
        (LikePair(4, 0, 0, 3, 12, taken=True), "4 - 3/12", ProblemType.PART_FROM_WHOLE, 7),
        (LikePair(2, 1, 1, 1, 5, taken=False), "2 1/5 + 1 1/5", ProblemType.APART, 1),
        (LikePair(2, 4, 1, 3, 5, taken=False), "2 4/5 + 1 3/5", ProblemType.FILLED, 5),
    ],
)
def test_what_the_numbers_say(like: LikePair, typed: str, sort: ProblemType, level: int) -> None:
    """Sort and level follow from the numbers, and the problem reads back from its text."""
    assert (like.typed, type_of(like), level_of(like)) == (typed, sort, level)
    assert read_statement(typed) == like.statement
