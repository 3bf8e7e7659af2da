"""A sheet worked once: what audit, pages, film and marking are handed."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from functools import cached_property
from types import MappingProxyType

from onewhole.problems.problem import Problem
from onewhole.problems.standard_code import standard_code
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import Header
from onewhole.sheets.room import Room, column_width, on_first_page, room
from onewhole.working.form import FormWanted
from onewhole.working.taught import AsTaught


@dataclass(frozen=True)
class WorkedSheet:
    r"""A sheet with every problem worked as its class was taught; each thing is worked out once.

    Nothing is worked before it is asked for. Two are equal when their sheets are. ``work`` gives a problem
    worked: one that remembers the problems of the sheet before works only what is new.

    >>> from onewhole.sheets.reading import read_sheet
    >>> worked = WorkedSheet(read_sheet("1. 7 2/6 - 3 5/6\n2. 52 - 27"))
    >>> [one.answer.counts for one in worked.problems], worked.rooms["1"].lines
    ([(3, 3), (2, 5)], 4)
    """

    sheet: Sheet
    work: Callable[[Problem, AsTaught, FormWanted], WorkedProblem] = field(
        default=WorkedProblem, compare=False, repr=False
    )

    @property
    def header(self) -> Header:
        """Return the settings of the sheet."""
        return self.sheet.header

    @cached_property
    def problems(self) -> tuple[WorkedProblem, ...]:
        """Return the problems in the order of the page."""
        taught, wanted = self.header.taught, self.header.form
        return tuple(self.work(problem, taught, wanted) for problem in self.sheet.problems)

    @cached_property
    def labelled(self) -> Mapping[str, WorkedProblem]:
        """Return the problems by their labels, in the order of the page."""
        return MappingProxyType({one.label: one for one in self.problems})

    @property
    def minutes(self) -> Fraction:
        """Return how long the page takes, by our own start values (:mod:`onewhole.problems.minutes`)."""
        return sum((one.minutes for one in self.problems), Fraction(0))

    @cached_property
    def rooms(self) -> Mapping[str, Room]:
        """Return the room that each problem needs, by its label. Raises RoomError."""
        found = {one.label: room(one, self.header) for one in self.problems}
        for first in self.problems[:1]:
            found[first.label] = on_first_page(found[first.label], first.problem, self.header)
        return MappingProxyType(found)

    @cached_property
    def standards(self) -> Mapping[str, str]:
        """Return the code of the standard that each problem belongs to, by its label."""
        return MappingProxyType(
            {
                one.label: standard_code(one.statement, self.header.grade, story=bool(one.story))
                for one in self.sheet.problems
            }
        )

    @property
    def columns(self) -> int:
        """Return how many columns there are: the header's, or two when half of the problems fit into one."""
        if self.header.columns is not None:
            return self.header.columns
        wide = [needed.across_mm > column_width(self.header) for needed in self.rooms.values()]
        return 1 if 2 * sum(wide) > len(wide) else 2
