"""Synthetic voices from the system's packages (flite, festival, espeak-ng) and our own: text to sound."""

import hashlib
import subprocess
import wave
from collections.abc import Callable
from pathlib import Path
from tempfile import TemporaryDirectory

import numpy as np

from onewhole.presses.sound import Samples, Sound
from onewhole.presses.voice import spoken

#: Voices that anything may be set on; the margin was set on flite kal16.
TUNING = ("own", "flite kal16", "espeak-ng en-us+m3")
#: Voices that nothing is set on: the last one was never heard before the page that is kept aside.
UNSEEN = ("flite slt", "flite rms", "flite awb", "festival ked_diphone")


def say(voice: str, words: str, cache: Path) -> Sound:
    """Return what a voice says; what it said before is taken from ``cache``."""
    words = words.replace("twelfths", "twelfth's")  # flite and festival spell the word that they do not know
    kept = cache / f"{hashlib.sha256(f'{voice}:{words}'.encode()).hexdigest()[:24]}.wav"
    if not kept.exists():
        engine, _, name = voice.partition(" ")
        if engine == "own":
            _write(kept, spoken(words, words_a_minute=130))
        else:
            _ENGINES[engine](name, words, kept)
    return _read(kept)


def _flite(name: str, words: str, to: Path) -> None:
    subprocess.run(["flite", "-voice", name, "-t", words, "-o", str(to)], check=True)


def _festival(name: str, words: str, to: Path) -> None:
    with TemporaryDirectory() as folder:
        text = Path(folder) / "words.txt"
        text.write_text(words)
        subprocess.run(["text2wave", "-eval", f"(voice_{name})", "-o", str(to), str(text)], check=True)


def _espeak(name: str, words: str, to: Path) -> None:
    subprocess.run(["espeak-ng", "-v", name, "-s", "130", "-w", str(to), words], check=True)


_ENGINES: dict[str, Callable[[str, str, Path], None]] = {
    "flite": _flite,
    "festival": _festival,
    "espeak-ng": _espeak,
}


def _write(path: Path, sound: Sound) -> None:
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(sound.rate)
        file.writeframes(sound.samples.tobytes())


def _read(path: Path) -> Sound:
    with wave.open(str(path)) as file:
        samples: Samples = np.frombuffer(file.readframes(file.getnframes()), np.int16)
        return Sound(samples, file.getframerate())


def trimmed(sound: Sound) -> Samples:
    """Return the samples from the first that is heard to the last, 40 dB below the loudest."""
    size = np.abs(sound.samples.astype(np.int32))
    loud = np.flatnonzero(size * 100 > size.max())
    return sound.samples[loud[0] : loud[-1] + 1] if len(loud) else sound.samples
