"""A sound file decoded: a recording goes in, 48000 samples a second of one channel come out."""

from contextlib import closing
from fractions import Fraction
from io import SEEK_END, BytesIO
from pathlib import Path
from typing import IO, Final

import av
import numpy as np
from av.container import InputContainer
from av.error import FFmpegError

from onewhole.errors import InputError
from onewhole.presses.sound import Samples, Sound

#: Samples a second of every recording once it is read, and the most seconds that are read.
RATE, LONGEST = 48_000, 3600
#: A recording whose loudness (root of the mean square, of 32767) stays below this is silent: 60 dB down.
QUIET: Final = 33
#: A recording is not shorter than this, in seconds.
SHORTEST: Final = Fraction(1, 2)

#: Container formats that are opened; never a playlist that points to other files.
_ONLY: Final = {
    "format_whitelist": "wav,matroska,webm,mov,mp4,m4a,ogg,flac,mp3,aac",
    "protocol_whitelist": "file",
}
_AGAIN: Final = "Record it again, or save it again as WAV, WebM or M4A."


class RecordingRefused(InputError):
    """A recording or its times that cannot be used. ``mistakes`` are all that were found, in their order."""

    mistakes: tuple["RecordingRefused", ...] = ()


def recording(path: Path, *, at_least: Fraction = SHORTEST, at_most: Fraction = Fraction(LONGEST)) -> Sound:
    """Return a sound file (WAV, WebM, M4A; AAC or Opus within) as one channel, 48000 samples a second.

    Reading ends as soon as more than ``at_most`` seconds are there, so a file of any length is refused
    without filling the memory: an hour takes 350 MB. The file is only read.

    Raises RecordingRefused for a file that is missing, is not sound, is damaged or cut short, is silent, is
    shorter than ``at_least`` seconds or longer than ``at_most``: what is left of an hour for it.
    """
    name = str(path)
    if not path.is_file():
        what = "This is a folder, not a recording" if path.is_dir() else "There is no such recording"
        raise RecordingRefused(what, file=name, remedy="Check the name of the file.")
    try:
        file = path.open("rb")
    except OSError as error:
        raise _no_sound(name) from error
    with file:
        return _read(file, name, at_least, at_most)


def recording_in(
    content: bytes, name: str, *, at_least: Fraction = SHORTEST, at_most: Fraction = Fraction(LONGEST)
) -> Sound:
    """Return a sound file that is held in memory, as :func:`recording`; ``name`` is what refusals call it.

    Nothing is written to the disk. ``at_most`` is what one recording may last.
    """
    return _read(BytesIO(content), name, at_least, at_most, at_most)


def _read(
    file: IO[bytes], name: str, at_least: Fraction, at_most: Fraction, longest: Fraction = Fraction(LONGEST)
) -> Sound:
    if _cut(file):
        what = "The recording is damaged: it ends before it should"
        raise RecordingRefused(what, file=name, remedy=_AGAIN)
    try:
        opened = av.open(file, "r", options=_ONLY)
    except (FFmpegError, OSError, ValueError) as error:
        raise _no_sound(name) from error
    with closing(opened):
        samples = _decoded(opened, name, at_most, longest)
    sound = Sound(samples, RATE)
    if sound.seconds < at_least:
        raise too_short(name, sound.seconds, at_least)
    if silent(sound):
        raise RecordingRefused(
            "The recording is silent", file=name, remedy="Check the microphone and record it again."
        )
    return sound


def silent(sound: Sound) -> bool:
    """Whether nothing is heard in any tenth of a second.

    >>> silent(Sound(np.zeros(9600, np.int16), RATE)), silent(Sound(np.full(9600, 99, np.int16), RATE))
    (True, False)
    """
    step = sound.rate // 10
    for at in range(0, len(sound.samples), step):
        part = sound.samples[at : at + step].astype(np.int64)
        if int((part * part).sum()) >= QUIET * QUIET * len(part):
            return False
    return True


def too_short(name: str, seconds: Fraction, needed: Fraction) -> RecordingRefused:
    """Return the refusal of a recording that is shorter than needed."""
    return RecordingRefused(
        f"The recording lasts {said(seconds)}, and {said(needed)} or more are needed",
        file=name,
        remedy="Record it again and wait a moment before you stop.",
    )


def said(seconds: Fraction) -> str:
    """Return seconds in words, to a tenth below a minute.

    >>> said(Fraction(1, 2)), said(Fraction(754))
    ('0.5 seconds', '12 min 34 s')
    """
    if seconds < 60:
        tenths = round(seconds * 10)
        return f"{tenths // 10}.{tenths % 10} seconds"
    whole = int(seconds)
    return f"{whole // 60} min {whole % 60} s"


def _decoded(opened: InputContainer, name: str, at_most: Fraction, longest: Fraction) -> Samples:
    """Decode the first audio stream, counting the samples as they come."""
    if not opened.streams.audio:
        raise _no_sound(name)
    stream = opened.streams.audio[0]
    claimed = _claimed(opened)
    if claimed > at_most + 1:
        raise _too_long(name, at_most, longest)
    most = int(at_most * RATE)
    kept = bytearray()
    turn = av.AudioResampler(format="s16", layout="mono", rate=RATE)
    try:
        for frame in opened.decode(stream):
            for part in turn.resample(frame):
                kept += part.to_ndarray().tobytes()
            if len(kept) > 2 * most:
                raise _too_long(name, at_most, longest)
        for part in turn.resample(None):
            kept += part.to_ndarray().tobytes()
    except (FFmpegError, OSError, ValueError) as error:
        if isinstance(error, RecordingRefused):
            raise
        raise RecordingRefused(
            f"The recording is damaged after {said(Fraction(len(kept), 2 * RATE))}", file=name, remedy=_AGAIN
        ) from error
    there = Fraction(len(kept), 2 * RATE)
    if there < claimed - 1:
        raise RecordingRefused(
            f"The recording is damaged: it should last {said(claimed)} and ends after {said(there)}",
            file=name,
            remedy=_AGAIN,
        )
    return np.frombuffer(kept, np.int16)


def _cut(file: IO[bytes]) -> bool:
    """Whether a WAV file says that it is longer than it is; one that was not told its size says -1."""
    head, length = file.read(8), file.seek(0, SEEK_END)
    file.seek(0)
    size = int.from_bytes(head[4:8], "little")
    return head[:4] == b"RIFF" and size != 0xFFFF_FFFF and size + 7 > length


def _claimed(opened: InputContainer) -> Fraction:
    """Return the seconds that the file says it lasts; 0 where it does not say."""
    return Fraction(opened.duration or 0, av.time_base)


def _no_sound(name: str) -> RecordingRefused:
    return RecordingRefused("This file is damaged, or it is not sound", file=name, remedy=_AGAIN)


def _too_long(name: str, at_most: Fraction, longest: Fraction) -> RecordingRefused:
    """Refuse one that is too long by itself, or that together with those before it is."""
    which = "recording is" if at_most == longest else "recordings together are"
    return RecordingRefused(
        f"The {which} longer than {said(longest)}",
        file=name,
        remedy="Record a shorter one, or one file for each problem.",
    )
