"""A bar over the columns in which the missing number is found: both whole, and large enough on a phone."""

from fractions import Fraction

import pytest

from onewhole.pictures.bar import bar
from onewhole.pictures.bar_and_columns import MOST, WIDTH, with_columns
from onewhole.pictures.choosing import picture
from onewhole.pictures.columns import columns
from onewhole.pictures.digits import can_be_read
from onewhole.pictures.limits import BOARD, PAGE
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Box, Piece, Words
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.work import work
from onewhole.working.working import Working

PROBLEMS = ("? + 128 = 304", "? - 128 = 176", "345 + ? + 67 = 540", "? + 1.75 = 4.2", "1000000 - ? = 345678")


def worked(problem: str) -> Working:
    """Work a problem in columns."""
    return work(read_statement(problem), COLUMNS)


def _written(pieces: tuple[Piece, ...]) -> list[object]:
    return [piece.shape.caption for piece in pieces if isinstance(piece.shape, Words)]


@pytest.mark.parametrize("problem", PROBLEMS)
def test_both_are_whole_and_neither_runs_into_the_other(problem: str) -> None:
    """All that the bar and the columns write is there, on the paper, the columns lower than the bars."""
    drawn = with_columns(worked(problem))
    assert drawn is not None
    above, below = bar(worked(problem), WIDTH), columns(worked(problem))
    for at, (scene, bars, under) in enumerate(zip(drawn.scenes, above.scenes, below.scenes, strict=True)):
        assert _written(scene.pieces) == _written(bars.pieces) + (_written(under.pieces) if at else [])
        digits = [piece.shape for piece in scene.pieces if isinstance(piece.shape, Words)]
        lowest = max(one.y + one.size / 2 for one in digits[: len(_written(bars.pieces))])
        assert all(one.y - one.size / 2 > lowest for one in digits[len(_written(bars.pieces)) :])
        assert all(0 < one.x < scene.width and one.y + one.size / 2 < scene.height for one in digits)
        assert max(scene.width, scene.height) <= MOST
    assert can_be_read(drawn.scenes, BOARD)


def test_on_a_board_both_are_drawn_and_on_a_page_the_bar_alone() -> None:
    """A page draws the columns beside the reasons; a film has one picture."""
    working = worked("? + 128 = 304")
    board, page = picture(working, None, BOARD), picture(working, None, PAGE)
    assert board is not None
    assert page is not None
    assert board == with_columns(working)
    assert page == bar(working)
    assert board.kind is page.kind is PictureKind.BAR


def test_a_part_too_small_for_a_bar_leaves_the_columns() -> None:
    """1 of 304 cannot be seen on a bar."""
    drawn = picture(worked("? + 1 = 304"), None, BOARD)
    assert drawn is not None
    assert drawn.kind is PictureKind.COLUMNS


def test_bars_of_another_width_keep_their_shares() -> None:
    """The parts make up the whole exactly, whatever the width."""
    scene = bar(worked("? + 128 = 304"), WIDTH).scenes[0]
    whole, *parts = (piece.shape for piece in scene.pieces if isinstance(piece.shape, Box))
    assert scene.width == WIDTH
    assert [part.width / whole.width for part in parts] == [Fraction(176, 304), Fraction(128, 304)]


def test_what_is_found_without_columns_has_a_bar_alone() -> None:
    """Wholes and pieces are not worked in columns."""
    assert with_columns(worked("9 - ? = 3 1/2")) is None
