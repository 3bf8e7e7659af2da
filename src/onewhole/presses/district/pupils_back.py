"""What was found, written back for every pupil: a Parquet file beside each file of papers."""

import json
from collections import defaultdict
from collections.abc import Mapping
from pathlib import Path

import polars as pl
from msgspec import Struct

#: The file of a run's folder that says in which file the rows of each page are.
PAGES = "pages.json"
#: The columns that stand first.
FIRST = ("pupil", "class", "school", "night")


class PupilsBack(Struct, frozen=True):
    """Files of papers, each with where what was found of it goes; and the folder of the rows of the pages.

    They are taken together so that the rows of a page are read once for many small files.
    """

    files: Mapping[str, str]
    folder: str


def keep_pages(rows: Mapping[str, str], folder: Path) -> None:
    """Write down in which file the rows of each page are, for those who write back."""
    (folder / PAGES).write_text(json.dumps(dict(rows)), encoding="utf-8")


def write_back(asked: PupilsBack) -> int:
    """Write for each paper of some files: whose, the likeliest ideas with their odds, and the odds of skills.

    They stand page by page in the order of the papers. Odds of patterns are in millionths, those of skills
    from 0 to 1. Returns how many files there are.
    """
    rows = json.loads((Path(asked.folder) / PAGES).read_text(encoding="utf-8"))
    parts = defaultdict(list)
    for page in sorted(_scan(asked).select(pl.col("problems").unique()).collect()["problems"]):
        papers = _scan(asked).filter(pl.col("problems") == page).drop("problems")
        found = papers.join(pl.scan_parquet(rows[page]), on="answers", how="left", maintain_order="left")
        told = found.drop("answers").collect()
        for (file,), part in told.partition_by("file", as_dict=True, include_key=False).items():
            parts[file].append(part)
        del told
    for file, goal in asked.files.items():
        _put(pl.concat(parts.pop(file), how="diagonal"), Path(goal))
    return len(asked.files)


def _scan(asked: PupilsBack) -> pl.LazyFrame:
    papers = pl.scan_parquet(list(asked.files), include_file_paths="file")
    few = pl.col("school", "class", "file").cast(pl.Categorical)
    return papers.select("pupil", few, "night", "problems", "answers")


def _put(found: pl.DataFrame, goal: Path) -> None:
    goal.parent.mkdir(parents=True, exist_ok=True)
    beside = goal.with_suffix(".making")
    made = found.with_columns(pl.col("school", "class").cast(pl.String))
    made.select(*FIRST, pl.exclude(FIRST)).write_parquet(beside, compression="zstd")
    beside.replace(goal)
