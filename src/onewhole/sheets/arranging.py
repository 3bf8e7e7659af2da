"""The order of a page: from easy to hard, with kinds mixed so that each problem needs a decision."""

from collections import defaultdict
from collections.abc import Sequence
from functools import cache
from itertools import combinations, pairwise

from msgspec import Struct

from onewhole.notations.text import text
from onewhole.problems.difficulty import difficulty
from onewhole.problems.needs import needs
from onewhole.problems.numbers import numbers_of
from onewhole.sheets.page import FALL
from onewhole.statements.statement import Statement
from onewhole.working.taught import AsTaught

#: So many of one kind may follow one another. That interleaved practice lasts longer: Rohrer, Dedrick and
#: Burgess (2014), grade 7; how many in a row is our own.
IN_A_ROW = 3
#: One number at the same place of two neighbours weighs as much as so many that are written alike; our own.
SAME_NUMBER = 4
#: So much weighs a point by which the first problem is harder than the easiest; our own.
HARD_FIRST = 2 * SAME_NUMBER
#: Problems whose difficulty differs by no more than this may change places.
NEAR = 2

Cost = tuple[int, int, int]


class Hard(Struct, frozen=True):
    """A problem, what sort of work it is, and how hard (:func:`onewhole.problems.difficulty.difficulty`)."""

    statement: Statement
    sort: str
    score: int


def hard(statement: Statement, taught: AsTaught) -> Hard:
    """Return how hard a problem is, and its sort: the operations, and whether anything is regrouped.

    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.regroup_first import REGROUP_FIRST
    >>> hard(read_statement("52 - 27"), REGROUP_FIRST).sort
    'subtract, regrouping'
    """
    wanted = needs(statement)
    sort = ", ".join(
        (*(one.value for one in wanted.operations), *(("regrouping",) if wanted.regrouping else ()))
    )
    return Hard(statement, sort, difficulty(statement, taught).score)


def arranged(problems: Sequence[Hard]) -> tuple[Hard, ...]:
    """Return problems in the best order, exactly: from easy to hard, with kinds of work interleaved.

    Within one sort each problem is at least as hard as the one before. Minimised in this order: problems that
    are a fourth or later of their sort in a row (a first run may be as long as a quarter of the page); falls
    of three points or more; the sum of all falls.

    >>> from onewhole.statements.reading import read_statement
    >>> def of(typed, score):
    ...     return Hard(read_statement(typed), typed[-1], score)
    >>> [one.score for one in arranged([of("4 - 2", 5), of("3 - 1", 2), of("5 - 2", 1), of("4 - 1", 6)])]
    [1, 2, 5, 6]
    """
    piles: dict[str, list[Hard]] = defaultdict(list)
    for one in sorted(problems, key=lambda one: (one.score, text(one.statement))):
        piles[one.sort].append(one)
    rows = tuple(piles[sort] for sort in sorted(piles, key=lambda sort: (piles[sort][0].score, sort)))
    first_run = max(IN_A_ROW, -(-len(problems) // 4))

    @cache
    def best(used: tuple[int, ...], last: int, run: int, leading: bool) -> tuple[Cost, int]:
        options: list[tuple[Cost, int]] = []
        for at, row in enumerate(rows):
            if used[at] == len(row):
                continue
            again = at == last
            length, leads = (run + 1, leading) if again else (1, last < 0)
            excess = length > (first_run if leads else IN_A_ROW)
            fall = max(0, rows[last][used[last] - 1].score - row[used[at]].score) if last >= 0 else 0
            then, _ = best(_with(used, at), at, min(length, first_run + 1), leads)
            options.append(((excess + then[0], (fall >= FALL) + then[1], fall + then[2]), at))
        return min(options, default=((0, 0, 0), -1))

    used, last, run, leading = (0,) * len(rows), -1, 0, True
    order: list[Hard] = []
    for _ in problems:
        _, at = best(used, last, run, leading)
        run, leading = (run + 1, leading) if at == last else (1, last < 0)
        run = min(run, first_run + 1)
        order.append(rows[at][used[at]])
        used, last = _with(used, at), at
    return tuple(order)


def apart(order: Sequence[Hard]) -> tuple[Hard, ...]:
    """Return the same order with equals exchanged, so that neighbours have as little in common as can be.

    Only problems of one sort that are about equally hard change places: the page climbs as it did. Where
    neighbors have their second number in common all the same, one of them is moved elsewhere.

    >>> from onewhole.statements.reading import read_statement
    >>> def of(typed):
    ...     return Hard(read_statement(typed), "subtract", 3)
    >>> [text(one.statement) for one in apart([of("9 - 4"), of("8 - 4"), of("7 - 2")])]
    ['9 - 4', '7 - 2', '8 - 4']
    """
    found = list(order)
    pairs = [
        (at, other)
        for at, other in combinations(range(len(found)), 2)
        if found[at].sort == found[other].sort and abs(found[at].score - found[other].score) <= NEAR
    ]
    now = _beside(found)
    for _ in range(len(found)):
        before = now
        for at, other in pairs:
            found[at], found[other] = found[other], found[at]
            if (changed := _beside(found)) < now:
                now = changed
            else:
                found[at], found[other] = found[other], found[at]
        if now == before:
            break
    return _moved(tuple(found))


def _moved(order: tuple[Hard, ...]) -> tuple[Hard, ...]:
    """Move one problem at a time, each where it does best, until no neighbors have a later number in common.

    A problem is moved only where that parts neighbors; then as little as can be is given up of the order.
    """
    now = _told_alike(order)
    while now[0]:
        moves = (
            (*rest[:to], one, *rest[to:])
            for at, one in enumerate(order)
            for rest in ((*order[:at], *order[at + 1 :]),)
            for to in range(len(order))
        )
        best = min(moves, key=_told_alike)
        if (cost := _told_alike(best))[0] >= now[0]:
            break
        order, now = best, cost
    return order


def _told_alike(order: Sequence[Hard]) -> tuple[int, ...]:
    """Count neighbors with a later number in common; then how hard the first is, falls, and long runs."""
    pairs = tuple(pairwise(order))
    alike = sum(_later_alike(one, other) for one, other in pairs)
    first = max((order[0].score - one.score for one in order), default=0)
    falls = [max(0, one.score - other.score) for one, other in pairs]
    runs = sum(
        len({one.sort for one in order[at : at + IN_A_ROW + 1]}) == 1 for at in range(len(order) - IN_A_ROW)
    )
    return alike, first, sum(fall >= FALL for fall in falls), runs, sum(falls)


def _later_alike(one: Hard, other: Hard) -> bool:
    """Say whether two problems have a number in common at a place that is not the first."""
    mine, theirs = numbers_of(one.statement)[1:], numbers_of(other.statement)[1:]
    return any(a == b for a, b in zip(mine, theirs, strict=False))


def _beside(order: Sequence[Hard]) -> int:
    """Count what neighbours have in common, a number at its place or how it is written, and the falls."""
    common = HARD_FIRST * max((order[0].score - one.score for one in order), default=0)
    for one, other in pairwise(order):
        common += 2 * max(0, one.score - other.score)
        mine, theirs = numbers_of(one.statement), numbers_of(other.statement)
        common += sum(SAME_NUMBER * (a == b) for a, b in zip(mine, theirs, strict=False))
        common += [a.ladder for a in mine] == [b.ladder for b in theirs]
    return common


def _with(used: tuple[int, ...], at: int) -> tuple[int, ...]:
    return (*used[:at], used[at] + 1, *used[at + 1 :])
