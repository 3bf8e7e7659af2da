"""A recording is listened to here: nothing but silence and noise is followed, and what cannot be is told.

``seven_fifths.webm`` was spoken by flite 2.2 with its voice kal16, whose licence permits free use and
redistribution (flite's COPYING).
"""

from fractions import Fraction
from pathlib import Path

import numpy as np
import pytest

from onewhole.notations.sentences.listened import Listened, NumberHeard, PlainWord
from onewhole.presses.decoding import recording_in
from onewhole.presses.listening import hearing
from onewhole.presses.listening.hearing import NotHeard, at_16_000, can_listen, heard_part
from onewhole.presses.sound import Sound

#: The recognizer is an extra.
recognizer = pytest.mark.skipif(
    not can_listen(), reason="the recognizer is not installed: pip install onewhole[listening]"
)

STEPS: tuple[tuple[tuple[Listened, ...], ...], ...] = (
    ((PlainWord("take"), NumberHeard(("two", "fifths"), "2/5"), PlainWord("away")),),
)


def _said(count: str) -> tuple[tuple[tuple[Listened, ...], ...], ...]:
    """A step of a script: now we have three and so many fifths minus one and two fifths."""
    return (
        (
            (
                *map(PlainWord, ("now", "we", "have")),
                NumberHeard(("three", "and", count, "fifths"), f"3 and {count} fifths"),
                PlainWord("minus"),
                NumberHeard(("one", "and", "two", "fifths"), "1 2/5"),
            ),
            (*map(PlainWord, ("that", "is")), NumberHeard(("two", "and", "five", "fifths"), "2 5/5")),
        ),
    )


@recognizer
@pytest.mark.parametrize(("count", "told"), [("seven", 0), ("six", 1)])
def test_a_slip_of_the_tongue_is_heard(count: str, told: int) -> None:
    """Seven fifths were said (by flite's voice kal16): that is told where the board writes six."""
    sound = Path(__file__).with_name("seven_fifths.webm").read_bytes()
    part = heard_part(recording_in(sound, "it", at_most=Fraction(10)), _said(count))
    assert part.followed
    assert [slip.said for slip in part.slips] == [("three", "and", "seven", "fifths")] * told
    assert all(Fraction(1, 2) < slip.at < Fraction(3, 2) for slip in part.slips)


@recognizer
@pytest.mark.parametrize("loud", [0, 3000])
def test_silence_and_noise_are_not_followed(loud: int) -> None:
    """Silence and noise are not followed."""
    samples = np.random.default_rng(7).normal(0, 1 + loud, 32_000).clip(-32_768, 32_767)
    part = heard_part(Sound(samples.astype(np.int16), 16_000), STEPS)
    assert not part.followed
    assert part.slips == ()


@recognizer
def test_a_part_of_hours_is_refused_at_once() -> None:
    """A part of hours is refused at once."""
    with pytest.raises(NotHeard, match="longer than 20 minutes"):
        heard_part(Sound(np.zeros(3 * 3600 * 8, np.int16), 8), STEPS)


def test_without_a_recognizer_it_says_what_to_install(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without a recognizer it says what to install."""
    monkeypatch.setattr(hearing, "can_listen", lambda: False)
    with pytest.raises(NotHeard, match="not installed"):
        heard_part(Sound(np.zeros(16_000, np.int16), 16_000), STEPS)


@recognizer
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
