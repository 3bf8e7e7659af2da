"""The teacher's morning page: whom to see first, the groups, and what all of it rests on."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import assert_never

from onewhole.findings.group_kind import GroupKind
from onewhole.languages.english.families import families_listed
from onewhole.languages.english.morning_told import evidence_told
from onewhole.languages.english.reteaching import reteaching
from onewhole.marking.diagnosis.finding import CAUTION, Finding
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.missed import missed
from onewhole.marking.grouping.see_first import SeeFirst
from onewhole.marking.reading.answer import Blank, Unreadable, Written
from onewhole.marking.reading.mark import ClassMarks, PupilMarks, Verdict
from onewhole.marking.reading.problem_stats import ProblemStats
from onewhole.notations.sentences.text import text_of
from onewhole.number.impossible import Impossible
from onewhole.number.quantity import Quantity
from onewhole.number.with_minus import WithMinus
from onewhole.problems.about import About, Units, most_first
from onewhole.problems.needs import Operation
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import Question, Relation
from onewhole.writers.formula import Formula, formula
from onewhole.writers.frame import frame, named
from onewhole.writers.labels import runs
from onewhole.writers.printed import Json, Printed

#: The shapes of kites, for groups in their order.
KITES = ("diamond", "delta", "box", "sled", "hexagon", "house")
EXAMPLES = 2
_WHY = {
    GroupKind.ABSENT: "nothing written",
    GroupKind.EXTENSION: "all right, ready to go further",
    GroupKind.SLIPS: "slips only",
    GroupKind.INTERVIEW: "no steady pattern, a talk first",
}


def kite_of(at: int) -> str:
    """Return the kite of a group by its place."""
    return KITES[at % len(KITES)]


def morning_page(
    worked: WorkedSheet,
    marks: ClassMarks,
    findings: Sequence[Finding],
    groups: Sequence[Group],
    *,
    items: Sequence[ProblemStats],
    first: Sequence[SeeFirst],
) -> Printed:
    """Return the morning page; it is for the teacher's eyes and shows pupil codes as they were given."""
    night = _Night(
        worked,
        marks,
        {pupil.pupil: pupil for pupil in marks.pupils},
        {found.pupil: found for found in findings},
    )
    data = frame(worked.header, title="This morning", small=named(worked.header))
    data |= {
        "footer": "For the teacher only. Keep it as the school keeps pupil records.",
        "evidence": _evidence(marks, items),
        "caution": CAUTION,
        "first": [_first(one, groups, night) for one in first],
        "groups": [_group(group, at, night) for at, group in enumerate(groups)],
    }
    return Printed("morning", data)


@dataclass(frozen=True, slots=True)
class _Night:
    """A night's sheet, worked, and its marks; with marks and findings by pupil."""

    worked: WorkedSheet
    marks: ClassMarks
    pupils: dict[str, PupilMarks]
    findings: dict[str, Finding]

    def runs(self, labels: Sequence[str]) -> str:
        """Write labels in few characters."""
        return runs(labels, list(self.worked.labelled))

    def marked(self, pupil: str, verdict: Verdict) -> list[str]:
        """Return the labels of the answers of a pupil with one verdict."""
        return [mark.label for mark in self.pupils[pupil].marks if mark.verdict is verdict]


def _evidence(marks: ClassMarks, items: Sequence[ProblemStats]) -> str:
    tried, right = sum(item.tried for item in items), sum(item.right for item in items)
    look = [item.label for item in items if item.check_key]
    return text_of(evidence_told(len(marks.pupils), len(items), right, tried, look))


def _first(one: SeeFirst, groups: Sequence[Group], night: _Night) -> Json:
    """Return a row: who, what the answers say, the problem to ask about and what was written there."""
    found = night.findings[one.pupil]
    (place,) = (group.place for group in groups if one.pupil in group.pupils)
    if place is GroupKind.INTERVIEW:
        because = f"{night.runs(found.wrong)} wrong" + (", each in its own way" if found.wrong[1:] else "")
    else:
        because = f"{night.runs(found.evidence)} may come from one idea"
    written = next(mark.written for mark in night.pupils[one.pupil].marks if mark.label == one.ask_about)
    return {
        "who": one.pupil,
        "because": because,
        "label": f"{one.ask_about}.",
        "ask": formula(night.worked.labelled[one.ask_about].statement),
        "wrote": _wrote(written),
    }


def _wrote(written: Written) -> Formula | str:
    """Return an answer as a formula where it reads as one, and as it stands where not."""
    match written.read:
        case Quantity() | Impossible() | WithMinus() | Relation():
            return formula(written.read)
        case Blank() | Unreadable():
            return f"“{written.text.strip()}”"
        case _:
            assert_never(written.read)


def _group(group: Group, at: int, night: _Night) -> Json:
    labels = missed(group, night.marks)[:EXAMPLES]
    idea = reteaching(group.place, group.families, night.worked.header.words, _about(labels, night))
    found: Json = {
        "name": group.name,
        "kite": kite_of(at),
        "because": _WHY.get(group.place) or f"answers fit: {families_listed(group.families)}",
        "pupils": _placed(group, night),
        "reteach": text_of(idea),
    }
    if examples := [_example(night.worked.labelled[label]) for label in labels]:
        found["examples"] = examples
    return found


def _about(labels: Sequence[str], night: _Night) -> About:
    """Return what the problems missed most are about, or what most of the page is."""
    missed_most = (night.worked.labelled[label].about for label in labels)
    found = [*filter(None, missed_most), *most_first(one.about for one in night.worked.problems)]
    return found[0] if found else About(Operation.FIND, Units.PIECES)


def _placed(group: Group, night: _Night) -> list[Json]:
    """Return the pupils of a group with the labels that put them there; those with the same ones together."""
    found: dict[str, list[str]] = {}
    for pupil in group.pupils:
        found.setdefault(_because(pupil, group.place, night), []).append(pupil)
    return [{"who": who, "labels": because} for because, who in found.items()]


def _because(pupil: str, place: GroupKind, night: _Night) -> str:
    if place is GroupKind.ABSENT:
        return ""
    finding = night.findings[pupil]
    labels = finding.evidence if place is GroupKind.FAMILY else finding.wrong
    said = [night.runs(labels)] if labels else []
    for word, verdict in (("blank", Verdict.BLANK), ("unread", Verdict.UNREADABLE)):
        if others := night.marked(pupil, verdict):
            said.append(f"{word} {night.runs(others)}")
    return "; ".join(said)


def _example(problem: WorkedProblem) -> Json:
    working = problem.working
    lines: list[Formula] = []
    chained = isinstance(problem.statement, Question)
    if working:
        lines = [formula(line.says, leads=chained and at > 0) for at, line in enumerate(working.brief())]
    return {"label": f"{problem.label}.", "lines": lines or [formula(problem.statement)], "chained": chained}
