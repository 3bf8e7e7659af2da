"""The synthetic voice: a sentence goes in, sound comes out. A library of its own speaks (espeak-ng)."""

import _ctypes
import ctypes
import sys
from importlib import import_module
from pathlib import Path
from threading import Lock
from typing import Final

import numpy as np

from onewhole.errors import InputError, OnewholeError
from onewhole.languages.language import Language
from onewhole.languages.table import LANGUAGES, SPOKEN
from onewhole.presses.sound import Samples, Sound

#: The fewest and the most words a minute that the voice can speak.
SLOWEST, FASTEST = 80, 450

# The library's own numbers, from its header `speak_lib.h`.
_SYNCHRONOUS: Final = 2  # sound comes while the caller waits
_STAY: Final = 0x8000  # where the data is missing, do not end the whole program
_RATE: Final = 1
_SAMPLES_A_SECOND: Final = 22_050

_TURN: Final = Lock()  # one engine in a program, so one sentence at a time
_UTF8: Final = 1
_BY_CHARACTER: Final = 1

_Callback = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.c_void_p, ctypes.c_int, ctypes.c_void_p)


class VoiceUnavailable(OnewholeError, RuntimeError):
    """There is no synthetic voice on this machine: what is wrong, what to do next."""

    def __init__(self, what: str, *, where: str | None = None, remedy: str | None = None) -> None:
        super().__init__(
            f"The synthetic voice cannot be used: {what}",
            where=where,
            remedy=remedy or "Make the film without a voice, or with your own recording.",
        )


def spoken(sentence_words: str, *, words_a_minute: int, language: str = SPOKEN.tag) -> Sound:
    """Return a sentence as it is spoken in a language (a BCP 47 tag), numbers already written as words.

    The same words at the same speed are the same samples. Any number of threads may ask; they take turns.
    Nothing goes on the disk.

    Raises InputError for a speed below 80 or above 450 words a minute, and VoiceUnavailable.

    >>> slow, quick = (spoken("Open one whole.", words_a_minute=speed).seconds for speed in (90, 180))
    >>> slow > quick
    True
    """
    if not SLOWEST <= words_a_minute <= FASTEST:
        raise InputError(
            f"The synthetic voice cannot speak {words_a_minute} words a minute",
            remedy=f"Choose {SLOWEST} to {FASTEST}; 120 is usual.",
        )
    with _TURN:
        samples = _speak(sentence_words.encode(), words_a_minute, LANGUAGES[language])
    samples.setflags(write=False)
    return Sound(samples, _SAMPLES_A_SECOND)


def _speak(words: bytes, words_a_minute: int, language: Language) -> Samples:
    """Speak with a library loaded afresh.

    The engine's pseudo-random jitter goes on from sentence to sentence; only a freshly loaded library starts
    from the same state. Loading takes about 8 ms.
    """
    try:
        place = Path(import_module("espeakng_loader").get_library_path())
        library = ctypes.CDLL(str(place))
    except ImportError as error:
        raise VoiceUnavailable("the package espeakng-loader is not installed") from error
    except OSError as error:
        raise VoiceUnavailable("its library cannot be loaded") from error
    parts: list[bytes] = []

    def hear(wave: int | None, count: int, _events: int | None) -> int:
        if wave and count > 0:
            parts.append(ctypes.string_at(wave, count * 2))
        return 0

    heard = _Callback(hear)
    try:
        _ready(library, place.parent, heard)
        wrong = library.espeak_SetVoiceByName(language.voice.encode())
        if wrong or library.espeak_SetParameter(_RATE, words_a_minute, 0):
            raise VoiceUnavailable(f"it does not speak {language.name} ({language.tag})")
        wrong = library.espeak_Synth(words, len(words) + 1, 0, _BY_CHARACTER, 0, _UTF8, None, None)
        if wrong or library.espeak_Synchronize():
            raise VoiceUnavailable("it could not speak a sentence")
        library.espeak_Terminate()
    finally:
        _close(library)
    return np.frombuffer(b"".join(parts), np.int16).copy()


def _ready(library: ctypes.CDLL, folder: Path, hear: "ctypes._FuncPointer") -> None:
    """Start the library with its data."""
    data = str(folder / "espeak-ng-data").encode()
    if library.espeak_Initialize(_SYNCHRONOUS, 0, data, _STAY) != _SAMPLES_A_SECOND:
        raise VoiceUnavailable("its data is missing")
    library.espeak_SetSynthCallback(hear)


def _close(library: ctypes.CDLL) -> None:
    if sys.platform == "win32":
        _ctypes.FreeLibrary(library._handle)  # noqa: SLF001 - no other name for it
    else:
        _ctypes.dlclose(library._handle)  # noqa: SLF001 - no other name for it
