"""The board laid out: nothing overlaps, nothing leaves the board."""

import math
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
from onewhole.walkthroughs.cue import (
    BOARD,
    Act,
    Chapter,
    Cue,
    Draw,
    Fresh,
    Place,
    Role,
    Script,
    Strike,
    Write,
)
from onewhole.walkthroughs.layout import (
    ASIDE,
    LIGHTER,
    ORDINARY,
    PICTURE,
    SMALLEST,
    BoardError,
    laid_out,
    picture_place,
)
from onewhole.walkthroughs.measure import ROW

SCENE = Scene(Fraction(100), Fraction(70), ())
TALL = Scene(Fraction(20), Fraction(90), ())


def script_of(*acts: Act, label: str = "1") -> Script:
    """A script of one chapter, a cue an act."""
    return Script("Kites", (Chapter(label, "", tuple(Cue(Role.LINE, (), (act,)) for act in acts)),))


def acts_of(script: Script) -> list[Act]:
    """Everything that happens on the board."""
    return [act for chapter in script.chapters for cue in chapter.cues for act in cue.acts]


def boards(script: Script) -> Iterator[list[Write | Draw]]:
    """What stands on each board; of the pictures that follow each other, each is kept."""
    standing: list[Write | Draw] = []
    for act in acts_of(script):
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


def check_boards(script: Script) -> None:
    """Hold the law: all is inside the board, and no two things overlap but pictures in turn."""
    for board in boards(script):
        for thing in board:
            place = place_of(thing)
            assert min(place.x, place.y) >= 0
            assert min(place.width, place.height) > 0
            assert place.x + place.width <= BOARD[0]
            assert place.y + place.height <= BOARD[1]
        for one, other in combinations(board, 2):
            if not (isinstance(one, Draw) and isinstance(other, Draw)):
                assert apart(place_of(one), place_of(other))


