"""The problems that a page may be composed of, and what the model sees in each.

Here is said what each thing is, for one problem at a time. `presses.space_at_once` works the same out for a
whole space; `tests/agreement/test_space_at_once.py` holds the two together.
"""

from collections.abc import Hashable, Iterator
from dataclasses import dataclass
from enum import StrEnum
from itertools import product
from typing import NamedTuple, Protocol

from onewhole.notations.text import text
from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, trimmed
from onewhole.problems.difficulty import LARGE_DENOMINATOR
from onewhole.statements.expression import minus, plus
from onewhole.statements.statement import Question

#: Half minutes (:mod:`onewhole.problems.worked` has the minutes): two without regrouping, three with.
HALVES_PLAIN = 2
HALVES_REGROUPING = 3


class ProblemType(StrEnum):
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
    def sort(self) -> ProblemType:
        """Return what it asks for."""
        if not self.taken:
            return ProblemType.FILLED if self.n1 + self.n2 >= self.d else ProblemType.APART
        if self.n1 >= self.n2:
            return ProblemType.ENOUGH
        if self.n1:
            return ProblemType.OPENED
        return ProblemType.FROM_WHOLE if self.w2 else ProblemType.PART_FROM_WHOLE

    @property
    def level(self) -> int:
        """Return the points of its difficulty that come from the numbers, whatever strategy is taught."""
        mixed_number = bool(self.w1 and self.n1) or bool(self.w2 and self.n2)
        return 3 * self.sort.regroups + self.sort.whole_on_top + mixed_number + (self.d > LARGE_DENOMINATOR)

    @property
    def twin(self) -> Hashable:
        """Return what twins have in common (:func:`onewhole.problems.twins.twin_key`), in few numbers."""
        sign = -1 if self.taken else 1
        return self.taken, self.d, self.w1 + sign * self.w2, self.n1 + sign * self.n2

    @property
    def asks_something(self) -> bool:
        """Say whether it belongs on a page on mixed numbers.

        A difference takes pieces from a mixed or a whole number and leaves something; a sum has pieces in
        both numbers and at least one whole.
        """
        if self.taken:
            left = (self.w1 - self.w2) * self.d + self.n1 - self.n2
            return self.w1 > 0 and self.n2 > 0 and left > 0
        return self.n1 > 0 and self.n2 > 0 and self.w1 + self.w2 > 0


def listed(denominators: tuple[int, ...], largest: int, *, taken: bool) -> Iterator[LikePair]:
    """Yield every problem of a space that belongs on a page, one after another.

    >>> [one.typed for one in listed((2,), 1, taken=True)]
    ['1 - 1/2', '1 1/2 - 1/2']
    """
    wholes = range(largest + 1)
    for d in denominators:
        for counts in product(wholes, range(d), wholes, range(d)):
            one = LikePair(*counts, d, taken)
            if one.asks_something:
                yield one


@dataclass(frozen=True, slots=True)
class ProblemClass:
    """Problems that look alike to the model.

    ``tells`` has a bit for each doubt that such a problem settles. ``twins`` counts the problems no two of
    which are twins. ``hidden`` counts what the numbers hide beyond what every such problem hides; it is 0
    unless none does better.
    """

    sort: ProblemType
    denominator: int
    level: int
    tells: int
    twins: int
    hidden: int
    place: int


class CandidateSpace(Protocol):
    """All the problems that keep to the wishes, by kind."""

    @property
    def listed(self) -> int:
        """Return how many problems there are."""

    @property
    def kinds(self) -> tuple[ProblemClass, ...]:
        """Return the kinds among which nothing better is left out."""

    def members(self, kind: ProblemClass) -> tuple[LikePair, ...]:
        """Return the problems of a kind."""
