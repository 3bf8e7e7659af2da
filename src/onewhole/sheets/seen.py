"""One problem of a page as an audit sees it."""

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

from onewhole.misconceptions.catalogue import shows
from onewhole.misconceptions.slip import Slip
from onewhole.number.quantity import Quantity
from onewhole.problems.difficulty import Difficulty, difficulty
from onewhole.problems.needs import Needs, needs
from onewhole.problems.problem import Problem
from onewhole.problems.traps import Traps, traps
from onewhole.sheets.header import Header
from onewhole.sheets.key import KeyEntry
from onewhole.statements.statement import Relation, Statement
from onewhole.working.strategy import Strategy

#: Minutes a problem takes. No source was found: our own start values, for a teacher to correct.
MINUTES_PLAIN = Fraction(1)
MINUTES_REGROUPING = Fraction(3, 2)
MINUTES_STORY = Fraction(3)
#: So many statements are held as they were looked at.
HELD = 512


@dataclass(frozen=True, slots=True)
class Seen:
    """A problem, its answer, what it needs, how hard it is, how long it takes, and what it can show.

    ``slips`` are the answers that patterns write here (raw, in the order of the catalogue) and ``traps`` what
    the numbers hide.
    """

    problem: Problem
    answer: Quantity | Relation
    needs: Needs
    difficulty: Difficulty
    minutes: Fraction
    slips: tuple[Slip, ...]
    traps: Traps

    @property
    def label(self) -> str:
        """Return the problem's label."""
        return self.problem.label


def see(entry: KeyEntry, header: Header) -> Seen:
    """Return what an audit sees in one problem.

    >>> from onewhole.sheets.key import answer_key
    >>> from onewhole.sheets.reading import read_sheet
    >>> sheet = read_sheet("1. 9 5/8 - 4 6/8")
    >>> found = see(answer_key(sheet)[0], sheet.header)
    >>> found.minutes, found.slips[0].pattern, found.slips[0].wrote.counts
    (Fraction(3, 2), 'A01', (5, 1))
    """
    problem = entry.problem
    wanted, hard, slips, hides = _of(problem.statement, header.strategy)
    return Seen(problem, entry.answer, wanted, hard, _minutes(problem, wanted), slips, hides)


@lru_cache(maxsize=HELD)
def _of(statement: Statement, taught: Strategy) -> tuple[Needs, Difficulty, tuple[Slip, ...], Traps]:
    """Look at a statement; the same once more costs nothing, for a page is looked at with every key typed."""
    slips = shows(statement)
    return needs(statement), difficulty(statement, taught), slips, traps(statement, slips)


def _minutes(problem: Problem, wanted: Needs) -> Fraction:
    if problem.story:
        return MINUTES_STORY
    return MINUTES_REGROUPING if wanted.regrouping else MINUTES_PLAIN
