"""A sound file decoded: a recording goes in, 48000 samples a second of one channel come out."""

from fractions import Fraction
from pathlib import Path
from typing import Final, assert_never

import numpy as np

from onewhole.errors import InputError
from onewhole.presses.decoder import CHANNELS, LONGEST_FRAME, RATE, RATES, Ending, decode_for_parent
from onewhole.presses.limited import limited
from onewhole.presses.named_file import NoFile, opened
from onewhole.presses.sound import Sound

#: The most seconds that are read.
LONGEST: Final = 3600
#: A recording whose loudness (root of the mean square, of 32767) stays below this is silent: 60 dB down.
QUIET: Final = 33
#: A recording is not shorter than this, in seconds.
SHORTEST: Final = Fraction(1, 2)

#: Bytes that decoding may take beyond those of a recording that is held in memory, and seconds of the
#: processor: so many, and one for every so many of sound. Whatever the file is, more is never taken.
MEMORY: Final = 768 * 1024 * 1024
SECONDS, SOUND_A_SECOND = 10, 30
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
    try:
        opened(path).close()
    except NoFile as error:
        what = (
            "This is a folder, not a recording" if path.is_dir() else "This is not a file, and no recording"
        )
        raise RecordingRefused(what, file=name, remedy="Check the name of the file.") from error
    except FileNotFoundError as error:
        what = "There is no such recording"
        raise RecordingRefused(what, file=name, remedy="Check the name of the file.") from error
    except OSError as error:
        raise _no_sound(name) from error
    return _heard(path, name, at_least, at_most)


def recording_in(
    content: bytes, name: str, *, at_least: Fraction = SHORTEST, at_most: Fraction = Fraction(LONGEST)
) -> Sound:
    """Return a sound file that is held in memory, as :func:`recording`; ``name`` is what refusals call it.

    Nothing is written to the disk. ``at_most`` is what one recording may last.
    """
    return _heard(content, name, at_least, at_most, at_most)


def _heard(
    source: Path | bytes,
    name: str,
    at_least: Fraction,
    at_most: Fraction,
    longest: Fraction = Fraction(LONGEST),
) -> Sound:
    """Decode in a process of its own, and refuse what is no recording that can be used."""
    most = int(at_most * RATE)
    kept = bytearray()
    found = _decoded(source, most, kept)
    if found is None:
        what = "This recording cannot be read: it would take too much memory or time"
        raise RecordingRefused(what, file=name, remedy=_AGAIN)
    ending, number = found
    there = Fraction(len(kept), 2 * RATE)
    match ending:
        case Ending.WHOLE:
            pass
        case Ending.NO_SOUND:
            raise _no_sound(name)
        case Ending.TOO_LONG:
            raise _too_long(name, at_most, longest)
        case Ending.CUT | Ending.DAMAGED | Ending.SHORTER:
            raise RecordingRefused(_damage(ending, number, there), file=name, remedy=_AGAIN)
        case Ending.RATE | Ending.CHANNELS | Ending.FRAME:
            raise RecordingRefused(_odd(ending, number), file=name, remedy=_AGAIN)
        case _:
            assert_never(ending)
    samples = np.frombuffer(kept, np.int16)
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


def _decoded(source: Path | bytes, most: int, kept: bytearray) -> tuple[Ending, int] | None:
    """Put the samples into `kept` and return how decoding ended; None for a process that was ended."""
    path, content = ([str(source)], b"") if isinstance(source, Path) else ([], source)
    seconds = SECONDS + most // RATE // SOUND_A_SECOND
    with limited(
        decode_for_parent, most, *path, memory=MEMORY + 2 * len(content), seconds=seconds
    ) as process:
        assert process.stdin is not None
        assert process.stdout is not None
        if not path:
            process.stdin.write(len(content).to_bytes(8, "little"))
            process.stdin.write(content)
            process.stdin.flush()
        while (length := process.stdout.read(4)) and (size := int.from_bytes(length, "little")):
            kept += process.stdout.read(size)
            if len(kept) > 2 * most:
                return Ending.TOO_LONG, 0
        ending, _, number = process.stdout.read().decode("ascii").partition(" ")
        if ending:
            return Ending[ending], int(number)
    return None


def _damage(ending: Ending, number: int, there: Fraction) -> str:
    if ending is Ending.CUT:
        return "The recording is damaged: it ends before it should"
    if ending is Ending.DAMAGED:
        return f"The recording is damaged after {said(there)}"
    claimed = said(Fraction(number, 1_000_000))
    return f"The recording is damaged: it should last {claimed} and ends after {said(there)}"


def _odd(ending: Ending, number: int) -> str:
    if ending is Ending.RATE:
        return f"The recording has {number:,} samples a second, and {RATES[0]:,} to {RATES[-1]:,} can be read"
    if ending is Ending.CHANNELS:
        return f"The recording has {number} channels, and {CHANNELS[0]} to {CHANNELS[-1]} can be read"
    return f"A part of the recording that is read at once is longer than {LONGEST_FRAME} seconds"


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
