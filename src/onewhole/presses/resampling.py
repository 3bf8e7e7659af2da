"""Sound at another rate, and through filters, by FFmpeg: a second at a time."""

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from typing import Final

import av
import numpy as np
from av.filter import Graph
from numpy.typing import NDArray

from onewhole.presses.sound import Sound

#: The filter of two zeros and two poles: its six coefficients as FFmpeg names them.
_BIQUAD: Final = "b0={}:b1={}:b2={}:a0={}:a1={}:a2={}"


def resampled(sound: Sound, rate: int) -> Sound:
    """Return a sound with so many samples a second, as long as before to one sample.

    >>> resampled(Sound(np.zeros(22_050, np.int16), 22_050), 48_000).seconds
    Fraction(1, 1)
    """
    if sound.rate == rate or not len(sound.samples):
        return Sound(sound.samples, rate)
    turn = av.AudioResampler(format="s16", layout="mono", rate=rate)
    parts = [part for frame in _frames(sound.samples, sound.rate, "s16") for part in turn.resample(frame)]
    return Sound(_joined([*parts, *turn.resample(None)]).astype(np.int16), rate)


def filtered(wave: NDArray[np.float64], rate: int, filters: Sequence[Sequence[float]]) -> NDArray[np.float64]:
    """Return a wave after one filter of second order after another: b0, b1, b2, a0, a1, a2 of each.

    >>> filtered(np.ones(4), 8_000, [(2, 0, 0, 1, 0, 0)]).tolist()
    [2.0, 2.0, 2.0, 2.0]
    """
    if not len(wave):
        return wave
    graph = Graph()
    last = graph.add_abuffer(sample_rate=rate, format="dblp", layout="mono", time_base=Fraction(1, rate))
    for one in filters:
        node = graph.add("biquad", _BIQUAD.format(*one))
        last.link_to(node)
        last = node
    last.link_to(graph.add("abuffersink"))
    graph.configure()
    found: list[av.AudioFrame] = []
    for frame in (*_frames(wave, rate, "dblp"), None):
        graph.push(frame)
        found += _pulled(graph)
    return _joined(found)


def _frames(
    samples: NDArray[np.int16] | NDArray[np.float64], rate: int, layout: str
) -> Iterator[av.AudioFrame]:
    for at in range(0, len(samples), rate):
        frame = av.AudioFrame.from_ndarray(samples[at : at + rate].reshape(1, -1), layout, "mono")
        frame.sample_rate, frame.pts, frame.time_base = rate, at, Fraction(1, rate)
        yield frame


def _pulled(graph: Graph) -> Iterator[av.AudioFrame]:
    """Yield what the filters have ready."""
    while True:
        try:
            frame = graph.pull()
        except (av.BlockingIOError, av.EOFError):
            return
        assert isinstance(frame, av.AudioFrame)
        yield frame


def _joined(frames: Iterable[av.AudioFrame]) -> NDArray[np.float64]:
    return np.concatenate([frame.to_ndarray()[0] for frame in frames])
