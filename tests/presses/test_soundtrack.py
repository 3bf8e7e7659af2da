"""The film's sound is as long as the film, and each voice is where its words are."""

import tracemalloc
from fractions import Fraction

import numpy as np
import pytest
from numpy.typing import NDArray

from onewhole.presses.sound import Sound
from onewhole.presses.soundtrack import RATE, soundtrack
from onewhole.presses.voice import spoken
from onewhole.walkthroughs.cue import Cue, Role
from onewhole.walkthroughs.timeline import Timed, TimedChapter, Timeline
from tests.kit.saying import says

SIX, FIVE = says("We need 6 sixths.", "Then 5 stay.")


def film(*, seconds: int = 10) -> Timeline:
    """Return a film: 6 is said at 1 s and 5 at 4 1/30 s; the second chapter starts at 6 s."""
    half = Fraction(1, 30)
    said = ((SIX, Fraction(1), Fraction(3)), (FIVE, 4 + half, 5 + half))
    one = Timed(Cue(Role.LINE, (SIX, FIVE)), Fraction(0), Fraction(6), said, ())
    again = ((SIX, Fraction(7), Fraction(9)),)
    two = Timed(Cue(Role.LINE, (SIX,)), Fraction(6), Fraction(seconds), again, ())
    chapters = (
        TimedChapter("1", "Problem 1", Fraction(0), Fraction(6), (one,)),
        TimedChapter("2", "Problem 2", Fraction(6), Fraction(seconds), (two,)),
    )
    return Timeline("Kites", chapters)


def flat(seconds: float, height: int, rate: int = RATE) -> Sound:
    """Return a sound that can be told by its height."""
    return Sound(np.full(int(seconds * rate), height, np.int16), rate)


def test_sentences_are_where_they_are_said() -> None:
    """Each sentence starts on its sample, also when it is said again; between them it is quiet."""
    track = soundtrack(film(), sentences={SIX: flat(1, 6), FIVE: flat(0.5, 5)})
    assert track.rate == RATE
    assert track.seconds == 10
    wanted = np.zeros(10 * RATE, np.int16)
    wanted[RATE : 2 * RATE] = wanted[7 * RATE : 8 * RATE] = 6
    wanted[4 * RATE + 1600 : 4 * RATE + 1600 + RATE // 2] = 5
    assert np.array_equal(track.samples, wanted)


def test_recordings_are_where_chapters_start() -> None:
    """A recording for a chapter starts with the chapter."""
    track = soundtrack(film(), chapters={"1": flat(6, 1), "2": flat(4, 2)})
    assert np.array_equal(track.samples, np.repeat(np.array([1, 2], np.int16), [6 * RATE, 4 * RATE]))


def test_two_together_never_wrap_round() -> None:
    """Where two loud voices meet, the sum is held at the loudest and does not turn over."""
    track = soundtrack(film(), sentences={SIX: flat(3, 30_000)}, chapters={"1": flat(2, 30_000)})
    assert int(track.samples.max()) == 32_767
    assert int(track.samples.min()) == 0


def test_another_rate_keeps_pitch_and_length() -> None:
    """A tone of 441 Hz at 22050 samples a second is still one at 48000, as long and as loud."""
    at = np.arange(22_050) / 22_050
    tone = Sound((10_000 * np.sin(2 * np.pi * 441 * at)).astype(np.int16), 22_050)
    part = soundtrack(film(), sentences={SIX: tone}).samples[RATE : 2 * RATE].astype(np.float64)
    heights = np.abs(np.fft.rfft(part))
    assert int(heights.argmax()) == 441
    assert abs(heights[441] / (RATE / 2) - 10_000) < 100


def test_the_synthetic_voice_is_heard() -> None:
    """The voice is between its start and its end, and nowhere else."""
    voice = spoken("We need six sixths.", words_a_minute=160)
    track = soundtrack(film(), sentences={FIVE: voice}).samples
    start = 4 * RATE + 1600
    end = start + int(voice.seconds * RATE) + 1
    assert not track[:start].any()
    assert int(np.abs(track[start:end].astype(np.int64)).max()) > 3000
    assert not track[end:].any()


def test_no_words_are_lost_at_the_end() -> None:
    """A voice that would go on after the film is refused."""
    with pytest.raises(ValueError, match="'2' goes on after the end of the film"):
        soundtrack(film(), chapters={"2": flat(5, 1)})


def test_a_silent_hour_takes_no_room() -> None:
    """A film without a voice is zeros; an hour is made and nothing is written to memory but the promise."""
    tracemalloc.start()
    track = soundtrack(film(seconds=3600))
    current, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert track.seconds == 3600
    assert not track.samples[:: RATE // 2].any()
    assert peak <= current + 100_000


@pytest.mark.parametrize("samples", [np.zeros((2, 2), np.int16), np.zeros(4, np.float32)])
def test_a_sound_is_one_row_of_whole_numbers(samples: NDArray[np.int16]) -> None:
    """Anything else is no sound."""
    with pytest.raises(ValueError, match="one row of 16-bit whole numbers"):
        Sound(samples, RATE)


def test_a_sound_has_a_rate() -> None:
    """No samples a second make no time."""
    with pytest.raises(ValueError, match="1 or more samples a second, not 0"):
        Sound(np.zeros(4, np.int16), 0)
