"""All that is to be told about one pupil: what the answers fit, the evidence, what else stays possible."""

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from onewhole.marking.diagnosis.diagnosis import Patterns, Supposed, Weighed
from onewhole.marking.diagnosis.evidence import Beside, evidence
from onewhole.marking.diagnosis.finding import POSSIBLE_FROM, Finding
from onewhole.marking.diagnosis.notebook import KeptFinding, NotebookNight
from onewhole.marking.reading.mark import ClassMarks, Mark
from onewhole.problems.problem import Problem
from onewhole.statements.statement import Statement


@dataclass(frozen=True, slots=True)
class ReportRow:
    """One problem of the page: what was asked, the mark, and what the patterns found would write."""

    problem: Problem
    mark: Mark
    beside: Beside


@dataclass(frozen=True, slots=True)
class Report:
    """What is told about one pupil.

    ``sets`` are the sets of patterns found: one, or several that the answers cannot tell apart. ``odds`` is
    their share together, ``none`` that of no steady pattern; ``others`` are the sets beside them that stay
    possible, the likeliest first; none where nothing is found, so that no page says both. ``ask`` are the
    problems to ask next, ``earlier`` findings of nights before that have not expired.
    """

    finding: Finding
    sets: tuple[Patterns, ...]
    odds: Fraction
    none: Fraction
    others: tuple[Supposed, ...]
    rows: tuple[ReportRow, ...]
    ask: tuple[Statement, ...]
    earlier: tuple[tuple[NotebookNight, KeptFinding], ...] = ()

    @property
    def pupil(self) -> str:
        """Return the pupil's code."""
        return self.finding.pupil

    @property
    def answered(self) -> bool:
        """Say whether any answer could be read."""
        return bool(self.finding.diagnosis.odds)


def report(
    marks: ClassMarks,
    weighed: Weighed,
    finding: Finding,
    ask: Sequence[Statement] = (),
    earlier: Sequence[tuple[NotebookNight, KeptFinding]] = (),
) -> Report:
    """Put together what is told about the pupil of a finding."""
    at = [pupil.pupil for pupil in marks.pupils].index(finding.pupil)
    pupil, found = marks.pupils[at], finding.diagnosis
    sets = found.alike if finding.fittings else ()
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
        tuple(earlier),
    )
