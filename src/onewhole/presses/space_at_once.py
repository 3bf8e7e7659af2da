"""All problems of a grade at once, by problem class (what the model cannot distinguish), in NumPy.

`tests/agreement/test_space_at_once.py` compares each attribute with one found for one problem at a time.
"""

from collections.abc import Callable, Collection, Hashable, Iterator, Mapping, Sequence
from functools import lru_cache
from itertools import combinations

import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.findings.wished_skill import WishedSkill
from onewhole.presses.answers_at_once import Counts, Mask, Table, Writes, right_answers, writes
from onewhole.problems.difficulty import LARGE_DENOMINATOR
from onewhole.problems.points import POINTS, Hardness
from onewhole.problems.traps import is_core
from onewhole.sheets.candidates import LikePair, ProblemClass, ProblemType
from onewhole.sheets.learning import Doubt
from onewhole.sheets.wishes import Wishes
from onewhole.working.strategies.table import strategy_named
from onewhole.working.strategy import Strategy, fits

#: Problems worked at once, so that hundredths do not fill the memory.
CHUNK = 50_000
#: Wholes and pieces in one number: more than there are pieces of a whole.
FIRST = 1024
SORTS = tuple(ProblemType)


def table(denominator: int, largest: int, *, taken: bool) -> Table:
    """Return every problem with a denominator that belongs on a page on mixed numbers.

    A difference takes pieces from a mixed or a whole number and leaves something; a sum has pieces in both
    numbers and at least one whole.
    """
    amounts = np.arange(1, (largest + 1) * denominator, dtype=np.int64)
    first, second = (side.ravel() for side in np.meshgrid(amounts, amounts, indexing="ij"))
    w1, n1, w2, n2 = first // denominator, first % denominator, second // denominator, second % denominator
    keep = (n2 > 0) & ((w1 > 0) & (first > second) if taken else (n1 > 0) & (w1 + w2 > 0))
    every = Table(w1, n1, w2, n2, np.full_like(w1, denominator), taken)
    return every.at(keep)


def sorts(t: Table) -> Counts:
    """Return the place of each problem's sort in ``SORTS``."""
    if not t.taken:
        return np.where(t.n1 + t.n2 >= t.d, SORTS.index(ProblemType.FILLED), SORTS.index(ProblemType.APART))
    from_whole = np.where(
        t.w2 > 0, SORTS.index(ProblemType.FROM_WHOLE), SORTS.index(ProblemType.PART_FROM_WHOLE)
    )
    short = np.where(t.n1 > 0, SORTS.index(ProblemType.OPENED), from_whole)
    return np.where(t.n1 >= t.n2, SORTS.index(ProblemType.ENOUGH), short)


def levels(t: Table) -> Counts:
    """Return the points of difficulty that come from the numbers alone."""
    sort = sorts(t)
    of_sort = np.array(
        [
            POINTS[Hardness.REGROUPED] * one.regroups + POINTS[Hardness.NOTHING_ON_TOP] * one.whole_on_top
            for one in SORTS
        ]
    )
    mixed_number = ((t.w1 > 0) & (t.n1 > 0)) | ((t.w2 > 0) & (t.n2 > 0))
    large = t.d > LARGE_DENOMINATOR
    points: Counts = of_sort[sort] + POINTS[Hardness.MIXED] * mixed_number + POINTS[Hardness.LARGE] * large
    return points


def twins(t: Table) -> Counts:
    """Return one number for each problem, equal for twins of one denominator and only for them."""
    sign = -1 if t.taken else 1
    return (t.w1 + sign * t.w2) * FIRST + t.n1 + sign * t.n2


def _second_has_wholes(t: Table) -> Mask:
    return t.w2 > 0


def _second_has_pieces(t: Table) -> Mask:
    return t.n2 > 0


def _whole_is_enough(t: Table) -> Mask:
    return (t.n1 > 0) & (t.w1 * t.d >= t.w2 * t.d + t.n2)


def _second_fills_the_first(t: Table) -> Mask:
    lacks = -t.n1 % t.d
    return (lacks > 0) & (t.w2 * t.d + t.n2 >= lacks)


