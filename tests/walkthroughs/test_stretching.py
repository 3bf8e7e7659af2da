"""A film is stretched to a voice: chapters as long as their recordings, on frames, without gaps."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.walkthroughs.cue import Cue, Fresh, Role
from onewhole.walkthroughs.stretching import stretched
from onewhole.walkthroughs.timeline import FRAMES, Move, Timed, TimedChapter, Timeline
from tests.kit.saying import says

FRAME = Fraction(1, FRAMES)
HALF = Fraction(1, 2)


def cue(start: int, frames: int, *, acts: int = 0, sentences: int = 1) -> Timed:
    """Return a cue: acts from its start on, sentences one after another, then quiet."""
    moves = (Move(Fresh(), start * FRAME, (start + acts) * FRAME),) if acts else ()
    each = frames // (sentences + 1)
    named = says(*(f"Sentence {number}." for number in range(sentences)))
    said = tuple(
        (
            named[number],
            (start + number * each) * FRAME,
            (start + (number + 1) * each) * FRAME,
        )
        for number in range(sentences)
    )
    one = Cue(Role.LINE, tuple(sentence for sentence, _, _ in said), (Fresh(),) * len(moves))
    return Timed(one, start * FRAME, (start + frames) * FRAME, said, moves)


def film(*chapters: tuple[tuple[int, int, int], ...]) -> Timeline:
    """Return a film; each cue is its frames, the frames of its acts, and its count of sentences."""
    made: list[TimedChapter] = []
    at = 0
    for number, cues in enumerate(chapters, 1):
        start, timed = at, []
        for frames, acts, sentences in cues:
            timed.append(cue(at, frames, acts=acts, sentences=sentences))
            at += frames
        made.append(TimedChapter(str(number), f"Problem {number}", start * FRAME, at * FRAME, tuple(timed)))
    return Timeline("Kites", tuple(made))


def lengths(chapter: TimedChapter) -> list[Fraction]:
    """Return how long each cue is."""
    return [timed.end - timed.start for timed in chapter.cues]


def hold(timeline: Timeline) -> None:
    """Hold what every film promises: no gaps, on frames, everything within its cue and in order."""
    at = Fraction(0)
    for chapter in timeline.chapters:
        assert chapter.start == at
        for timed in chapter.cues:
            assert timed.start == at
            inner = at
            for _, start, end in timed.said:
                assert inner <= start < end
                assert (start * FRAMES).denominator == (end * FRAMES).denominator == 1
                inner = end
            assert inner <= timed.end
            inner = at
            for move in timed.moves:
                assert inner <= move.start <= move.end <= timed.end
                assert (move.start * FRAMES).denominator == (move.end * FRAMES).denominator == 1
                inner = move.end
            at = timed.end
            assert (at * FRAMES).denominator == 1
        assert chapter.end == at


def test_a_chapter_grows_in_proportion() -> None:
    """Cues of 1 and 2 seconds become 2 and 4: a recording of 5 1/2 seconds and half a second of quiet."""
    new = stretched(film(((30, 6, 1), (60, 6, 2))), {"1": Fraction(11, 2)})
    hold(new)
    assert lengths(new.chapters[0]) == [2, 4]
    starts = [(start, end) for _, start, end in new.chapters[0].cues[1].said]
    assert starts == [(2, Fraction(10, 3)), (Fraction(10, 3), Fraction(14, 3))]
    assert [move.end - move.start for timed in new.chapters[0].cues for move in timed.moves] == [
        6 * FRAME
    ] * 2


def test_a_chapter_shrinks_its_quiet() -> None:
    """The second cue is all act and keeps its 2 seconds; the first gives what is needed."""
    new = stretched(film(((90, 15, 1), (60, 60, 1))), {"1": Fraction(3)})
    hold(new)
    assert lengths(new.chapters[0]) == [Fraction(3, 2), 2]


def test_acts_keep_their_time() -> None:
    """A recording shorter than the acts leaves the acts their time."""
    new = stretched(film(((90, 15, 1), (60, 60, 1))), {"1": HALF})
    hold(new)
    assert lengths(new.chapters[0]) == [HALF, 2]


def test_other_chapters_move_along() -> None:
    """A chapter without a recording keeps its length and every time within it, and starts later."""
    old = film(((30, 6, 1),), ((60, 6, 3),), ((30, 0, 1),))
    new = stretched(old, {"1": Fraction(3, 2), "3": HALF})
    hold(new)
    assert new.chapters[1].cues[0].said == tuple(
        (sentence, start + 1, end + 1) for sentence, start, end in old.chapters[1].cues[0].said
    )
    assert new.length == 5


def test_nothing_to_do() -> None:
    """Without recordings the film stays as it is."""
    old = film(((30, 6, 1), (45, 10, 2)), ((60, 6, 3),))
    assert stretched(old, {}) == old


def test_between_frames() -> None:
    """A recording that ends between frames is rounded up to the next."""
    assert stretched(film(((30, 0, 1),)), {"1": Fraction(10_001, 10_000)}).length == Fraction(46, 30)


def test_off_a_frame() -> None:
    """A film whose times are not on frames is refused."""
    broken = Timed(Cue(Role.LINE, ()), Fraction(0), Fraction(1, 7), (), ())
    with pytest.raises(ValueError, match="not a whole number of frames"):
        stretched(Timeline("", (TimedChapter("1", "", Fraction(0), Fraction(1, 7), (broken,)),)), {})


CUES = st.integers(1, 4).flatmap(
    lambda sentences: st.integers(2 * sentences + 2, 400).flatmap(
        lambda frames: st.tuples(st.just(frames), st.integers(0, frames), st.just(sentences))
    )
)


@given(st.lists(st.lists(CUES, min_size=1, max_size=5), min_size=1, max_size=3), st.data())
def test_any_film(chapters: list[list[tuple[int, int, int]]], data: st.DataObject) -> None:
    """Every film keeps its promises, and a chapter is as long as its recording asks, where its acts allow."""
    old = film(*(tuple(cues) for cues in chapters))
    asked = {
        chapter.label: data.draw(st.fractions(0, 80, max_denominator=48_000)) for chapter in old.chapters
    }
    new = stretched(old, asked)
    hold(new)
    for chapter, cues in zip(new.chapters, chapters, strict=True):
        length, wanted = chapter.end - chapter.start, asked[chapter.label] + HALF
        least = sum(max(acts, sentences) for _, acts, sentences in cues) * FRAME
        assert 0 <= length - max(least, wanted) < FRAME
    before = [move.end - move.start for one in old.chapters for each in one.cues for move in each.moves]
    after = [move.end - move.start for one in new.chapters for each in one.cues for move in each.moves]
    assert before == after
