"""The board laid out: nothing overlaps, nothing leaves the board, and type is as large as fits."""

from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.errors import Fault
from onewhole.number.quantity import whole
from onewhole.pictures.scene import Scene
from onewhole.statements.expression import plus
from onewhole.statements.reading import read_expression
from onewhole.statements.row import Sign, row
from onewhole.walkthroughs.cue import Act, Draw, Fresh, Place, Strike, Write
from onewhole.walkthroughs.layout import BoardError, laid_out, picture_place
from onewhole.walkthroughs.line_sizes import LIGHTER
from onewhole.walkthroughs.measure import ROW
from onewhole.walkthroughs.rooms import foot, least_type, shared
from onewhole.walkthroughs.shape import Shape

SCENE = Scene(Fraction(100), Fraction(70), ())
TALL = Scene(Fraction(20), Fraction(90), ())
SHAPES = st.sampled_from(Shape)


def acts_of(acts: list[Act], shape: Shape = Shape.WIDE, label: str = "1") -> list[Act]:
    """Everything that happens on the board of a chapter."""
    return [one.act for placed in laid_out(tuple(acts), shape, label) for one in placed]


def boards(acts: list[Act]) -> Iterator[list[Write | Draw]]:
    """What stands on each board; of the pictures that follow each other, each is kept."""
    standing: list[Write | Draw] = []
    for act in acts:
        if isinstance(act, Fresh):
            yield standing
            standing = []
        elif isinstance(act, Write | Draw):
            standing.append(act)
    yield standing


def place_of(thing: Write | Draw) -> Place:
    """The place, which must be there."""
    assert thing.place is not None
    return thing.place


def apart(one: Place, other: Place) -> bool:
    """Whether two places have no inner point in common."""
    return (
        one.x + one.width <= other.x
        or other.x + other.width <= one.x
        or one.y + one.height <= other.y
        or other.y + other.height <= one.y
    )


def check_boards(acts: list[Act], shape: Shape) -> None:
    """Hold the law: all is above the board's foot, and no two things overlap but pictures in turn."""
    for board in boards(acts):
        for thing in board:
            place = place_of(thing)
            assert min(place.x, place.y) >= 0
            assert min(place.width, place.height) > 0
            assert place.x + place.width <= shape.size[0]
            assert place.y + place.height <= foot(shape).y
        for one, other in combinations(board, 2):
            if not (isinstance(one, Draw) and isinstance(other, Draw)):
                assert apart(place_of(one), place_of(other))


LINES = st.one_of(
    st.lists(st.text("kitesandl12", min_size=1, max_size=7), min_size=1, max_size=10).map(" ".join),
    st.builds(lambda top, more: plus(read_expression(f"3 {top}/6"), whole(more)), *[st.integers(0, 999)] * 2),
)
WRITES = st.builds(
    Write,
    st.sampled_from(["problem", "a", "b", "c"]),
    LINES,
    label=st.sampled_from(["", "1", "12"]),
    leads=st.booleans(),
    aside=st.booleans(),
    heading=st.booleans(),
)
ACTS = st.one_of(WRITES, WRITES, WRITES, st.builds(Draw, st.sampled_from([SCENE, TALL])), st.just(Fresh()))


@given(st.lists(ACTS, max_size=20), SHAPES)
def test_no_two_things_overlap(acts: list[Act], shape: Shape) -> None:
    """On every board of any chapter, everything has a place inside, apart from everything else."""
    check_boards(acts_of(acts, shape), shape)


@given(st.lists(ACTS, max_size=20), SHAPES)
def test_nothing_is_lost(acts: list[Act], shape: Shape) -> None:
    """What the script writes is all written, in the same order; only what was added comes besides."""
    placed = laid_out(tuple(acts), shape, "1")
    assert len(placed) == len(acts)
    for act, made in zip(acts, placed, strict=True):
        assert [one.more for one in made] == [True] * (len(made) - 1) + [False]
        assert _same(act, made[-1].act)


def _same(act: Act, made: Act) -> bool:
    if isinstance(act, Write) and isinstance(made, Write):
        return (act.name, act.content) == (made.name, made.content)
    if isinstance(act, Draw) and isinstance(made, Draw):
        return act.scene == made.scene
    return act == made


@pytest.mark.parametrize("shape", Shape)
def test_a_long_working_gets_a_fresh_board(shape: Shape) -> None:
    """When room runs out the board is wiped; the problem stands at the top again, the picture beside it."""
    lines = [Write(f"line-{at}", read_expression("6 8/6 - 3 5/6"), leads=True) for at in range(18)]
    problem = Write("problem", read_expression("7 2/6 - 3 5/6"), label="3")
    made = acts_of([Fresh(), problem, Draw(SCENE), *lines], shape)
    at = made.index(Fresh(), 1)
    again, picture, line = made[at + 1 : at + 4]
    assert isinstance(again, Write)
    assert isinstance(picture, Draw)
    assert isinstance(line, Write)
    assert (again.name, again.label) == ("problem", "3")
    assert picture == made[2]
    assert place_of(line).y > place_of(again).y
    assert place_of(line).height >= least_type(shape) * ROW


