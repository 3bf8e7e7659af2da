"""Another rate and filters by FFmpeg, beside SciPy (reference library)."""

import numpy as np
import pytest
from scipy import signal

from onewhole.presses.resampling import filtered, resampled
from onewhole.presses.sound import Sound
from onewhole.presses.tidying import _HIGH, _SHELF


@pytest.mark.parametrize(("before", "after"), [(22_050, 48_000), (44_100, 16_000), (48_000, 16_000)])
def test_another_rate_is_as_another_library_makes_it(before: int, after: int) -> None:
    """A slow sweep of tones differs by less than three thousandths of its height, its ends left out."""
    at = np.arange(2 * before) / before
    tone = Sound((10_000 * np.sin(2 * np.pi * (200 + 300 * at) * at)).astype(np.int16), before)
    ours = resampled(tone, after)
    theirs = signal.resample_poly(tone.samples.astype(float), after // 50, before // 50)
    assert ours.rate == after
    assert len(ours.samples) == len(theirs)
    middle = slice(after // 10, -after // 10)
    assert np.abs(ours.samples[middle] - theirs[middle]).max() < 25


@pytest.mark.parametrize("length", [0, 1, 100, 48_000, 100_001])
def test_filters_are_as_another_library_makes_them(length: int) -> None:
    """The two filters of loudness, on noise of any length."""
    wave = np.random.default_rng(7).normal(size=length)
    ours = filtered(wave, 48_000, (_SHELF, _HIGH))
    assert np.allclose(ours, signal.sosfilt([_SHELF, _HIGH], wave) if length else wave, atol=1e-10)


def test_nothing_stays_nothing() -> None:
    """A sound without samples has none at another rate."""
    assert len(resampled(Sound(np.zeros(0, np.int16), 22_050), 48_000).samples) == 0
