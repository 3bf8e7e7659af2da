"""What a page adds to a district's tables: answers by kind and pattern, ideas by week and by school."""

from collections import Counter
from dataclasses import dataclass, field

import numpy as np

from onewhole.findings.skill import Skill
from onewhole.marking.diagnosis.chances import MILLION
from onewhole.marking.district.district_found import (
    OTHER_KEY,
    RIGHT_KEY,
    ProblemAnswers,
    kind_row,
    rounded_answers,
)
from onewhole.marking.district.page_asked import AnswerSeen
from onewhole.presses.district.page_rows import PageRows
from onewhole.presses.district.page_work import PageFound

#: From these odds on answers are said to fit, in millionths; as in a class (marking.diagnosis.diagnosis).
FITS = 9 * MILLION // 10


@dataclass(slots=True)
class Tallies:
    """Counts that add up over pages, by row and column of a table."""

    papers: int = 0
    schools: set[str] = field(default_factory=set)
    kinds: Counter[tuple[str, str]] = field(default_factory=Counter)
    ideas: Counter[tuple[str, str]] = field(default_factory=Counter)
    places: Counter[tuple[str, str]] = field(default_factory=Counter)
    problems: list[ProblemAnswers] = field(default_factory=list)


def tally(found: PageFound, into: Tallies, least: int) -> None:
    """Add a page to the tables."""
    page, counts = found.rows.asked, found.rows.counts
    rows, papers, wide = counts.row, counts.papers, len(found.names)
    into.papers += int(papers.sum())
    into.schools |= set(counts.schools)
    sets = found.sets[rows]
    fitting = (found.odds[rows] >= FITS) & (sets != found.names.index(""))
    for names, of, goal in (
        (counts.whens, counts.when, into.ideas),
        (counts.schools, counts.school, into.places),
    ):
        sums = np.bincount(of[fitting] * wide + sets[fitting], papers[fitting])
        for cell in np.flatnonzero(sums).tolist():
            goal[found.names[cell % wide], names[cell // wide]] += round(sums[cell])
    for at, kind in enumerate(page.skills):
        _add_kind(found.rows, at, kind, into.kinds)
        into.problems.append(_answers(page.problems[at], kind, found, at, least))


def _add_kind(rows: PageRows, at: int, kind: Skill, into: Counter[tuple[str, str]]) -> None:
    """Count what was written to a problem, by week."""
    counts = rows.counts
    whats = [_what(one) for one in rows.seen[at]]
    names = sorted({what for what in whats if what})
    place = np.array([names.index(what) if what else len(names) for what in whats])
    width = len(names) + 1
    lines = counts.when * width + place[rows.codes[:, at]][counts.row]
    sums = np.bincount(lines, counts.papers, len(counts.whens) * width)
    for cell in np.flatnonzero(sums).tolist():
        if cell % width < len(names):
            into[kind_row(kind, names[cell % width]), counts.whens[cell // width]] += round(sums[cell])


def _answers(problem: str, kind: Skill, found: PageFound, at: int, least: int) -> ProblemAnswers:
    told = list(zip(found.rows.answers[at], found.rows.times(at).tolist(), found.rows.seen[at], strict=True))
    right = sum(count for _, count, seen in told if seen.right)
    wrong = [
        (text, count, seen.fits) for text, count, seen in told if seen.reply is not None and not seen.right
    ]
    return rounded_answers(problem, kind, right, wrong, least)


def _what(seen: AnswerSeen) -> str:
    """Return under which name an answer is counted; nothing where there is none."""
    if seen.reply is None:
        return ""
    return RIGHT_KEY if seen.right else (seen.fits[0] if seen.fits else OTHER_KEY)
