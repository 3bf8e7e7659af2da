"""The process that listens for `hearing`: PocketSphinx with its model of American English.

It reads messages from its standard input and answers each on its standard output; before each stand four
bytes that say how many follow. The first message is the sound, 16-bit samples of one channel, 16,000 a
second; every other one is JSON. A grammar is answered by the words that were heard, a pair of wordings by how
much better the first one fits.
"""

import os
import re
import sys
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Any, Final

import msgspec

from onewhole.languages.english.listening import SAID_AS
from onewhole.presses.limited import read

#: Samples and frames a second.
RATE, FRAMES = 16_000, 100
#: The sounds of the model, for what is no known word.
# fmt: off
PHONES: Final = (
    "AA", "AE", "AH", "AO", "AW", "AY", "B", "CH", "D", "DH", "EH", "ER", "EY",
    "F", "G", "HH", "IH", "IY", "JH", "K", "L", "M", "N", "NG", "OW", "OY",
    "P", "R", "S", "SH", "T", "TH", "UH", "UW", "V", "W", "Y", "Z", "ZH",
)
# fmt: on
#: How narrow the search is: a path this much less likely than the best one is given up. Our own choice: with
#: 1e-40 right paths were lost, and 1e-60 takes twice as long and heard the same (tuning voices).
BEAMS: Final = {"beam": 1e-52, "pbeam": 1e-52, "wbeam": 1e-36, "lpbeam": 1e-48}
#: The most models that are compared in a frame: bounds the time for speech that fits nothing. With 700 right
#: paths were lost; 1500 and 5000 heard the same (tuning voices).
MOST: Final = 2_000
#: What the library writes at a word: which of its pronunciations, and our item.
_MARKS: Final = re.compile(r"\(\d+\)")
#: How much the grammar's chances count against the sound (the library gives them none of
#: its own).
WEIGHT: Final = 3.0
#: The library keeps scores without their last ten bits.
SHIFTED: Final = 1024
SOUND: Final = "+sound+"
_SILENCE: Final = "<sil>"
_NO_WORD: Final = ("(", "<", "[", "++")


class Comparing(msgspec.Struct, frozen=True):
    """Two wordings of the sound between two frames."""

    first: tuple[str, ...]
    second: tuple[str, ...]
    start: int
    end: int


class Graph(msgspec.Struct, frozen=True):
    """Arcs from state 0 to ``last``: two states, a chance in millionths, a word ("" for none), an item."""

    arcs: tuple[tuple[int, int, int, str, int], ...]
    last: int


