"""What is told about one pupil as plain lines for the terminal."""

from collections.abc import Iterator
from datetime import date

from onewhole.languages.class_words import ClassWords
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.report import Report, ReportRow
from onewhole.notations.text import printed
from onewhole.writers.report_words import asked_of_child, beside, found, known, problem_told, says, talked

ANY_WORDS = ClassWords()
HEADS = ("", "problem", "written", "this idea writes", "what it says")


def report_lines(report: Report, until: date | None = None, words: ClassWords = ANY_WORDS) -> tuple[str, ...]:
    """Return the report of a pupil: what answers may show, the evidence problem by problem, what to ask next.

    ``until`` is the last day on which a finding is good, ``words`` are the class's own. The caution
    stands at the end.
    """
    return tuple(_lines(report, until, words))


def _lines(report: Report, until: date | None, words: ClassWords) -> Iterator[str]:
    yield report.pupil
    yield from found(report)
    if report.answered:
        yield ""
        yield from _table(report)
        yield ""
    yield from beside(report)
    yield from talked(report)
    if until and report.sets:
        yield f"Good until {until}; look again then."
    if report.ask:
        yield f"Ask next: {' and '.join(map(problem_told, report.ask))}. The answers would tell most."
    elif len(report.sets) > 1:
        yield "No problem that we know tells these apart: ask how it was done."
    yield from asked_of_child(report, words)
    yield from known(report)
    yield CAUTION


def _table(report: Report) -> Iterator[str]:
    shown = [_cells(row, report) for row in report.rows]
    columns = [at for at in range(len(HEADS)) if report.sets or at != HEADS.index("this idea writes")]
    rows = [HEADS, *shown]
    widths = [max(len(row[at]) for row in rows) for at in range(len(HEADS))]
    for row in rows:
        yield "  ".join(row[at].ljust(widths[at]) for at in columns).rstrip()


def _cells(row: ReportRow, report: Report) -> tuple[str, ...]:
    written = " ".join(row.mark.written.text.split())
    would = " or ".join(map(printed, row.beside.would_write)) or "-"
    return (f"{row.mark.label}.", printed(row.problem.statement), written or "-", would, says(row, report))
