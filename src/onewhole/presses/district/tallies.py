"""What a page adds to a district's tables: answers by kind and pattern, ideas by week and by school."""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np
import polars as pl
from numpy.typing import NDArray

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
from onewhole.marking.district.shared_paper import BETWEEN
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


def tally(found: PageFound, counts: Sequence[Path], into: Tallies, least: int) -> None:
    """Add a page to the tables."""
    page = found.rows.asked
    table = (
        pl.scan_parquet(list(counts))
        .filter(pl.col("problems") == BETWEEN.join(page.problems))
        .join(pl.LazyFrame({"answers": found.rows.rows}).with_row_index("row"), on="answers", how="left")
        .select(
            "school",
            pl.concat_str(
                pl.lit("Grade "),
                pl.col("grade").cast(pl.String),
                pl.lit(", "),
                pl.col("week").cast(pl.String),
            ).alias("when"),
            "row",
            "papers",
        )
        .collect(engine="streaming")
    )
    rows, papers = table["row"].to_numpy(), table["papers"].to_numpy().astype(np.int64)
    into.papers += int(papers.sum())
    fitting = (found.odds[rows] >= FITS) & (found.sets[rows] != found.names.index(""))
    for column, goal in (("when", into.ideas), ("school", into.places)):
        names, of = _places(table[column])
        sums = np.bincount(of[fitting] * len(found.names) + found.sets[rows][fitting], papers[fitting])
        for cell in np.flatnonzero(sums).tolist():
            goal[found.names[cell % len(found.names)], names[cell // len(found.names)]] += round(sums[cell])
    into.schools |= set(table["school"].unique())
    times, of = _places(table["when"])
    for at, kind in enumerate(page.skills):
        seen = found.rows.seen[at]
        whats = [_what(one) for one in seen]
        names = sorted({what for what in whats if what})
        place = np.array([names.index(what) if what else len(names) for what in whats])
        width = len(names) + 1
        sums = np.bincount(of * width + place[found.rows.codes[rows, at]], papers, len(times) * width)
        for cell in np.flatnonzero(sums).tolist():
            if cell % width < len(names):
                into.kinds[kind_row(kind, names[cell % width]), times[cell // width]] += round(sums[cell])
        into.problems.append(_answers(page.problems[at], kind, found, at, least))


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


def _places(column: pl.Series) -> tuple[list[str], NDArray[np.intp]]:
    names = column.unique().sort()
    places = pl.Series(range(len(names)), dtype=pl.UInt32)
    return names.to_list(), column.replace_strict(names, places, return_dtype=pl.UInt32).to_numpy().astype(
        np.intp
    )
