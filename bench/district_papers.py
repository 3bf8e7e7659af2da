"""Very many papers by invented pupils, for the bench of a district: Parquet files as `onewhole share` writes.

Of a hundred pupils 51 are sound, 21 shaky, 13 scattered, and 15 have a steady idea, some far oftener than
others; the figures are our own. Each file is a night of a part of the district, all on one of four pages.
"""

import sys
from datetime import date, timedelta
from pathlib import Path

import numpy as np
import polars as pl
from numpy.typing import NDArray

from onewhole.marking.district.page_asked import PageAsked, page_asked
from onewhole.notations.text import text
from onewhole.presses.district.paper_files import COLUMNS

PAGES = tuple(
    page.replace("; ", "\n")
    for page in (
        (
            "7 2/6 - 3 5/6; 9 5/8 - 4 6/8; 8 1/6 - 3 5/6; 6 1/4 - 3 2/4; 6 7/8 - 3 2/8; 4 - 1 3/8; "
            "5 2/6 + 1 3/6; 2 7/8 + 3 4/8; 9 - 2 3/5; 6 3/5 - 2 4/5; 3 4/10 + 2 9/10; 8 2/3 - 5 1/3"
        ),
        (
            "5 1/3 - 2 2/3; 8 4/6 - 5 5/6; 7 3/8 - 2 7/8; 9 1/5 - 4 3/5; 7 5/6 - 2 1/6; 6 - 2 5/6; "
            "4 1/8 + 3 5/8; 1 5/6 + 2 4/6; 8 - 3 1/4; 5 2/10 - 1 9/10; 2 3/4 + 4 2/4; 9 4/5 - 6 2/5"
        ),
        (
            "6 2/8 - 1 5/8; 9 1/4 - 5 3/4; 4 2/5 - 1 4/5; 7 1/10 - 2 6/10; 8 5/6 - 4 3/6; 5 - 3 2/3; "
            "6 1/4 + 2 2/4; 3 4/5 + 1 3/5; 7 - 4 5/8; 8 1/3 - 6 2/3; 1 7/8 + 5 6/8; 5 9/10 - 2 4/10"
        ),
        (
            "4 3/6 - 2 5/6; 6 2/5 - 3 3/5; 8 3/10 - 4 7/10; 5 1/8 - 2 4/8; 9 3/4 - 1 2/4; 7 - 5 3/10; "
            "2 1/3 + 6 1/3; 4 5/8 + 2 6/8; 6 - 1 2/4; 9 2/6 - 7 4/6; 3 3/4 + 3 3/4; 6 4/6 - 3 2/6"
        ),
    )
)
SORTS = ((0.51, 0.05, 0.05), (0.21, 0.27, 0.25), (0.13, 0.5, 0.7))
#: By problem the writings, by problem and sort of pupil their chances added up, and the shares of the sorts.
Drawn = tuple[list[list[str]], list[NDArray[np.float64]], NDArray[np.float64]]
FIRST = date(2026, 9, 1)


def papers(folder: Path, count: int, files: int, seed: int = 1) -> None:
    """Write so many papers in so many files."""
    pages = [page_asked(page) for page in PAGES]
    tables = [_tables(page) for page in pages]
    for at in range(files):
        chance = np.random.default_rng([seed, at])
        size = count * (at + 1) // files - count * at // files
        which = at % len(pages)
        school = f"School {at // len(pages):03}"
        place = folder / f"school-{at // len(pages):03}"
        place.mkdir(parents=True, exist_ok=True)
        answers = _answers(tables[which], size, chance)
        letters = chance.bytes(16 * size).hex()
        whose = pl.Series([letters[32 * one : 32 * one + 32] for one in range(size)])
        made = pl.DataFrame({"answers": answers}).with_row_index("number")
        made = made.select(
            whose.alias("pupil"),
            pl.format("Room {}", pl.col("number") // 25 + 1).alias("class"),
            pl.lit(school).alias("school"),
            pl.lit(FIRST + timedelta(days=7 * which)).alias("night"),
            pl.lit(4, dtype=pl.Int8).alias("grade"),
            pl.lit(PAGES[which]).alias("problems"),
            "answers",
        )
        assert dict(made.schema) == COLUMNS
        made.write_parquet(place / f"night-{which}-{at:04}.parquet", compression="zstd")


def _tables(page: PageAsked) -> Drawn:
    """By problem the writings, and by sort of pupil the chance of each: an idea is a sort, too."""
    ideas = sorted({key for one in page.expected for key in one.shows})
    writings, chances = [], []
    for one in page.expected:
        wrong = {slip.pattern: text(slip.wrote) for slip in one.slips}
        right = text(one.right)
        near = [
            text(
                type(one.right)(one.right.ladder, (*one.right.counts[:-1], max(0, one.right.counts[-1] + up)))
            )
            for up in (1, 2)
        ]
        told = list(dict.fromkeys([right, *wrong.values(), *near, "1", "0"]))
        rows = []
        for _, slip, once in SORTS:
            row = np.zeros(len(told))
            row[told.index(right)] += 1 - slip
            for writing in wrong.values():
                row[told.index(writing)] += slip * once / len(wrong)
            for writing in (*near, "1", "0"):
                row[told.index(writing)] += slip * (1 - once if wrong else 1) / 4
            rows.append(row / row.sum())
        for idea in ideas:
            row = np.zeros(len(told))
            row[told.index(wrong.get(idea, right))] += 0.9
            for writing in (right, *near):
                row[told.index(writing)] += 0.1 / 3
            rows.append(row)
        writings.append(told)
        chances.append(np.cumsum(rows, axis=1))
    shares = np.array([share for share, _, _ in SORTS] + [0.15 / (1 + at) for at in range(len(ideas))])
    shares[3:] *= 0.15 / shares[3:].sum()
    return writings, chances, shares


def _answers(drawn: Drawn, size: int, chance: np.random.Generator) -> pl.Series:
    writings, chances, shares = drawn
    sorts = chance.choice(len(shares), size, p=shares / shares.sum())
    columns = []
    for told, table in zip(writings, chances, strict=True):
        found = (chance.random(size)[:, None] > table[sorts]).sum(axis=1).clip(0, len(told) - 1)
        columns.append(pl.Series(told).gather(found.astype(np.uint32)))
    frame = pl.DataFrame({f"{at}": column for at, column in enumerate(columns)})
    return frame.select(pl.concat_str(pl.all(), separator="\n")).to_series()


if __name__ == "__main__":
    papers(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]))
    print("made")
