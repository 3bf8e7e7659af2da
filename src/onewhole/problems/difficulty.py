"""How hard a problem is, as a sum of parts that each say why."""

from dataclasses import dataclass

from onewhole.problems.needs import Needs, needs
from onewhole.problems.numbers import numbers_of
from onewhole.problems.taught import as_taught
from onewhole.statements.statement import Statement
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategy import Strategy
from onewhole.working.working import Working

#: A denominator above this is large: its pieces are hard to draw and its facts cross a ten.
LARGE_DENOMINATOR = 8
PAIR = 2


@dataclass(frozen=True, slots=True)
class Part:
    """One reason why a problem is hard, and its points (always more than 0)."""

    because: str
    points: int


@dataclass(frozen=True, slots=True)
class Difficulty:
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


def difficulty(statement: Statement, taught: Strategy = REGROUP_FIRST) -> Difficulty:
    """Return how hard a statement is for a class that was taught a strategy.

    The weights are our own. They are only meant to put problems in order. Checked against outside facts: on
    the 20 published fraction-subtraction items of K. K. Tatsuoka (1984), worked by 536 middle-school pupils,
    the rank correlation between our points and the share of wrong answers is Kendall's tau-b = 0.69,
    whether item 17 reads 7 3/5 - 4/5 (two sources) or 7 3/5 - 2 4/5 (one). `tests/outside/test_difficulty.py`
    computes it. Those pupils were older than a fourth grade, and the items only subtract fractions.

    >>> from onewhole.statements.reading import read_statement
    >>> easy, hard = read_statement("7 5/6 - 3 2/6"), read_statement("7 2/6 - 3 5/6")
    >>> difficulty(easy).score < difficulty(hard).score
    True
    """
    return difficulty_of(statement, needs(statement), as_taught(statement, taught))


def difficulty_of(statement: Statement, wanted: Needs, working: Working | None) -> Difficulty:
    """Return how hard a statement is whose needs and working are known already."""
    parts = (*_of_numbers(statement, wanted), *(_of_working(working) if working else ()))
    return Difficulty(tuple(part for part in parts if part.points))


def _of_numbers(statement: Statement, wanted: Needs) -> tuple[Part, ...]:
    bottoms = wanted.denominators
    apart = wanted.renaming and bool(bottoms) and any(bottoms[-1] % bottom for bottom in bottoms)
    large = bool(bottoms) and bottoms[-1] > LARGE_DENOMINATOR
    mixed = any(len(quantity.counts) > 1 and quantity.counts[0] for quantity in numbers_of(statement))
    return (
        Part("a larger unit is regrouped", 3 * wanted.regroupings),
        Part("nothing of the smaller unit stands on top", 1 * wanted.whole_first),
        Part("pieces of different sizes are renamed", 3 * wanted.renaming),
        Part("neither denominator fits into the other", 1 * apart),
        Part("a fraction greater than one on entry", wanted.over_one),
        Part("more than one unit in a number", 1 * mixed),
        Part("a large denominator", 1 * large),
        Part("more than two numbers", max(0, wanted.numbers - PAIR)),
    )


def _of_working(working: Working) -> tuple[Part, ...]:
    facts = sum(len(line.facts) for line in working.lines)
    return (
        Part("a line for the pupil to write", len(working.brief()) - 1),
        Part("a fact that crosses a ten", facts),
    )
