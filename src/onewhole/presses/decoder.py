"""The process that decodes a recording for `decoding`.

On standard output come pieces of sound (four bytes that say how many follow, then 16-bit samples of one
channel), and after a piece of no length how it ended: one line, the name of an `Ending` and a number.
"""

import os
import sys
from collections.abc import Callable
from contextlib import closing
from enum import Enum, auto
from io import SEEK_END, BytesIO
from pathlib import Path
from typing import IO, Final

import av
from av.audio.frame import AudioFrame
from av.container import InputContainer
from av.error import FFmpegError

from onewhole.presses.limited import end_with_parent, read
from onewhole.presses.named_file import opened

#: Samples a second of every recording once it is read.
RATE: Final = 48_000
#: What is taken for a recording of a voice: samples a second, channels, and the seconds of one frame. Codecs
#: have frames of at most 8.2 s (FLAC: 65,535 samples, RFC 9639); the rates and channels are our own choice.
RATES: Final = range(8_000, 192_001)
CHANNELS: Final = range(1, 9)
LONGEST_FRAME: Final = 10
#: Container formats that are opened; never a playlist that points to other files.
ONLY: Final = {
    "format_whitelist": "wav,matroska,webm,mov,mp4,m4a,ogg,flac,mp3,aac",
    "protocol_whitelist": "file",
}
#: Samples that are sent at once, at most.
_PIECE: Final = RATE


class Ending(Enum):
    """How decoding ended; beside it stands a number."""

    WHOLE = auto()
    CUT = auto()
    NO_SOUND = auto()
    TOO_LONG = auto()
    DAMAGED = auto()
    #: The number: the millionths of a second that the file says it lasts.
    SHORTER = auto()
    #: The number: samples a second.
    RATE = auto()
    #: The number: channels.
    CHANNELS = auto()
    FRAME = auto()


class _Ended(Exception):
    def __init__(self, ending: Ending, number: int = 0) -> None:
        super().__init__(ending, number)
        self.ending, self.number = ending, number


def decode(file: IO[bytes], most: int, send: Callable[[bytes], None]) -> tuple[Ending, int]:
    """Decode the first sound of a file; send its samples as they come, until more than `most` are there."""
    if _cut(file):
        return Ending.CUT, 0
    try:
        found = av.open(file, "r", options=ONLY)
    except (FFmpegError, OSError, ValueError):
        return Ending.NO_SOUND, 0
    with closing(found):
        try:
            return _decoded(found, most, send)
        except _Ended as ended:
            return ended.ending, ended.number


def _decoded(found: InputContainer, most: int, send: Callable[[bytes], None]) -> tuple[Ending, int]:
    if not found.streams.audio:
        raise _Ended(Ending.NO_SOUND)
    stream = found.streams.audio[0]
    claimed = found.duration or 0
    if claimed * RATE > (most + RATE) * 1_000_000:
        raise _Ended(Ending.TOO_LONG)
    _check(stream.codec_context.sample_rate, stream.codec_context.channels)
    turn = av.AudioResampler(format="s16", layout="mono", rate=RATE)
    sent = 0

    def heard(frame: AudioFrame | None) -> None:
        nonlocal sent
        for part in turn.resample(frame):
            samples = bytes(part.planes[0])[: 2 * part.samples]
            for at in range(0, len(samples), 2 * _PIECE):
                send(samples[at : at + 2 * _PIECE])
            sent += part.samples
        if sent > most:
            raise _Ended(Ending.TOO_LONG)

    try:
        for frame in found.decode(stream):
            _check(frame.sample_rate, frame.layout.nb_channels)
            if frame.samples > LONGEST_FRAME * frame.sample_rate:
                raise _Ended(Ending.FRAME)
            heard(frame)
        heard(None)
    except (FFmpegError, OSError, ValueError):
        raise _Ended(Ending.DAMAGED) from None
    if sent * 1_000_000 < (claimed - 1_000_000) * RATE:
        raise _Ended(Ending.SHORTER, claimed)
    return Ending.WHOLE, 0


def _check(rate: int, channels: int) -> None:
    """End the reading of what is no recording of a voice; 0 is not known yet."""
    if rate and rate not in RATES:
        raise _Ended(Ending.RATE, rate)
    if channels and channels not in CHANNELS:
        raise _Ended(Ending.CHANNELS, channels)


def _cut(file: IO[bytes]) -> bool:
    """Whether a WAV file says that it is longer than it is; one that was not told its size says -1."""
    head, length = file.read(8), file.seek(0, SEEK_END)
    file.seek(0)
    size = int.from_bytes(head[4:8], "little")
    return head[:4] == b"RIFF" and size != 0xFFFF_FFFF and size + 7 > length


def decode_for_parent() -> None:
    """Decode for `decoding`: `most` samples, and a path; without one, bytes come in, how many first."""
    most, *path = sys.argv[1:]
    file: IO[bytes] = opened(Path(path[0])) if path else BytesIO(read(int.from_bytes(read(8), "little")))
    end_with_parent()
    with file:
        ending, number = decode(file, int(most), _send)
    _send(b"")
    sys.stdout.buffer.write(f"{ending.name} {number}\n".encode())
    sys.stdout.buffer.flush()
    os._exit(0)  # nothing is left to clear away, and a thread still waits


def _send(samples: bytes) -> None:
    sys.stdout.buffer.write(len(samples).to_bytes(4, "little") + samples)
