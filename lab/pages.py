"""The pages that are compared: the example's, composed ones, random ones, look-alikes, and columns."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from functools import cache
from itertools import combinations, islice
from pathlib import Path
from random import Random

from lab.pupils import COLUMNS
from lab.spaces import subtractions
from onewhole.desk.page.compose import compose
from onewhole.marking.reading.writing import alike
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.text import text
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.wishes import Wishes
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

ROOM12 = Path(__file__).parents[1] / "examples" / "room12" / "sheet.txt"
#: The space from which random pages and built pages are both drawn.
DENOMINATORS = (3, 4, 5, 6, 8, 10, 12)
LARGEST = 9
#: So many problems of the space are looked at when a page is built.
LOOKED_AT = 400


def room12() -> tuple[str, ...]:
    """Return the problems of the example's page, as typed."""
    return tuple(problem.typed for problem in read_sheet(ROOM12.read_text(encoding="utf-8")).problems)


def random_page(size: int, seed: int) -> tuple[str, ...]:
    """Return so many differences of mixed numbers, each as likely as any other in the space."""
    return tuple(islice(map(text, _shuffled(f"random {seed}")), size))


def look_alikes(size: int, seed: int) -> tuple[str, ...]:
    """Return problems parallel to one that needs a whole opened: a drill, all of one make.

    The first one is drawn from the space; where it has too few parallels, another is drawn.
    """
    for first in _shuffled(f"look-alikes {seed}"):
        if not by_id("A02").slip(first):
            continue
        page = [first, *islice(parallel(first), size - 1)]
        if len(page) == size:
            return tuple(map(text, page))
    msg = "no problem of the space has so many parallels"
    raise ValueError(msg)


@cache
def _space() -> tuple[Statement, ...]:
    return tuple(subtractions(DENOMINATORS, LARGEST))


def _shuffled(seed: str) -> Iterator[Statement]:
    space = list(_space())
    chance = Random(seed)
    while space:
        at = chance.randrange(len(space))
        space[at], space[-1] = space[-1], space[at]
        yield space.pop()


def composed(size: int, seed: int) -> tuple[str, ...]:
    """Return a page as `onewhole compose` makes it from the same space, with no other wish."""
    wishes = Wishes(number=size, denominators=DENOMINATORS, largest=LARGEST, seed=seed)
    return tuple(problem.typed for problem in compose(wishes).sheet.problems)


def in_columns(size: int, seed: int) -> tuple[str, ...]:
    """Return a page of differences in columns, each telling apart the most ideas that are left."""
    chance = Random(f"columns {seed}")
    return built((_column_problem(chance) for _ in range(LOOKED_AT)), COLUMNS, size)


def _column_problem(chance: Random) -> Statement:
    first = chance.choice([chance.randrange(100, 1000), chance.randrange(1, 10) * 100 + chance.randrange(10)])
    return read_statement(f"{first} - {chance.randrange(10, first)}")


def built(space: Iterable[Statement], ideas: Sequence[str], size: int) -> tuple[str, ...]:
    """Build a page from some problems: each two ideas, and each and the right way, are to be told apart."""
    asked = (Problem("1", statement, text(statement)) for statement in space)
    return tuple(problem.typed for problem in built_of(asked, ideas, size))


def built_of(space: Iterable[Problem], ideas: Sequence[str], size: int) -> tuple[Problem, ...]:
    """Build a page from some problems, told as stories or not; see :func:`built`."""
    wrote = {asked: _answers(asked, ideas) for asked in space}
    left = dict.fromkeys(combinations(("", *ideas), 2), 4)
    page: list[Problem] = []
    twins: set[object] = set()
    while len(page) < size:
        fresh = [asked for asked in wrote if twin_key(asked.statement) not in twins]
        best = max(fresh, key=lambda asked: _told(wrote[asked], left))
        for one, other in left:
            if wrote[best][one] != wrote[best][other]:
                left[one, other] //= 2
        twins.add(twin_key(best.statement))
        page.append(replace(best, label=str(len(page) + 1)))
    return tuple(page)


def _answers(asked: Problem, ideas: Sequence[str]) -> dict[str, object]:
    found = {key: by_id(key).slip(asked.statement, asked.told) for key in ideas}
    return {"": None} | {key: alike(slip.wrote) if slip else None for key, slip in found.items()}


def _told(wrote: dict[str, object], left: dict[tuple[str, str], int]) -> int:
    return sum(weight for (one, other), weight in left.items() if wrote[one] != wrote[other])
