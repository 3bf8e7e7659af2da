"""The likeliest way through a grammar for a recording, every way compared: none is given up on the way.

A Viterbi search (Rabiner, 1989, section III.B) over all sounds of all words at once, frame by frame. Where a
word meets another, the best of all neighbors counts for its outer sounds.
"""

from collections.abc import Iterable, Sequence
from math import log
from typing import Final

import numpy as np
import numpy.typing as npt
from msgspec import Struct

from onewhole.presses.listening.scores import UNIT, Costs, Floats, StateColumns
from onewhole.presses.listening.sounds import PHONES, QUIET, STATES, SoundStates, SpokenEnglish

#: How much the grammar's chances count against the sound; the chance of a pause, in natural logarithms; that
#: of one sound of all, for what is no known word. Our own choice, from tuning voices.
WEIGHT: Final = 3.0
PAUSE: Final = -3.0
ONE_SOUND: Final = -WEIGHT * log(len(PHONES))
#: A word that the dictionary lacks may be left out at so much.
LEFT_OUT: Final = -11.0
#: The scores of so many frames are put together at a time.
TOGETHER: Final = 1000
SOUND, SILENCE = "+sound+", "<sil>"
NEVER: Final = np.float32(-1e30)

Ints = npt.NDArray[np.intp]
Frames = npt.NDArray[np.int32]


class ArcOfGrammar(Struct, frozen=True):
    """From one state of a grammar to another by a word ("" for none); its chance as a logarithm; its item."""

    start: int
    end: int
    chance: float
    word: str
    item: int


class _Way(Struct, frozen=True):
    """An arc in one of its pronunciations."""

    arc: ArcOfGrammar
    sounds: Sequence[SoundStates]


def weighed(chance: int) -> float:
    """Return a chance in millionths as a logarithm that counts against the sound."""
    return WEIGHT * log(chance / 1_000_000)


class Search:
    """All words of a grammar as sounds in a row, ready to be compared with frames."""

    def __init__(self, english: SpokenEnglish, arcs: Iterable[ArcOfGrammar], last: int) -> None:
        self.columns = StateColumns(english.states)
        free: dict[int, dict[int, float]] = {}
        ways = sorted(_ways(english, arcs, free), key=lambda way: way.arc.end)
        self.arcs = [way.arc for way in ways]
        self.last = last
        self.starts = np.array([arc.start for arc in self.arcs])
        self.ends = np.array([arc.end for arc in self.arcs])
        self.chances = np.array([arc.chance for arc in self.arcs], np.float32)
        self.grammar_states = 1 + max(last, int(self.starts.max()), int(self.ends.max()))
        self._set_sounds(english, ways)
        self._set_free(free)

    def _set_sounds(self, english: SpokenEnglish, ways: Sequence[_Way]) -> None:
        sounds = [sound for way in ways for sound in way.sounds]
        kinds = [sound.sound for sound in sounds]
        after = np.cumsum([len(way.sounds) for way in ways])
        self.first_sounds = np.concatenate(([0], after[:-1]))
        self.last_sounds = after - 1
        self.column = np.array([[self.columns.of(one) for one in sound.states] for sound in sounds]).T.copy()
        self.stay = english.stay[kinds].T.copy()
        self.go_on = english.go_on[kinds].T.copy()
        self.at_end = _Groups(self.ends)

    def _set_free(self, free: dict[int, dict[int, float]]) -> None:
        """Set all that is reached without a word from each state, by its likeliest way."""
        pairs = sorted(
            (there, here, likely)
            for here in range(self.grammar_states)
            for there, likely in _reached(here, free).items()
        )
        self.free_from = np.array([here for _, here, _ in pairs])
        self.free_chance = np.array([likely for _, _, likely in pairs], np.float32)
        self.free_to = _Groups(np.array([there for there, _, _ in pairs]))

    def words(self, costs: Costs) -> list[tuple[str, int, int, int]]:
        """Return the words of the likeliest way: each with its item, first frame, and the one after its last.

        No words where no way fits.
        """
        frames, sounds = len(costs), self.column.shape[1]
        here = np.full((STATES, sounds), NEVER)
        since: Frames = np.zeros((STATES, sounds), np.int32)
        enter, entered = np.full(sounds, NEVER), np.zeros(sounds, np.int32)
        by_arc = np.zeros((frames + 1, self.grammar_states), np.int32)
        by_start, by_free = np.zeros_like(by_arc), np.zeros_like(by_arc)
        at = np.full(self.grammar_states, NEVER)
        at[0] = 0
        at = self._spread(at, by_free[0])
        table = costs[:0]
        for frame in range(frames):
            enter[1:] = (here[-1] + self.go_on[-1])[:-1]
            entered[1:] = since[-1, :-1]
            enter[self.first_sounds] = at[self.starts] + self.chances
            entered[self.first_sounds] = frame
            _step(here, since, (enter, entered), self.stay, self.go_on)
            if frame % TOGETHER == 0:
                table = self.columns.table(costs[frame : frame + TOGETHER])
            here += table[frame % TOGETHER].astype(np.float32)[self.column] * UNIT
            here -= here.max()
            out = here[-1, self.last_sounds] + self.go_on[-1, self.last_sounds]
            best, by = self.at_end.best(out)
            at = np.full(self.grammar_states, NEVER)
            at[self.at_end.names] = best
            by_arc[frame + 1, self.at_end.names] = by
            by_start[frame + 1, self.at_end.names] = since[-1, self.last_sounds[by]]
            at = self._spread(at, by_free[frame + 1])
        return self._traced(by_arc, by_start, by_free) if at[self.last] > NEVER / 2 else []

    def _spread(self, at: Floats, by_free: Frames) -> Floats:
        best, by = self.free_to.best(at[self.free_from] + self.free_chance)
        by_free[self.free_to.names] = self.free_from[by]
        spread = np.full(self.grammar_states, NEVER)
        spread[self.free_to.names] = best
        return spread

    def _traced(self, by_arc: Frames, by_start: Frames, by_free: Frames) -> list[tuple[str, int, int, int]]:
        found: list[tuple[str, int, int, int]] = []
        frame, state = len(by_arc) - 1, self.last
        while frame:
            state = int(by_free[frame, state])
            arc, start = self.arcs[by_arc[frame, state]], int(by_start[frame, state])
            if arc.word != SILENCE:
                found.append((arc.word, arc.item, start, frame))
            frame, state = start, arc.start
        return found[::-1]


