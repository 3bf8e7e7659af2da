"""The synthetic voice speaks every sentence the same way each time, at the speed that is asked for."""

import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import espeakng_loader  # type: ignore[import-untyped] # has no types of its own
import numpy as np
import pytest

from onewhole.errors import InputError, OnewholeError
from onewhole.presses.voice import VoiceUnavailable, spoken

SENTENCE = "We cannot take five sixths from two sixths, so we open one whole."


def test_a_sentence_is_heard() -> None:
    """A sentence of thirteen words lasts some seconds and is not silent."""
    sound = spoken(SENTENCE, words_a_minute=120)
    assert sound.rate == 22_050
    assert 3 < sound.seconds < 12
    assert np.abs(sound.samples.astype(np.int64)).max() > 3000


def test_the_same_words_are_the_same_samples() -> None:
    """Whatever was spoken before, and at whatever speed, a sentence is the same."""
    first = spoken(SENTENCE, words_a_minute=120)
    spoken("Something else.", words_a_minute=200)
    again = spoken(SENTENCE, words_a_minute=120)
    assert np.array_equal(first.samples, again.samples)


def test_threads_take_turns() -> None:
    """Four threads at once hear what one thread hears."""
    words = [f"Problem {number}." for number in ("one", "two", "three", "four")] * 3
    alone = [spoken(each, words_a_minute=150).samples for each in words]
    with ThreadPoolExecutor(4) as pool:
        together = list(pool.map(lambda each: spoken(each, words_a_minute=150).samples, words))
    assert all(np.array_equal(one, other) for one, other in zip(alone, together, strict=True))


def test_faster_is_shorter() -> None:
    """More words a minute make a shorter sound."""
    lengths = [spoken(SENTENCE, words_a_minute=speed).seconds for speed in (80, 120, 160, 200)]
    assert lengths == sorted(lengths, reverse=True)
    assert len(set(lengths)) == 4


@pytest.mark.parametrize("speed", [79, 451])
def test_a_speed_that_no_voice_has(speed: int) -> None:
    """A speed that the voice cannot keep is refused, not changed in silence."""
    with pytest.raises(InputError, match=f"cannot speak {speed} words a minute. Choose 80 to 450"):
        spoken("Six.", words_a_minute=speed)


def test_no_package(monkeypatch: pytest.MonkeyPatch) -> None:
    """Without its package only the voice is missing."""
    monkeypatch.setitem(sys.modules, "espeakng_loader", None)
    with pytest.raises(VoiceUnavailable, match="espeakng-loader is not installed"):
        spoken("Six.", words_a_minute=120)


def test_no_data(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """A library without its data is refused, and the program goes on."""
    library = Path(espeakng_loader.get_library_path())
    (tmp_path / library.name).write_bytes(library.read_bytes())
    monkeypatch.setattr(espeakng_loader, "get_library_path", lambda: str(tmp_path / library.name))
    with pytest.raises(VoiceUnavailable, match="its data is missing"):
        spoken("Six.", words_a_minute=120)


def test_no_library(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Without its library the voice says so and what else can be done."""
    monkeypatch.setattr(espeakng_loader, "get_library_path", lambda: str(tmp_path / "none.so"))
    with pytest.raises(VoiceUnavailable) as refused:
        spoken("Six.", words_a_minute=120)
    assert isinstance(refused.value, OnewholeError)
    assert str(refused.value) == (
        "The synthetic voice cannot be used: its library cannot be loaded. "
        "Make the film without a voice, or with your own recording."
    )
