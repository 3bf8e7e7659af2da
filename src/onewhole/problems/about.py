"""What a problem is about: what is done in it, and with which units."""

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum

from onewhole.number.ladder import Style
from onewhole.number.unit import Kind
from onewhole.problems.needs import Needs, Operation
from onewhole.problems.numbers import numbers_of
from onewhole.problems.worked import WorkedProblem


class Units(Enum):
    """Which units a problem's numbers are counted in."""

    PLACES = "whole numbers"
    PIECES = "fractions with like denominators"
    UNLIKE = "fractions with unlike denominators"
    DECIMALS = "decimals"
    MEASURES = "measures"


@dataclass(frozen=True, slots=True)
class About:
    """The one operation that a problem is about, and its units."""

    operation: Operation
    units: Units

    @property
    def fractions(self) -> bool:
        """Say whether its numbers have pieces."""
        return self.units in {Units.PIECES, Units.UNLIKE}


#: What a problem with several operations is about: the first of these that it has.
_FIRST = (Operation.FIND, Operation.COMPARE, Operation.MULTIPLY, Operation.SUBTRACT, Operation.ADD)


def about(problem: WorkedProblem) -> About | None:
    """Return what a problem is about; None where nothing is done with its numbers.

    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> about(WorkedProblem(Problem("1", read_statement("304 - 128"), "304 - 128"))).units.value
    'whole numbers'
    """
    asked = problem.needs
    done = next((operation for operation in _FIRST if operation in asked.operations), None)
    return About(done, _units(problem, asked)) if done else None


def abouts(problems: Iterable[WorkedProblem]) -> tuple[About, ...]:
    """Return what problems are about, each once, what most are about first."""
    found = Counter(one for problem in problems if (one := about(problem)))
    return tuple(one for one, _ in found.most_common())


def _units(problem: WorkedProblem, asked: Needs) -> Units:
    if asked.kind is not Kind.NUMBER:
        return Units.MEASURES
    if any(number.ladder.style is Style.DECIMAL for number in numbers_of(problem.statement)):
        return Units.DECIMALS
    if not asked.denominators:
        return Units.PLACES
    return Units.UNLIKE if asked.renaming else Units.PIECES
