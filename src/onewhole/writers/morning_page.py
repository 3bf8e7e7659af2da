"""The teacher's morning page: ideas, whom to see first, the groups, and what all of it rests on."""

from collections.abc import Callable, Sequence
from typing import assert_never

from msgspec import Struct

from onewhole.findings.group_kind import GroupKind
from onewhole.findings.placing import MaybeOneIdea, SteadyNotOurs, WhyFirst, WrongEachItsWay
from onewhole.languages.english.morning_told import (
    ask_of_group,
    evidence_told,
    meetings_told,
    split_told,
)
from onewhole.languages.english.placing import OTHERS, idea_called
from onewhole.languages.english.reteaching import reteaching
from onewhole.marking.diagnosis.finding import CAUTION, Finding
from onewhole.marking.grouping.class_ideas import ClassIdea, class_ideas
from onewhole.marking.grouping.group import Group, IdeaHeld, evidence_of
from onewhole.marking.grouping.group_settings import MEETS
from onewhole.marking.grouping.missed import missed
from onewhole.marking.grouping.see_first import SeeFirst
from onewhole.marking.reading.answer import Blank, Unreadable, Written
from onewhole.marking.reading.mark import ClassMarks, PupilMarks, Verdict
from onewhole.marking.reading.problem_stats import ProblemStats
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.sentences.text import text_of
from onewhole.problems.about import About, Units, most_first
from onewhole.problems.needs import Operation
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.statement import AnotherName, Question
from onewhole.working.line import leads
from onewhole.writers.formula import Formula, formula
from onewhole.writers.frame import frame, named
from onewhole.writers.group_words import about
from onewhole.writers.labels import runs
from onewhole.writers.pattern_words import question
from onewhole.writers.printed import Json, Printed

#: The shapes of kites, for groups in their order.
KITES = ("diamond", "delta", "box", "sled", "hexagon", "house")
#: Worked problems for each group; one where there are so many groups that the page would not hold two.
EXAMPLES, MANY_GROUPS = 2, 6


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
    told: Sequence[str] = (),
    meets: int = MEETS,
    shown: Callable[[str], str] = str,
) -> Printed:
    """Return the morning page; it is for the teacher's eyes.

    ``told`` are the most useful findings in sentences, ``meets`` is how many groups the teacher can meet,
    ``shown`` how the teacher knows a pupil, by the code.
    """
    night = _Night(
        worked,
        marks,
        {pupil.pupil: pupil for pupil in marks.pupils},
        {found.pupil: found for found in findings},
        shown,
    )
    data = frame(worked.header, title="This morning", small=named(worked.header))
    data |= {
        "footer": "For the teacher only. Keep it as the school keeps pupil records.",
        "evidence": f"{_evidence(marks, items)} {_meetings(groups, meets)}",
        "caution": CAUTION,
        "ideas": [_of_class(one, shown) for one in class_ideas(marks.pupils, findings)],
        "told": list(told),
        "first": [_first(one, night) for one in first],
        "groups": [
            _group(group, at, night, EXAMPLES if len(groups) <= MANY_GROUPS else 1)
            for at, group in enumerate(groups)
        ],
    }
    return Printed("morning", data)


class _Night(Struct, frozen=True):
    """A night's sheet, worked, and its marks; with marks and findings by pupil."""

    worked: WorkedSheet
    marks: ClassMarks
    pupils: dict[str, PupilMarks]
    findings: dict[str, Finding]
    shown: Callable[[str], str]

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


def _meetings(groups: Sequence[Group], meets: int) -> str:
    return text_of(meetings_told(sum(group.place.meets for group in groups), meets))


def _of_class(one: ClassIdea, shown: Callable[[str], str]) -> Json:
    """Return an idea in plain words, who has it, and the label of the problem to show."""
    return {"idea": _begun(idea_called(one.idea)), "who": list(map(shown, one.pupils)), "label": one.show}


def _begun(words: str) -> str:
    """Return words as they begin a line."""
    return words[:1].upper() + words[1:]


