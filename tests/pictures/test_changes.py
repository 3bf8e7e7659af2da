"""Where a scene differs from the one before it, and the marks that are drawn there."""

from fractions import Fraction

import pytest
from msgspec.structs import replace

from onewhole.number.quantity import whole
from onewhole.number.unit import ONE
from onewhole.pictures.caption import Count
from onewhole.pictures.changes import MOST, ROUND, changes, marks
from onewhole.pictures.choosing import picture
from onewhole.pictures.scene import Box, Look, Piece, Scene, Stroke, Words
from onewhole.statements.reading import read_statement
from onewhole.working.strategies.columns import COLUMNS
from onewhole.working.strategies.count_up import COUNT_UP
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.work import work


def box(name: str, x: int, look: Look = Look.FILLED) -> Piece:
    """A part of a strip."""
    return Piece(name, Box(Fraction(x), Fraction(20), Fraction(8), Fraction(8)), look)


def scene(*pieces: Piece) -> Scene:
    """A scene of pieces."""
    return Scene(Fraction(96), Fraction(60), pieces)


def test_nothing_differs() -> None:
    """The same scene twice has no mark."""
    assert changes(scene(box("a", 10)), scene(box("a", 10))) == ()


def test_a_piece_that_looks_otherwise_is_marked_round() -> None:
    """A part that is struck out, a little outside it; a part beside it that stays is not marked."""
    before = scene(box("a", 10), box("b", 40))
    after = scene(box("a", 10), box("b", 40, Look.STRUCK))
    assert changes(before, after) == (Box(40 - ROUND, 20 - ROUND, 8 + 2 * ROUND, 8 + 2 * ROUND),)


def test_what_moved_is_marked_where_it_was_and_where_it_is() -> None:
    """Far apart: two marks."""
    assert len(changes(scene(box("a", 10)), scene(box("a", 70)))) == 2


def test_what_went_is_marked_where_its_place_stays_empty() -> None:
    """Not under what came in its place, and not by itself: a mark round nothing tells nothing."""
    assert len(changes(scene(box("a", 10), box("c", 40)), scene(box("b", 70), box("c", 40)))) == 2
    assert changes(scene(box("a", 10), box("c", 40)), scene(box("b", 12), box("c", 40))) == (
        Box(12 - ROUND, 20 - ROUND, 8 + 2 * ROUND, 8 + 2 * ROUND),
    )
    assert changes(scene(box("a", 10), box("c", 40)), scene(box("c", 40))) == ()
    empty = box("room", 10, Look.DOTTED)
    assert len(changes(scene(box("a", 10), empty), scene(empty))) == 1


def test_no_mark_cuts_through_a_number() -> None:
    """A number on the edge of what is marked is inside the mark; one that is clear of it is not."""
    on_edge = Piece("over", Words(Fraction(14), Fraction(19), whole(7), Fraction(5)))
    below = Piece("below", Words(Fraction(14), Fraction(40), whole(7), Fraction(5)))
    (place,) = changes(scene(on_edge, below), scene(box("a", 10), on_edge, below))
    assert place.y < 19 - Fraction(5, 2)
    assert place.y + place.height < 32


def test_neighbors_have_one_mark() -> None:
    """Parts that touch are marked together, and so are more places than can be looked at."""
    before = scene(*(box(f"{x}", x) for x in (10, 18, 26)))
    after = scene(*(box(f"{x}", x, Look.STRUCK) for x in (10, 18, 26)))
    assert len(changes(before, after)) == 1
    places = [box(f"{x}", x) for x in range(4, 96, 18)]
    assert len(places) > MOST
    assert len(changes(scene(), scene(*places))) == 1


def test_words_count_only_where_nothing_else_differs() -> None:
    """A count that changes with what is drawn is not marked; a digit in columns is."""
    count = Piece("count", Words(Fraction(50), Fraction(50), Count(2, ONE), Fraction(4)))
    other = replace(count, shape=Words(Fraction(50), Fraction(50), Count(3, ONE), Fraction(4)))
    (place,) = changes(scene(box("a", 10), count), scene(box("a", 10, Look.STRUCK), other))
    assert place.y < 40
    digit = Piece("below", Words(Fraction(50), Fraction(50), whole(6), Fraction(6)))
    (place,) = changes(scene(), scene(digit))
    assert place.x < 50 < place.x + place.width


@pytest.mark.parametrize(
    ("strategy", "asked"),
    [(COLUMNS, "304 - 128"), (COUNT_UP, "7 2/6 - 3 5/6"), (REGROUP_FIRST, "7 2/6 - 3 5/6")],
    ids=lambda one: getattr(one, "key", one),
)
def test_marks_of_real_pictures_stay_on_the_paper(strategy: object, asked: str) -> None:
    """Every change of a picture has a mark, inside the scene, drawn as the corners of a frame."""
    drawn = picture(work(read_statement(asked), strategy))  # type: ignore[arg-type]
    assert drawn is not None
    seen = 0
    for before, after in zip(drawn.scenes, drawn.scenes[1:], strict=False):
        found = changes(before, after)
        assert bool(found) == (before.pieces != after.pieces)
        for piece in marks(found):
            seen += 1
            assert isinstance(piece.shape, Stroke)
            assert 0 < piece.shape.x < after.width
            assert 0 < piece.shape.y < after.height
        replace(after, pieces=(*after.pieces, *marks(found)))
    assert seen >= 8
