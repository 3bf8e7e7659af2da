"""Plan the morning: one page for the teacher, and a practice page for every group."""

from datetime import datetime
from pathlib import Path

from onewhole.desk.mark import Marked
from onewhole.desk.print_pages import Made, pressed, put
from onewhole.marking.first import see_first
from onewhole.marking.group import Group
from onewhole.marking.missed import missed
from onewhole.problems.needs import needs
from onewhole.problems.problem import Problem
from onewhole.sheets.document import Sheet
from onewhole.sheets.practice import PRACTICE, practice_sheet
from onewhole.writers.morning_page import kite_of, morning_page
from onewhole.writers.printed import Printed
from onewhole.writers.pupil_page import practice_page

INSTRUCTION = "Look at the pieces first. Then write each line."


def plan(marked: Marked, folder: Path, *, when: datetime) -> tuple[Made, ...]:
    """Print the morning page and one practice page for each group into a folder.

    A practice page holds problems parallel to those that its group missed most (for a group that missed
    nothing, to the last problems of the night); it carries the group's name and never a pattern's.
    """
    return put(pressed(plan_pages(marked), when=when), folder)


def plan_pages(marked: Marked) -> tuple[tuple[str, Printed], ...]:
    """Return the morning page and the practice pages by their names, not pressed yet."""
    first = see_first(marked.marks.pupils, marked.findings, marked.groups)
    morning = morning_page(
        marked.sheet, marked.marks, marked.findings, marked.groups, items=marked.items, first=first
    )
    return (("morning", morning), *_practice_pages(marked))


def practice_sheets(marked: Marked) -> tuple[tuple[Group, Sheet], ...]:
    """Return the practice sheet of every group for which there are parallel problems."""
    made = ((group, _practice(marked, group, at)) for at, group in enumerate(marked.groups))
    return tuple((group, sheet) for group, sheet in made if sheet is not None)


def _practice(marked: Marked, group: Group, at: int) -> Sheet | None:
    return practice_sheet(marked.sheet.header, _models(marked, group), INSTRUCTION, skip=at)


def _models(marked: Marked, group: Group) -> list[Problem]:
    """Return what a group practises, the most often missed first, and among it one without regrouping.

    So looking at the pieces first is worth while (K11 of our checks).
    """
    night = marked.sheet.problems
    asked = {problem.label: problem for problem in night}
    models = [asked[label] for label in missed(group, marked.marks)] or list(reversed(night))
    plain = next((problem for problem in night if not needs(problem.statement).regrouping), None)
    if plain and all(needs(problem.statement).regrouping for problem in models[:PRACTICE]):
        models.insert(PRACTICE - 1, plain)
    return models


def _practice_pages(marked: Marked) -> list[tuple[str, Printed]]:
    places = {group.name: at for at, group in enumerate(marked.groups)}
    return [
        (_file(group.name), practice_page(sheet, group.name, kite_of(places[group.name])))
        for group, sheet in practice_sheets(marked)
    ]


def _file(name: str) -> str:
    return f"practice-{name.lower().replace(' ', '-')}"
