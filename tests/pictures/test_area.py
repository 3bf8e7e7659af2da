"""The area model: every product of two parts is written, in its part or beside it, and touches no other."""

from itertools import combinations

import pytest

from onewhole.number.quantity import Quantity
from onewhole.pictures.area import TooNarrowError, area
from onewhole.pictures.choosing import refusal
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Box, Words
from onewhole.pictures.unpictured import TooSmallBeside
from onewhole.statements.reading import read_statement
from onewhole.working.products.partial_products import PARTIAL_PRODUCTS
from onewhole.working.work import work


@pytest.mark.parametrize(
    "problem",
    [
        "24 x 36",
        "21 x 36",
        "13 x 14",
        "9 x 52",
        "45 x 67",
        "36 x 24",
        "7 x 83",
        "83 x 7",
        "120 x 24",
        "95 x 8",
    ],
)
def test_every_product_of_two_parts_is_written(problem: str) -> None:
    """Tens and ones of both numbers; what each pair makes is counted here by its digits."""
    left, right = (int(number) for number in problem.split(" x "))
    parts = [
        [n for n in (number // 100 * 100, number // 10 % 10 * 10, number % 10) if n]
        for number in (left, right)
    ]
    drawn = area(work(read_statement(problem), PARTIAL_PRODUCTS)).scenes[-1]
    written = [
        piece.shape
        for piece in drawn.pieces
        if piece.name.startswith("part/") and isinstance(piece.shape, Words)
    ]
    numbers = [words.caption.value for words in written if isinstance(words.caption, Quantity)]
    assert sorted(numbers) == sorted(one * other for one in parts[0] for other in parts[1])
    for words in written:
        assert 0 < words.x < drawn.width
        assert 0 < words.y < drawn.height
    for one, other in combinations(written, 2):
        assert abs(one.x - other.x) >= 9 or abs(one.y - other.y) >= 8


def test_a_longer_first_number_lies_across_where_its_parts_are_seen_so() -> None:
    """120 x 24 is 120 across and 24 down; 24 x 36 stays as it is written."""
    for problem, wide, tall in (("120 x 24", 120, 24), ("24 x 36", 36, 24)):
        drawn = area(work(read_statement(problem), PARTIAL_PRODUCTS)).scenes[-1]
        (box,) = (one.shape for one in drawn.pieces if one.name == "product" and isinstance(one.shape, Box))
        assert box.width * tall == box.height * wide


def test_a_part_that_could_not_be_seen_is_told() -> None:
    """The 4 of 386 x 24 is less than 2 mm beside 386, on any paper as wide as a page (386 : 4 is 96 : 1)."""
    working = work(read_statement("386 x 24"), PARTIAL_PRODUCTS)
    refused = refusal(working, PictureKind.AREA)
    assert refused is not None
    assert refused.reason == TooSmallBeside()
    with pytest.raises(TooNarrowError):
        area(working)
