"""A recording tidied: as loud as EBU R 128 asks, without silence at its ends, without clicks of keys."""

from fractions import Fraction

import numpy as np
import pytest
from numpy.typing import NDArray

from onewhole.errors import InputError
from onewhole.presses.sound import Sound
from onewhole.presses.tidying import Tidy, loudness, tidied, tidy_named, trimmed_about

RATE = 48_000


def tone(seconds: float, loud: float, hertz: float = 997) -> NDArray[np.int16]:
    """A sine; ``loud`` is its peak."""
    at = np.arange(int(seconds * RATE)) / RATE
    return np.rint(loud * np.sin(2 * np.pi * hertz * at)).astype(np.int16)


def quiet(seconds: float) -> NDArray[np.int16]:
    """Nothing."""
    return np.zeros(int(seconds * RATE), np.int16)


def test_a_sine_of_full_scale_has_the_loudness_that_the_standard_prints() -> None:
    """ITU-R BS.1770-4, 2.5: a 997 Hz sine at 0 dB full scale in one front channel reads -3.01."""
    assert loudness(tone(5, 32_767)) == pytest.approx(-3.01, abs=0.02)
    assert loudness(quiet(2)) == -70


@pytest.mark.parametrize("loud", [300, 3000, 30_000])
def test_levelled_speech_is_as_loud_as_the_union_asks(loud: int) -> None:
    """EBU R 128: -23 LUFS, give or take half a unit; silence between words counts for nothing."""
    words = np.concatenate([tone(1.5, loud, 300), quiet(1), tone(2, loud, 700), quiet(1.5)])
    made = tidied(Sound(words, RATE), {Tidy.LEVEL})
    assert loudness(made.samples) == pytest.approx(-23, abs=0.5)
    assert len(made.samples) == len(words)


def test_a_single_loud_moment_is_never_clipped() -> None:
    """The highest sample stays 1 dB below full scale: EBU R 128."""
    words = tone(3, 200)
    words[RATE] = 20_000
    made = tidied(Sound(words, RATE), {Tidy.LEVEL})
    assert int(np.abs(made.samples.astype(int)).max()) <= 32_767 * 10 ** (-1 / 20) + 1


def test_silence_is_cut_off_at_both_ends_and_stays_within() -> None:
    """Three tenths of a second stay at each end."""
    words = np.concatenate([quiet(3), tone(1, 9000), quiet(2), tone(1, 9000), quiet(4)])
    assert tidied(Sound(words, RATE), {Tidy.TRIM}).seconds == pytest.approx(4.6, abs=0.03)


def test_a_click_in_a_pause_goes_and_words_stay() -> None:
    """What is short and alone is a key; a short sound near a word is part of it."""
    click = np.random.default_rng(3).normal(0, 8000, RATE // 100).astype(np.int16)
    words = np.concatenate(
        [tone(1, 9000), quiet(0.5), click, quiet(0.5), tone(1, 9000), quiet(0.05), click, quiet(1)]
    )
    made = tidied(Sound(words, RATE), {Tidy.CLICKS}).samples
    at = int(1.5 * RATE)
    assert not made[at : at + len(click)].any()
    rest = np.ones(len(words), bool)
    rest[at - RATE // 50 : at + RATE // 25] = False
    assert np.array_equal(made[rest], words[rest])


def test_silence_and_nothing_wished_stay_as_they_are() -> None:
    """No gain makes something of nothing."""
    still = Sound(quiet(1), RATE)
    assert not tidied(still, set(Tidy)).samples.any()
    assert tidied(still, ()) is still


def test_another_wish_is_refused_with_what_there_is() -> None:
    """Names are those that the command tells."""
    assert tidy_named("") == frozenset()
    with pytest.raises(InputError, match="cannot be done") as refused:
        tidy_named("level,louder")
    assert "level, trim, clicks" in str(refused.value.remedy)


def test_what_the_board_was_stepped_to_is_not_cut_off() -> None:
    """Silence goes at both ends, but for what lies between the first and the last step."""
    silence, words = np.zeros(2 * RATE, np.int16), np.full(RATE, 8000, np.int16)
    sound = Sound(np.concatenate((silence, words, silence)), RATE)
    made, cut = trimmed_about(sound, Fraction(5), Fraction(0))
    assert (float(cut), float(made.seconds)) == pytest.approx((1.7, 1.6), abs=0.03)
    made, cut = trimmed_about(sound, Fraction(1, 2), Fraction(4))
    assert (cut, made.seconds) == (Fraction(1, 2), Fraction(7, 2))
