"""The audit of a page as a JSON object: the contract of ``docs/json.md``."""

from onewhole.findings.in_page import PageFinding, severity
from onewhole.languages.english.in_page import found_in_page, page_mended
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import text
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.audit import Audit
from onewhole.writers.finding_keys import finding_key

Json = dict[str, object]


def audit_object(audit: Audit) -> Json:
    """Return the page, each of its problems, and what is found, advice first.

    Minutes are exact fractions as text, such as ``33/2``. ``traps`` and ``alike`` hold every pattern, where
    findings speak of those about regrouping and the pieces only.
    """
    page = audit.page
    return {
        "title": page.sheet.header.title,
        "minutes": str(page.minutes),
        "climbs": page.climbs,
        "problems": [_problem(seen, page.worked.standards[seen.label]) for seen in page.problems],
        "twins": [list(labels) for labels in page.twins],
        "alike": [list(patterns) for patterns in page.alike],
        "findings": [_finding(found) for found in audit.findings],
    }


def _problem(seen: WorkedProblem, standard: str) -> Json:
    return {
        "label": seen.label,
        "problem": text(seen.problem.statement),
        "answer": text(seen.answer),
        "standard": standard,
        "regroupings": seen.needs.regroupings,
        "difficulty": seen.difficulty.score,
        "minutes": str(seen.minutes),
        "shows": [slip.pattern for slip in seen.slips],
        "traps": {
            "alike": [
                {"answer": _written(seen, group), "patterns": list(group)} for group in seen.traps.alike
            ],
            "lucky": list(seen.traps.lucky),
        },
    }


def _written(seen: WorkedProblem, group: tuple[str, ...]) -> str:
    return next(text(slip.wrote) for slip in seen.slips if slip.pattern in group)


def _finding(found: PageFinding) -> Json:
    return {
        "key": finding_key(found),
        "severity": severity(found).value,
        "words": text_of(found_in_page(found)),
        "labels": list(found.labels),
        "remedy": text_of(page_mended(found)),
    }
