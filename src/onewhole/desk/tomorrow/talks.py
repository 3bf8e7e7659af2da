"""All that one pupil's answers may show, in words and formulas, for a talk with the child."""

from collections.abc import Mapping

from msgspec import Struct

from onewhole.desk.classes.marked_nights import NightInput, marked_of
from onewhole.desk.keep.pupil_cache import pupil_cache
from onewhole.desk.pupil.report import reports
from onewhole.languages.class_words import ClassWords
from onewhole.marking.diagnosis.evidence import Speaks
from onewhole.marking.diagnosis.report import Report, ReportRow
from onewhole.marking.reading.answer import Blank, Unreadable, Written
from onewhole.marking.reading.asked import asked_line
from onewhole.marking.reading.mark import Verdict
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.mathml import mathml
from onewhole.writers.labels import runs
from onewhole.writers.report_words import (
    asked_of,
    beside,
    found,
    known,
    odds_moved,
    problem_told,
    says,
    talked,
)

#: The most nights whose talks are cached in memory.
HELD = 8


class TalkLine(Struct, frozen=True):
    """One answer as evidence: formulas are MathML, ``wrote`` is text where it cannot be read as one."""

    label: str
    problem: str
    wrote: str
    is_formula: bool
    would: tuple[str, ...]
    says: str


class Talk(Struct, frozen=True):
    """What is told about one pupil.

    ``found`` are sentences, ``beside`` what speaks against and what else stays possible, ``known`` the odds
    and the ids of patterns. ``lines`` are the answers that tell something, ``others`` a sentence on the rest.
    ``questions`` are for the talk, ``ask`` the problems whose answers would tell most, each as MathML, or in
    its words and False where it is a story; ``talked`` is
    what was asked since, ``moved`` what that changed in the odds; ``suggested`` is the first of ``ask`` as it
    is typed, and ``named`` are the ideas in question, each with its name. ``finds`` says whether a pattern
    fits.
    """

    code: str
    finds: bool
    found: tuple[str, ...]
    beside: tuple[str, ...]
    known: tuple[str, ...]
    lines: tuple[TalkLine, ...]
    others: str
    questions: tuple[str, ...]
    ask: tuple[tuple[str, bool], ...]
    talked: tuple[str, ...]
    moved: str
    suggested: str
    named: tuple[tuple[str, str], ...]


@pupil_cache(maxsize=HELD)
def talks(given: NightInput) -> Mapping[str, Talk]:
    """Return by code what each pupil's answers of a night may show; the same once more costs nothing."""
    marked = marked_of(given)
    told = reports(marked, tuple(one.pupil for one in marked.findings))
    return {one.pupil: talk(one, marked.sheet.header.words) for one in told}


@pupil_cache(maxsize=HELD)
def talk_with(given: NightInput, code: str) -> Talk:
    """Return what one pupil's answers of a night may show. Raises UnknownPupilError."""
    marked = marked_of(given)
    return talk(reports(marked, (code,))[0], marked.sheet.header.words)


def talk(report: Report, words: ClassWords) -> Talk:
    """Return a report in words and formulas; ``words`` are the class's own."""
    shown = tuple(row for row in report.rows if _tells(row, report))
    rest = [
        row.mark.label for row in report.rows if row not in shown and row.mark.verdict is not Verdict.BLANK
    ]
    return Talk(
        report.pupil,
        bool(report.sets),
        found(report),
        beside(report),
        known(report),
        tuple(_line(row, report) for row in shown),
        f"Right, and saying nothing more: {runs(rest, [row.mark.label for row in report.rows])}."
        if rest and shown
        else "",
        asked_of(report, words),
        tuple(
            [(problem_told(one), False) if one.story else (mathml(one.statement), True) for one in report.ask]
        ),
        talked(report),
        odds_moved(report),
        asked_line(report.ask[0]) if report.ask else "",
        tuple((key, by_id(key).name) for key in dict.fromkeys(key for ids in report.sets for key in ids)),
    )


def _tells(row: ReportRow, report: Report) -> bool:
    """Say whether an answer says something: it is wrong, or speaks for or against what was found."""
    if not report.answered:
        return False
    speaks = bool(report.sets) and (row.beside.speaks is not Speaks.NEITHER or row.beside.luck)
    return speaks or row.mark.verdict in {Verdict.WRONG, Verdict.UNREADABLE}


def _line(row: ReportRow, report: Report) -> TalkLine:
    wrote, is_formula = shown_written(row.mark.written)
    return TalkLine(
        row.mark.label,
        mathml(row.problem.statement),
        wrote,
        is_formula,
        tuple(map(mathml, row.beside.would_write)),
        says(row, report),
    )


def shown_written(written: Written) -> tuple[str, bool]:
    """Return an answer as MathML, or as it stands where lines were typed or nothing can be read."""
    if isinstance(written.read, Blank | Unreadable) or written.chain is not None:
        return " ".join(written.text.split()), False
    return mathml(written.read), True
