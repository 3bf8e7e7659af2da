"""How a problem stands in the list under a page: what it asks, its room, and what one click may do."""

from collections.abc import Iterator

from msgspec import Struct

from onewhole.desk.page.clicks import Offered
from onewhole.findings.click import AsStory, Click, WithoutWords
from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.problems.story_asks import can_be_told
from onewhole.sheets.worked import WorkedSheet


class Stands(Struct, frozen=True):
    """A problem of the page: its label, line, what it asks, and in words its room and its standard.

    ``remedies`` are clicks: to tell it in words, in other words, or without.
    """

    label: str
    line: int
    asks: str
    room: str
    remedies: tuple[Offered, ...] = ()


def stands(problem: Problem, worked: WorkedSheet) -> Stands:
    """Return how a problem stands on a page."""
    needed = worked.rooms[problem.label]
    lines = "1 line" if needed.lines == 1 else f"{needed.lines} lines"
    width, height = round(needed.width_mm), round(needed.height_mm)
    measured = f"{lines}, {width} by {height} mm"
    if needed.picture:
        measured += f", picture {round(needed.picture.width_mm)} by {round(needed.picture.height_mm)} mm"
    standard = worked.standards[problem.label]
    return Stands(
        problem.label,
        problem.line,
        text(problem.statement),
        f"{measured}; {standard}",
        tuple(map(Offered, _wordings(problem))),
    )


def _wordings(problem: Problem) -> Iterator[Click]:
    """Yield what one click may do about the words of a problem."""
    if can_be_told(problem.statement):
        yield AsStory((problem.label,), anew=bool(problem.story))
    if problem.story:
        yield WithoutWords((problem.label,))
