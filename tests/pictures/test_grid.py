"""The hundred grid: columns for tenths, small squares for hundredths."""

import pytest

from onewhole.pictures.grid import grid
from onewhole.pictures.limits import NotDrawnError
from onewhole.pictures.scene import Box, Look
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from tests.kit.drawn import pictures
from tests.kit.drawn_laws import check, whole_size


def test_every_working_is_drawn_as_it_is_written() -> None:
    """Over the walk: counts agree with every line, names last, all lies on the paper."""
    drawn = pictures(grid)
    assert len(drawn) > 25
    for working, picture in drawn:
        check(working, picture, whole_size(picture, working))


def test_small_squares_are_square_and_equal() -> None:
    """3.45 shows 45 small squares of one size, each a hundredth of the large one."""
    scene = grid(work(read_statement("3.45 - 1.27"), REGROUP_FIRST)).scenes[0]
    large = next(p.shape for p in scene.pieces if p.name == "whole-1")
    small = [p.shape for p in scene.pieces if "part" in p.name and p.look is Look.FILLED]
    assert isinstance(large, Box)
    assert len(small) == 45
    assert {(box.width, box.height) for box in small if isinstance(box, Box)} == {
        (large.width / 10, large.width / 10)
    }


def test_tenths_are_whole_columns_and_are_cut_into_ten() -> None:
    """2.3 ? 2.27: three columns first, thirty small squares when both are counted in hundredths."""
    first, second, *_ = grid(work(read_statement("2.3 ? 2.27"), REGROUP_FIRST)).scenes
    assert sum(p.name.startswith("whole-3-part-") for p in first.pieces) == 3
    assert sum(p.name.startswith("whole-3-part-") for p in second.pieces) == 30


def test_other_parts_are_refused() -> None:
    """Sixths do not fit into a square of ten by ten."""
    with pytest.raises(NotDrawnError, match=r"6 equal parts"):
        grid(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST))
