"""Several wordings of one stretch of sound: how well each fits, so that they can be compared."""

from collections.abc import Iterator, Sequence
from itertools import islice, product
from typing import Final

import numpy as np

from onewhole.presses.listening.scores import UNIT, Costs
from onewhole.presses.listening.search import NEVER, PAUSE
from onewhole.presses.listening.sounds import QUIET, STATES, SoundStates, SpokenEnglish

#: So many ways to say a wording are tried at most.
WAYS: Final = 12


def fits(english: SpokenEnglish, wordings: Sequence[Sequence[str]], costs: Costs) -> list[float]:
    """Return how well each wording fits all frames, in natural logarithms.

    Minus infinity for one with an unknown word.

    Between words there may be a pause. Every sound has its true neighbors, and no way is given up.
    """
    owners: list[int] = []
    rows: list[list[SoundStates]] = []
    for owner, words in enumerate(wordings):
        for row in _rows(english, words):
            owners.append(owner)
            rows.append(row)
    found = [-float("inf")] * len(wordings)
    if not rows or not len(costs):
        return found
    for owner, score in zip(owners, _scores(english, rows, costs), strict=True):
        found[owner] = max(found[owner], score)
    return found


def _rows(english: SpokenEnglish, words: Sequence[str]) -> Iterator[list[SoundStates]]:
    """Give a wording as its sounds, a pause before, between and behind its words, in each way it is said."""
    quiet = english.alone(english.named[QUIET])
    for said in islice(product(*(english.said(word) for word in words)), WAYS):
        row = [quiet]
        for at, sounds in enumerate(said):
            left = said[at - 1][-1] if at else quiet.sound
            right = said[at + 1][0] if at + 1 < len(said) else quiet.sound
            row += [*english.between(sounds, left, right), quiet]
        yield row


def _scores(english: SpokenEnglish, rows: Sequence[Sequence[SoundStates]], costs: Costs) -> list[float]:
    longest = max(map(len, rows))
    quiet = english.named[QUIET]
    filled = [[*row, *[row[0]] * (longest - len(row))] for row in rows]
    kinds = np.array([[sound.sound for sound in row] for row in filled])
    column = np.array(
        [[[next(iter(sound.states[at])) for sound in row] for row in filled] for at in range(STATES)]
    )
    stay, go_on = np.moveaxis(english.stay[kinds], 2, 0), np.moveaxis(english.go_on[kinds], 2, 0)
    pause = kinds == quiet
    likely = np.where(pause, np.float32(PAUSE), np.float32(0))
    over = np.zeros_like(pause)
    over[:, 2:] = pause[:, 1:-1] & ~pause[:, 2:]
    here = np.full((STATES, *kinds.shape), NEVER)
    for frame in range(len(costs)):
        out = here[-1] + go_on[-1]
        enter = np.full(kinds.shape, NEVER)
        enter[:, 1:] = out[:, :-1]
        enter[:, 2:] = np.where(over[:, 2:], np.maximum(enter[:, 2:], out[:, :-2]), enter[:, 2:])
        if not frame:
            enter[:, :2] = 0
        for state in reversed(range(STATES)):
            come = enter + likely if state == 0 else here[state - 1] + go_on[state - 1]
            here[state] = np.maximum(come, here[state] + stay[state])
        here += costs[frame].astype(np.float32)[column] * UNIT
    out = here[-1] + go_on[-1]
    ends = np.array([len(row) - 1 for row in rows])
    every = np.arange(len(rows))
    return [float(score) for score in np.maximum(out[every, ends], out[every, ends - 1])]
