"""Odds of patterns for very many different papers of one page: floats in NumPy, a block of rows at a time.

The odds of one pupil in a class are exact (:mod:`onewhole.marking.diagnosis.weighing`); here they are the
same products and sums in floats, told in millionths. `tests/agreement/test_district_odds.py` holds the two
against each other. Each row is worked out by itself, in blocks that begin at the same places whoever works
them out, so that one machine and several give the same bytes.
"""

from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.diagnosis.prior import AS_PUPILS, supposed
from onewhole.marking.diagnosis.weighing import WAYS
from onewhole.presses.district.page_rows import Codes, PageRows
from onewhole.presses.skills.cells import Floats

#: Rows that are weighed at once: their numbers lie in a processor's cache.
BLOCK = 16
#: Rows whose parts are multiplied out together.
TOGETHER = 4096
#: Pupils drawn for what is supposed before, and rounds of EM at most; it stops where no share moves by this.
DRAWN, ROUNDS, STILL = 20_000, 400, 1e-7


class Weights(Struct, frozen=True, eq=False):
    """What a page's odds rest on: by problem and reply the chances, by way of working and hypothesis.

    ``chances[j][r, w, h]``; reply 0 is no answer. ``sets[h]`` is which set of patterns a hypothesis supposes,
    ``names`` what the sets are called; ``shares[h]`` what is supposed before.
    """

    chances: tuple[Floats, ...]
    names: tuple[str, ...]
    sets: NDArray[np.intp]
    shares: Floats


class Odds(Struct, frozen=True, eq=False):
    """By row: the likeliest set, its odds and those of no steady idea in millionths; and by hypothesis how
    many pupils have it, in all rows together.
    """

    sets: NDArray[np.uint16]
    odds: NDArray[np.uint32]
    none: NDArray[np.uint32]
    pupils: Floats


def reply_rows(rows: PageRows) -> tuple[Codes, NDArray[np.intp], NDArray[np.int64]]:
    """Return the different rows of replies, sorted; for each row of the page its place; papers of each."""
    codes = np.stack([rows.replies(at)[1][rows.codes[:, at]] for at in range(rows.codes.shape[1])], axis=1)
    wide = np.ascontiguousarray(codes.astype(">u2")).view(f"V{2 * codes.shape[1]}").ravel()
    order = np.argsort(wide, kind="stable")
    first = np.r_[True, wide[order][1:] != wide[order][:-1]]
    place = np.empty(len(order), dtype=np.intp)
    place[order] = np.cumsum(first) - 1
    papers = np.rint(np.bincount(place, rows.papers)).astype(np.int64)
    return codes[order[first]], place, papers


def weights(rows: PageRows) -> Weights:
    """Return what a page's odds rest on before anything is learnt."""
    page = rows.asked
    count = len(page.tables.hypotheses)
    chances = []
    for at in range(len(page.expected)):
        replies, _ = rows.replies(at)
        table = np.ones((len(replies) + 1, count, WAYS))
        for place, reply in enumerate(replies, start=1):
            table[place] = np.array(page.chances(at, reply)).reshape(count, WAYS) / MILLION
        chances.append(np.ascontiguousarray(table.transpose(0, 2, 1)))
    names = tuple(sorted(set(page.sets)))
    sets = np.array([names.index(one) for one in page.sets], dtype=np.intp)
    raw = np.array(supposed(page.tables.hypotheses), dtype=np.float64)
    return Weights(tuple(chances), names, sets, raw / raw.sum())


def keep_weights(known: Weights, goal: Path) -> None:
    """Write weights into a file, for those who work parts out."""
    arrays: dict[str, Any] = {f"chances{at}": table for at, table in enumerate(known.chances)}
    np.savez(goal, names=np.array(known.names), sets=known.sets, shares=known.shares, **arrays)


def kept_weights(path: Path) -> Weights:
    """Read weights from a file of ours; nothing in it is run."""
    with np.load(path, allow_pickle=False) as held:
        chances = tuple(held[f"chances{at}"] for at in range(len(held.files) - 3))
        return Weights(chances, tuple(held["names"].tolist()), held["sets"], held["shares"])


def learnt(known: Weights, codes: Codes, papers: NDArray[np.int64], seed: int = 1) -> Floats:
    """Return the shares of the hypotheses by the EM algorithm, from papers drawn by seeded chance.

    What is supposed counts as 12 pupils, as in a class: so the summit of the likelihood with that prior.
    """
    chance = np.random.default_rng(seed)
    whole = int(papers.sum())
    drawn = chance.multinomial(min(DRAWN, whole), papers / whole)
    kept = np.flatnonzero(drawn)
    likely = np.concatenate(list(_likelihoods(known, codes[kept])))
    likely /= likely.max(axis=1, keepdims=True)
    times = drawn[kept].astype(np.float64)
    base = known.shares * AS_PUPILS
    shares = known.shares
    for _ in range(ROUNDS):
        found = likely * shares
        found *= (times / found.sum(axis=1))[:, None]
        new = (base + found.sum(axis=0)) / (AS_PUPILS + times.sum())
        moved = float(np.abs(new - shares).max())
        shares = new
        if moved < STILL:
            break
    return np.asarray(shares)


def weighed(known: Weights, codes: Codes, papers: NDArray[np.int64]) -> Odds:
    """Return the odds of some rows of replies."""
    order = np.argsort(known.sets, kind="stable")
    starts = np.searchsorted(known.sets[order], np.arange(len(known.names)))
    none = known.names.index("")
    best = np.empty(len(codes), dtype=np.uint16)
    odds, nothing = np.empty(len(codes), dtype=np.uint32), np.empty(len(codes), dtype=np.uint32)
    pupils = np.zeros(len(known.shares))
    at = 0
    for likely in _likelihoods(known, codes):
        part = slice(at, at + len(likely))
        at += len(likely)
        share = likely * known.shares
        share /= share.sum(axis=1, keepdims=True)
        pupils += (share * papers[part, None]).sum(axis=0)
        of_sets = np.add.reduceat(share[:, order], starts, axis=1)
        best[part] = of_sets.argmax(axis=1)
        odds[part] = np.rint(of_sets.max(axis=1) * MILLION)
        nothing[part] = np.rint(of_sets[:, none] * MILLION)
    return Odds(best, odds, nothing, pupils)


def _likelihoods(known: Weights, codes: Codes) -> Iterator[Floats]:
    """Give how likely blocks of rows are under every hypothesis: rows by hypotheses.

    Rows are sorted, so that many of those that lie together begin alike: the first half of the problems is
    multiplied out once for all of them, and each quarter of the rest once for rows that are alike there.
    """
    count = codes.shape[1]
    half = count // 2
    cuts = [0, half, half + (count - half) // 2, count]
    for begin in range(0, len(codes), TOGETHER):
        some = codes[begin : begin + TOGETHER]
        parts = [
            _products(known, some[:, first:last], first) for first, last in pairwise(cuts) if first < last
        ]
        for at in range(0, len(some), BLOCK):
            found, *others = (table[of[at : at + BLOCK]] for table, of in parts)
            for other in others:
                found *= other
            yield found.sum(axis=1)


def _products(known: Weights, codes: Codes, first: int) -> tuple[Floats, NDArray[np.intp]]:
    """Return the products of the different rows of a half of the problems, and which each row is."""
    kinds, of = np.unique(codes, axis=0, return_inverse=True)
    found = np.ones((len(kinds), *known.chances[first].shape[1:]))
    for at in range(codes.shape[1]):
        found *= known.chances[first + at][kinds[:, at]]
    return found, of.ravel()