def _always(t: Table) -> Mask:
    return np.ones(len(t), dtype=bool)


#: When a strategy suits, by its key; mixed numbers have no columns.
SUITS: Mapping[str, Callable[[Table], Mask]] = {
    "regroup_first": _always,
    "wholes_first": _second_has_wholes,
    "to_fractions": _always,
    "count_up": _always,
    "from_whole": _whole_is_enough,
    "equal_shift": _second_has_pieces,
    "units_apart": _always,
    "make_a_whole": _second_fills_the_first,
    "jump_on": _always,
}


def suits(t: Table, taught: Strategy) -> Mask:
    """Say for each problem whether the taught strategy works it, or its partner for the other operation.

    A class that works in columns regroups mixed numbers first.
    """
    if taught.key not in SUITS:
        taught = strategy_named(taught.partner)
    chosen = taught if fits(taught, taken=t.taken) else strategy_named(taught.partner)
    return SUITS[chosen.key](t)


def settled(t: Table, wrote: Mapping[str, Writes], doubts: Sequence[Doubt]) -> NDArray[np.bool_]:
    """Say for each doubt (a row) and problem (a column) whether the problem settles the doubt."""
    right = right_answers(t)
    written: dict[tuple[str, ...], list[Counts]] = {}
    for side in {side for doubt in doubts for side in (doubt.first, doubt.second)}:
        shown = [wrote[key] for key in side if key in wrote]
        answers = right
        for one in shown:
            answers = np.where(one.shows, one.answer, answers)
        written[side] = [np.where(one.shows, one.answer, answers) for one in shown] or [right]
    rows = np.zeros((len(doubts), len(t)), dtype=bool)
    known: dict[tuple[tuple[str, ...], ...], int] = {}
    for at, doubt in enumerate(doubts):
        acting = tuple(tuple(key for key in side if key in wrote) for side in (doubt.first, doubt.second))
        if acting in known:
            rows[at] = rows[known[acting]]
            continue
        known[acting] = known[acting[::-1]] = at
        ways = [(a, b) for a in written[doubt.first] for b in written[doubt.second]]
        rows[at] = ways[0][0] != ways[0][1]
        for a, b in ways[1:]:
            rows[at] &= a != b
    return rows


def hidden(wrote: Mapping[str, Writes]) -> Iterator[Mask]:
    """Yield, for one way after another in which numbers can hide a pattern, the problems that do.

    A pattern is hidden where it is right by luck, and where two patterns write the same answer
    (:func:`onewhole.problems.traps.traps`). Only patterns about regrouping and the pieces count.
    """
    core = [one for key, one in wrote.items() if is_core(key)]
    yield from (one.lucky for one in core)
    for a, b in combinations(core, 2):
        yield a.shows & b.shows & (a.answer == b.answer)


class _Field(Struct, frozen=True, eq=False):
    """The problems of one operation and denominator, with the kind of each (``home``)."""

    table: Table
    home: Counts
    kinds: tuple[ProblemClass, ...]


class Everything(Struct, frozen=True, eq=False):
    """All the problems that meet the wishes, by problem class."""

    listed: int
    kinds: tuple[ProblemClass, ...]
    _fields: tuple[_Field, ...]
    drawn: bool = False

    def members(self, kind: ProblemClass) -> tuple[LikePair, ...]:
        """Return the problems of a kind, in the order of the space."""
        for field in self._fields:
            if kind in field.kinds:
                return tuple(likes(field.table.at(np.flatnonzero(field.home == kind.place))))
        return ()


def likes(t: Table) -> Iterator[LikePair]:
    """Yield the problems of a table one by one."""
    for w1, n1, w2, n2, d in np.stack([t.w1, t.n1, t.w2, t.n2, t.d], axis=1).tolist():
        yield LikePair(w1, n1, w2, n2, d, t.taken)


