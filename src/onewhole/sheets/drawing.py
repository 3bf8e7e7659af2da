"""The problems of a skill that are not listed all at once: drawn by the seed, each worked by the catalogue.

The rule of the draw: every form of the skill (:mod:`onewhole.sheets.spaces.table`) is walked in wide steps
from a place that the seed gives; of what can be asked, its share of the problems is taken, those of each
difficulty in turn. Where a form has few problems, and there are many more than a page needs, every third of
them is left out, so that another seed gives another page; else it is listed whole.
"""

import math
from collections import defaultdict
from collections.abc import Hashable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import cached_property, lru_cache
from itertools import zip_longest

from msgspec import Struct

from onewhole.errors import OnewholeError
from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Family
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.problems.answer import answer
from onewhole.problems.difficulty import difficulty_of
from onewhole.problems.needs import Needs, Operation, needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.spaces.table import forms_of
from onewhole.sheets.wishes import MOST_PROBLEMS, Wishes
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Question, Relation, Statement
from onewhole.working.questions import suiting
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.table import strategy_named
from onewhole.working.strategy import Strategy

#: For each problem of a page so many are drawn, and so many are looked at to find them: enough that a page of
#: twelve leaves little doubt, and few enough that it is there in two seconds. Our own.
DRAWN, LOOKED_AT = 20, 130
#: A page of few or of very many problems is chosen from as many as one of so many.
FEWEST, MOST = 3, 12
#: Every form has at least so many.
LEAST = 4
#: Where there are so many problems for each of a page, so large a share of a small form is looked at.
PLENTY, KEPT = 8, Fraction(2, 3)


class DrawnSort(Struct, frozen=True):
    """What a drawn problem asks for: the operations, whether anything is regrouped, and which sign it has."""

    value: str
    taken: bool
    regroups: bool
    whole_on_top: bool
    halves: int
    sign: Relation | None = None


@dataclass(frozen=True)
class DrawnProblem:
    """A problem that was drawn, and what the model looks at."""

    statement: Statement
    group: int

    @cached_property
    def typed(self) -> str:
        """Return the problem as it is typed."""
        return text(self.statement)

    @cached_property
    def twin(self) -> Hashable:
        """Return what twins have in common."""
        return twin_key(self.statement)

    @cached_property
    def numbers(self) -> tuple[Hashable, ...]:
        """Return its numbers in order."""
        return numbers_of(self.statement)

    @cached_property
    def top(self) -> Hashable:
        """Return the largest count of the first number."""
        return next((count for count in numbers_of(self.statement)[0].amounts if count), 0)

    @cached_property
    def needs(self) -> Needs:
        """Return what it needs."""
        return needs(self.statement)

    @cached_property
    def level(self) -> int:
        """Return the points of difficulty that come from the numbers alone."""
        return difficulty_of(self.statement, self.needs, None).score

    @cached_property
    def sort(self) -> DrawnSort:
        """Return what it asks for."""
        wanted = self.needs
        minutes = WorkedProblem(Problem("1", self.statement, self.typed)).minutes
        return DrawnSort(
            f"{', '.join(one.value for one in wanted.operations)} {wanted.regrouping}",
            Operation.SUBTRACT in wanted.operations,
            wanted.regrouping,
            wanted.whole_first,
            int(2 * minutes),
            right if isinstance(right := answer(self.statement), Relation) else None,
        )

    @cached_property
    def wrote(self) -> Mapping[str, object]:
        """Return what each pattern that shows here writes."""
        slips = (pattern.slip(self.statement) for pattern in patterns())
        return {slip.pattern: slip.wrote for slip in slips if slip is not None}


class DrawnProblems(Struct, frozen=True):
    """Problems, and whether there are more of which these were drawn."""

    problems: tuple[DrawnProblem, ...]
    drawn: bool

    @property
    def watched(self) -> tuple[str, ...]:
        """Return the patterns that show on them, but fact slips and forms of answer."""
        shown = {key for one in self.problems for key in one.wrote}
        return tuple(
            one.id
            for one in patterns()
            if one.id in shown and one.family is not Family.FACT and not one.of_form
        )


