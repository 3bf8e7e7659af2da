"""The recognizer's model of American English, as its files hold it: states of sounds, and how words are said.

Read from the folder of the model inside PocketSphinx. A sound stands between a sound to its left and one to
its right and is three states, one after another; each state has a number, and a score in every frame. The
layout of `mdef` is that of `bin_mdef.h`, that of `transition_matrices` of `tmat.c` (PocketSphinx 5, BSD).
"""

import struct
from collections.abc import Sequence
from functools import cached_property
from pathlib import Path
from typing import Final

import numpy as np
import numpy.typing as npt
from msgspec import Struct

from onewhole.languages.english.listening import SAID_AS

#: The sounds of the model, for what is no known word.
# fmt: off
PHONES: Final = (
    "AA", "AE", "AH", "AO", "AW", "AY", "B", "CH", "D", "DH", "EH", "ER", "EY",
    "F", "G", "HH", "IH", "IY", "JH", "K", "L", "M", "N", "NG", "OW", "OY",
    "P", "R", "S", "SH", "T", "TH", "UH", "UW", "V", "W", "Y", "Z", "ZH",
)
# fmt: on
QUIET: Final = "SIL"
#: A sound has so many states.
STATES: Final = 3
#: Where a sound stands in its word: inside, first, last, alone.
INSIDE, FIRST, LAST, ALONE = range(4)

States = tuple[frozenset[int], frozenset[int], frozenset[int]]


class SoundStates(Struct, frozen=True):
    """A sound in its place: for each of its states those that it may be, and the sound without its place."""

    sound: int
    states: States


class SpokenEnglish:
    """The sounds and the words of the model in a folder."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self._read_sounds((folder / "en-us" / "mdef").read_bytes())
        self._read_steps((folder / "en-us" / "transition_matrices").read_bytes())
        self._known: dict[tuple[int, tuple[int, ...], tuple[int, ...], int], States] = {}

    def _read_sounds(self, held: bytes) -> None:
        at = 12 + struct.unpack_from("<i", held, 8)[0]
        names, sounds, _, _, self.states, _, sequences, _, trees, _ = struct.unpack_from("<10i", held, at)
        at += 40
        self.named: dict[str, int] = {}
        for number in range(names):
            end = held.index(0, at)
            self.named[held[at:end].decode("ascii")] = number
            at = end + 1
        at = (at + 3) // 4 * 4 + 8 * trees
        kind = np.dtype([("sequence", "<i4"), ("steps", "<i4"), ("place", "u1", 4)])
        table = np.frombuffer(held, kind, sounds, at)
        at += kind.itemsize * sounds + 4
        self._sequences = np.frombuffer(held, "<u2", sequences * STATES, at).reshape(sequences, STATES)
        places = table["place"][names:].astype(np.intp)
        self._placed = np.full((4, names, names, names), -1, np.int32)
        self._placed[tuple(places.T)] = table["sequence"][names:]
        self._alone: list[int] = table["sequence"].tolist()[:names]

    def _read_steps(self, held: bytes) -> None:
        at = held.index(b"endhdr\n") + 7
        sounds, here, there = struct.unpack_from("<3i", held, at + 4)
        chances = np.frombuffer(held, "<f4", sounds * here * there, at + 20).reshape(sounds, here, there)
        logs = np.log(np.maximum(chances / chances.sum(2, keepdims=True), 1e-10)).astype(np.float32)
        #: Of each sound and state: the logarithms of the chances to stay, and to go on.
        self.stay = np.stack([logs[:, at, at] for at in range(STATES)], axis=1)
        self.go_on = np.stack([logs[:, at, at + 1] for at in range(STATES)], axis=1)

    @cached_property
    def _words(self) -> dict[str, list[str]]:
        words: dict[str, list[str]] = {}
        for line in (self.folder / "cmudict-en-us.dict").read_text(encoding="utf-8").splitlines():
            word, _, said = line.partition(" ")
            words.setdefault(word.partition("(")[0], []).append(said)
        return words

    def said(self, word: str) -> Sequence[tuple[int, ...]]:
        """Return the ways in which a word is said, each as its sounds; none for a word that is unknown."""
        return [self._sounds(said) for said in SAID_AS.get(word) or self._words.get(word) or ()]

    def _sounds(self, said: str) -> tuple[int, ...]:
        return tuple(self.named[sound] for sound in said.split())

    def alone(self, sound: int) -> SoundStates:
        """Return a sound wherever it stands."""
        return SoundStates(sound, self._of(self._alone[sound]))

    def between(
        self, sounds: Sequence[int], left: int | None = None, right: int | None = None
    ) -> list[SoundStates]:
        """Return the sounds of a word in their places between two others, None for any."""
        every = tuple(self.named[one] for one in (*PHONES, QUIET))
        last = len(sounds) - 1
        made: list[SoundStates] = []
        for at, sound in enumerate(sounds):
            place = ALONE if not last else FIRST if not at else LAST if at == last else INSIDE
            lefts = (sounds[at - 1],) if at else every if left is None else (left,)
            rights = (sounds[at + 1],) if at < last else every if right is None else (right,)
            key = (sound, lefts, rights, place)
            if key not in self._known:
                self._known[key] = self._of(
                    *{self._sequence(sound, one, two, place) for one in lefts for two in rights}
                )
            made.append(SoundStates(sound, self._known[key]))
        return made

    def _sequence(self, sound: int, left: int, right: int, place: int) -> int:
        for other in (place, INSIDE, FIRST, LAST, ALONE):
            found = int(self._placed[other, sound, left, right])
            if found >= 0:
                return found
        return int(self._alone[sound])

    def _of(self, *sequences: int) -> States:
        rows: npt.NDArray[np.uint16] = self._sequences[list(sequences)]
        first, middle, last = (frozenset(rows[:, at].tolist()) for at in range(STATES))
        return first, middle, last
