from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise

import numpy as np
import pytest
from msgspec.structs import replace

from onewhole.errors import Fault
from onewhole.pictures.changes import changes
from onewhole.presses.footer import Footer, paper_with_footer
from onewhole.presses.frames import HELD, STEP, FramePart, numbers, part_frames, parts
from onewhole.presses.sprites import Pixels, sprites
from onewhole.walkthroughs.cue import Act, Draw, Fresh, Place, Strike, Write
from onewhole.walkthroughs.rooms import foot, pointer
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import Move
from tests.kit.boards import PICTURE, WORDS, frames, kites, strips

FOOT = Footer("Kites", 1, 2, now=True)
KITE = Write("kite", "Kite tails", place=Place(100, 100, 600, 100))
ROOM = np.s_[100:200, 100:700]


def _part(*acts: tuple[Act, int, int], length: int = 200) -> FramePart:
    """Acts with their first and last frame."""
    return FramePart(FOOT, tuple(Move(act, Fraction(a, 30), Fraction(b, 30)) for act, a, b in acts), length)


def _boards(part: FramePart) -> dict[int, Pixels]:
    return {frame.number: frame.board.copy() for frame in part_frames(part, WORDS)}


def _ink(board: Pixels) -> int:
    return int((board[ROOM] != paper_with_footer(FOOT, Shape.WIDE)[ROOM]).any(axis=2).sum())


def test_drawn_while_something_moves_and_held_between() -> None:
    """Fifteen frames a second during a move, its end, the chapter's ends, and one at least in two seconds."""
    found = numbers(_part((KITE, 10, 19)))
    assert found[:7] == [0, 10, 12, 14, 16, 18, 19]
    assert found[-1] == 199
    assert max(b - a for a, b in pairwise(found)) <= HELD
    assert STEP * 15 == 30


def test_numbers_of_a_film_count_on_through_its_chapters() -> None:
    """Numbers grow from 0 to the film's last frame."""
    found = [frame.number for frame in frames(kites(), WORDS)]
    assert found == sorted(set(found))
    assert (found[0], found[-1]) == (0, 15 * 30 - 1)


def test_a_line_is_uncovered_from_left_to_right() -> None:
    """Ink grows while a line is written; what is there stays; at the end it is the whole sprite."""
    boards = _boards(_part((KITE, 0, 30)))
    shown = [boards[number] for number in range(0, 31, 2)]
    inks = [_ink(board) for board in shown]
    assert inks == sorted(inks)
    assert inks[0] == 0 < inks[5] < inks[-1]
    paper = paper_with_footer(FOOT, Shape.WIDE)
    half, end = (np.flatnonzero((shown[at] != paper).any(axis=(0, 2))).max() for at in (8, -1))
    assert half < end - 50
    (sprite,) = sprites([KITE])
    area = np.s_[sprite.y : sprite.y + sprite.height, sprite.x : sprite.x + sprite.width]
    share = sprite.pixels[..., 3:] / 255
    wanted = paper_with_footer(FOOT, Shape.WIDE)[area] * (1 - share) + sprite.pixels[..., :3] * share
    assert np.abs(shown[-1][area] - wanted).max() <= 1


@pytest.mark.more("desk/walkthrough/test_film.py")
def test_changed_says_where() -> None:
    """Outside the part that changed, a frame is as the one before it."""
    before: Pixels | None = None
    for frame in part_frames(parts(kites())[1], WORDS):
        if before is not None:
            differs = (frame.board != before).any(axis=2)
            if frame.changed:
                area = frame.changed
                differs[area.top : area.bottom, area.left : area.right] = False
            assert not differs.any(), frame.number
        before = frame.board.copy()


def test_struck_out_stays_to_be_read() -> None:
    """A line through it: there is more ink, and most of what was there is still as it was."""
    boards = _boards(_part((KITE, 0, 20), (Strike("kite"), 30, 50)))
    before, after = boards[20], boards[50]
    assert _ink(after) > _ink(before)
    same = (before[ROOM] == after[ROOM]).all(axis=2)
    written = (before[ROOM] != paper_with_footer(FOOT, Shape.WIDE)[ROOM]).any(axis=2)
    assert same[written].mean() > 0.7


def test_fresh_board_is_clean_and_keeps_the_foot() -> None:
    """After a wipe nothing stands on the board but its footer."""
    boards = _boards(_part((KITE, 0, 20), (Draw(strips(6, 2), PICTURE), 20, 30), (Fresh(), 40, 60)))
    assert (boards[60] == paper_with_footer(FOOT, Shape.WIDE)).all()
    assert (boards[40] != paper_with_footer(FOOT, Shape.WIDE)).any()


