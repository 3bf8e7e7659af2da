"""Strips: equal to the last fraction of a millimetre, and as many as the line says."""

from fractions import Fraction

import pytest

from onewhole.pictures.limits import LEAST_PART, MOST_PARTS, NotDrawnError
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Box, Look
from onewhole.pictures.strips import strips
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from tests.kit.drawn import pictures
from tests.kit.drawn_laws import check, whole_size


def test_every_working_is_drawn_as_it_is_written() -> None:
    """Over the walk: counts agree with every line, names last, all lies on the paper."""
    drawn = pictures(strips)
    assert len(drawn) > 100
    for working, picture in drawn:
        assert picture.kind is PictureKind.STRIPS
        check(working, picture, whole_size(picture, working))


def test_parts_of_a_strip_are_equal_and_not_too_narrow() -> None:
    """Twelve twelfths have one width exactly, and together the width of a strip."""
    picture = strips(work(read_statement("5 1/12 - 2 7/12"), REGROUP_FIRST))
    cut = [p.shape for p in picture.scenes[2].pieces if p.name.startswith("whole-5-part-")]
    widths = [shape.width for shape in cut if isinstance(shape, Box)]
    (whole,) = {
        p.shape.width for p in picture.scenes[2].pieces if p.name == "whole-1" and isinstance(p.shape, Box)
    }
    assert len(widths) == 12
    assert set(widths) == {whole / 12}
    assert min(widths) >= LEAST_PART


def test_the_opened_whole_keeps_its_place_and_what_is_taken_is_struck_then_gone() -> None:
    """7 2/6 - 3 5/6: whole 7 becomes six parts; three wholes and five sixths are struck; 3 3/6 stay."""
    scenes = strips(work(read_statement("7 2/6 - 3 5/6"), REGROUP_FIRST)).scenes
    before = next(p.shape for p in scenes[0].pieces if p.name == "whole-7")
    parts = [p.shape for p in scenes[2].pieces if p.name.startswith("whole-7-part-")]
    assert isinstance(before, Box)
    assert sum((part.width for part in parts if isinstance(part, Box)), Fraction(0)) == before.width
    struck = [p.name for p in scenes[3].pieces if p.look is Look.STRUCK]
    assert len([name for name in struck if "part" in name]) == 5
    assert len(struck) == 8
    looks = {p.name: p.look for p in scenes[5].pieces}
    assert {looks[name] for name in struck} == {Look.DOTTED}


@pytest.mark.parametrize("problem", ["3 2/13 - 1 5/13", "13 1/3 - 2 2/3", "2/3 ? 3/5"])
def test_what_cannot_be_counted_is_refused(problem: str) -> None:
    """More than 12 parts, more than 12 wholes, and a common denominator of 15."""
    assert MOST_PARTS == 12
    with pytest.raises(NotDrawnError, match=r"Choose another picture"):
        strips(work(read_statement(problem), REGROUP_FIRST))
