"""A number whose pieces are cut again or joined: both strips are seen, one under the other."""

from collections.abc import Iterator

from onewhole.pictures.choosing import picture
from onewhole.pictures.picture import PictureKind
from onewhole.pictures.scene import Box, Look, Scene
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work
from tests.kit.drawn_laws import check, whole_size

LOWER = "number-2-"


def _renamed() -> Iterator[tuple[str, int, int]]:
    """Every fraction below one whole to twelfths, renamed to every other denominator that it has."""
    for bottom in range(2, 13):
        for top in range(1, bottom):
            for other in range(2, 13):
                if other != bottom and top * other % bottom == 0:
                    yield f"{top}/{bottom} = ?/{other}", top, top * other // bottom


def _parts(scene: Scene, *, lower: bool) -> list[Box]:
    return [
        piece.shape
        for piece in scene.pieces
        if piece.look is Look.FILLED
        and isinstance(piece.shape, Box)
        and piece.name.startswith(LOWER) == lower
    ]


def test_both_strips_are_seen_and_are_as_long() -> None:
    """As many parts as each fraction says, both from the same edge to the same edge, one under the other."""
    seen = 0
    for typed, top, new in _renamed():
        working = work(read_statement(typed), REGROUP_FIRST)
        drawn = picture(working, PictureKind.STRIPS)
        assert drawn is not None
        check(working, drawn, whole_size(drawn, working))
        upper, lower = (_parts(drawn.scenes[-1], lower=lower) for lower in (False, True))
        assert (len(upper), len(lower)) == (top, new), typed
        edges = {(min(box.x for box in row), max(box.x + box.width for box in row)) for row in (upper, lower)}
        assert len(edges) == 1, typed
        assert max(box.y + box.height for box in upper) < min(box.y for box in lower)
        seen += 1
    assert seen > 70


def test_the_first_scene_shows_one_strip() -> None:
    """What is to be found is not drawn before it is worked."""
    for typed in ("3/4 = ?/8", "6/8 = ?/4", "12/18 simplest"):
        drawn = picture(work(read_statement(typed), REGROUP_FIRST))
        assert drawn is not None
        assert _parts(drawn.scenes[0], lower=True) == []
        assert _parts(drawn.scenes[-1], lower=True) != []
