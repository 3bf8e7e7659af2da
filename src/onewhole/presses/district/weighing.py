"""Odds of patterns for very many different papers of one page: floats in NumPy, a block of rows at a time.

The odds of one pupil in a class are exact (:mod:`onewhole.marking.diagnosis.weighing`); here they are the
same products and sums in floats, told in millionths. `tests/agreement/test_district_odds.py` holds the two
against each other. Each row is worked out by itself, in blocks that begin at the same places whoever works
them out, so that one machine and several give the same bytes.
"""

from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.diagnosis.prior import AS_PUPILS, supposed
from onewhole.marking.diagnosis.weighing import WAYS
from onewhole.presses.district.distinct import Places, distinct_rows
from onewhole.presses.district.page_rows import Codes, PageRows
from onewhole.presses.skills.cells import Floats

#: Problems whose chances are multiplied out beforehand for all replies to them that there are.
SPAN = 2
#: Rows that are weighed at once: their numbers lie in a processor's cache.
BLOCK = 32
#: Pupils drawn for what is supposed before, and rounds of EM at most; it stops where no share moves by this.
DRAWN, ROUNDS, STILL = 20_000, 400, 1e-7


class Weights(Struct, frozen=True, eq=False):
    """What a page's odds rest on: by problem and reply the chances, by way of working and hypothesis.

    ``chances[j][r, w, h]``, the largest of each reply 1; reply 0 is no answer. ``names`` are the sets of
    patterns that are supposed; first stand the ``alone`` sets that one hypothesis supposes, in the order of
    the hypotheses, then from ``starts`` on those with several. ``order[h]`` is the page's own number of a
    hypothesis, ``shares[h]`` what is supposed before.
    """

    chances: tuple[Floats, ...]
    names: tuple[str, ...]
    starts: Places
    order: Places
    shares: Floats

    @property
    def alone(self) -> int:
        """How many sets have one hypothesis only."""
        return len(self.names) - len(self.starts)


class Odds(Struct, frozen=True, eq=False):
    """By row: the likeliest set, its odds and those of no steady idea in millionths; and by hypothesis how
    many pupils have it, in all rows together.
    """

    sets: NDArray[np.uint16]
    odds: NDArray[np.uint32]
    none: NDArray[np.uint32]
    pupils: Floats


class ReplyRows(Struct, frozen=True, eq=False):
    """The different rows of replies to a page, sorted, how many papers each has, and by paper its place.

    Problems that are answered most alike come first (``problems``), so that many rows begin alike.
    """

    problems: tuple[int, ...]
    codes: Codes
    papers: NDArray[np.int64]
    place: Places


def reply_rows(rows: PageRows) -> ReplyRows:
    """Return the different rows of replies."""
    columns = [rows.replies(at)[1][rows.codes[:, at]] for at in range(rows.codes.shape[1])]
    most = [int(np.bincount(column, rows.papers).max()) for column in columns]
    problems = sorted(range(len(columns)), key=lambda at: -most[at])
    codes = np.stack([columns[at] for at in problems], axis=1)
    first, place = distinct_rows(codes)
    papers = np.rint(np.bincount(place, rows.papers)).astype(np.int64)
    return ReplyRows(tuple(problems), codes[first], papers, place)


def weights(rows: PageRows, problems: Sequence[int]) -> Weights:
    """Return what a page's odds rest on before anything is learnt, for problems in this order."""
    page = rows.asked
    times = Counter(page.sets)
    names = sorted(times, key=lambda one: (times[one] > 1, one))
    place = {name: at for at, name in enumerate(names)}
    sets = np.array([place[one] for one in page.sets])
    order = np.argsort(sets, kind="stable")
    alone = sum(count == 1 for count in times.values())
    starts = np.searchsorted(sets[order], np.arange(alone, len(names)))
    raw = np.array(supposed(page.tables.hypotheses), dtype=np.float64)[order]
    chances = tuple(_chances(rows, at, order) for at in problems)
    return Weights(chances, tuple(names), starts, order, raw / raw.sum())


def _chances(rows: PageRows, at: int, order: Places) -> Floats:
    replies, _ = rows.replies(at)
    table = np.ones((len(replies) + 1, len(rows.asked.tables.hypotheses), WAYS))
    for place, reply in enumerate(replies, start=1):
        table[place] = np.reshape(rows.asked.chances(at, reply), table.shape[1:])
    table /= table.max(axis=(1, 2), keepdims=True)
    return np.ascontiguousarray(table[:, order].transpose(0, 2, 1))


def keep_weights(known: Weights, goal: Path) -> None:
    """Write weights into a file, for those who work parts out."""
    arrays: dict[str, Any] = {f"chances{at}": table for at, table in enumerate(known.chances)}
    arrays |= {"starts": known.starts, "order": known.order, "shares": known.shares}
    np.savez(goal, names=np.array(known.names), **arrays)


def kept_weights(path: Path) -> Weights:
    """Read weights from a file of ours; nothing in it is run."""
    with np.load(path, allow_pickle=False) as held:
        chances = tuple(held[f"chances{at}"] for at in range(len(held.files) - 4))
        return Weights(chances, tuple(held["names"].tolist()), held["starts"], held["order"], held["shares"])


