"""Where one pupil belongs tomorrow, and why: told with the labels of the answers it comes from."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from onewhole.marking.diagnosis.finding import Finding, Status
from onewhole.marking.reading.mark import PupilMarks, Verdict
from onewhole.misconceptions.catalogue import by_id
from onewhole.misconceptions.pattern import Family


class GroupKind(StrEnum):
    """Why pupils work together, in the order of the rule."""

    ABSENT = "absent or nothing written"
    EXTENSION = "all right, ready to go further"
    FAMILY = "answers that fit patterns of one family"
    SLIPS = "slips only"
    INTERVIEW = "no steady pattern, a talk first"


@dataclass(frozen=True, slots=True)
class Placement:
    """Where one pupil belongs: ``because`` is one sentence part with labels, for the teacher's eyes.

    ``families`` are those of the patterns that fit, where the place is a family.
    """

    pupil: str
    place: GroupKind
    because: str
    families: tuple[Family, ...] = ()


def placement(pupil: PupilMarks, found: Finding) -> Placement:
    """Place one pupil.

    The first that holds: nothing was written; all is right (in amount); a pattern is likely; every wrong
    answer may be a slip with a fact; otherwise a talk. What cannot be read decides nothing, and is named.
    Source of the rule: ours.
    """
    blank = _labels(pupil, Verdict.BLANK)
    unread = _labels(pupil, Verdict.UNREADABLE)
    right = _labels(pupil, Verdict.RIGHT) + _labels(pupil, Verdict.FORM)
    families: tuple[Family, ...] = ()
    if len(blank) == len(pupil.marks):
        return Placement(pupil.pupil, GroupKind.ABSENT, "nothing was written")
    if right and not found.wrong and not blank:
        place, said = GroupKind.EXTENSION, _all_right(pupil, len(right))
    elif found.status is Status.LIKELY:
        families = tuple(dict.fromkeys(by_id(pattern).family for pattern in found.patterns))
        place, said = GroupKind.FAMILY, _fitting(found, families)
    elif found.wrong and set(found.wrong) == set(found.slips):
        place, said = GroupKind.SLIPS, [f"one step beside right, perhaps a slip, in {listed(found.wrong)}"]
    else:
        place, said = GroupKind.INTERVIEW, _unsettled(found)
    if blank:
        said.append(f"nothing written in {listed(blank)}")
    if unread:
        said.append(f"not readable: {listed(unread)}")
    return Placement(pupil.pupil, place, "; ".join(said), families)


def listed(labels: Iterable[str]) -> str:
    """Write labels as a teacher reads them out.

    >>> listed(["1", "3", "5"])
    '1, 3 and 5'
    """
    *most, last = labels
    return f"{', '.join(most)} and {last}" if most else last


def _labels(pupil: PupilMarks, verdict: Verdict) -> tuple[str, ...]:
    return tuple(mark.label for mark in pupil.marks if mark.verdict is verdict)


def _all_right(pupil: PupilMarks, right: int) -> list[str]:
    other = _labels(pupil, Verdict.FORM)
    return [f"all {right} right", *([f"another form is wanted in {listed(other)}"] if other else [])]


def _fitting(found: Finding, families: Iterable[Family]) -> list[str]:
    said = [f"answers to {listed(found.evidence)} fit a pattern ({listed(families)})"]
    return [*said, f"against it: {listed(found.against)}"] if found.against else said


def _unsettled(found: Finding) -> list[str]:
    said = [f"wrong in {listed(found.wrong)}"] if found.wrong else []
    if found.status is Status.POSSIBLE:
        said.append(f"{listed(found.evidence)} may fit a pattern, which is too few to tell")
    elif found.status is Status.UNSTEADY:
        said.append("no steady pattern")
    return said
