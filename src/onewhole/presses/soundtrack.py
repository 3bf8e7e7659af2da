"""The sound of a whole film: each voice starts at its time on the timeline."""

from collections.abc import Iterator, Mapping
from fractions import Fraction
from types import MappingProxyType
from typing import Final

import numpy as np

from onewhole.notations.sentences.text import sentence_text
from onewhole.presses.resampling import resampled
from onewhole.presses.sound import Samples, Sound
from onewhole.sentences.sentence import Sentence
from onewhole.walkthroughs.timeline import Timeline

#: Samples a second of a film's sound.
RATE: Final = 48_000

_NONE: Mapping[str, Sound] = MappingProxyType({})
_NO_SENTENCES: Mapping[Sentence, Sound] = MappingProxyType({})


def soundtrack(
    timeline: Timeline,
    *,
    chapters: Mapping[str, Sound] = _NONE,
    sentences: Mapping[Sentence, Sound] = _NO_SENTENCES,
) -> Sound:
    """Return the film's sound, 48000 samples a second, exactly as long as the timeline.

    The sound of a chapter, named by its label, is placed where the chapter starts; the sound of a sentence
    wherever it is said. Elsewhere it is quiet; where two meet, they are heard together. Without
    any sounds the film is silent: zeros, which take no memory until they are read.

    Raises ValueError for a sound that would go on after the film's end: words would be lost.
    """
    track = np.zeros(_whole(timeline.length * RATE), np.int16)
    ready: dict[int, Samples] = {}
    for name, sound, start in _places(timeline, chapters, sentences):
        if id(sound) not in ready:
            ready[id(sound)] = resampled(sound, RATE).samples
        samples, first = ready[id(sound)], _whole(start * RATE)
        if first + len(samples) > len(track):
            raise ValueError(f"The sound of {name!r} goes on after the end of the film.")
        _put(track[first : first + len(samples)], samples)
    return Sound(track, RATE)


def _places(
    timeline: Timeline, chapters: Mapping[str, Sound], sentences: Mapping[Sentence, Sound]
) -> Iterator[tuple[str, Sound, Fraction]]:
    """Give every sound with a name for it and its time."""
    for chapter in timeline.chapters:
        if chapter.label in chapters:
            yield chapter.label, chapters[chapter.label], chapter.start
        for timed in chapter.cues:
            for sentence, start, _ in timed.said:
                if sentence in sentences:
                    yield sentence_text(sentence), sentences[sentence], start


def _whole(count: Fraction) -> int:
    if count.denominator != 1:
        raise ValueError("A time of the film is not on a frame.")
    return count.numerator


def _put(place: Samples, samples: Samples) -> None:
    """Mix samples in, a second at a time, clipped to 16 bits."""
    for at in range(0, len(samples), RATE):
        part = slice(at, at + RATE)
        both = place[part].astype(np.int32) + samples[part]
        place[part] = both.clip(-32_768, 32_767)
