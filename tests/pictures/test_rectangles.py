"""Rectangles: cut one way, then each part again across."""

from onewhole.pictures.picture import Picture
from onewhole.pictures.rectangles import rectangles
from onewhole.pictures.scene import Box
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from tests.kit.drawn import pictures
from tests.kit.drawn_laws import check, whole_size


def test_every_working_is_drawn_as_it_is_written() -> None:
    """Over the walk: counts agree with every line, names last, all lies on the paper."""
    drawn = pictures(rectangles)
    assert len(drawn) > 100
    for working, picture in drawn:
        check(working, picture, whole_size(picture, working))


def test_cutting_again_stays_inside_each_part() -> None:
    """3/4 = ?/12: the fourths stay, and below each of them lie three twelfths exactly where it would lie."""
    picture = rectangles(work(read_statement("3/4 = ?/12"), REGROUP_FIRST))
    for name in ("whole-1-part-1", "whole-1-part-2", "whole-1-part-3"):
        (old,) = _boxes(picture, 0, name)
        assert _boxes(picture, -1, name) == [old]
        new = _boxes(picture, -1, f"number-2-{name}-")
        assert len(new) == 3
        assert {(box.x, box.width) for box in new} == {(old.x, old.width)}
        assert sum(box.height for box in new) == old.height
        assert min(box.y for box in new) > old.y + old.height


def test_sixteen_and_twenty_four_parts_fit() -> None:
    """10/12 and 7/8 are compared in twenty-fourths, all of one size."""
    picture = rectangles(work(read_statement("10/12 ? 7/8"), REGROUP_FIRST))
    boxes = [*_boxes(picture, 1, "whole-1-part"), *_boxes(picture, 1, "number-2-whole-1-part")]
    assert len(boxes) == 20 + 21
    assert len({box.width * box.height for box in boxes}) == 1


def _boxes(picture: Picture, scene: int, start: str) -> list[Box]:
    pieces = picture.scenes[scene].pieces
    return [p.shape for p in pieces if p.name.startswith(start) and isinstance(p.shape, Box)]
