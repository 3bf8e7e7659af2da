"""A film in step with the teacher's key: cues start where the board was stepped, to the frame."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from onewhole.walkthroughs.stepping import Stepped, in_step
from onewhole.walkthroughs.timeline import FRAMES
from tests.walkthroughs.test_stretching import film, hold

HALF_FRAME = Fraction(1, 2 * FRAMES)
NIGHT = film(((60, 20, 1),), ((30, 6, 1), (60, 40, 2), (90, 0, 3)), ((45, 10, 2),))


def test_cues_start_at_the_steps() -> None:
    """Steps after 1.52 and 2.5 seconds are the frames nearest to them; half a second of quiet ends it."""
    new = in_step(NIGHT, {"2": Stepped((Fraction("1.52"), Fraction("2.5")), Fraction("7.01"))})
    hold(new)
    _, chapter, _ = new.chapters
    starts = [cue.start - chapter.start for cue in chapter.cues]
    assert all(move.start == cue.start for cue in chapter.cues for move in cue.moves[:1])
    assert starts == [0, Fraction(46, FRAMES), Fraction(75, FRAMES)]
    assert chapter.end - chapter.start == Fraction(211 + 15, FRAMES)


def test_other_chapters_are_as_long_as_before() -> None:
    """Only the recorded chapter changes; the next one begins where it ends."""
    new = in_step(NIGHT, {"2": Stepped((Fraction(9), Fraction(10)), Fraction(20))})
    assert [one.end - one.start for one in new.chapters] == [2, Fraction(41, 2), Fraction(3, 2)]
    assert new.chapters[2].start == new.chapters[1].end


def test_sentences_are_spread_over_their_cue() -> None:
    """The sentences of a cue follow each other from its start to its end."""
    new = in_step(NIGHT, {"2": Stepped((Fraction(3), Fraction(6)), Fraction(12))})
    for cue in new.chapters[1].cues:
        assert cue.said[0][1] == cue.start
        assert cue.said[-1][2] == cue.end
        for (_, _, end), (_, start, _) in zip(cue.said, cue.said[1:], strict=False):
            assert end == start


def test_nothing_recorded_changes_nothing() -> None:
    """Without recordings the film is the same."""
    assert in_step(NIGHT, {}) == NIGHT


@pytest.mark.parametrize("steps", [(), (1,), (1, 2, 3)])
def test_as_many_steps_as_cues(steps: tuple[int, ...]) -> None:
    """Another number of steps than the chapter has is refused."""
    with pytest.raises(ValueError, match="cues"):
        in_step(NIGHT, {"2": Stepped(tuple(map(Fraction, steps)), Fraction(9))})


def test_steps_come_one_after_another() -> None:
    """Two steps at one time, and a step at the start, are refused."""
    for steps in ((2, 2), (0, 1), (3, 2)):
        with pytest.raises(ValueError, match="after another"):
            Stepped(tuple(map(Fraction, steps)), Fraction(9))


@given(
    st.lists(st.integers(1, 9000), min_size=2, max_size=2, unique=True).map(sorted),
    st.integers(0, 20_000),
)
def test_every_film_keeps_its_promises(steps: list[int], length: int) -> None:
    """However fast the key was pressed: no gaps, on frames, all within its cue; a step is met to half a
    frame unless it comes closer to the one before than the sentences need.
    """
    at = tuple(Fraction(step, 1000) for step in steps)
    new = in_step(NIGHT, {"2": Stepped(at, Fraction(length, 1000))})
    hold(new)
    chapter = new.chapters[1]
    first, second = (cue.start - chapter.start for cue in chapter.cues[1:])
    if at[0] * FRAMES >= 1:
        assert abs(first - at[0]) <= HALF_FRAME
    if (at[1] - at[0]) * FRAMES >= 3:
        assert abs(second - at[1]) <= HALF_FRAME
