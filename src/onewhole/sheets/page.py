"""A whole page for the audit: what its problems show together."""

from collections import defaultdict
from collections.abc import Hashable, Iterable, Sequence
from fractions import Fraction
from itertools import pairwise

from msgspec import Struct

from onewhole.misconceptions.attempt import Outcome
from onewhole.misconceptions.catalogue import patterns
from onewhole.notations.text import text
from onewhole.number.ladder import mixed
from onewhole.number.quantity import usual
from onewhole.problems.twins import twin_key
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.document import Sheet
from onewhole.sheets.standards import StandardNote, notes
from onewhole.sheets.worked import WorkedSheet

#: The least fall in points between neighbours that is reported: one regrouping; our own.
FALL = 3
#: Minutes of homework a grade, all subjects together: "ten minutes a grade", H. Cooper's commentary (read).
MINUTES_A_GRADE = 10


def halves(minutes: Fraction) -> str:
    """Write minutes, which come in halves, as a mixed number.

    >>> halves(Fraction(5, 2)), halves(Fraction(3))
    ('2 1/2', '3')
    """
    return text(usual(mixed(2), minutes))


class Page(Struct, frozen=True):
    """What a page asks and shows; patterns by id, problems by label.

    ``falls`` are pairs of neighbours of which the second is much easier; ``twins`` groups of problems that
    ask one thing; ``alike`` groups of patterns that the whole page cannot tell apart: wherever one can show,
    all write the same raw answer; ``hidden`` patterns that apply somewhere and come out right by luck each
    time; ``never`` patterns that no problem can show.
    """

    worked: WorkedSheet
    falls: tuple[tuple[str, str], ...]
    twins: tuple[tuple[str, ...], ...]
    alike: tuple[tuple[str, ...], ...]
    hidden: tuple[str, ...]
    never: tuple[str, ...]
    notes: tuple[StandardNote, ...]

    @property
    def sheet(self) -> Sheet:
        """Return the sheet."""
        return self.worked.sheet

    @property
    def problems(self) -> tuple[WorkedProblem, ...]:
        """Return the problems, worked, in the order of the page."""
        return self.worked.problems

    @property
    def minutes(self) -> Fraction:
        """Return how long the page takes."""
        return self.worked.minutes

    @property
    def evening(self) -> int:
        """Return the minutes of a whole evening's homework in this grade, all subjects together."""
        return MINUTES_A_GRADE * self.sheet.header.grade

    @property
    def regrouping(self) -> Fraction:
        """Return the share of problems that need regrouping."""
        return Fraction(sum(seen.needs.regrouping for seen in self.problems), len(self.problems))

    @property
    def climbs(self) -> bool:
        """Say whether the page goes from easy to hard."""
        return not self.falls


def page(worked: WorkedSheet) -> Page:
    """Return what a sheet asks and shows.

    >>> from onewhole.sheets.reading import read_sheet
    >>> found = page(WorkedSheet(read_sheet("1. 5 1/8 - 2 5/8")))
    >>> [group[:2] for group in found.alike][0], found.minutes
    (('A01', 'A02'), Fraction(3, 2))
    """
    problems = worked.problems
    wrote = _answers(problems)
    lucky = {key for seen in problems for key in seen.traps.lucky}
    every = tuple(pattern.id for pattern in patterns())
    return Page(
        worked,
        falls=tuple((a.label, b.label) for a, b in pairwise(problems) if _fallen(a, b)),
        twins=_groups((twin_key(seen.statement), seen.label) for seen in problems),
        alike=_groups((tuple(answers), key) for key, answers in wrote.items()),
        hidden=tuple(key for key in every if key in lucky and key not in wrote),
        never=tuple(key for key in every if key not in wrote),
        notes=notes(worked),
    )


def _answers(problems: Sequence[WorkedProblem]) -> dict[str, list[tuple[str, Outcome]]]:
    """Return what each pattern that shows on the page writes, problem by problem."""
    wrote: dict[str, list[tuple[str, Outcome]]] = defaultdict(list)
    for seen in problems:
        for slip in seen.slips:
            wrote[slip.pattern].append((seen.label, slip.wrote))
    return wrote


def _fallen(before: WorkedProblem, after: WorkedProblem) -> bool:
    return before.difficulty.score - after.difficulty.score >= FALL


def _groups(keyed: Iterable[tuple[Hashable, str]]) -> tuple[tuple[str, ...], ...]:
    """Return the names that share a key, two or more together, in the order in which they come."""
    found: dict[Hashable, list[str]] = defaultdict(list)
    for key, name in keyed:
        found[key].append(name)
    return tuple(tuple(names) for names in found.values() if len(names) > 1)