def test_a_picture_becomes_the_next() -> None:
    """After a change the board is as if the second scene alone had been drawn; midway it is neither."""
    first, second = Draw(strips(6, 2), PICTURE), Draw(strips(5, 3), PICTURE)
    changed = _boards(_part((first, 0, 20), (second, 30, 50)))
    alone = _boards(_part((second, 0, 20)))
    assert (changed[50] == alone[20]).all()
    assert (changed[40] != changed[30]).any()
    assert (changed[40] != changed[50]).any()


def test_an_act_at_the_end_of_a_chapter_is_done() -> None:
    """A line that is written until the very end stands there whole in the last frame."""
    ending = _boards(_part((KITE, 180, 200)))
    assert (ending[199] == _boards(_part((KITE, 0, 20)))[20]).all()


@pytest.mark.parametrize(
    ("act", "said"),
    [
        (Write("kite", "Kites"), "no place"),
        (Draw(strips(6)), "no place"),
        (Strike("kite"), "not on the board"),
    ],
)
def test_what_cannot_be_shown_is_a_fault(act: Act, said: str) -> None:
    """Something without a place, and a strike through nothing, are never passed over."""
    with pytest.raises(Fault, match=said):
        list(part_frames(_part((act, 0, 10)), WORDS))


def test_foot_tells_the_problem() -> None:
    """Opening, problems and closing: how many are begun of how many, and whether one is being worked."""
    footers = [(part.footer.at, part.footer.of, part.footer.now) for part in parts(kites())]
    assert footers == [(0, 1, False), (1, 1, True), (1, 1, False)]


def _footers() -> Iterator[Footer]:
    yield from (replace(FOOT, at=at) for at in (0, 1, 2))
    yield replace(FOOT, now=False)
    yield replace(FOOT, of=60)


def test_every_foot_looks_different() -> None:
    """A footer shows each thing it knows, inside its own strip."""
    for shape in Shape:
        looks = [paper_with_footer(footer, shape) for footer in _footers()]
        assert len({look.tobytes() for look in looks}) == len(looks)
        top = foot(shape).y
        assert all((look[:top] == looks[0][:top]).all() for look in looks)


def _told() -> FramePart:
    """Two cues: each writes a line, the second changes the picture too."""
    second = replace(KITE, name="tail", place=Place(100, 300, 600, 100))
    part = _part((KITE, 0, 20), (Draw(strips(6, 2), PICTURE), 20, 30), (second, 60, 80), length=200)
    changing = Draw(strips(6, 1), PICTURE, changes(strips(6, 2), strips(6, 1)))
    moves = (*part.moves, Move(changing, Fraction(2), Fraction(3)))
    bars = [pointer(Shape.WIDE, place.y, place.height) for place in (KITE.place, second.place) if place]
    spoken = ((0, None), (0, bars[0]), (60, None), (60, bars[1]), (140, None))
    return replace(part, moves=moves, spoken=spoken)


def test_the_line_that_is_spoken_is_marked() -> None:
    """A bar stands beside it, and beside no other line; dark, so that black and white shows it too."""
    boards = _boards(_told())
    for number, here, there in ((30, 150, 350), (90, 350, 150)):
        bar = boards[number][:, foot(Shape.WIDE).x + 2].max(axis=1)
        assert bar[here] < 80
        assert bar[there] > 200


def test_what_changes_in_the_picture_is_marked_until_the_next_cue() -> None:
    """The marks are there while the cue is told, and then the picture is as if it had none."""
    part = _told()
    boards = _boards(part)
    moves = [
        replace(move, act=replace(move.act, marks=())) if isinstance(move.act, Draw) else move
        for move in part.moves
    ]
    bare = _boards(replace(part, moves=tuple(moves)))
    room = np.s_[PICTURE.y : PICTURE.y + PICTURE.height, PICTURE.x : PICTURE.x + PICTURE.width]
    for number, marked in ((30, False), (74, True), (90, True), (199, False)):
        assert (boards[number][room] != bare[number][room]).any() == marked, number


def test_the_foot_says_whose_turn_it_is() -> None:
    """From the first frame of the turn to its last, its bar shorter every second; then the title is back."""
    part = replace(_part((KITE, 0, 10), length=160), turns=((30, 120, "Your turn"),))
    boards = _boards(part)
    assert {30, 60, 90, 120} <= boards.keys()
    clean = paper_with_footer(FOOT, Shape.WIDE)
    room = foot(Shape.WIDE)
    below = np.s_[room.y : room.y + room.height]
    signs = [int((boards[number][below] != clean[below]).any(axis=2).sum()) for number in (30, 60, 90)]
    assert signs[0] > signs[1] > signs[2] > 0
    assert np.array_equal(boards[120][below], clean[below])
    assert np.array_equal(boards[30][ROOM], boards[120][ROOM])