def space(
    wishes: Wishes, doubts: Sequence[Doubt], *, crowd: int, twins: Collection[Hashable] = ()
) -> Everything:
    """Return every problem that meets the wishes, by problem class.

    Problems whose numbers hide more than others of the same type and denominator are left out. So are
    dominated problem classes: others with the same values in every limit settle the same doubts and more, and
    have together at least ``crowd`` problems of which no two are twins, so that one of them is always free.
    ``twins`` are those of problems that do not come again (:attr:`.LikePair.twin`).
    """
    operations = {WishedSkill.SUBTRACT: (True,), WishedSkill.ADD: (False,), WishedSkill.BOTH: (True, False)}[
        wishes.skill
    ]
    fields = tuple(
        _field(denominator, wishes, doubts, crowd, twins, taken=taken)
        for taken in operations
        for denominator in wishes.denominators
    )
    listed = sum(len(field.table) for field in fields)
    return Everything(listed, tuple(kind for field in fields for kind in field.kinds), fields)


class _Worked(Struct, frozen=True, eq=False):
    """Problems, and what every pattern writes on them."""

    table: Table
    wrote: Mapping[str, Writes]

    def at(self, places: Mask) -> "_Worked":
        """Return the same for some of the problems."""
        return _Worked(self.table.at(places), {key: one.at(places) for key, one in self.wrote.items()})


def _field(
    denominator: int,
    wishes: Wishes,
    doubts: Sequence[Doubt],
    crowd: int,
    gone: Collection[Hashable],
    *,
    taken: bool,
) -> _Field:
    every = table(denominator, wishes.largest, taken=taken)
    chunks = [
        _Worked(part, writes(part))
        for at in range(0, len(every), CHUNK)
        for part in [every.at(np.arange(at, min(at + CHUNK, len(every))))]
    ]
    if not chunks:
        return _Field(every, np.empty(0, dtype=np.int64), ())
    shared = np.logical_and.reduce([_shared(chunk) for chunk in chunks])
    trap = np.concatenate([_traps(chunk, shared) for chunk in chunks])
    fine = suits(every, wishes.strategy)
    fine[_come_again(denominator, wishes, taken=taken)] = False
    if gone:
        fine &= ~_twins_of(every, gone)
    if not wishes.doubles:
        fine &= ~doubled(every)
    sort = sorts(every)
    for one in np.unique(sort[fine]):
        fine[(sort == one) & (trap > trap[fine & (sort == one)].min())] = False
    told = [
        np.packbits(settled(kept.table, kept.wrote, doubts), axis=0, bitorder="little").T
        for at, chunk in enumerate(chunks)
        for kept in [chunk.at(fine[at * CHUNK : (at + 1) * CHUNK])]
    ]
    return _kinds(every.at(fine), np.concatenate(told), trap[fine], crowd)


def _shared(chunk: _Worked) -> NDArray[np.bool_]:
    """Return what all problems of a sort hide (row: sort, column: thing that may be hidden)."""
    sort = sorts(chunk.table)
    columns = [np.bincount(sort, weights=~row, minlength=len(SORTS)) == 0 for row in hidden(chunk.wrote)]
    return np.stack(columns, axis=1)


def _traps(chunk: _Worked, shared: NDArray[np.bool_]) -> Counts:
    """Count what each problem hides and not every problem of its sort does."""
    sort = sorts(chunk.table)
    count = np.zeros(len(sort), dtype=np.int64)
    for row, of_all in zip(hidden(chunk.wrote), shared.T, strict=True):
        count += row & ~of_all[sort]
    return count


def _come_again(denominator: int, wishes: Wishes, *, taken: bool) -> list[int]:
    """Return the places of the problems that were asked on the last nights."""
    if not wishes.avoid:
        return []
    places = _places(denominator, wishes.largest, taken=taken)
    return [places[typed] for typed in wishes.avoid if typed in places]


def _twins_of(t: Table, gone: Collection[Hashable]) -> Mask:
    """Say which problems are a twin of one that does not come again."""
    keys, first, at = np.unique(twins(t), return_index=True, return_inverse=True)
    one_each = likes(t.at(first))
    found: Mask = np.fromiter((one.twin in gone for one in one_each), dtype=bool, count=len(keys))[at]
    return found


