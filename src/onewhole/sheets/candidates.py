"""The problems that a page may be composed of, and the problem classes of the optimisation model.

`presses.space_at_once` computes type and level of every problem of a space;
`tests/agreement/test_space_at_once.py` compares them with those found for one problem at a time
(`tests/kit/candidates.py`). Other spaces are drawn (:mod:`onewhole.sheets.drawn_space`).
"""

from collections.abc import Hashable
from enum import Enum
from typing import NamedTuple, Protocol

from msgspec import Struct

from onewhole.notations.text import text
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, trimmed
from onewhole.statements.expression import minus, plus
from onewhole.statements.statement import Question, Relation, Statement

#: Half minutes (:mod:`onewhole.problems.minutes` has the minutes): two without regrouping, three with.
HALVES_PLAIN = 2
HALVES_REGROUPING = 3


class Sort(Protocol):
    """What a problem asks for, as far as the model looks at it."""

    @property
    def value(self) -> str:
        """Return the name of the sort, for the seed to tell it from others."""

    @property
    def taken(self) -> bool:
        """Say whether something is taken away."""

    @property
    def regroups(self) -> bool:
        """Say whether something is regrouped."""

    @property
    def whole_on_top(self) -> bool:
        """Say whether the first number has nothing of the smaller units."""

    @property
    def halves(self) -> int:
        """Return how many half minutes such a problem takes."""

    @property
    def sign(self) -> Relation | None:
        """Return the sign that is the answer, None where none is asked for."""


class PageCandidate(Protocol):
    """A problem that a page may be composed of."""

    @property
    def statement(self) -> Statement:
        """Return the problem as a statement."""

    @property
    def typed(self) -> str:
        """Return the problem as it is typed."""

    @property
    def twin(self) -> Hashable:
        """Return what twins have in common."""

    @property
    def numbers(self) -> tuple[Hashable, ...]:
        """Return its numbers in order, to see which come again on a page."""

    @property
    def top(self) -> Hashable:
        """Return what the first number begins with."""


class ProblemType(Enum):
    """What a problem of the grade asks for, seen from its numbers."""

    ENOUGH = "pieces enough to take from"
    OPENED = "a whole is opened"
    FROM_WHOLE = "a mixed number from a whole number"
    PART_FROM_WHOLE = "a fraction from a whole number"
    APART = "pieces that do not fill a whole"
    FILLED = "pieces that fill a whole"

    @property
    def taken(self) -> bool:
        """Say whether something is taken away."""
        return self not in {ProblemType.APART, ProblemType.FILLED}

    @property
    def regroups(self) -> bool:
        """Say whether a whole is regrouped."""
        return self not in {ProblemType.ENOUGH, ProblemType.APART}

    @property
    def whole_on_top(self) -> bool:
        """Say whether the first number is a whole number."""
        return self in {ProblemType.FROM_WHOLE, ProblemType.PART_FROM_WHOLE}

    @property
    def halves(self) -> int:
        """Return how many half minutes such a problem takes; our own start values."""
        return HALVES_REGROUPING if self.regroups else HALVES_PLAIN

    @property
    def sign(self) -> None:
        """Return None: these ask for a number."""


class LikePair(NamedTuple):
    """A problem with like denominators: w1 n1/d - w2 n2/d, or + where nothing is taken.

    >>> LikePair(9, 5, 4, 6, 8, taken=True).typed
    '9 5/8 - 4 6/8'
    """

    w1: int
    n1: int
    w2: int
    n2: int
    d: int
    taken: bool

    @property
    def statement(self) -> Question:
        """Return the problem as a question."""
        ladder = mixed(self.d)
        first, second = (trimmed(Quantity(ladder, one)) for one in ((self.w1, self.n1), (self.w2, self.n2)))
        return Question((minus if self.taken else plus)(first, second))

    @property
    def typed(self) -> str:
        """Return the problem as it is typed."""
        return text(self.statement)

    @property
    def twin(self) -> Hashable:
        """Return what twins have in common (:func:`onewhole.problems.twins.twin_key`), in few numbers."""
        sign = -1 if self.taken else 1
        return self.taken, self.d, self.w1 + sign * self.w2, self.n1 + sign * self.n2

    @property
    def numbers(self) -> tuple[tuple[int, int, int], tuple[int, int, int]]:
        """Return both numbers, each as wholes, pieces and denominator."""
        return (self.w1, self.n1, self.d), (self.w2, self.n2, self.d)

    @property
    def top(self) -> int:
        """Return the wholes of the first number."""
        return self.w1


class ProblemClass(Struct, frozen=True):
    """Problems that the model cannot distinguish.

    ``group`` is what a page varies: the denominator, or the form of the numbers. ``tells`` has a bit for each
    doubt that such a problem settles. ``twins`` counts the problems no two of which are twins. ``hidden``
    counts what the numbers hide beyond what every such problem hides; it is 0 unless none does better.
    """

    sort: Sort
    group: int
    level: int
    tells: int
    twins: int
    hidden: int
    place: int
    always: tuple[tuple[int, Hashable], ...] = ()


class ProblemSpace(Protocol):
    """All the problems that a page may be composed of, by problem class.

    ``listed`` counts them; where they are ``drawn`` there are more, of which the seed took these.
    """

    @property
    def listed(self) -> int:
        """Return how many problems there are."""

    @property
    def drawn(self) -> bool:
        """Say whether they were drawn from more."""

    @property
    def kinds(self) -> tuple[ProblemClass, ...]:
        """Return the problem classes."""

    def members(self, kind: ProblemClass) -> tuple[PageCandidate, ...]:
        """Return the problems of a kind."""
