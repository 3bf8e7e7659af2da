import pytest

from onewhole.number.digits import in_digits, named_places
from onewhole.number.ladder import decimal, places
from onewhole.number.quantity import Quantity


@pytest.mark.parametrize(
    ("quantity", "expected"),
    [
        (Quantity(places(2), (5, 2)), True),
        (Quantity(places(2), (4, 12)), False),
        (Quantity(places(2), (0, 7)), False),
        (Quantity(places(1), (0,)), True),
        (Quantity(decimal(1, 1), (0, 7)), True),
        (Quantity(decimal(1, 1), (4, 12)), False),
    ],
)
def test_what_stands_in_digits(quantity: Quantity, expected: bool) -> None:
    """A full place or a leading zero of a whole number needs place words."""
    assert in_digits(quantity) is expected


@pytest.mark.parametrize(
    ("quantity", "counts"),
    [
        (Quantity(places(3), (2, 0, 14)), [2, 14]),
        (Quantity(places(2), (12, 0)), [12]),
        (Quantity(places(2), (0, 12)), [0, 12]),
        (Quantity(decimal(1, 2), (0, 12, 0)), [12, 0]),
        (Quantity(decimal(2, 1), (0, 12, 0)), [0, 12, 0]),
        (Quantity(places(1), (12,)), [12]),
    ],
)
def test_places_that_are_written(quantity: Quantity, counts: list[int]) -> None:
    """Empty places inside are left out, the outermost are kept where they say which places there are."""
    assert [count for count, _ in named_places(quantity)] == counts