class _Groups:
    """Neighbors in a sorted row that have the same name."""

    def __init__(self, row: Ints) -> None:
        begins = np.concatenate(([True], row[1:] != row[:-1]))
        self.starts = np.flatnonzero(begins)
        self.names = row[self.starts]
        self.group = np.cumsum(begins) - 1

    def best(self, scores: Floats) -> tuple[Floats, Ints]:
        """Return the best score of each group, and where in the row it stands."""
        best = np.maximum.reduceat(scores, self.starts)
        hit = np.flatnonzero(scores == best[self.group])
        where = np.zeros(len(best), np.intp)
        where[self.group[hit]] = hit
        return best, where


def _step(here: Floats, since: Frames, entering: tuple[Floats, Frames], stay: Floats, go_on: Floats) -> None:
    """Go one frame on in every sound: stay in a state, or come from the one before it."""
    for state in reversed(range(STATES)):
        come = entering[0] if state == 0 else here[state - 1] + go_on[state - 1]
        came = entering[1] if state == 0 else since[state - 1]
        kept = here[state] + stay[state]
        since[state] = np.where(come > kept, came, since[state])
        here[state] = np.maximum(come, kept)


def _ways(
    english: SpokenEnglish, arcs: Iterable[ArcOfGrammar], free: dict[int, dict[int, float]]
) -> Iterable[_Way]:
    """Give every pronunciation of every arc, and pauses; put the arcs without a word into ``free``."""
    quiet = [english.alone(english.named[QUIET])]
    pauses = {0}
    for arc in arcs:
        said = english.said(arc.word) if arc.word else []
        if arc.word == SOUND:
            for phone in PHONES:
                named = english.alone(english.named[phone])
                yield _Way(ArcOfGrammar(arc.start, arc.end, arc.chance + ONE_SOUND, SOUND, arc.item), [named])
        elif arc.word == SILENCE:
            yield _Way(arc, quiet)
        elif said:
            yield from (_Way(arc, english.between(one)) for one in said)
        else:
            likely = arc.chance + (LEFT_OUT if arc.word else 0)
            ends = free.setdefault(arc.start, {})
            ends[arc.end] = max(likely, ends.get(arc.end, likely))
            continue
        pauses.add(arc.end)
    yield from (_Way(ArcOfGrammar(state, state, PAUSE, SILENCE, -1), quiet) for state in sorted(pauses))


def _reached(start: int, free: dict[int, dict[int, float]]) -> dict[int, float]:
    """Return all states reached without a word, itself too, each by its likeliest way."""
    best = {start: 0.0}
    waiting = [start]
    while waiting:
        here = waiting.pop()
        for there, likely in free.get(here, {}).items():
            way = best[here] + likely
            if there not in best or way > best[there]:
                best[there] = way
                waiting.append(there)
    return best
