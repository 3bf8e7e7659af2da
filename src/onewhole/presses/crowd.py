"""The odds of very many pupils at once: the same as the marking's, worked with floats in NumPy.

The marking weighs one class exactly, in whole numbers. This is the quick road for the pupils of a whole
school district, all taken as one class. The chances of a reply are the marking's own tables; only their
products and sums are worked here, block by block, so that memory does not grow with the file.
`tests/agreement/test_crowd.py` holds the two roads together: the same best set, odds within a billionth.
"""

from collections import deque
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from onewhole.marking.diagnosis.hypothesis import Hypothesis
from onewhole.marking.diagnosis.prior import BILLION, NOTHING, Learnt, supposed
from onewhole.marking.diagnosis.reply import Reply, reply
from onewhole.marking.diagnosis.tables import Tables, tables
from onewhole.marking.diagnosis.weighing import WAYS, column
from onewhole.marking.reading.answer import read_written
from onewhole.marking.reading.expected import Expected, expect
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.problems.problem import Problem
from onewhole.statements.statement import Relation

Floats = NDArray[np.float64]
Codes = NDArray[np.uint16]
Places = NDArray[np.intp]
#: One pupil: a code of the teacher's, and what was written, one cell a problem in the order of the page.
Row = tuple[str, Sequence[str]]
Ids = tuple[str, ...]

#: Pupils read together, and different rows of replies worked together: so few that their products stay in the
#: processor's own memory (as measured).
BLOCK, CHUNK = 2048, 32
#: So many different cells of one problem are remembered; what is written beyond that is read each time.
REMEMBERED = 20_000


@dataclass(frozen=True, slots=True)
class Likeliest:
    """What is likeliest of one pupil.

    ``none`` are the odds of no steady pattern, ``patterns`` the likeliest set (empty for none) and
    ``probability`` its odds. ``alike`` are all sets that write the same as it on the whole page, itself among
    them, and ``together`` their odds.
    """

    pupil: str
    none: float
    patterns: Ids
    probability: float
    alike: tuple[Ids, ...]
    together: float


@dataclass(frozen=True, slots=True, eq=False)
class Page:
    """A page made ready for a crowd.

    ``of`` numbers for every hypothesis the bunch of those that write the same on the whole page, and
    ``alike`` has their places, bunch by bunch; each bunch is weighed once. ``base`` is what is supposed of
    every hypothesis, in billionths of a pupil.
    """

    expected: tuple[Expected, ...]
    tables: Tables
    of: Places
    alike: tuple[list[int], ...]
    base: Floats

    @property
    def hypotheses(self) -> tuple[Hypothesis, ...]:
        """Return every hypothesis, in the order of the columns of the odds."""
        return self.tables.hypotheses

    @property
    def kept(self) -> tuple[int, ...]:
        """Return the place of one hypothesis of each bunch."""
        return tuple(places[0] for places in self.alike)

    def same(self, place: int) -> list[int]:
        """Return the places of all hypotheses that write the same as one on the whole page."""
        return self.alike[int(self.of[place])]


@dataclass(frozen=True, slots=True, eq=False)
class Block:
    """Some pupils and their odds.

    ``odds`` has a row for each different row of replies and a column for each hypothesis; every row adds up
    to 1. ``places`` says which row is each pupil's. A pupil of whom no answer was read has the odds that are
    supposed of every pupil.
    """

    pupils: tuple[str, ...]
    places: Places
    odds: Floats


def ready(problems: Sequence[Problem], learnt: Learnt = NOTHING) -> Page:
    """Work out the tables of a page.

    >>> from onewhole.statements.reading import read_statement
    >>> page = ready([Problem("1", read_statement("9 5/8 - 4 6/8"), "9 5/8 - 4 6/8")])
    >>> len(page.alike) < len(page.hypotheses)
    True
    """
    expected = tuple(expect(problem) for problem in problems)
    found = tables(expected)
    places: dict[object, int] = {}
    looks = zip(found.hypotheses, found.looks, strict=True)
    of = [places.setdefault((one.reliability, look), len(places)) for one, look in looks]
    alike = tuple([at for at, other in enumerate(of) if other == place] for place in range(len(places)))
    base = np.array(supposed(found.hypotheses, learnt), dtype=float)
    return Page(expected, found, np.array(of, dtype=np.intp), alike, base)


