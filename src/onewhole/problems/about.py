"""What a problem is about: what is done in it, and with which units."""

from collections import Counter
from collections.abc import Iterable
from enum import Enum

from msgspec import Struct

from onewhole.number.ladder import Style
from onewhole.number.unit import Kind
from onewhole.problems.needs import Needs, Operation
from onewhole.problems.numbers import numbers_of
from onewhole.statements.statement import Statement


class Units(Enum):
    """Which units a problem's numbers are counted in."""

    PLACES = "whole numbers"
    PIECES = "fractions with like denominators"
    UNLIKE = "fractions with unlike denominators"
    DECIMALS = "decimals"
    MEASURES = "measures"


class About(Struct, frozen=True):
    """The one operation that a problem is about, and its units."""

    operation: Operation
    units: Units

    @property
    def fractions(self) -> bool:
        """Say whether its numbers have pieces."""
        return self.units in {Units.PIECES, Units.UNLIKE}


#: What a problem with several operations is about: the first of these that it has.
_FIRST = (
    Operation.READ,
    Operation.ROUND,
    Operation.FIND,
    Operation.RENAME,
    Operation.COMPARE,
    Operation.ORDER,
    Operation.DIVIDE,
    Operation.MULTIPLY,
    Operation.SUBTRACT,
    Operation.ADD,
)


def about(statement: Statement, asked: Needs) -> About | None:
    """Return what a problem is about that needs this; None where nothing is done with its numbers.

    >>> from onewhole.problems.needs import needs
    >>> from onewhole.statements.reading import read_statement
    >>> asked = read_statement("304 - 128")
    >>> about(asked, needs(asked)).units.value
    'whole numbers'
    """
    done = next((operation for operation in _FIRST if operation in asked.operations), None)
    return About(done, _units(statement, asked)) if done else None


def most_first(found: Iterable[About | None]) -> tuple[About, ...]:
    """Return what problems are about, each once, what most are about first."""
    return tuple(one for one, _ in Counter(filter(None, found)).most_common())


def _units(statement: Statement, asked: Needs) -> Units:
    if asked.kind is not Kind.NUMBER:
        return Units.MEASURES
    if any(number.ladder.style is Style.DECIMAL for number in numbers_of(statement)):
        return Units.DECIMALS
    if not asked.denominators:
        return Units.PLACES
    return Units.UNLIKE if asked.renaming else Units.PIECES
