"""What stands between two scenes."""

from fractions import Fraction

import pytest
from msgspec.structs import replace

from onewhole.number.quantity import whole
from onewhole.pictures.scene import Box, Hop, Look, Piece, Scene, Shape, Stroke, Wedge, Words
from onewhole.pictures.tween import tween
from tests.kit.scenes import box, discs, number_line, strips

F = Fraction


def _scene(*pieces: Piece) -> Scene:
    return Scene(F(180), F(90), pieces)


def _shapes(scene: Scene) -> list[Shape]:
    return [piece.shape for piece in scene.pieces]


@pytest.mark.parametrize("scene", [strips(), discs(), number_line()])
def test_both_ends_are_the_scenes(scene: Scene) -> None:
    """Nothing done is the scene before and everything done the scene after; no change changes nothing."""
    empty = replace(scene, pieces=(), descriptions=())
    assert tween(scene, empty, F(0)) == scene == tween(empty, scene, F(1))
    assert tween(scene, empty, F(1)) == empty == tween(empty, scene, F(0))
    assert tween(scene, scene, F(1, 3)) == scene


@pytest.mark.parametrize(
    ("before", "after", "third"),
    [
        (Box(F(0), F(0), F(6), F(3)), Box(F(3), F(9), F(12), F(3)), Box(F(1), F(3), F(8), F(3))),
        (
            Wedge(F(0), F(0), F(6), F(0), F(1)),
            Wedge(F(3), F(0), F(3), F(1, 2), F(1, 4)),
            Wedge(F(1), F(0), F(5), F(1, 6), F(3, 4)),
        ),
        (Stroke(F(0), F(0), F(3), F(3)), Stroke(F(3), F(0), F(9), F(0)), Stroke(F(1), F(0), F(5), F(2))),
        (Hop(F(0), F(9), F(3), F(3)), Hop(F(0), F(9), F(9), F(6)), Hop(F(0), F(9), F(5), F(4))),
        (
            Words(F(0), F(0), whole(7), F(3)),
            Words(F(3), F(3), whole(6), F(6)),
            Words(F(1), F(1), whole(7), F(4)),
        ),
    ],
)
def test_a_piece_moves_evenly(before: Shape, after: Shape, third: Shape) -> None:
    """After a third of the change a piece has gone a third of the way, exactly; old words still stand."""
    found = tween(_scene(Piece("a", before)), _scene(Piece("a", after)), F(1, 3))
    assert _shapes(found) == [third]


@pytest.mark.parametrize(
    ("shape", "third"),
    [
        (Box(F(3), F(0), F(6), F(3)), Box(F(3), F(0), F(2), F(3))),
        (Wedge(F(9), F(9), F(6), F(1, 4), F(1, 2)), Wedge(F(9), F(9), F(6), F(1, 4), F(1, 6))),
        (Stroke(F(3), F(0), F(6), F(3)), Stroke(F(3), F(0), F(4), F(1))),
        (Hop(F(9), F(9), F(3), F(6)), Hop(F(9), F(9), F(7), F(2))),
        (Words(F(9), F(9), whole(7), F(3)), None),
    ],
)
def test_a_piece_comes_by_growing(shape: Shape, third: Shape | None) -> None:
    """Boxes from the left, wedges by their sweep, strokes and hops from their start, words all at once."""
    came = _shapes(tween(_scene(), _scene(Piece("a", shape)), F(1, 3)))
    assert came == ([] if third is None else [third])


def test_a_piece_goes_half_way() -> None:
    """It stands whole until half of the change is done."""
    strip = box("a", 0, 0, 60)
    assert tween(_scene(strip), _scene(), F(49, 100)).pieces == (strip,)
    assert tween(_scene(strip), _scene(), F(1, 2)).pieces == ()


def test_looks_and_words_change_half_way() -> None:
    """The old look and number before half way, the new ones from there on."""
    before = _scene(box("a", 0, 0, 60, Look.FILLED), Piece("n", Words(F(9), F(9), whole(7), F(3))))
    after = _scene(box("a", 0, 0, 60, Look.STRUCK), Piece("n", Words(F(9), F(9), whole(6), F(3))))
    assert tween(before, after, F(1, 4)) == before
    assert tween(before, after, F(1, 2)) == after


def test_another_kind_of_shape_goes_and_comes() -> None:
    """A name that stands for another kind of shape: the old one until half way, then the new one grows."""
    before = _scene(box("a", 0, 0, 60))
    after = _scene(Piece("a", Stroke(F(0), F(0), F(8), F(4))))
    assert tween(before, after, F(1, 4)) == before
    assert _shapes(tween(before, after, F(3, 4))) == [Stroke(F(0), F(0), F(6), F(3))]


@pytest.mark.parametrize("share", [F(-1, 9), F(10, 9)])
def test_a_share_is_from_0_to_1(share: F) -> None:
    """There is nothing before the one scene or after the other."""
    with pytest.raises(ValueError, match="from 0 to 1"):
        tween(_scene(), _scene(box("a", 0, 0, 60)), share)


def test_scenes_of_two_sizes() -> None:
    """A scene does not change its size."""
    with pytest.raises(ValueError, match="another size"):
        tween(_scene(), Scene(F(90), F(90), ()), F(1, 2))
