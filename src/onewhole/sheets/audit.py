"""The audit of a page: what is found in it, and what a teacher may do about it."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import StrEnum
from functools import cache, lru_cache
from math import ceil

from onewhole.misconceptions.catalogue import by_id, shows
from onewhole.misconceptions.slip import Slip
from onewhole.notations.text import text
from onewhole.problems.near import Sort as NearBy
from onewhole.problems.near import Space, near
from onewhole.problems.traps import is_at_heart
from onewhole.sheets.header import MOST_MINUTES
from onewhole.sheets.page import Page, halves, page
from onewhole.sheets.reading_level import AIM, reading_level
from onewhole.sheets.standards import StandardNote
from onewhole.sheets.told_numbers import untold
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.reading import read_statement
from onewhole.statements.statement import Statement

#: Problems that tell many patterns apart: found by working every pattern on every problem of a denominator.
TELLING = (
    "9 5/8 - 4 6/8",
    "9 7/12 - 4 9/12",
    "9 3/5 - 5 4/5",
    "9 3/6 - 5 4/6",
    "9 1/4 - 6 2/4",
    "9 1/3 - 3 2/3",
    "5 4/6 - 2 1/6",
    "6 7/8 - 3 2/8",
    "2 4/5 + 1 3/5",
    "5 7/8 + 2 6/8",
    "3/4 + 1/6",
    "11/12 - 4/6",
)


class Severity(StrEnum):
    """How much a finding weighs. Neither stops a page."""

    NOTE = "note"
    ADVICE = "advice"


@dataclass(frozen=True, slots=True)
class AuditFinding:
    """One thing found in a page.

    ``key`` names its sort (a standard's code, or climb, twins, minutes, alike, hidden, reading, story),
    ``words`` say what is found, ``labels`` the problems it is about (none: the page), and ``remedy`` what may
    be done. ``adds`` is a problem that takes the finding away when it is added, ``sets`` a setting that does;
    both are empty where there is none.
    """

    key: str
    severity: Severity
    words: str
    labels: tuple[str, ...]
    remedy: str
    adds: str = ""
    sets: str = ""


@dataclass(frozen=True, slots=True)
class Audit:
    """A page, and what is found in it, advice first."""

    page: Page
    findings: tuple[AuditFinding, ...]

    @property
    def clean(self) -> bool:
        """Say whether nothing is found: what a strict audit asks for."""
        return not self.findings


def audit(worked: WorkedSheet) -> Audit:
    r"""Return the audit of a sheet.

    >>> from onewhole.sheets.reading import read_sheet
    >>> sheet = read_sheet("1. 5 1/8 - 2 5/8\n2. 6 2/8 - 3 6/8")
    >>> [finding.key for finding in audit(WorkedSheet(sheet)).findings]
    ['twins', 'alike', 'K11', 'hidden']
    """
    seen = page(worked)
    found = [*_twins(seen), *_minutes(seen), *_alike(seen), *_standards(seen), *_stories(seen)]
    found += [*_falls(seen), *_hidden(seen)]
    found.sort(key=lambda finding: finding.severity is Severity.NOTE)
    return Audit(seen, tuple(found))


def _twins(seen: Page) -> Iterator[AuditFinding]:
    for labels in seen.twins:
        words = f"Problems {_listed(labels)} ask the same thing with the same differences of numbers."
        yield AuditFinding(
            "twins", Severity.ADVICE, words, labels, "Change the numbers of all but one of them."
        )


def _minutes(seen: Page) -> Iterator[AuditFinding]:
    budget = seen.sheet.header.minutes
    takes = f"The page takes about {halves(seen.minutes)} minutes"
    guess = "These are our own start values: correct the budget from real nights."
    if budget is not None and seen.minutes > budget:
        words = f"{takes}, more than the {budget} that you set."
        remedy = f"Leave some problems out, or set more. {guess}"
        enough = ceil(seen.minutes)
        sets = f"minutes: {enough}" if enough <= MOST_MINUTES else ""
        yield AuditFinding("minutes", Severity.ADVICE, words, (), remedy, sets=sets)
    if seen.minutes > seen.evening:
        words = f"{takes}; ten minutes a grade is {seen.evening} for one evening, all subjects together."
        yield AuditFinding("minutes", Severity.ADVICE, words, (), f"Leave some problems out. {guess}")


def _alike(seen: Page) -> Iterator[AuditFinding]:
    """Yield what the page cannot tell apart of patterns about regrouping and the pieces."""
    for group in seen.alike:
        keys = tuple(key for key in group if is_at_heart(key))
        if len(keys) < 2:
            continue
        labels = tuple(one.label for one in seen.problems if keys[0] in {slip.pattern for slip in one.slips})
        names = " and ".join(f"{key} ({by_id(key).name})" for key in keys)
        words = f"This page cannot tell {names} apart: they write the same answers on it."
        told = _telling(keys, tuple(one.problem.statement for one in seen.problems if one.label in labels))
        remedy = (
            f"Add a problem that tells them apart, such as {told.problem}."
            if told.problem
            else f"Ask the child to show each step: {_searched(told)}."
        )
        yield AuditFinding("alike", Severity.ADVICE, words, labels, remedy, told.problem)


@dataclass(frozen=True, slots=True)
class _Told:
    """A problem that tells patterns apart, or none, and the spaces that were searched for it."""

    problem: str
    searched: tuple[Space, ...]


def _telling(keys: tuple[str, ...], shown: tuple[Statement, ...]) -> _Told:
    """Look for a problem on which the patterns write different answers: those that tell, then those near.

    Nothing is claimed of problems that were not looked at.
    """
    spaces = tuple(dict.fromkeys(space for one in shown if (space := near(one)) is not None))
    for typed in TELLING:
        if _apart(keys, _slips(typed)):
            return _Told(typed, spaces)
    return _Told(next((found for space in spaces if (found := _first_apart(keys, space))), ""), spaces)


@lru_cache(maxsize=256)
def _first_apart(keys: tuple[str, ...], space: Space) -> str:
    """Return the first problem of a space on which the patterns write different answers, or nothing."""
    asked = tuple(map(by_id, keys))
    for typed in space.problems:
        statement = read_statement(typed)
        if _apart(keys, tuple(slip for one in asked if (slip := one.slip(statement)))):
            return typed
    return ""


def _apart(keys: tuple[str, ...], slips: tuple[Slip, ...]) -> bool:
    """Say whether answers tell patterns apart; one of them may be right, or not show, where the others do."""
    wrote = [slip.wrote for slip in slips if slip.pattern in keys]
    return len(set(wrote)) == len(wrote) >= len(keys) - 1 > 0


def _searched(told: _Told) -> str:
    """Say what was looked at in vain."""
    named = [
        f"{len(space.problems)} {'differences' if space.taken else 'sums'} of {_SORTS[space.sort]}"
        for space in told.searched
    ]
    also = f", nor by one to {_listed(tuple(named))}" if named else ""
    return f"they are not told apart by the answer to any of the {len(TELLING)} problems that tell most{also}"


#: What the problems of a space are, where it is said how many were looked at.
_SORTS = {
    NearBy.WHOLE_NUMBERS: "whole numbers up to four digits, zeros among them",
    NearBy.DECIMALS: "decimals with up to two places, zeros among them",
    NearBy.LIKE_PARTS: "numbers up to nine wholes with these denominators",
    NearBy.UNLIKE_PARTS: "numbers up to nine wholes with these denominators",
    NearBy.MEASURES: "measures in these units",
}


def _hidden(seen: Page) -> Iterator[AuditFinding]:
    for key in filter(is_at_heart, seen.hidden):
        labels = tuple(one.label for one in seen.problems if key in one.traps.lucky)
        words = f"{key} ({by_id(key).name}) gives the right answer by luck wherever it could show."
        adds = next((typed for typed in TELLING if key in {slip.pattern for slip in _slips(typed)}), "")
        remedy = (
            f"Add a problem that shows it, such as {adds}."
            if adds
            else "A right answer here says nothing about it."
        )
        yield AuditFinding("hidden", Severity.NOTE, words, labels, remedy, adds)


@cache
def _slips(typed: str) -> tuple[Slip, ...]:
    """Work every pattern on one of the problems that tell; once, for there are few."""
    return shows(read_statement(typed))


def _falls(seen: Page) -> Iterator[AuditFinding]:
    points = {one.label: one.difficulty.score for one in seen.problems}
    for before, after in seen.falls:
        words = (
            f"Problem {after} is much easier than {before} ({points[after]} points after {points[before]})."
        )
        yield AuditFinding(
            "climb", Severity.NOTE, words, (before, after), "Put the easier one first if you want a climb."
        )


def _stories(seen: Page) -> Iterator[AuditFinding]:
    """Yield word problems that are hard to read, and those whose words tell other numbers than they ask."""
    for one in seen.problems:
        level = reading_level(one.problem.story)
        if level is not None and level.hard:
            words = f"The words of problem {one.label} read at about grade {level.shown}, above {AIM}."
            remedy = "Use shorter sentences and words. The formula is rough on so few words."
            yield AuditFinding("reading", Severity.NOTE, words, (one.label,), remedy)
        if missing := untold(one.problem):
            words = f"The words of problem {one.label} do not tell {_listed(tuple(map(text, missing)))}."
            remedy = "See that the words and the problem before the bar have the same numbers."
            yield AuditFinding("story", Severity.NOTE, words, (one.label,), remedy)


def _standards(seen: Page) -> Iterator[AuditFinding]:
    """Yield the notes of the standards; what one says in more words is not said by another too."""
    told = {note.standard.code: set(note.labels) for note in seen.notes}
    for note in seen.notes:
        covered = told.get(_SAID_BETTER.get(note.standard.code, ""), set())
        labels = tuple(label for label in note.labels if label not in covered)
        if labels or not note.labels:
            yield AuditFinding(
                note.standard.code, _severity(note), note.standard.rule, labels, note.standard.remedy
            )


_SAID_BETTER = {"K1": "K12", "K3": "K9"}


def _severity(note: StandardNote) -> Severity:
    return Severity.ADVICE if note.standard.code == "K11" else Severity.NOTE


def _listed(names: tuple[str, ...]) -> str:
    return " and ".join(filter(None, (", ".join(names[:-1]), names[-1])))
