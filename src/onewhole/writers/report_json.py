"""What is told about one pupil as a JSON object: the contract of ``docs/json.md``."""

from datetime import date

from onewhole.findings.idea_course import HeldSince
from onewhole.languages.english.simple_rule import simple_rule_told
from onewhole.marking.diagnosis.finding import CAUTION
from onewhole.marking.diagnosis.report import Report, ReportRow
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.writers.marks_json import Json, finding_object, odds, talk_object


def report_object(report: Report, until: date | None = None) -> Json:
    """Return the report of a pupil; odds are exact fractions, which a door turns into numbers."""
    told: Json = {
        "pupil": report.pupil,
        "finding": finding_object(report.finding, report.ask, until),
        "sets": [list(patterns) for patterns in report.sets],
        "together": odds(report.odds),
        "no_steady_pattern": odds(report.none),
        "rule": text_of(simple_rule_told(report.rule)) if report.rule else None,
        "problems": [_problem(row) for row in report.rows],
        "earlier": [
            {
                "date": night.on.isoformat(),
                "page": night.page,
                "patterns": list(kept.patterns),
                "good_until": night.until.isoformat(),
            }
            for night, kept in report.earlier
        ],
        "held_since": _held(report.held_since),
        "withdrawn": [
            {"patterns": list(patterns), "on": since.on.isoformat()} for patterns, since in report.withdrawn
        ],
        "caution": CAUTION,
    }
    return told | ({"talk": talk_object(report.talk)} if report.talk else {})


def _held(since: HeldSince | None) -> Json | None:
    return {"on": since.on.isoformat(), "shown": since.shown, "of": since.of} if since else None


def _problem(row: ReportRow) -> Json:
    return {
        "label": row.mark.label,
        "problem": text(row.problem.statement),
        "written": row.mark.written.text,
        "verdict": row.mark.verdict.value,
        "would_write": [text(outcome) for outcome in row.beside.would_write],
        "speaks": row.beside.speaks.value,
        "right_by_luck": row.beside.luck,
    }
