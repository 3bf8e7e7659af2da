"""All that is to be told about one pupil: what the answers fit, the evidence, what else stays possible."""

from collections.abc import Sequence
from datetime import date
from fractions import Fraction

from msgspec import Struct

from onewhole.findings.idea_course import GoneSince, HeldSince
from onewhole.findings.simple_rule import SimpleRule
from onewhole.findings.status import Status
from onewhole.marking.diagnosis.diagnosis import Patterns, Supposed, Weighed
from onewhole.marking.diagnosis.evidence import Beside, evidence
from onewhole.marking.diagnosis.finding import POSSIBLE_FROM, Finding
from onewhole.marking.diagnosis.hypothesis import Hypothesis, Reliability
from onewhole.marking.diagnosis.likeliest_sets import holding
from onewhole.marking.diagnosis.notebook import KeptFinding, Notebook, NotebookNight
from onewhole.marking.diagnosis.simple_rule import simple_rule
from onewhole.marking.diagnosis.tables import Tables
from onewhole.marking.reading.mark import ClassMarks, Mark, PupilMarks
from onewhole.marking.reading.talk_word import TalkWord
from onewhole.problems.problem import Problem


class ReportRow(Struct, frozen=True):
    """One problem of the page: what was asked, the mark, and what the patterns found would write."""

    problem: Problem
    mark: Mark
    beside: Beside


class OddsMoved(Struct, frozen=True):
    """The odds of a set of patterns, none for no steady pattern, before a talk and with it."""

    patterns: Patterns
    before: Fraction
    after: Fraction


class TalkReport(Struct, frozen=True):
    """What a pupil was asked in a talk, the teacher's word, and how the odds moved.

    ``unlisted`` is how those of a steady idea moved that is not listed.
    """

    rows: tuple[ReportRow, ...]
    word: TalkWord | None
    moved: tuple[OddsMoved, ...]
    unlisted: OddsMoved

    @property
    def unlisted_told(self) -> bool:
        """Say whether a steady idea that is not listed was possible before the talk, or is with it."""
        return max(self.unlisted.before, self.unlisted.after) >= POSSIBLE_FROM


class Report(Struct, frozen=True):
    """What is told about one pupil.

    ``sets`` are the sets of patterns found: one, or several that the answers cannot tell apart. ``odds`` is
    their share together, ``none`` that of no steady pattern; ``others`` are the sets beside them that stay
    possible, the likeliest first; none where nothing is found, so that no page says both. ``ask`` are the
    problems to ask next, ``earlier`` findings of nights before that still stand, ``withdrawn`` those that
    answers withdrew; ``held_since`` is how long the patterns found fit. ``talk`` is what was asked
    and said since. ``rule`` is a simple rule that would
    write all the wrong answers, where they come from a steady idea that is not listed.
    """

    finding: Finding
    sets: tuple[Patterns, ...]
    odds: Fraction
    none: Fraction
    others: tuple[Supposed, ...]
    rows: tuple[ReportRow, ...]
    ask: tuple[Problem, ...]
    earlier: tuple[tuple[NotebookNight, KeptFinding], ...] = ()
    talk: TalkReport | None = None
    held_since: HeldSince | None = None
    withdrawn: tuple[tuple[Patterns, GoneSince], ...] = ()
    rule: SimpleRule | None = None

    @property
    def pupil(self) -> str:
        """Return the pupil's code."""
        return self.finding.pupil

    @property
    def unlisted(self) -> Fraction:
        """Return the odds of a steady idea that is not listed."""
        return self.finding.diagnosis.unlisted

    @property
    def answered(self) -> bool:
        """Say whether any answer could be read."""
        return bool(self.finding.diagnosis.odds)


def report(
    marks: ClassMarks,
    weighed: Weighed,
    finding: Finding,
    ask: Sequence[Problem] = (),
    nights: tuple[Notebook, date] | None = None,
) -> Report:
    """Put together what is told about the pupil of a finding.

    ``nights`` are the nights up to tonight, tonight among them, and its day.
    """
    at = [pupil.pupil for pupil in marks.pupils].index(finding.pupil)
    pupil, found = marks.pupils[at], finding.diagnosis
    book, on = nights or (Notebook(), None)
    sets = found.alike if finding.fittings else ()
    went = book.course(finding.pupil, finding.patterns)
    rows = found.evidence if sets else evidence(marks, weighed.page, pupil, weighed.replies[at], ())
    others = (
        one
        for one in found.odds
        if sets
        and one.patterns
        and one.probability >= POSSIBLE_FROM
        and not any(set(ids) <= set(one.patterns) for ids in sets)
    )
    return Report(
        finding,
        sets,
        found.together if sets else Fraction(0),
        next((one.probability for one in found.odds if not one.patterns), Fraction(0)),
        tuple(others),
        tuple(
            ReportRow(asked.problem, mark, one)
            for asked, mark, one in zip(marks.expected, pupil.marks, rows, strict=True)
        ),
        tuple(ask),
        book.standing(finding.pupil, on) if on else (),
        talk_report(weighed, pupil, finding),
        went if sets and isinstance(went, HeldSince) else None,
        book.withdrawn(finding.pupil, on) if on else (),
        simple_rule(marks.expected, pupil.marks) if finding.status is Status.UNLISTED else None,
    )


def talk_report(weighed: Weighed, pupil: PupilMarks, finding: Finding) -> TalkReport | None:
    """Put together what a talk with a pupil changed; None where there was none.

    Sets of patterns are named whose odds before or after are those from which an idea is possible.
    """
    if (talk := weighed.talks.get(pupil.pupil)) is None:
        return None
    after, before = finding.diagnosis, weighed.before[pupil.pupil]
    at = [one.pupil for one in weighed.diagnoses].index(pupil.pupil)

    def moved(ids: Patterns) -> OddsMoved:
        shares = (_share(weighed.page, ids, row) for row in (before.weights, weighed.weights[at]))
        return OddsMoved(ids, *shares)

    sets = [Hypothesis(Reliability.SOUND, ids) for ids in after.alike] if finding.fittings else []
    rows = (
        ReportRow(asked.expected.problem, asked.mark, one)
        for asked, one in zip(pupil.asked, talk.evidence(sets), strict=True)
    )
    sets_told = map(moved, dict.fromkeys((*before.diagnosis.alike, *after.alike)))
    named = [one for one in sets_told if max(one.before, one.after) >= POSSIBLE_FROM]
    unlisted = OddsMoved((), before.diagnosis.unlisted, after.unlisted)
    return TalkReport(tuple(rows), pupil.word, (*named, moved(())), unlisted)


def _share(page: Tables, ids: Patterns, weights: Sequence[int]) -> Fraction:
    """Return the odds of all sets that hold these patterns; without any, those of no steady pattern."""
    if ids:
        held = holding(page.hypotheses, (Hypothesis(Reliability.SOUND, ids),), weights)
    else:
        held = sum(weight for one, weight in zip(page.hypotheses, weights, strict=True) if not one.steady)
    return Fraction(held, sum(weights))