@lru_cache(maxsize=32)
def _places(denominator: int, largest: int, *, taken: bool) -> Mapping[str, int]:
    """Return where each problem of a table stands, as it is typed."""
    return {one.typed: at for at, one in enumerate(likes(table(denominator, largest, taken=taken)))}


def doubled(t: Table) -> Mask:
    """Say which problems have one number twice."""
    twice: Mask = (t.w1 == t.w2) & (t.n1 == t.n2)
    return twice


def _kinds(t: Table, told: NDArray[np.uint8], trap: Counts, crowd: int) -> _Field:
    sort, level = sorts(t), levels(t)
    looks = np.concatenate([np.stack([sort, level], axis=1).astype(np.uint8), told], axis=1)
    first, home = _alike(looks)
    _, twin = np.unique(twins(t), return_inverse=True)
    asked = np.zeros((len(first), int(twin.max()) + 1), dtype=bool)
    asked[home, twin] = True
    best = _best(sort[first] * 16 + level[first], told[first], asked, crowd)
    free = np.count_nonzero(asked, axis=1)
    ends = [_ends(side, home) for side in (t.w1 * FIRST + t.n1, t.w2 * FIRST + t.n2)]
    kinds = tuple(
        ProblemClass(
            SORTS[sort[at]],
            int(t.d[at]),
            int(level[at]),
            int.from_bytes(told[at].tobytes(), "little"),
            int(free[place]),
            int(trap[at]),
            place,
            tuple(_in_all(ends, place, int(t.d[at]))),
        )
        for place, at in enumerate(first.tolist())
        if best[place]
    )
    return _Field(t, home, kinds)


def _ends(side: Counts, home: Counts) -> tuple[Counts, Counts]:
    """Return the least and the greatest of each class."""
    least, most = (np.full(int(home.max(initial=-1)) + 1, start, dtype=np.int64) for start in (1 << 40, -1))
    np.minimum.at(least, home, side)
    np.maximum.at(most, home, side)
    return least, most


def _in_all(
    ends: Sequence[tuple[Counts, Counts]], place: int, denominator: int
) -> Iterator[tuple[int, tuple[int, int, int]]]:
    """Yield the numbers that all problems of a class have, each with its place."""
    for which, (least, most) in enumerate(ends):
        if least[place] == most[place]:
            yield which, (*divmod(int(least[place]), FIRST), denominator)


def _alike(looks: NDArray[np.uint8]) -> tuple[Counts, Counts]:
    """Return the first place of each distinct row, and for each row the number of its class."""
    padded = np.pad(looks, ((0, 0), (0, -looks.shape[1] % 8)))
    words = np.ascontiguousarray(padded).view(np.uint64)
    order = np.lexsort(words.T[::-1])
    new = np.ones(len(order), dtype=bool)
    new[1:] = (words[order[1:]] != words[order[:-1]]).any(axis=1)
    home = np.empty(len(order), dtype=np.int64)
    home[order] = np.cumsum(new) - 1
    first = np.full(int(new.sum()), len(order), dtype=np.int64)
    np.minimum.at(first, home, np.arange(len(order)))
    return first, home


def _best(cells: Counts, told: NDArray[np.uint8], asked: Mask, crowd: int) -> Mask:
    """Say which problem classes stay: all not dominated by others of the same cell (see ``space``).

    ``told`` has the doubts that a problem class (row) settles, eight a byte, ``asked`` its twins (columns).
    """
    stays = np.ones(len(cells), dtype=bool)
    for cell in np.unique(cells):
        here = np.flatnonzero(cells == cell)
        settles_all = np.ones((len(here), len(here)), dtype=bool)
        for byte in np.ascontiguousarray(told[here].T):
            settles_all &= byte[:, None] & ~byte[None, :] == 0
        np.fill_diagonal(settles_all, val=False)
        for place, others in zip(here, settles_all, strict=True):
            stays[place] = np.count_nonzero(asked[here[others]].any(axis=0)) < crowd
    return stays
