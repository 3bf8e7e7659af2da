import pytest

from onewhole.number.factors import common_denominator, simplest


@pytest.mark.parametrize(
    ("denominators", "common"), [([4, 6], 12), ([3, 8], 24), ([10, 100], 100), ([5], 5), ([], 1)]
)
def test_the_smallest_common_denominator(denominators: list[int], common: int) -> None:
    """Every denominator divides it, and nothing smaller will do."""
    assert common_denominator(denominators) == common
    smaller = range(1, common)
    assert not [n for n in smaller if all(n % denominator == 0 for denominator in denominators)]


@pytest.mark.parametrize(
    ("top", "bottom", "found"), [(3, 6, (1, 2)), (8, 12, (2, 3)), (5, 8, (5, 8)), (0, 6, (0, 1))]
)
def test_the_fewest_parts(top: int, bottom: int, found: tuple[int, int]) -> None:
    """An equal fraction that cannot be made smaller."""
    assert simplest(top, bottom) == found
