"""How hard a problem is, as a sum of parts that each say why."""

from msgspec import Struct

from onewhole.problems.digit_facts import digit_facts
from onewhole.problems.needs import Needs, needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.points import POINTS, Hardness
from onewhole.problems.taught import as_taught
from onewhole.problems.zeros import zeros
from onewhole.statements.statement import Statement
from onewhole.working.strategies.table import USUAL
from onewhole.working.taught import AsTaught
from onewhole.working.working import Working

#: A denominator above this is large: its pieces are hard to draw and its facts cross a ten.
LARGE_DENOMINATOR = 8
PAIR = 2


class Part(Struct, frozen=True):
    """One reason why a problem is hard, and its points (always more than 0)."""

    because: Hardness
    points: int


class Difficulty(Struct, frozen=True):
    """Points and what they are made of.

    >>> from onewhole.statements.reading import read_statement
    >>> hard = difficulty(read_statement("4 - 1 3/8"))
    >>> hard.score == sum(part.points for part in hard.parts)
    True
    """

    parts: tuple[Part, ...]

    @property
    def score(self) -> int:
        """Return the sum of the points; 0 is the easiest."""
        return sum(part.points for part in self.parts)


def difficulty(statement: Statement, taught: AsTaught = USUAL) -> Difficulty:
    """Return how hard a statement is for a class that was taught a strategy.

    The weights, what they were fitted to and how far they hold are in :mod:`onewhole.problems.points`. They
    are only meant to put problems in order.

    >>> from onewhole.statements.reading import read_statement
    >>> easy, hard = read_statement("7 5/6 - 3 2/6"), read_statement("7 2/6 - 3 5/6")
    >>> difficulty(easy).score < difficulty(hard).score
    True
    """
    return difficulty_of(statement, needs(statement), as_taught(statement, taught))


def difficulty_of(statement: Statement, wanted: Needs, working: Working | None) -> Difficulty:
    """Return how hard a statement is whose needs and working are known already."""
    times = {**_of_numbers(statement, wanted), **(_of_working(working) if working else {})}
    return Difficulty(tuple(Part(why, count * POINTS[why]) for why, count in times.items() if count))


def _of_numbers(statement: Statement, wanted: Needs) -> dict[Hardness, int]:
    """Count how often each reason holds that can be seen from the numbers."""
    bottoms = wanted.denominators
    apart = wanted.renaming and bool(bottoms) and any(bottoms[-1] % bottom for bottom in bottoms)
    large = bool(bottoms) and bottoms[-1] > LARGE_DENOMINATOR
    mixed = any(len(quantity.counts) > 1 and quantity.counts[0] for quantity in numbers_of(statement))
    in_the_way = zeros(statement)
    return {
        Hardness.REGROUPED: int(wanted.regrouping),
        Hardness.AGAIN: max(0, wanted.regroupings - 1),
        Hardness.NOTHING_ON_TOP: in_the_way.taken_from,
        Hardness.ZERO_OPENED_FIRST: in_the_way.passed,
        Hardness.RENAMED: int(wanted.renaming),
        Hardness.NEITHER_FITS: int(apart),
        Hardness.MIXED: int(mixed),
        Hardness.LARGE: int(large),
        Hardness.MANY: max(0, wanted.numbers - PAIR),
        Hardness.DIGIT: digit_facts(statement),
    }


def _of_working(working: Working) -> dict[Hardness, int]:
    return {
        Hardness.LINE: len(working.brief()) - 1,
        Hardness.FACT: sum(len(line.facts) for line in working.lines),
    }