@pytest.mark.parametrize("shape", Shape)
def test_few_lines_are_written_large_and_many_smaller(shape: Shape) -> None:
    """The type is the largest with which all of them stand there; never below the least."""
    heights = []
    for count in (1, 5, 8):
        lines = [Write(f"line-{at}", read_expression("6 8/6 - 3 5/6"), leads=True) for at in range(count)]
        made = [act for act in acts_of([*lines, Draw(SCENE)], shape) if isinstance(act, Write)]
        heights.append(place_of(made[0]).height)
    assert heights[0] >= heights[1] >= heights[2] >= least_type(shape) * ROW
    assert heights[0] > heights[2]


@pytest.mark.parametrize("shape", Shape)
def test_a_board_is_filled(shape: Shape) -> None:
    """A problem, three lines and a picture take two thirds of the board's height, or of its width."""
    lines = [Write(f"line-{at}", read_expression("6 8/6 - 3 5/6"), leads=True) for at in range(4)]
    made = [act for act in acts_of([*lines, Draw(SCENE)], shape) if isinstance(act, Write | Draw)]
    across = max(place_of(one).x + place_of(one).width for one in made) - min(place_of(one).x for one in made)
    down = max(place_of(one).y + place_of(one).height for one in made) - min(place_of(one).y for one in made)
    assert across > shape.size[0] * Fraction(9, 10)
    assert down > shape.size[1] * Fraction(2, 3)


def test_side_by_side_and_above_each_other() -> None:
    """On a wide board the picture stands to the right of the lines, on an upright one below them."""
    acts: list[Act] = [Write("problem", read_expression("7 2/6 - 3 5/6")), Draw(SCENE)]
    line, picture = (act for act in acts_of(acts, Shape.WIDE) if isinstance(act, Write | Draw))
    assert place_of(picture).x >= place_of(line).x + place_of(line).width
    line, picture = (act for act in acts_of(acts, Shape.UPRIGHT) if isinstance(act, Write | Draw))
    assert place_of(picture).y >= place_of(line).y + place_of(line).height


@pytest.mark.parametrize("shape", Shape)
def test_every_way_to_share_a_board_is_inside(shape: Shape) -> None:
    """Lines and picture stand above the foot, apart, whichever share the picture has."""
    for way in shared(shape):
        assert way.picture is not None
        assert apart(way.lines, way.picture)
        for place in (way.lines, way.picture):
            assert 0 < place.x < place.x + place.width < shape.size[0]
            assert 0 < place.y < place.y + place.height <= foot(shape).y


def test_what_was_wiped_is_written_again_to_be_struck_out() -> None:
    """A strike always goes through something that stands on the board."""
    made = acts_of([Write("wrong", "5"), Fresh(), Strike("wrong")])
    assert isinstance(made[2], Write)
    assert made[2].name == "wrong"
    assert made[3] == Strike("wrong")


def test_a_strike_through_nothing_is_a_fault() -> None:
    """A name that was never written is a fault of the script."""
    with pytest.raises(Fault, match="nothing called wrong was written"):
        acts_of([Strike("wrong")])


@pytest.mark.parametrize("shape", Shape)
def test_words_go_on_to_further_lines(shape: Shape) -> None:
    """A long sentence goes on in further lines, and is never smaller than can be read."""
    words = Write("fact", "For 16 - 9, go by way of the ten: 16 - 6 = 10, then 10 - 3 = 7.", aside=True)
    placed, _ = acts_of([words, Draw(SCENE)], shape)
    assert isinstance(placed, Write)
    assert place_of(placed).height > least_type(shape) * ROW / LIGHTER


@pytest.mark.parametrize("shape", Shape)
def test_a_long_formula_goes_on_in_rows(shape: Shape) -> None:
    """Eleven numbers stand in rows; each row begins with a sign, and no bit is lost or written twice."""
    long = Write("problem", read_expression(" + ".join(["123 45/100"] * 11)), label="7")
    placed, _ = [act for act in acts_of([long, Draw(SCENE)], shape) if isinstance(act, Write | Draw)]
    assert isinstance(placed, Write)
    assert not isinstance(placed.content, str)
    assert len(placed.rows) > 1
    assert all(each[0] is Sign.PLUS for each in placed.rows[1:])
    assert tuple(bit for each in placed.rows for bit in each) == row(placed.content)
    assert place_of(placed).height >= len(placed.rows) * least_type(shape) * ROW


def test_a_line_too_long_is_refused() -> None:
    """More than a board holds is refused with the problem's number and what to do, never cut."""
    long = Write("problem", read_expression(" + ".join(["1 3/4"] * 220)))
    with pytest.raises(BoardError) as caught:
        acts_of([long, Draw(SCENE)], label="7")
    assert caught.value.chapter == "7"
    assert str(caught.value) == (
        "a line is too long for the board (problem 7). "
        "Take smaller numbers or fewer steps for this problem, or leave it out of the film."
    )


@given(st.integers(1, 400), st.integers(1, 400))
def test_a_picture_keeps_its_shape(width: int, height: int) -> None:
    """Its place is inside the room for pictures and has the scene's ratio, to a unit; it fills the room."""
    room = Place(980, 150, 880, 750)
    place = picture_place(Scene(Fraction(width), Fraction(height), ()), room)
    assert room.x <= place.x <= place.x + place.width <= room.x + room.width
    assert room.y <= place.y <= place.y + place.height <= room.y + room.height
    assert place.width == room.width or place.height == room.height
    assert abs(place.width * height - place.height * width) <= max(width, height)
