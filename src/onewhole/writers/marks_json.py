"""Marks, findings and groups as JSON objects: the contract of ``docs/json.md``."""

from collections.abc import Mapping, Sequence
from datetime import date
from fractions import Fraction
from types import MappingProxyType

from onewhole.languages.english.placing import group_because, placed_because
from onewhole.marking.diagnosis.finding import CAUTION, Finding
from onewhole.marking.diagnosis.report import TalkReport
from onewhole.marking.grouping.group import Group
from onewhole.marking.grouping.keeping import SeatChange, Seating
from onewhole.marking.reading.asked import asked_line
from onewhole.marking.reading.mark import ClassMarks, PupilMarks
from onewhole.marking.reading.problem_stats import ProblemStats
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.problems.problem import Problem
from onewhole.sentences.sentence import End
from onewhole.writers.group_words import about

Json = dict[str, object]

#: Odds are told to a millionth.
MILLION = 1_000_000


def marks_object(
    marks: ClassMarks,
    findings: Sequence[Finding],
    seating: Seating,
    items: Sequence[ProblemStats],
    *,
    ask_next: Sequence[Sequence[Problem]],
    until: date | None = None,
    talks: Mapping[str, TalkReport] = MappingProxyType({}),
) -> Json:
    """Return problems, pupils and groups, and the caution that belongs to every finding.

    ``changes`` are there where groups are kept and the answers now say others.
    ``ask_next`` has the problems to ask each pupil next; ``until`` is the last day on which the findings are
    good, where the night has a date; ``talks`` are those with pupils, by code. Odds are exact fractions,
    which a door turns into numbers.
    """
    rows = zip(marks.pupils, findings, ask_next, strict=True)
    return {
        "problems": [_problem(item) for item in items],
        "pupils": [_pupil(pupil, found, ask, until, talks.get(pupil.pupil)) for pupil, found, ask in rows],
        "groups": [_group(group) for group in seating.groups],
        "changes": [_change(one) for one in seating.changes],
        "caution": CAUTION,
    }


def finding_object(found: Finding, ask: Sequence[Problem], until: date | None = None) -> Json:
    """Return what the answers of one pupil may show, with its caution."""
    said: Json = {
        "status": found.status.value,
        "patterns": list(found.patterns),
        "evidence": list(found.evidence),
        "against": list(found.against),
        "odds": [
            {"patterns": list(one.patterns), "probability": odds(one.probability)}
            for one in found.diagnosis.odds
        ],
        "not_listed": odds(found.diagnosis.unlisted),
        "ask_next": [asked_line(problem) for problem in ask],
        "caution": CAUTION,
    }
    return said | ({"good_until": until.isoformat()} if until else {})


def odds(share: Fraction) -> Fraction:
    """Return odds rounded to a millionth.

    >>> odds(Fraction(2, 3))
    Fraction(666667, 1000000)
    """
    return Fraction(round(share * MILLION), MILLION)


def _group(group: Group) -> Json:
    pupils = ((placed.pupil, placed.because) for placed in group.placings)
    return {
        "id": group.id,
        "name": group.name,
        "about": text_of(about(group)),
        "meets": group.place.meets,
        "pupils": list(group.pupils),
        "ideas": [{"pattern": held.idea, "pupils": list(held.pupils)} for held in group.ideas if held.idea],
        "because": text_of(group_because(about(group), pupils)),
    }


def _change(one: SeatChange) -> Json:
    return {
        "pupil": one.pupil,
        "from": one.was.name,
        "to": one.to.name,
        "because": text_of(placed_because(one.because, End.TYPED)),
    }


def _problem(item: ProblemStats) -> Json:
    found: Json = {"label": item.label, "right": item.right, "tried": item.tried}
    if item.check_key:
        found["check_key"] = True
    return found


def talk_object(talk: TalkReport) -> Json:
    """Return what a pupil was asked in a talk, the teacher's word, and the odds before and after."""
    return {
        "asked": [
            {
                "problem": asked_line(row.problem),
                "written": row.mark.written.text,
                "verdict": row.mark.verdict.value,
                "would_write": [text(outcome) for outcome in row.beside.would_write],
                "speaks": row.beside.speaks.value,
            }
            for row in talk.rows
        ],
        "word": talk.word.text if talk.word else None,
        "odds": [
            {"patterns": list(one.patterns), "before": odds(one.before), "after": odds(one.after)}
            for one in talk.moved
        ],
        "not_listed": {"before": odds(talk.unlisted.before), "after": odds(talk.unlisted.after)},
    }


def _pupil(
    pupil: PupilMarks,
    found: Finding,
    ask: Sequence[Problem],
    until: date | None,
    talk: TalkReport | None,
) -> Json:
    told: Json = {
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
        "finding": finding_object(found, ask, until),
    }
    return told | ({"talk": talk_object(talk)} if talk else {})