def draw(wishes: Wishes) -> DrawnProblems:
    """Return the problems that a page by these wishes may be composed of.

    None is a problem that does not come again, each suits the strategy, and no two are twins. The same wishes
    give the same problems.

    >>> from onewhole.findings.wished_skill import WishedSkill
    >>> found = draw(Wishes(skill=WishedSkill.SUBTRACT_WHOLE))
    >>> len(found.problems) > 200, found.drawn
    (True, True)
    """
    kept = Wishes(
        skill=wishes.skill,
        number=min(max(wishes.number, FEWEST), MOST),
        denominators=wishes.denominators,
        largest=wishes.largest,
        digits=wishes.digits,
        doubles=wishes.doubles,
        strategy=wishes.strategy,
        seed=wishes.seed,
    )
    found = _draw(kept)
    gone = frozenset(wishes.avoid)
    left = tuple(one for one in found.problems if one.typed not in gone)
    return DrawnProblems(left, found.drawn) if len(left) < len(found.problems) else found


@lru_cache(maxsize=48)
def _draw(wishes: Wishes) -> DrawnProblems:
    rows, seen, whole = tuple(filter(None, forms_of(wishes))), set[Hashable](), True
    plenty = sum(form.size for row in rows for form in row) >= PLENTY * MOST_PROBLEMS
    found: list[DrawnProblem] = []
    group = 0
    for row in rows:
        each = (wishes.number * many // len(rows) // len(row) for many in (DRAWN, LOOKED_AT))
        share, looked = (max(LEAST, many) for many in each)
        for form in row:
            few = min(looked, math.ceil(form.size * KEPT)) if plenty else looked
            askable = [DrawnProblem(one, group) for one in _askable(form, wishes, few)]
            single = list(_apart(_in_turn(askable), seen))
            whole &= form.size <= few and len(single) <= share
            found += single[:share]
            group += 1
    return DrawnProblems(tuple(found), drawn=not whole)


def _apart(problems: Iterable[DrawnProblem], seen: set[Hashable]) -> Iterator[DrawnProblem]:
    """Yield problems but twins of those seen before, and see each."""
    for one in problems:
        if one.twin not in seen:
            seen.add(one.twin)
            yield one


def _in_turn(problems: Iterable[DrawnProblem]) -> Iterator[DrawnProblem]:
    """Yield problems of every difficulty in turn, the easiest first."""
    piles: dict[tuple[int, int], list[DrawnProblem]] = defaultdict(list)
    for one in problems:
        piles[one.needs.regroupings, one.level].append(one)
    rounds = zip_longest(*(piles[key] for key in sorted(piles)))
    yield from (one for each in rounds for one in each if one is not None)


def _askable(form: ProblemForm, wishes: Wishes, looked: int) -> Iterator[Statement]:
    """Yield the problems of a form that can be asked: an answer above zero, and no number twice."""
    for typed in form.walk(wishes.seed, looked):
        try:
            statement = read_statement(typed)
            right = answer(statement)
        except OnewholeError:
            continue
        numbers = numbers_of(statement)
        if isinstance(right, Quantity) and not right.value:
            continue
        if not wishes.doubles and len(set(numbers)) < len(numbers):
            continue
        if _suits(statement, wishes.strategy):
            yield statement


def _suits(statement: Statement, taught: Strategy) -> bool:
    """Say whether the taught strategy works a problem, or its partner, or it is for other numbers.

    Where none is wished for, every problem suits.
    """
    if taught is REGROUP_FIRST or not isinstance(statement, Question):
        return True
    ways = {one.key for one in suiting(statement)}
    return bool(ways & {taught.key, taught.partner, strategy_named(taught.partner).partner})
