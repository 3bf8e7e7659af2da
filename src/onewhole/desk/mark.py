"""Mark the answers of a class and say what they may show."""

from dataclasses import dataclass
from pathlib import Path

from onewhole.desk.seats import seats
from onewhole.desk.sheets import sheet_in
from onewhole.marking.answers_table import read_answers
from onewhole.marking.finding import CAUTION, Finding, Status, findings
from onewhole.marking.group import Group
from onewhole.marking.items import Item, items
from onewhole.marking.mark import ClassMarks, FormWanted, mark_class
from onewhole.marking.placing import listed
from onewhole.marking.seating import MEETS
from onewhole.misconceptions.catalogue import patterns
from onewhole.misconceptions.pattern import Pattern
from onewhole.presses.texts import read_text
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading import read_sheet
from onewhole.writers.marks_json import Json, marks_object

__all__ = [
    "CAUTION",
    "MEETS",
    "Marked",
    "as_object",
    "fitting",
    "mark",
    "mark_files",
    "mark_sheet",
    "shown_finding",
    "shown_place",
]


@dataclass(frozen=True, slots=True)
class Marked:
    """A night's answers read: the marks, what each pupil's answers may show, groups, and each problem."""

    sheet: Sheet
    marks: ClassMarks
    findings: tuple[Finding, ...]
    groups: tuple[Group, ...]
    items: tuple[Item, ...]


def mark(sheet: str, answers: str, *, meets: int = MEETS) -> Marked:
    r"""Mark typed answers (CSV text) against a typed sheet.

    ``meets`` is how many groups the teacher can meet. Raises SheetError and AnswersError with every mistake
    and its place.

    >>> marked = mark("1. 9 5/8 - 4 6/8", "pupil,1\nK01,5 1/8\nK02,4 7/8")
    >>> [finding.status.value for finding in marked.findings]
    ['possible', 'none']
    """
    return mark_sheet(read_sheet(sheet), answers, meets=meets)


def mark_files(sheet: Path, answers: Path, *, meets: int = MEETS) -> Marked:
    """Mark a file of answers against the sheet in a file."""
    return mark_sheet(sheet_in(sheet), read_text(answers), file=str(answers), meets=meets)


def mark_sheet(sheet: Sheet, answers: str, *, file: str | None = None, meets: int = MEETS) -> Marked:
    """Mark answers against a sheet; ``file`` is the name that mistakes are told with."""
    header = sheet.header
    wanted = FormWanted(mixed=header.mixed_form, simplest=header.simplest_form)
    marks = mark_class(read_answers(answers, sheet.problems, file), wanted)
    found = findings(marks)
    return Marked(sheet, marks, found, seats(marks.pupils, found, meets=meets), items(marks))


def as_object(marked: Marked) -> Json:
    """Return marks, findings and groups as a JSON object."""
    return marks_object(marked.marks, marked.findings, marked.groups, marked.items)


def shown_finding(found: Finding) -> str:
    """Return a finding in a few words: how much it says, which patterns fit, and in which problems."""
    if not found.patterns:
        return "" if found.status is Status.NONE else found.status.value
    return f"{found.status.value}: {', '.join(found.patterns)} in {', '.join(found.evidence)}"


def shown_place(group: Group) -> str:
    """Return in a few words why a group works together."""
    return f"{group.place} ({listed(group.families)})" if group.families else group.place.value


def fitting(marked: Marked) -> tuple[Pattern, ...]:
    """Return the patterns that some pupil's answers fit, in the order of their ids."""
    found = {key for one in marked.findings for key in one.patterns}
    return tuple(pattern for pattern in patterns() if pattern.id in found)