def learnt(known: Weights, codes: Codes, papers: NDArray[np.int64], seed: int = 1) -> Floats:
    """Return the shares of the hypotheses by the EM algorithm, from papers drawn by seeded chance.

    What is supposed counts as 12 pupils, as in a class: so the summit of the likelihood with that prior.
    """
    chance = np.random.default_rng(seed)
    whole = int(papers.sum())
    drawn = chance.multinomial(min(DRAWN, whole), papers / whole)
    kept = np.flatnonzero(drawn)
    likely = np.empty((len(kept), len(known.shares)))
    at = 0
    for block in _likelihoods(known, codes[kept], np.ones(len(known.shares))):
        np.divide(block, block.max(axis=1, keepdims=True), out=likely[at : at + len(block)])
        at += len(block)
    times = drawn[kept].astype(np.float64)
    base = known.shares * AS_PUPILS
    shares = known.shares
    for _ in range(ROUNDS):
        new = (base + shares * ((times / (likely @ shares)) @ likely)) / (AS_PUPILS + times.sum())
        moved = float(np.abs(new - shares).max())
        shares = new
        if moved < STILL:
            break
    return np.asarray(shares)


def weighed(known: Weights, codes: Codes, papers: NDArray[np.int64]) -> Odds:
    """Return the odds of some rows of replies."""
    none, alone = known.names.index(""), known.alone
    best = np.empty(len(codes), dtype=np.uint16)
    odds, nothing = np.empty(len(codes), dtype=np.uint32), np.empty(len(codes), dtype=np.uint32)
    pupils = np.zeros(len(known.shares))
    of_sets = np.empty((BLOCK, len(known.names)))
    at = 0
    for likely in _likelihoods(known, codes, known.shares):
        part = slice(at, at + len(likely))
        at += len(likely)
        whole = likely.sum(axis=1)
        here = of_sets[: len(likely)]
        here[:, :alone] = likely[:, :alone]
        np.add.reduceat(likely, known.starts, axis=1, out=here[:, alone:])
        pupils += (papers[part] / whole) @ likely
        best[part] = here.argmax(axis=1)
        odds[part] = np.rint(here.max(axis=1) / whole * MILLION)
        nothing[part] = np.rint(here[:, none] / whole * MILLION)
    return Odds(best, odds, nothing, pupils)


def _likelihoods(known: Weights, codes: Codes, shares: Floats) -> Iterator[Floats]:
    """Give how likely blocks of rows are under every hypothesis, times its share: rows by hypotheses.

    Rows are sorted, so that neighbors begin alike. Of each span of problems all replies that there are are
    multiplied out once; then the rows of a block that begin alike up to a span share the product.
    """
    room = np.empty((3, BLOCK, *known.chances[0].shape[1:]))
    levels = list(_levels(known, codes))
    for block in range(-(-len(codes) // BLOCK)):
        product, other, factor = room
        product[0] = shares
        for level in levels:
            nodes = slice(level.bounds[block], level.bounds[block + 1])
            count = nodes.stop - nodes.start
            product.take(level.parent[nodes], axis=0, out=other[:count], mode="clip")
            level.table.take(level.of[nodes], axis=0, out=factor[:count], mode="clip")
            if level is levels[-1]:
                yield np.einsum("rwh,rwh->rh", other[:count], factor[:count])
            else:
                other[:count] *= factor[:count]
                product, other = other, product


class _Level(Struct, frozen=True, eq=False):
    """The different beginnings of the rows of each block up to a span of problems.

    ``of`` is by beginning which product of ``table`` it goes on with, ``parent`` the place in the block of
    the shorter beginning that it goes on from; those of block b are from ``bounds[b]`` on.
    """

    table: Floats
    of: Places
    parent: Places
    bounds: list[int]


def _levels(known: Weights, codes: Codes) -> Iterator[_Level]:
    count = codes.shape[1]
    new, before = np.zeros(len(codes), dtype=np.bool_), np.zeros(len(codes), dtype=np.intp)
    new[::BLOCK] = True
    for first in range(0, count, SPAN):
        span = slice(first, first + SPAN)
        table, of = _products(known.chances[span], codes[:, span])
        new[1:] |= of[1:] != of[:-1]
        if span.stop >= count:
            new[:] = True
        which, parent, bounds, before = _nodes(new, of, before)
        yield _Level(table, which, parent, bounds)


def _nodes(new: NDArray[np.bool_], of: Places, before: Places) -> tuple[Places, Places, list[int], Places]:
    """Return for the rows that begin anew their product, their parent, the bounds of the blocks; and by row
    the place of its beginning in its block.
    """
    rows = np.flatnonzero(new)
    node = np.cumsum(new) - 1
    starts = node[::BLOCK]
    mine = node - np.repeat(starts, BLOCK)[: len(node)]
    return of[rows], before[rows], [*starts.tolist(), len(rows)], mine


def _products(chances: Sequence[Floats], codes: Codes) -> tuple[Floats, Places]:
    """Return the products of the different replies to some problems, and by row which of them it has."""
    first, of = distinct_rows(codes)
    kinds = codes[first]
    found = chances[0][kinds[:, 0]]
    for table, column in zip(chances[1:], kinds.T[1:], strict=True):
        found *= table[column]
    return found, of
