"""What a group got wrong."""

from collections import Counter

from onewhole.marking.grouping.group import Group
from onewhole.marking.reading.mark import ClassMarks, Verdict


def missed(group: Group, marks: ClassMarks) -> tuple[str, ...]:
    """Return the labels of the problems that a group got wrong, the most often missed first."""
    wrong = Counter(
        mark.label
        for pupil in marks.pupils
        if pupil.pupil in group.pupils
        for mark in pupil.marks
        if mark.verdict is Verdict.WRONG
    )
    order = [asked.problem.label for asked in marks.expected]
    return tuple(sorted(wrong, key=lambda label: (-wrong[label], order.index(label))))
