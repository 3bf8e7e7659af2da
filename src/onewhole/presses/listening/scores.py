"""How well every state of every sound fits every frame of a recording: worked out by PocketSphinx."""

from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Final

import numpy as np
import numpy.typing as npt

#: Samples and frames a second.
RATE, FRAMES = 16_000, 100
#: So many seconds are worked out at once: what is written to the folder meanwhile stays small.
AT_ONCE: Final = 60
#: One in a score is so much, in natural logarithms: the library counts in 1.0001 and leaves ten bits out.
UNIT: Final = np.float32(-1024 * np.log(1.0001))

Costs = npt.NDArray[np.int16]
Floats = npt.NDArray[np.float32]


def state_costs(sound: bytes, folder: Path, states: int) -> Costs:
    """Return what each state costs in each frame (frames x states); the best one of a frame costs nothing.

    ``sound`` are 16-bit samples, `RATE` a second. What the library writes to ``folder`` is taken away at
    once.
    """
    from pocketsphinx import Decoder  # noqa: PLC0415 - loaded once the limits stand

    decoder: Any = Decoder(
        lm=None, cmn="batch", loglevel="FATAL", bestpath=False, compallsen=True, senlogdir=str(folder)
    )
    decoder.add_fsg("any", decoder.create_fsg("any", 0, 1, [(0, 1, 1.0, "and")]))
    decoder.activate_search("any")
    costs: Costs = np.zeros((len(sound) // (2 * RATE // FRAMES), states), np.int16)
    size = 2 * RATE * AT_ONCE
    for at in range(0, len(sound), size):
        decoder.start_utt()
        decoder.process_raw(sound[at : at + size], full_utt=True)
        decoder.end_utt()
        here = costs[AT_ONCE * FRAMES * (at // size) :][: AT_ONCE * FRAMES]
        for written in folder.glob("*.sen"):
            found = _read(written, states)[: len(here)]
            here[: len(found)] = found
            here[len(found) :] = found[-1:]  # the last frames are too short to be scored
            written.unlink()
    return costs


def _read(written: Path, states: int) -> Costs:
    """Read a file of scores: lines of text, a number for the order of bytes, then each frame's scores."""
    held = written.read_bytes()
    at = held.index(b"endhdr\n") + 7 + 4
    frames = (len(held) - at) // (2 * (states + 1))
    table = np.frombuffer(held, "<i2", frames * (states + 1), at).reshape(frames, states + 1)
    return table[:, 1:]


@dataclass(slots=True)
class StateColumns:
    """States, and sets of states of which the best one counts, each a column of a table of scores."""

    states: int
    sets: dict[frozenset[int], int] = field(default_factory=dict)

    def of(self, states: frozenset[int]) -> int:
        """Return the column of a set."""
        if len(states) == 1:
            return next(iter(states))
        return self.sets.setdefault(states, self.states + len(self.sets))

    def table(self, costs: Costs) -> Costs:
        """Return the costs with a column more for each set."""
        table = np.empty((len(costs), self.states + len(self.sets)), np.int16)
        table[:, : self.states] = costs
        for states, column in self.sets.items():
            table[:, column] = costs[:, sorted(states)].min(axis=1)
        return table
