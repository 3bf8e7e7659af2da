"""A recording is listened to here: nothing but silence and noise is followed, and what cannot be is told."""

import numpy as np
import pytest

from onewhole.notations.sentences.listened import Listened, NumberHeard, PlainWord
from onewhole.presses.listening import hearing
from onewhole.presses.listening.hearing import NotHeard, at_16_000, heard_part
from onewhole.presses.sound import Sound

STEPS: tuple[tuple[tuple[Listened, ...], ...], ...] = (
    ((PlainWord("take"), NumberHeard(("two", "fifths"), "2/5"), PlainWord("away")),),
)


@pytest.mark.parametrize("loud", [0, 3000])
def test_silence_and_noise_are_not_followed(loud: int) -> None:
    """Silence and noise are not followed."""
    samples = np.random.default_rng(7).normal(0, 1 + loud, 32_000).clip(-32_768, 32_767)
    part = heard_part(Sound(samples.astype(np.int16), 16_000), STEPS)
    assert not part.followed
    assert part.slips == ()


def test_a_part_of_hours_is_refused_at_once() -> None:
    """A part of hours is refused at once."""
    with pytest.raises(NotHeard, match="longer than 20 minutes"):
        heard_part(Sound(np.zeros(3 * 3600 * 8, np.int16), 8), STEPS)


def test_without_a_recognizer_it_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without a recognizer it says what to install."""
    monkeypatch.setattr(hearing, "can_listen", lambda: False)
    with pytest.raises(NotHeard, match="not installed"):
        heard_part(Sound(np.zeros(16_000, np.int16), 16_000), STEPS)


def test_a_listener_that_ends_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    """A listener that ends is told."""
    monkeypatch.setattr(hearing, "MEMORY", 1 << 20)
    with pytest.raises(NotHeard, match="too much memory or time"):
        heard_part(Sound(np.zeros(16_000, np.int16), 16_000), STEPS)


def test_sound_at_another_rate_is_as_long() -> None:
    """Sound at another rate is as long."""
    tone = (8000 * np.sin(2 * np.pi * 440 * np.arange(48_000) / 48_000)).astype(np.int16)
    found = np.frombuffer(at_16_000(Sound(tone, 48_000)), np.int16)
    assert len(found) == 16_000
    assert int(np.argmax(np.abs(np.fft.rfft(found)))) == 440
