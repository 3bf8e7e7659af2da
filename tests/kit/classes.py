"""Classes whose pupils are each of a sort, on the page of twelve: marks, findings and tomorrow's groups."""

from collections.abc import Mapping, Sequence

from onewhole.desk.tomorrow.seats import NOBODY_SITS, seated
from onewhole.marking.diagnosis.diagnosis import weigh
from onewhole.marking.diagnosis.finding import Finding, findings
from onewhole.marking.diagnosis.notebook import Sat
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.group_settings import USUAL, GroupSettings
from onewhole.marking.grouping.identity import NOBODY, Known
from onewhole.marking.grouping.keeping import Seating
from onewhole.marking.reading.mark import PupilMarks
from tests.kit.answers import all_right, by_pattern, marked_against
from tests.kit.odds import PAGE, known

#: ``half``: one answer of A01, one as much as A01's in another form, the rest blank: likelier than not.
SORTS = {
    "right": all_right(PAGE),
    "one blank": ["", *all_right(PAGE)[1:]],
    "blank": [""] * 12,
    "slips": ["3 4/6", *all_right(PAGE)[1:]],
    "talk": ["9 1/7", *all_right(PAGE)[1:]],
    "half": [*all_right(PAGE)[:2], by_pattern("A01", PAGE)[2], "", "35/8", *[""] * 7],
}


def read(sorts: Sequence[str] | Mapping[str, str]) -> tuple[tuple[PupilMarks, ...], tuple[Finding, ...]]:
    """Marks and findings: a sort of :data:`SORTS`, or the id of a pattern that a pupil always follows."""
    by_code = sorts if isinstance(sorts, Mapping) else {f"K{at:02}": one for at, one in enumerate(sorts, 1)}
    asked, ready = known()
    rows = {code: SORTS.get(sort) or by_pattern(sort, PAGE) for code, sort in by_code.items()}
    marks = marked_against(asked, rows)
    return marks.pupils, findings(marks, weigh(marks, known=ready).diagnoses)


def seating(
    sorts: Sequence[str] | Mapping[str, str],
    settings: GroupSettings = USUAL,
    known_before: Known = NOBODY,
    sits: Mapping[str, Sat] = NOBODY_SITS,
) -> Seating:
    """Tomorrow's groups of a class, and what would change in those that are kept."""
    return seated(*read(sorts), settings, known_before, sits=sits)


def sat(groups: Sequence[Group]) -> dict[str, Sat]:
    """Where everybody sits."""
    return {pupil: group.seat for group in groups for pupil in group.pupils}
