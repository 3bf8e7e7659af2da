"""What was found, written back for every pupil: a Parquet file beside each file of papers."""

from pathlib import Path

import polars as pl
from msgspec import Struct


class PupilsBack(Struct, frozen=True):
    """A file of papers, where what was found goes, and the files of the rows of each page."""

    papers: str
    goal: str
    rows: dict[str, str]


def write_back(asked: PupilsBack) -> int:
    """Write for each paper of a file: whose, the likeliest ideas with their odds, and the odds of skills.

    Odds of patterns are in millionths, those of skills from 0 to 1. Returns how many papers there are.
    """
    papers = pl.read_parquet(
        asked.papers, columns=["pupil", "class", "school", "night", "problems", "answers"]
    )
    pages = papers["problems"].unique().sort().to_list()
    parts = [
        papers.lazy()
        .filter(pl.col("problems") == page)
        .join(pl.scan_parquet(asked.rows[page]), on="answers", how="left")
        .drop("problems", "answers")
        for page in pages
    ]
    made = pl.concat(parts, how="diagonal").sort("school", "class", "night", "pupil").collect()
    goal = Path(asked.goal)
    goal.parent.mkdir(parents=True, exist_ok=True)
    beside = goal.with_suffix(".making")
    made.write_parquet(beside, compression="zstd")
    beside.replace(goal)
    return made.height
