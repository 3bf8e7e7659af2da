"""The order of a page: from easy to hard, with kinds mixed so that each problem needs a decision."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache

from onewhole.notations.text import text
from onewhole.problems.difficulty import difficulty
from onewhole.problems.needs import needs
from onewhole.sheets.page import FALL
from onewhole.statements.statement import Statement
from onewhole.working.strategy import Strategy

#: So many of one kind may follow one another. That interleaved practice lasts longer: Rohrer, Dedrick and
#: Burgess (2014), grade 7; how many in a row is our own.
IN_A_ROW = 3

Cost = tuple[int, int, int]


@dataclass(frozen=True, slots=True)
class Hard:
    """A problem, what sort of work it is, and how hard (:func:`onewhole.problems.difficulty.difficulty`)."""

    statement: Statement
    sort: str
    score: int


def hard(statement: Statement, taught: Strategy) -> Hard:
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


def _with(used: tuple[int, ...], at: int) -> tuple[int, ...]:
    return (*used[:at], used[at] + 1, *used[at + 1 :])