def _first(one: SeeFirst, night: _Night) -> Json:
    """Return a row: who, what the answers say, the problem to ask about and what was written there."""
    because = _why_first(one.because, night)
    written = next(mark.written for mark in night.pupils[one.pupil].marks if mark.label == one.ask_about)
    return {
        "who": night.shown(one.pupil),
        "because": because,
        "label": f"{one.ask_about}.",
        "ask": formula(night.worked.labelled[one.ask_about].statement),
        "wrote": _wrote(written),
    }


def _why_first(why: WhyFirst, night: _Night) -> str:
    match why:
        case WrongEachItsWay(labels):
            return f"{night.runs(labels)} wrong" + (", each in its own way" if labels[1:] else "")
        case SteadyNotOurs(labels):
            return f"{night.runs(labels)} steady, and not one of ours"
        case MaybeOneIdea(labels):
            return f"{night.runs(labels)} may come from one idea"
        case _:
            assert_never(why)


def _wrote(written: Written) -> Formula | str:
    """Return an answer as a formula where it reads as one, and as it stands where not."""
    match written.read:
        case Blank() | Unreadable():
            return f"“{written.text.strip()}”"
        case outcome:
            return formula(outcome)


def _group(group: Group, at: int, night: _Night, examples: int) -> Json:
    labels = missed(group, night.marks)[:examples]
    idea = reteaching(group.place, group.families, night.worked.header.words, _about(labels, night))
    ideas = [_idea(held, group, night) for held in group.ideas] or [
        {"idea": "", "pupils": _placed(group.pupils, group, night), "ask": ""}
    ]
    several = len(ideas) > 1
    found: Json = {
        "name": group.name,
        "kite": kite_of(at),
        "because": text_of(split_told(len(ideas)) if several else about(group)),
        "ideas": ideas if several else [{**ideas[0], "idea": ""}],
        "reteach": text_of(idea),
    }
    if worked := [_example(night.worked.labelled[label]) for label in labels]:
        found["examples"] = worked
    return found


def _idea(held: IdeaHeld, group: Group, night: _Night) -> Json:
    """Return an idea of a group in plain words, who has it, and what to ask them."""
    found: Json = {"idea": OTHERS, "pupils": _placed(held.pupils, group, night), "ask": ""}
    if held.idea:
        problems = [one.problem for one in night.worked.problems]
        fits = evidence_of(held, night.findings.values())
        asked = question(by_id(held.idea), problems, night.worked.header.words, fits)
        found |= {"idea": idea_called(held.idea), "ask": text_of(ask_of_group(asked))}
    return found


def _about(labels: Sequence[str], night: _Night) -> About:
    """Return what the problems missed most are about, or what most of the page is."""
    missed_most = (night.worked.labelled[label].about for label in labels)
    found = [*filter(None, missed_most), *most_first(one.about for one in night.worked.problems)]
    return found[0] if found else About(Operation.FIND, Units.PIECES)


def _placed(pupils: Sequence[str], group: Group, night: _Night) -> list[Json]:
    """Return pupils of a group with the labels that put them there; those with the same ones together."""
    found: dict[str, list[str]] = {}
    for pupil in pupils:
        found.setdefault(_because(pupil, group.place, night), []).append(night.shown(pupil))
    return [{"who": who, "labels": because} for because, who in found.items()]


def _because(pupil: str, place: GroupKind, night: _Night) -> str:
    if place is GroupKind.ABSENT:
        return ""
    finding = night.findings[pupil]
    labels = (finding.evidence or finding.wrong) if place.meets else finding.wrong
    said = [night.runs(labels)] if labels else []
    for word, verdict in (("blank", Verdict.BLANK), ("unread", Verdict.UNREADABLE)):
        if others := night.marked(pupil, verdict):
            said.append(f"{word} {night.runs(others)}")
    return "; ".join(said)


def _example(problem: WorkedProblem) -> Json:
    working = problem.working
    lines: list[Formula] = []
    chained = isinstance(problem.statement, Question | AnotherName)
    if working:
        brief = working.brief()
        lines = [formula(line.says, leads=leads(brief, at)) for at, line in enumerate(brief)]
    return {"label": f"{problem.label}.", "lines": lines or [formula(problem.statement)], "chained": chained}
