"""The audit of a page as plain lines, for the terminal and for text files."""

from collections.abc import Iterable, Iterator, Sequence

from onewhole.findings.in_page import (
    FallsBack,
    HardToRead,
    HigherThanPage,
    NumbersUntold,
    PageFinding,
    RightByLuck,
    Twins,
    severity,
)
from onewhole.languages.english.in_page import also_true, found_in_page, page_mended
from onewhole.languages.english.words import names_listed
from onewhole.misconceptions.attempt import Outcome
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed
from onewhole.problems.needs import Needs, Operation
from onewhole.problems.worked import WorkedProblem
from onewhole.sheets.audit import Audit
from onewhole.sheets.page import Page, halves
from onewhole.writers.finding_keys import finding_key

HEADS = ("", "problem", "answer", "points", "minutes", "patterns", "standard", "needs")
#: Columns that line up at their right end: they hold amounts.
COUNTS = frozenset({"", "answer", "points", "patterns"})
TIMES = {1: "once", 2: "twice"}
#: Findings whose words name their problems already.
NAMED = (Twins, FallsBack, HardToRead, NumbersUntold, HigherThanPage)


def audit_lines(audit: Audit) -> tuple[str, ...]:
    """Return what the page is like, a line a problem with its traps, and what is found with what may be done.

    What is found of several patterns alike is told as one. ``points`` say how hard a problem is, ``patterns``
    how many error patterns can show on it.
    """
    return (
        *_page(audit.page),
        "",
        *_problems(audit.page),
        "",
        *(line for alike in _by_kind(audit.findings) for line in _findings(alike)),
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
    if page.alike:
        yield f"Not told apart by this page: {'; '.join(map(names_listed, page.alike))}."


def _problems(page: Page) -> Iterator[str]:
    rows = [HEADS, *(_row(seen, page) for seen in page.problems)]
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for row, seen in zip(rows, (None, *page.problems), strict=True):
        yield "  ".join(map(_cell, HEADS, row, widths)).rstrip()
        for trap in _traps(seen) if seen else ():
            yield f"{'':{widths[0]}}    {trap}"


def _cell(head: str, said: str, width: int) -> str:
    return said.rjust(width) if head in COUNTS else said.ljust(width)


def _row(seen: WorkedProblem, page: Page) -> tuple[str, ...]:
    return (
        f"{seen.label}.",
        printed(seen.problem.statement),
        printed(seen.answer),
        str(seen.difficulty.score),
        halves(seen.minutes),
        str(len(seen.slips)),
        page.worked.standards[seen.label],
        "; ".join(_needs(seen.needs)),
    )


def _needs(needs: Needs) -> Iterator[str]:
    if Operation.ROUND in needs.operations:
        yield "exactly halfway" if needs.halfway else "the nearer neighbor"
        return
    if Operation.READ in needs.operations:
        yield "read a line plot"
        return
    yield f"regroup {_count(needs.regroupings)}" if needs.regrouping else "no regrouping"
    if needs.renaming:
        yield "rename the pieces"
    if needs.whole_first:
        yield "no smaller units on top"
    if needs.over_one:
        yield "a fraction greater than one"


def _traps(seen: WorkedProblem) -> Iterator[str]:
    """Tell the traps that practice on regrouping is about, a line a kind; JSON counts the others."""
    core = seen.traps.core
    if core.alike:
        groups = [(names_listed(group), printed(_written(seen, group))) for group in core.alike]
        same = [f"{who} write the same, {wrote}" for who, wrote in groups[:1]]
        yield f"trap: {'; '.join([*same, *(f'{who} {wrote}' for who, wrote in groups[1:])])}"
    if core.lucky:
        yield f"trap: {names_listed(core.lucky)} come{'s' * (len(core.lucky) == 1)} out right by luck"


def _written(seen: WorkedProblem, group: Sequence[str]) -> Outcome:
    return next(slip.wrote for slip in seen.slips if slip.pattern in group)


def _by_kind(found: Iterable[PageFinding]) -> list[list[PageFinding]]:
    """Gather what is found of several patterns alike: with the same thing to do about it."""
    kinds: dict[object, list[PageFinding]] = {}
    for one in found:
        about = None if isinstance(one, RightByLuck) else one.labels
        kinds.setdefault((type(one), about, text_of(page_mended(one))), []).append(one)
    return list(kinds.values())


def _findings(found: Sequence[PageFinding]) -> Iterator[str]:
    first, *more = found
    same = not isinstance(first, NAMED) and all(one.labels == first.labels for one in more)
    labels = f" (in {names_listed(first.labels)})" if same and first.labels else ""
    said = found_in_page(first) + (also_true(len(more)) if more else ())
    yield f"{severity(first).value} {finding_key(first)}: {text_of(said)}{labels}"
    yield f"  next: {text_of(page_mended(first))}"


def _count(times: int) -> str:
    return TIMES.get(times, f"{times} times")