def crowd(page: Page, rows: Callable[[], Iterable[Row]], *, workers: int = 1) -> Iterator[Block]:
    """Yield the odds of all pupils, block by block in their order; they are taken as one class.

    ``rows`` gives the pupils, and is called twice: what is supposed of one pupil is learnt from all the
    others (:func:`.prior.from_class`). One thread reads while ``workers`` others work at the
    products: with two cores one is best (as measured, see `bench/crowd.py`).
    """
    reading = _Reading(page)
    with ThreadPoolExecutor(workers) as pool:
        whole = page.base.copy()
        for _, own in _each(pool, workers, reading.blocks(rows()), lambda block: _own(page, block)):
            whole += own
        for block, odds in _each(
            pool, workers, reading.blocks(rows()), lambda block: _odds(page, block, whole)
        ):
            yield Block(block.pupils, block.places, odds)


def likeliest(page: Page, block: Block) -> Iterator[Likeliest]:
    """Yield what is likeliest of each pupil of a block; of sets with the same odds, the first by ids."""
    steady = np.array([one.steady for one in page.hypotheses])
    none = block.odds[:, ~steady].sum(axis=1)
    by_ids = sorted(np.flatnonzero(steady), key=lambda at: page.hypotheses[at].ids)
    order = np.array(by_ids, dtype=np.intp)
    best = order[np.argmax(block.odds[:, order], axis=1)] if by_ids else np.zeros(len(none), dtype=np.intp)
    found = [
        _likeliest(page, odds, float(no), int(at))
        for odds, no, at in zip(block.odds, none, best, strict=True)
    ]
    for pupil, place in zip(block.pupils, block.places, strict=True):
        yield Likeliest(pupil, *found[place])


def _likeliest(
    page: Page, odds: Floats, none: float, best: int
) -> tuple[float, Ids, float, tuple[Ids, ...], float]:
    top = float(odds[best]) if page.hypotheses[best].steady else 0.0
    if none >= top:
        return none, (), none, ((),), none
    same = page.same(best)
    sets = tuple(sorted(page.hypotheses[at].ids for at in same))
    return none, page.hypotheses[best].ids, top, sets, float(odds[same].sum())


@dataclass(slots=True, eq=False)
class _Coded:
    """Some pupils, the different rows of replies (as numbers) that they gave, and the chances of the replies.

    ``places`` says which row each pupil gave, ``times`` how many gave each row; ``chances`` has a table a
    problem.
    """

    pupils: tuple[str, ...]
    codes: Codes
    places: Places
    times: Floats
    chances: tuple[Floats, ...]


@dataclass(slots=True, eq=False)
class _Problem:
    """One problem while answers are read: the number of each reply (0 for none), and its chances."""

    codes: dict[str, int] = field(default_factory=dict)
    replies: dict[Reply | None, int] = field(default_factory=lambda: {None: 0})
    columns: list[Floats] = field(default_factory=list)
    table: Floats | None = None


