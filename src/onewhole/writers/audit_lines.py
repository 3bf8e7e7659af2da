"""The audit of a page as plain lines, for the terminal and for text files."""

from collections.abc import Iterator

from onewhole.findings.in_page import (
    FallsBack,
    HardToRead,
    NumbersUntold,
    PageFinding,
    Twins,
    severity,
)
from onewhole.languages.english.in_page import found_in_page, page_mended
from onewhole.languages.english.words import names_listed
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed
from onewhole.problems.needs import Needs
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.audit import Audit
from onewhole.sheets.page import Page, halves
from onewhole.writers.finding_keys import finding_key

HEADS = ("", "problem", "answer", "points", "minutes", "patterns", "needs")
#: Columns that line up at their right end: they hold amounts.
COUNTS = frozenset({"", "answer", "points", "patterns"})
TIMES = {1: "once", 2: "twice"}
#: Findings whose words name their problems already.
NAMED = (Twins, FallsBack, HardToRead, NumbersUntold)


def audit_lines(audit: Audit) -> tuple[str, ...]:
    """Return what the page is like, a line a problem with its traps, and what is found with what may be done.

    ``points`` say how hard a problem is, ``patterns`` how many error patterns can show on it.
    """
    return (
        *_page(audit.page),
        "",
        *_problems(audit.page),
        "",
        *(line for found in audit.findings for line in _finding(found)),
        *(() if audit.findings else ("Nothing found that wants a change.",)),
    )


def _page(page: Page) -> Iterator[str]:
    if page.sheet.header.title:
        yield page.sheet.header.title
    many = len(page.problems)
    regroup = sum(seen.needs.regrouping for seen in page.problems)
    minutes = f"{halves(page.minutes)} minute{'s' * (page.minutes != 1)}"
    yield f"{many} problem{'s' * (many != 1)}, about {minutes}; regrouping in {regroup} of {many}."
    yield "Climbs from easy to hard." if page.climbs else f"Falls back {_count(len(page.falls))} on the way."
    for labels in page.twins:
        yield f"Twins: {names_listed(labels)}."
    for patterns in page.alike:
        yield f"Not told apart by this page: {names_listed(patterns)}."


def _problems(page: Page) -> Iterator[str]:
    rows = [HEADS, *map(_row, page.problems)]
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for row, seen in zip(rows, (None, *page.problems), strict=True):
        yield "  ".join(map(_cell, HEADS, row, widths)).rstrip()
        for trap in _traps(seen) if seen else ():
            yield f"{'':{widths[0]}}    {trap}"


def _cell(head: str, said: str, width: int) -> str:
    return said.rjust(width) if head in COUNTS else said.ljust(width)


def _row(seen: WorkedProblem) -> tuple[str, ...]:
    return (
        f"{seen.label}.",
        printed(seen.problem.statement),
        printed(seen.answer),
        str(seen.difficulty.score),
        halves(seen.minutes),
        str(len(seen.slips)),
        "; ".join(_needs(seen.needs)),
    )


def _needs(needs: Needs) -> Iterator[str]:
    yield f"regroup {_count(needs.regroupings)}" if needs.regrouping else "no regrouping"
    if needs.renaming:
        yield "rename the pieces"
    if needs.whole_first:
        yield "no smaller units on top"
    if needs.over_one:
        yield "a fraction greater than one"


def _traps(seen: WorkedProblem) -> Iterator[str]:
    """Tell the traps that practice on regrouping is about; the others are counted in the JSON object."""
    for group in seen.traps.core.alike:
        wrote = next(slip.wrote for slip in seen.slips if slip.pattern in group)
        yield f"trap: {names_listed(group)} write the same, {printed(wrote)}"
    for pattern in seen.traps.core.lucky:
        yield f"trap: {pattern} comes out right by luck"


def _finding(found: PageFinding) -> Iterator[str]:
    labels = "" if isinstance(found, NAMED) or not found.labels else f" (in {names_listed(found.labels)})"
    yield f"{severity(found).value} {finding_key(found)}: {text_of(found_in_page(found))}{labels}"
    yield f"  next: {text_of(page_mended(found))}"


def _count(times: int) -> str:
    return TIMES.get(times, f"{times} times")
