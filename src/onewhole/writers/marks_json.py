"""Marks, findings and groups as JSON objects: the contract of ``docs/json.md``."""

from collections.abc import Sequence

from onewhole.marking.finding import CAUTION, Finding
from onewhole.marking.group import Group
from onewhole.marking.items import Item
from onewhole.marking.mark import ClassMarks, PupilMarks

Json = dict[str, object]


def marks_object(
    marks: ClassMarks, findings: Sequence[Finding], groups: Sequence[Group], items: Sequence[Item]
) -> Json:
    """Return problems, pupils and groups, and the caution that belongs to every finding."""
    return {
        "problems": [_problem(item) for item in items],
        "pupils": [_pupil(pupil, found) for pupil, found in zip(marks.pupils, findings, strict=True)],
        "groups": [
            {"name": group.name, "pupils": list(group.pupils), "because": group.because} for group in groups
        ],
        "caution": CAUTION,
    }


def _problem(item: Item) -> Json:
    found: Json = {"label": item.label, "right": item.right, "tried": item.tried}
    if item.check_key:
        found["check_key"] = True
    return found


def _pupil(pupil: PupilMarks, found: Finding) -> Json:
    return {
        "pupil": pupil.pupil,
        "answers": [
            {
                "label": mark.label,
                "written": mark.written.text,
                "verdict": mark.verdict.value,
                "patterns": list(mark.patterns),
            }
            for mark in pupil.marks
        ],
        "finding": {
            "status": found.status.value,
            "patterns": list(found.patterns),
            "evidence": list(found.evidence),
        },
    }