class Ear:
    """A recognizer with a sound."""

    def __init__(self, sound: bytes) -> None:
        from pocketsphinx import Decoder  # noqa: PLC0415 - loaded once the limits stand

        self.sound = sound
        self.decoder: Any = Decoder(
            lm=None, cmn="batch", loglevel="FATAL", bestpath=False, maxhmmpf=MOST, **BEAMS
        )
        self.names: dict[tuple[str, int], str | None] = {}
        for phone in PHONES:
            self.decoder.add_word(_sound(phone), phone, update=False)

    def hear(self, graph: Graph) -> list[tuple[str, int, int, int]]:
        """Return the words: each with its item, its first frame and the one after its last."""
        return [
            (*_plain(word), start, end + 1)
            for word, start, end in self._decode(self._arcs(graph.arcs), graph.last, self.sound)
            if not word.startswith(_NO_WORD)
        ]

    def compare(self, pair: Comparing) -> int | None:
        """Return how much better the first wording fits than the second, in natural logarithms.

        None where one of them does not fit at all.
        """
        bytes_a_frame = 2 * RATE // FRAMES
        sound = self.sound[pair.start * bytes_a_frame : pair.end * bytes_a_frame]
        scores = []
        for words in (pair.first, pair.second):
            arcs = [(at, at + 1, 1_000_000, word, -1) for at, word in enumerate(words)]
            if not list(self._decode(self._arcs(arcs), len(words), sound)):
                return None
            scores.append(self._score())
        return round(scores[0] - scores[1])

    def _score(self) -> float:
        hypothesis = self.decoder.hyp()
        logs = self.decoder.get_logmath()
        return float(logs.log_to_ln(logs.log(hypothesis.best_score)) * SHIFTED)

    def _decode(
        self, arcs: Sequence[tuple[object, ...]], last: int, sound: bytes
    ) -> Iterable[tuple[str, int, int]]:
        self.decoder.add_fsg("script", self.decoder.create_fsg("script", 0, last, arcs))
        self.decoder.activate_search("script")
        self.decoder.start_utt()
        self.decoder.process_raw(sound, full_utt=True)
        self.decoder.end_utt()
        return [(one.word, one.start_frame, one.end_frame) for one in self.decoder.seg() or ()]

    def _arcs(self, arcs: Iterable[tuple[int, int, int, str, int]]) -> list[tuple[object, ...]]:
        """Return the arcs as the library takes them; a word that its dictionary lacks may be left out."""
        made: list[tuple[object, ...]] = []
        free: dict[int, dict[int, float]] = {}
        for start, end, chance, word, item in arcs:
            likely = (chance / 1_000_000) ** WEIGHT
            if not word:
                free.setdefault(start, {})[end] = likely
            elif word == SOUND:
                made += [(start, end, likely / len(PHONES) ** WEIGHT, _sound(phone)) for phone in PHONES]
            elif name := self._name(word, item):
                made.append((start, end, likely, name))
            else:
                free.setdefault(start, {})[end] = likely / len(PHONES) ** WEIGHT
        made += [(start, end, likely) for start in free for end, likely in _reached(start, free).items()]
        return made

    def _name(self, word: str, item: int) -> str | None:
        """Return the word's name in the dictionary with its item; None for an unknown word."""
        if word == _SILENCE:
            return word
        if (word, item) not in self.names:
            self.names[word, item] = self._added(word, item)
        return self.names[word, item]

    def _added(self, word: str, item: int) -> str | None:
        said = SAID_AS.get(word) or tuple(self._said(word))
        if not said:
            return None
        name = f"{word}#{item}" if item >= 0 else f"{word}#"
        self.decoder.add_word(name, said[0], update=False)
        for other, phones in enumerate(said[1:], start=2):
            self.decoder.add_word(f"{name}({other})", phones, update=False)
        return name

    def _said(self, word: str) -> Iterator[str]:
        """Give the pronunciations of a word in the library's dictionary."""
        other, phones = 1, self.decoder.lookup_word(word)
        while phones:
            yield phones
            other += 1
            phones = self.decoder.lookup_word(f"{word}({other})")


def _reached(start: int, free: Mapping[int, Mapping[int, float]]) -> dict[int, float]:
    """Return all states reached without a word, each by its likeliest way: the library takes one step."""
    best = {start: 1.0}
    waiting = [start]
    while waiting:
        here = waiting.pop()
        for there, likely in free.get(here, {}).items():
            if (way := best[here] * likely) > best.get(there, 0):
                best[there] = way
                waiting.append(there)
    del best[start]
    return best


def _sound(phone: str) -> str:
    return f"+{phone.lower()}+"


def _plain(word: str) -> tuple[str, int]:
    """Return a word without the library's marks, and its item (-1 for none)."""
    plain = _MARKS.sub("", word)
    if plain.startswith("+"):
        return SOUND, -1
    word, _, item = plain.partition("#")
    return word, int(item) if item else -1


def listen_for_parent() -> None:
    """Answer the messages of `hearing`."""
    try:
        ear = Ear(_message())
    except ImportError:
        os._exit(3)
    while True:
        asked = msgspec.json.decode(_message(), type=dict[str, Any])
        if "last" in asked:
            found: object = ear.hear(msgspec.convert(asked, Graph))
        else:
            found = ear.compare(msgspec.convert(asked, Comparing))
        answer = msgspec.json.encode(found)
        sys.stdout.buffer.write(len(answer).to_bytes(4, "little") + answer)
        sys.stdout.buffer.flush()


def _message() -> bytes:
    return read(int.from_bytes(read(4), "little"))
