"""The page for the talks of the morning: for each pupil seen first all that the answers may show."""

from collections.abc import Callable, Sequence
from datetime import date

from onewhole.languages.class_words import ClassWords
from onewhole.marking.diagnosis.evidence import Speaks
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.report import Report, ReportRow
from onewhole.marking.reading.answer import Blank, Unreadable, Written
from onewhole.marking.reading.mark import Verdict
from onewhole.sheets.header import Header
from onewhole.writers.formula import Formula, formula
from onewhole.writers.frame import frame, named
from onewhole.writers.labels import runs
from onewhole.writers.printed import Json, Printed
from onewhole.writers.report_words import asked_of_child, beside, found, problem_told, says, talked

FOOTER = "For the teacher only. A hint for a talk, never a label."


def talks_page(
    header: Header,
    reports: Sequence[Report],
    until: date | None = None,
    shown: Callable[[str], str] = str,
) -> Printed:
    """Return the page with the reports of the pupils seen first; the caution stands at its head and foot.

    It is for the teacher's eyes; ``shown`` is how the teacher knows a pupil, by the code. Answers that can
    show nothing are named in a line and have no row.
    """
    data = frame(header, title="Talks this morning", small=named(header))
    talks = [_talk(report, until, header.words) | {"who": shown(report.pupil)} for report in reports]
    return Printed("talks", data | {"caution": CAUTION, "footer": FOOTER, "talks": talks})


def _talk(report: Report, until: date | None, words: ClassWords) -> Json:
    shown = [row for row in report.rows if _tells(row, report)]
    others = [
        row.mark.label for row in report.rows if row not in shown and row.mark.verdict is not Verdict.BLANK
    ]
    talk: Json = {
        "found": list(found(report)),
        "rows": [_row(row, report) for row in shown],
        "beside": [*beside(report), *talked(report)],
        "questions": list(asked_of_child(report, words)),
        "ask": [problem_told(one) if one.story else formula(one.statement) for one in report.ask],
    }
    if others and shown:
        labels = runs(others, [row.mark.label for row in report.rows])
        talk["others"] = f"Right, and saying nothing more: {labels}."
    return talk | ({"until": f"Good until {until}."} if until and report.sets else {})


def _tells(row: ReportRow, report: Report) -> bool:
    """Say whether an answer says something: it is wrong, or speaks for or against what was found."""
    if not report.answered:
        return False
    speaks = bool(report.sets) and (row.beside.speaks is not Speaks.NEITHER or row.beside.luck)
    return speaks or row.mark.verdict in {Verdict.WRONG, Verdict.UNREADABLE}


def _row(row: ReportRow, report: Report) -> Json:
    return {
        "label": f"{row.mark.label}.",
        "problem": formula(row.problem.statement),
        "wrote": _wrote(row.mark.written),
        "would": [formula(outcome) for outcome in row.beside.would_write],
        "says": says(row, report),
    }


def _wrote(written: Written) -> Formula | str:
    """Return an answer as a formula; typed lines, and what cannot be read, as they stand."""
    if isinstance(written.read, Blank | Unreadable) or written.chain is not None:
        return f"“{' '.join(written.text.split())}”"
    return formula(written.read)
