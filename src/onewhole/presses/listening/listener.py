"""The process that listens for `hearing`: PocketSphinx with its model of American English.

It reads messages from its standard input and answers each on its standard output; before each stand four
bytes that say how many follow. The first message is the sound, 16-bit samples of one channel, 16,000 a
second; every other one is JSON. A grammar is answered by the words that were heard, wordings of a stretch by
how well each fits.
"""

import os
import sys
from pathlib import Path
from typing import Any, Final

import msgspec

from onewhole.presses.limited import read

#: What does not fit at all is called: JSON holds no infinity.
NEVER: Final = -(10**9)


class Wordings(msgspec.Struct, frozen=True):
    """Wordings of the sound between two frames."""

    wordings: tuple[tuple[str, ...], ...]
    start: int
    end: int


class Graph(msgspec.Struct, frozen=True):
    """Arcs from state 0 to ``last``: two states, a chance in millionths, a word ("" for none), an item."""

    arcs: tuple[tuple[int, int, int, str, int], ...]
    last: int


class Ear:
    """A recording, and how well every sound fits it; ``folder`` is free to be written to."""

    def __init__(self, sound: bytes, folder: Path) -> None:
        # loaded once the limits stand
        from pocketsphinx import get_model_path  # noqa: PLC0415

        from onewhole.presses.listening.scores import state_costs  # noqa: PLC0415
        from onewhole.presses.listening.sounds import SpokenEnglish  # noqa: PLC0415

        self.english = SpokenEnglish(Path(get_model_path()) / "en-us")
        self.costs = state_costs(sound, folder, self.english.states)

    def hear(self, graph: Graph) -> list[tuple[str, int, int, int]]:
        """Return the words: each with its item, its first frame and the one after its last."""
        from onewhole.presses.listening.search import ArcOfGrammar, Search, weighed  # noqa: PLC0415

        arcs = [
            ArcOfGrammar(start, end, weighed(chance), word, item)
            for start, end, chance, word, item in graph.arcs
        ]
        return Search(self.english, arcs, graph.last).words(self.costs)

    def fits(self, asked: Wordings) -> list[int]:
        """Return how well each wording fits, in natural logarithms."""
        from onewhole.presses.listening.wordings import fits  # noqa: PLC0415

        found = fits(self.english, asked.wordings, self.costs[asked.start : asked.end])
        return [NEVER if fit < NEVER else round(fit) for fit in found]


def listen_for_parent() -> None:
    """Answer the messages of `hearing`; the folder to write to is this process's argument."""
    try:
        ear = Ear(_message(), Path(sys.argv[1]))
    except ImportError:
        os._exit(3)
    while True:
        asked = msgspec.json.decode(_message(), type=dict[str, Any])
        if "last" in asked:
            found: object = ear.hear(msgspec.convert(asked, Graph))
        else:
            found = ear.fits(msgspec.convert(asked, Wordings))
        answer = msgspec.json.encode(found)
        sys.stdout.buffer.write(len(answer).to_bytes(4, "little") + answer)
        sys.stdout.buffer.flush()


def _message() -> bytes:
    return read(int.from_bytes(read(4), "little"))
