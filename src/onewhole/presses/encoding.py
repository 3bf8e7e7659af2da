"""Encoding: the frames of one chapter as H.264, and a film's sound as AAC, each in a file of its own."""

from collections.abc import Mapping
from fractions import Fraction
from pathlib import Path
from types import MappingProxyType

import av
import numpy as np
from av.video.reformatter import ColorRange, Colorspace
from numpy.typing import NDArray

from onewhole.languages.class_words import ClassWords
from onewhole.presses.frames import FramePart, part_frames
from onewhole.presses.reveal import Area
from onewhole.presses.sprites import Pixels
from onewhole.walkthroughs.timeline import FRAMES

TICK = Fraction(1, FRAMES)
#: Sound of a film: one channel, so many samples a second.
RATE = 48_000
#: A player can jump to one of so many frames.
KEY = 90
#: Of the encoder: lines stay sharp, and a film of 12 problems has about 4 MB. The next quicker preset with
#: better frames (superfast, 22) makes a file of two and a half times the size in the same time.
#: Frames stand in the file in the order in which they are shown.
SETTINGS: Mapping[str, str] = MappingProxyType({"preset": "veryfast", "crf": "28", "bf": "0"})
_BT709 = 1


def encode_part(part: FramePart, words: ClassWords, path: Path) -> None:
    """Draw and encode one chapter into an MP4 file without sound.

    Each frame is shown from its own time, a number of 1/30 seconds: where nothing moves, none is encoded.
    """
    with av.open(str(path), "w", format="mp4") as container:
        stream = container.add_stream("libx264", rate=FRAMES)
        stream.width, stream.height = width, height = part.shape.size
        stream.pix_fmt = "yuv420p"
        stream.time_base = TICK
        coder = stream.codec_context
        coder.time_base = TICK
        coder.thread_count = 1
        coder.gop_size = KEY
        coder.colorspace = coder.color_primaries = coder.color_trc = _BT709
        coder.color_range = ColorRange.MPEG
        coder.options = dict(SETTINGS)
        planes = np.zeros((height * 3 // 2, width), dtype=np.uint8)
        for frame in part_frames(part, words):
            if frame.changed:
                _convert(frame.board, frame.changed, planes)
            picture = av.VideoFrame.from_ndarray(planes, format="yuv420p")
            picture.pts, picture.time_base = frame.number, TICK
            picture.colorspace, picture.color_range = Colorspace.ITU709, ColorRange.MPEG
            container.mux(stream.encode(picture))
        container.mux(stream.encode(None))


def _convert(board: Pixels, area: Area, planes: NDArray[np.uint8]) -> None:
    """Bring the changed part of a board into the three planes of yuv420p, which lie one under another."""
    height, width = board.shape[:2]
    left, top = area.left // 16 * 16, area.top // 2 * 2
    right, bottom = min(-(-area.right // 16) * 16, width), min(-(-area.bottom // 2) * 2, height)
    wide, high = right - left, bottom - top
    piece = av.VideoFrame.from_ndarray(np.ascontiguousarray(board[top:bottom, left:right]), format="rgb24")
    made = piece.reformat(format="yuv420p", dst_colorspace=Colorspace.ITU709, dst_color_range=ColorRange.MPEG)
    planes[top:bottom, left:right] = _plane(made, 0)[:high, :wide]
    half = planes[height:].reshape(2, height // 2, width // 2)
    rows, columns = slice(top // 2, bottom // 2), slice(left // 2, right // 2)
    for at in (0, 1):
        half[at, rows, columns] = _plane(made, at + 1)[: high // 2, : wide // 2]


def _plane(frame: av.VideoFrame, at: int) -> NDArray[np.uint8]:
    plane = frame.planes[at]
    return np.frombuffer(memoryview(plane), dtype=np.uint8).reshape(-1, plane.line_size)


def encode_sound(samples: NDArray[np.int16], rate: int, path: Path) -> None:
    """Encode one channel of sound into an MP4 file."""
    with av.open(str(path), "w", format="mp4") as container:
        stream = container.add_stream("aac", rate=RATE)
        stream.codec_context.layout = "mono"
        stream.codec_context.bit_rate = 64_000
        stream.codec_context.options = {"aac_coder": "fast"}
        resampler = av.AudioResampler(format="fltp", layout="mono", rate=RATE, frame_size=1024)
        for start in range(0, len(samples), rate):
            sound = av.AudioFrame.from_ndarray(
                np.ascontiguousarray(samples[None, start : start + rate]), format="s16", layout="mono"
            )
            sound.rate, sound.pts, sound.time_base = rate, start, Fraction(1, rate)
            for each in resampler.resample(sound):
                container.mux(stream.encode(each))
        for each in resampler.resample(None):
            container.mux(stream.encode(each))
        container.mux(stream.encode(None))
