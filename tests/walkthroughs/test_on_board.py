"""A film on boards of either shape: one sound, one set of captions, and every act within its cue."""

from fractions import Fraction

import pytest

from onewhole.desk.walkthrough.film import FilmWishes, told
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.cue import Draw, Fresh, Write
from onewhole.walkthroughs.on_board import on_board
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import FRAMES, Timeline

SHEET = "title: Kites\n\n1. 7 2/6 - 3 5/6\n2. 304 - 128\n3. 3/4 + 2/3\n4. 5 ft 2 in - 2 ft 7 in\n"


@pytest.fixture(scope="module")
def timeline() -> Timeline:
    """A film before it is on boards."""
    return told(WorkedSheet(read_sheet(SHEET)), FilmWishes())[1]


@pytest.mark.parametrize("shape", Shape)
def test_times_stay(timeline: Timeline, shape: Shape) -> None:
    """Chapters, cues and sentences have the same times on every board, so sound and captions are one."""
    made = on_board(timeline, shape)
    for before, after in zip(timeline.chapters, made.chapters, strict=True):
        assert (before.start, before.end, before.title) == (after.start, after.end, after.title)
        for cue, shown in zip(before.cues, after.cues, strict=True):
            assert (cue.start, cue.end, cue.said) == (shown.start, shown.end, shown.said)
            written = [move.act.name for move in cue.moves if isinstance(move.act, Write)]
            names = iter([move.act.name for move in shown.moves if isinstance(move.act, Write)])
            assert all(name in names for name in written)


@pytest.mark.parametrize("shape", Shape)
def test_acts_have_places_and_come_in_their_cue(timeline: Timeline, shape: Shape) -> None:
    """Every act has its place, a time on a frame, and is done before its cue ends."""
    for chapter in on_board(timeline, shape).chapters:
        for cue in chapter.cues:
            assert cue.cue.acts == tuple(move.act for move in cue.moves)
            for move in cue.moves:
                assert cue.start <= move.start <= move.end <= cue.end
                assert (move.end * FRAMES).denominator == 1
                assert not isinstance(move.act, Write | Draw) or move.act.place is not None


@pytest.mark.parametrize("shape", Shape)
def test_every_chapter_has_a_fresh_board(timeline: Timeline, shape: Shape) -> None:
    """Problems do not run together."""
    for chapter in on_board(timeline, shape).chapters[1:]:
        acts = [move.act for cue in chapter.cues for move in cue.moves]
        assert isinstance(acts[0], Fresh)


def test_shapes_differ_in_places_only(timeline: Timeline) -> None:
    """The same lines in the same cues; a wide board is as long as an upright one."""
    wide, upright = (on_board(timeline, shape) for shape in Shape)
    assert (wide.length, wide.shape, upright.shape) == (upright.length, Shape.WIDE, Shape.UPRIGHT)
    assert wide.length > Fraction(60)