LINES = st.one_of(
    st.text("kites and tails 12", min_size=1, max_size=70),
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


@given(st.lists(ACTS, max_size=30), st.lists(ACTS, max_size=12))
def test_no_two_things_overlap(first: list[Act], second: list[Act]) -> None:
    """On every board of any script, everything has a place inside, apart from everything else."""
    chapters = (*script_of(*first).chapters, *script_of(*second, label="2").chapters)
    check_boards(laid_out(Script("Kites", chapters)))


@given(st.lists(ACTS, max_size=30))
def test_nothing_is_lost(acts: list[Act]) -> None:
    """What the script writes is all written, in the same order; only what was added comes besides."""
    left = iter(acts_of(laid_out(script_of(*acts))))
    for act in acts:
        assert any(_same(act, made) for made in left)


def _same(act: Act, made: Act) -> bool:
    if isinstance(act, Write) and isinstance(made, Write):
        return (act.name, act.content) == (made.name, made.content)
    if isinstance(act, Draw) and isinstance(made, Draw):
        return act.scene == made.scene
    return act == made


def test_a_long_working_gets_a_fresh_board() -> None:
    """When room runs out the board is wiped; the problem stands small at the top, the picture beside it."""
    lines = [Write(f"line-{at}", read_expression("6 8/6 - 3 5/6"), leads=True) for at in range(12)]
    problem = Write("problem", read_expression("7 2/6 - 3 5/6"), label="3")
    made = acts_of(laid_out(script_of(Fresh(), problem, Draw(SCENE), *lines)))
    at = made.index(Fresh(), 1)
    again, picture, line = made[at + 1 : at + 4]
    assert isinstance(again, Write)
    assert isinstance(line, Write)
    assert (again.name, again.label) == ("problem", "3")
    assert place_of(again).height == math.ceil(ORDINARY * SMALLEST * ROW)
    assert picture == Draw(SCENE, picture_place(SCENE))
    assert line.name == "line-7"
    assert place_of(line).y > place_of(again).y


def test_every_chapter_has_a_fresh_board() -> None:
    """A chapter that does not wipe the board itself has it wiped, so that problems do not run together."""
    one = Chapter("1", "", (Cue(Role.LINE, (), (Write("problem", "a"),)),))
    made = laid_out(Script("", (one, one)))
    assert [len(board) for board in boards(made)] == [1, 1]


def test_what_was_wiped_is_written_again_to_be_struck_out() -> None:
    """A strike always goes through something that stands on the board."""
    made = acts_of(laid_out(script_of(Write("wrong", "5"), Fresh(), Strike("wrong"))))
    assert isinstance(made[2], Write)
    assert made[2].name == "wrong"
    assert made[3] == Strike("wrong")


def test_a_strike_through_nothing_is_a_fault() -> None:
    """A name that was never written is a fault of the script."""
    with pytest.raises(Fault, match="nothing called wrong was written"):
        laid_out(script_of(Strike("wrong")))


def test_a_wide_line_is_written_smaller() -> None:
    """A formula too wide for its column fills the column, lower; alone on the board it has more room."""
    wide = Write("problem", read_expression("123 45/100 + 234 56/100 + 345 67/100 + 456 78/100"))
    beside, _ = [
        act for act in acts_of(laid_out(script_of(wide, Draw(SCENE)))) if isinstance(act, Write | Draw)
    ]
    (alone,) = [act for act in acts_of(laid_out(script_of(wide))) if isinstance(act, Write)]
    assert SMALLEST * ORDINARY * ROW <= place_of(beside).height < place_of(alone).height
    assert place_of(alone).height == ORDINARY * ROW


def test_words_go_on_to_further_lines() -> None:
    """A long sentence beside a picture is not made smaller while two or three lines hold it."""
    words = Write("fact", "For 16 - 9, go by way of the ten: 16 - 6 = 10, then 10 - 3 = 7.", aside=True)
    placed, _ = acts_of(laid_out(script_of(words, Draw(SCENE))))
    assert isinstance(placed, Write)
    assert place_of(placed).height > ASIDE * ROW / LIGHTER


def test_a_long_formula_goes_on_in_rows() -> None:
    """Eleven numbers stand in rows; each row begins with a sign, and no bit is lost or written twice."""
    long = Write("problem", read_expression(" + ".join(["123 45/100"] * 11)), label="7")
    placed, _ = [
        act for act in acts_of(laid_out(script_of(long, Draw(SCENE)))) if isinstance(act, Write | Draw)
    ]
    assert isinstance(placed, Write)
    assert not isinstance(placed.content, str)
    assert len(placed.rows) > 1
    assert all(each[0] is Sign.PLUS for each in placed.rows[1:])
    assert tuple(bit for each in placed.rows for bit in each) == row(placed.content)
    assert place_of(placed).height >= len(placed.rows) * ORDINARY * SMALLEST * ROW


def test_a_line_too_long_is_refused() -> None:
    """More than a board holds is refused with the problem's number and what to do, never cut."""
    long = Write("problem", read_expression(" + ".join(["1 3/4"] * 220)))
    with pytest.raises(BoardError) as caught:
        laid_out(script_of(long, Draw(SCENE), label="7"))
    assert caught.value.chapter == "7"
    assert str(caught.value) == (
        "a line is too long for the board (problem 7). "
        "Take smaller numbers or fewer steps for this problem, or leave it out of the film."
    )


@given(st.integers(1, 400), st.integers(1, 400))
def test_a_picture_keeps_its_shape(width: int, height: int) -> None:
    """Its place is inside the room for pictures and has the scene's ratio, to a unit; it fills the room."""
    place = picture_place(Scene(Fraction(width), Fraction(height), ()))
    assert PICTURE.x <= place.x <= place.x + place.width <= PICTURE.x + PICTURE.width
    assert PICTURE.y <= place.y <= place.y + place.height <= PICTURE.y + PICTURE.height
    assert place.width == PICTURE.width or place.height == PICTURE.height
    assert abs(place.width * height - place.height * width) <= max(width, height)
