import pytest

from onewhole.findings.searched import NumberSort
from onewhole.problems.near import near
from onewhole.statements.reading import read_statement


@pytest.mark.parametrize(
    ("typed", "sort", "taken", "holds"),
    [
        ("5.2 - 2.7", NumberSort.DECIMALS, True, "3.00 - 0.45"),
        ("304 - 128", NumberSort.WHOLE_NUMBERS, True, "5006 - 1307"),
        ("7 2/6 - 3 5/6", NumberSort.LIKE_PARTS, True, "9 1/6 - 4 4/6"),
        ("4 - 1 3/8", NumberSort.LIKE_PARTS, True, "6 - 1 5/8"),
        ("5 1/3 - 2 3/4", NumberSort.UNLIKE_PARTS, True, "9 1/3 - 4 3/4"),
        ("5 ft 2 in - 2 ft 8 in", NumberSort.MEASURES, True, "5 ft 3 in - 2 ft 11 in"),
        ("0.45 + 0.3", NumberSort.DECIMALS, False, "3.45 + 0.2"),
    ],
)
def test_a_space_is_of_the_sort_of_its_problem(typed: str, sort: NumberSort, taken: bool, holds: str) -> None:
    """It holds the zeros, lengths and numerators on which mistakes part, and only what can be asked."""
    found = near(read_statement(typed))
    assert found is not None
    assert (found.sort, found.taken) == (sort, taken)
    assert holds in found.problems
    assert len(set(found.problems)) == len(found.problems)
    assert all(read_statement(one) for one in found.problems)


@pytest.mark.parametrize(
    "typed", ["3 x 2/5", "1/8 ? 1/4", "3/4 = ?/8", "1/4 + 1/4 + 1/4", "1 h + 5 min + 1 h"]
)
def test_what_is_no_sum_or_difference_of_two_numbers_is_given_no_space(typed: str) -> None:
    """Nothing was searched there, and nothing is said of it."""
    assert near(read_statement(typed)) is None