class _Reading:
    """Turns cells into numbers; what was written once is not read again."""

    def __init__(self, page: Page) -> None:
        self._page = page
        self._hypotheses = [page.hypotheses[at] for at in page.kept]
        nothing = np.ones(len(page.kept) * WAYS)
        self._problems = [_Problem(columns=[nothing]) for _ in page.expected]

    def blocks(self, rows: Iterable[Row]) -> Iterator[_Coded]:
        """Yield the rows in blocks, as numbers."""
        pupils: list[str] = []
        codes: list[list[int]] = []
        for pupil, cells in rows:
            pupils.append(pupil)
            codes.append([self._code(at, text) for at, text in enumerate(cells)])
            if len(pupils) == BLOCK:
                yield self._coded(pupils, codes)
                pupils, codes = [], []
        if pupils:
            yield self._coded(pupils, codes)

    def _code(self, at: int, text: str) -> int:
        code = self._problems[at].codes.get(text)
        return self._read(at, text) if code is None else code

    def _read(self, at: int, text: str) -> int:
        problem, table = self._problems[at], self._page.tables.chances[at]
        read = read_written(text).read
        given = None
        if isinstance(read, Quantity | Impossible | Relation):
            given = reply(self._page.expected[at], read)
        code = problem.replies.get(given)
        if code is None and given is not None:
            code = problem.replies[given] = len(problem.columns)
            meant = [self._page.tables.meaning[at][which] for which in self._page.kept]
            chances = np.array(column(self._hypotheses, table, given, meant), dtype=float)
            by_way = chances.reshape(-1, WAYS).T.ravel()
            problem.columns.append(by_way / by_way.max())
            problem.table = None
        if len(problem.codes) < REMEMBERED:
            problem.codes[text] = code or 0
        return code or 0

    def _coded(self, pupils: list[str], codes: list[list[int]]) -> _Coded:
        for problem in self._problems:
            if problem.table is None:
                problem.table = np.array(problem.columns)
        ready_tables = tuple(problem.table for problem in self._problems if problem.table is not None)
        rows, places = _different(np.array(codes, dtype=np.uint16))
        return _Coded(tuple(pupils), rows, places, np.bincount(places).astype(float), ready_tables)


def _each(
    pool: ThreadPoolExecutor, workers: int, blocks: Iterable[_Coded], work: Callable[[_Coded], Floats]
) -> Iterator[tuple[_Coded, Floats]]:
    """Work at blocks in turn, a few ahead and no more, and yield what comes of them in their order."""
    waiting: deque[tuple[_Coded, Future[Floats]]] = deque()
    for block in blocks:
        waiting.append((block, pool.submit(work, block)))
        if len(waiting) > workers:
            done, future = waiting.popleft()
            yield done, future.result()
    while waiting:
        done, future = waiting.popleft()
        yield done, future.result()


def _likelihoods(page: Page, block: _Coded) -> Floats:
    """Return how likely each row of replies is under each bunch of hypotheses, up to a factor."""
    size = len(page.alike)
    likely = np.empty((len(block.codes), size))
    for start in range(0, len(likely), CHUNK):
        rows = block.codes[start : start + CHUNK]
        products = block.chances[0][rows[:, 0]]
        for at in range(1, len(block.chances)):
            products *= block.chances[at][rows[:, at]]
        np.sum(products.reshape(-1, WAYS, size), axis=1, out=likely[start : start + CHUNK])
    return likely


def _different(codes: Codes) -> tuple[Codes, Places]:
    """Return the different rows, and for each row which of them it is."""
    rows, places = np.unique(codes, axis=0, return_inverse=True)
    return rows, places.reshape(-1)


def _own(page: Page, block: _Coded) -> Floats:
    """Return the pupils' odds under what is supposed of every pupil, added up, in billionths rounded down."""
    own = _rounded(page, _likelihoods(page, block))
    total: Floats = block.times @ own
    return total


def _rounded(page: Page, likely: Floats) -> Floats:
    """Return the odds under what is supposed, in billionths rounded down; 0 where no answer says anything."""
    own = likely[:, page.of]
    own *= page.base
    own *= BILLION / own.sum(axis=1, keepdims=True)
    own[likely.max(axis=1) == likely.min(axis=1)] = 0
    return np.floor(own, out=own)


def _odds(page: Page, block: _Coded, whole: Floats) -> Floats:
    """Return each pupil's odds, learnt from all the others."""
    likely = _likelihoods(page, block)
    odds: Floats = whole - _rounded(page, likely)
    odds *= likely[:, page.of]
    odds /= odds.sum(axis=1, keepdims=True)
    return odds
