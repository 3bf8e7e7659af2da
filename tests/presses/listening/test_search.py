"""The search finds the best of all ways: against every way there is, one by one, at made-up costs."""

from collections.abc import Iterator, Sequence
from itertools import combinations, product
from math import log
from pathlib import Path

import numpy as np
import pytest

from onewhole.presses.listening import scores
from onewhole.presses.listening.hearing import can_listen
from onewhole.presses.listening.scores import UNIT, state_costs
from onewhole.presses.listening.search import PAUSE, ArcOfGrammar, Search
from onewhole.presses.listening.sounds import QUIET, STATES, SoundStates, SpokenEnglish
from onewhole.presses.listening.wordings import fits

pytestmark = pytest.mark.skipif(
    not can_listen(), reason="the recognizer is not installed: pip install onewhole[listening]"
)

Way = tuple[float, list[int]]
FRAMES = 10


@pytest.fixture(scope="module", name="english")
def _english() -> SpokenEnglish:
    from pocketsphinx import get_model_path  # noqa: PLC0415 - the recognizer is an extra

    return SpokenEnglish(Path(get_model_path()) / "en-us")


def every_way(english: SpokenEnglish, row: Sequence[SoundStates], costs: np.ndarray) -> Iterator[Way]:
    """Give the score of every way through sounds in a row, and the frame at which each sound begins."""
    each = [
        (costs.T[list(one.states[at])].min(axis=0), english.stay[one.sound, at], english.go_on[one.sound, at])
        for one in row
        for at in range(STATES)
    ]
    for cuts in combinations(range(1, len(costs)), len(each) - 1):
        edges = [0, *cuts, len(costs)]
        score = 0.0
        for (cost, stay, go_on), start, end in zip(each, edges, edges[1:], strict=False):
            score += float(cost[start:end].sum() * UNIT + stay * (end - start - 1) + go_on)
        yield score, edges[::STATES]


@pytest.mark.parametrize("seed", range(6))
def test_a_wording_fits_as_its_best_way(english: SpokenEnglish, seed: int) -> None:
    """With and without a pause before it and behind it."""
    costs = np.random.default_rng(seed).integers(0, 300, (FRAMES, english.states)).astype(np.int16)
    quiet = english.alone(english.named[QUIET])
    for word, found in zip(("two", "three"), fits(english, [("two",), ("three",)], costs), strict=True):
        best = -1e9
        for said, before, behind in product(english.said(word), (0, 1), (0, 1)):
            row = [*[quiet] * before, *english.between(said, quiet.sound, quiet.sound), *[quiet] * behind]
            for score, _ in every_way(english, row, costs):
                best = max(best, score + PAUSE * (before + behind))
        assert found == pytest.approx(best, abs=0.01)


@pytest.mark.parametrize("seed", range(6))
def test_the_likeliest_words_are_found(english: SpokenEnglish, seed: int) -> None:
    """Of two words, each with its chance and its item, and pauses at both ends."""
    costs = np.random.default_rng(seed).integers(0, 300, (FRAMES, english.states)).astype(np.int16)
    arcs = [ArcOfGrammar(0, 1, log(0.4), "two", 7), ArcOfGrammar(0, 1, log(0.6), "ten", 8)]
    arcs.append(ArcOfGrammar(1, 2, log(0.5), "", -1))
    quiet = english.alone(english.named[QUIET])
    best: tuple[float, tuple[str, int, int, int]] = (-1e9, ("", 0, 0, 0))
    for arc, before, behind in product(arcs[:2], (0, 1), (0, 1)):
        for said in english.said(arc.word):
            row = [*[quiet] * before, *english.between(said), *[quiet] * behind]
            for score, starts in every_way(english, row, costs):
                first, last = starts[before], starts[before + len(said)]
                whole = score + arc.chance + PAUSE * (before + behind)
                best = max(best, (whole, (arc.word, arc.item, first, last)))
    assert Search(english, arcs, 2).words(costs) == [best[1]]


def test_what_fits_nowhere_has_no_words(english: SpokenEnglish) -> None:
    """Three frames are too few for a word."""
    costs = np.zeros((3, english.states), np.int16)
    assert Search(english, [ArcOfGrammar(0, 1, 0.0, "three", 0)], 1).words(costs) == []


def test_a_word_that_is_unknown_is_left_out(english: SpokenEnglish) -> None:
    """It may be left out of a grammar; a wording with it does not fit."""
    costs = np.zeros((12, english.states), np.int16)
    arcs = [ArcOfGrammar(0, 1, 0.0, "qqxz", 0), ArcOfGrammar(1, 2, 0.0, "two", 1)]
    assert [word for word, *_ in Search(english, arcs, 2).words(costs)] == ["two"]
    assert fits(english, [("qqxz",)], costs) == [-float("inf")]


def test_a_fifth_is_said_in_the_sounds_of_the_dictionary(english: SpokenEnglish) -> None:
    """CMUdict: FIFTH F IH F TH, also F IH TH; the model holds 42 sounds, two of them noise."""
    names = {number: name for name, number in english.named.items()}
    assert "F IH F TH" in [" ".join(names[one] for one in said) for said in english.said("fifth")]
    assert len(english.named) == 42
    assert english.stay.shape == english.go_on.shape == (42, STATES)
    assert np.allclose(np.exp(english.stay) + np.exp(english.go_on), 1, atol=1e-3)


def test_every_frame_is_scored_and_nothing_is_left_behind(
    english: SpokenEnglish, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """In pieces too: in each frame the best state costs nothing and others something; the folder is empty."""
    monkeypatch.setattr(scores, "AT_ONCE", 1)
    sound = np.random.default_rng(3).normal(0, 1000, 16_000 + 4_000).astype(np.int16)
    costs = state_costs(sound.tobytes(), tmp_path, english.states)
    assert costs.shape == (125, english.states)
    assert costs.min(axis=1).tolist() == [0] * 125
    assert costs.max(axis=1).min() > 0
    assert list(tmp_path.iterdir()) == []
