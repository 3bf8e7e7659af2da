"""What a marked night adds to the notebook of the class."""

from collections.abc import Mapping, Sequence
from datetime import date

from onewhole.findings.status import Status
from onewhole.marking.diagnosis.finding import Finding
from onewhole.marking.diagnosis.history import PupilNight
from onewhole.marking.diagnosis.notebook import KeptFinding, NotebookNight, Sat
from onewhole.marking.grouping.group import Group


def night_of(
    on: date,
    page: str,
    counts: Mapping[str, int],
    findings: Sequence[Finding],
    groups: Sequence[Group],
    *,
    pupils: Mapping[str, PupilNight],
) -> NotebookNight:
    """Return the notebook entry of a night: of the findings only those that are likely."""
    seats = {
        one.pupil: Sat(group.name, group.key, group.id, one.stays)
        for group in groups
        for one in group.placings
    }
    kept = (KeptFinding(one.pupil, one.patterns) for one in findings if one.status is Status.LIKELY)
    return NotebookNight(on, page, counts, seats, tuple(kept), pupils)
