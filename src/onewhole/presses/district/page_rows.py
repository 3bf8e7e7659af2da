"""The different papers of one page as numbers: which answer to which problem, and what each answer says."""

from collections.abc import Sequence
from pathlib import Path

import numpy as np
import polars as pl
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.marking.diagnosis.reply import Reply
from onewhole.marking.district.page_asked import AnswerSeen, PageAsked, answer_seen
from onewhole.marking.district.shared_paper import BETWEEN
from onewhole.mastery.right_wrong import MISSING, RIGHT, WRONG

Codes = NDArray[np.uint16]


class PageRows(Struct, frozen=True, eq=False):
    """The different papers of a page, sorted by their answers, and how many there are of each.

    ``answers[j]`` are the writings of a problem, sorted, ``seen[j]`` what each says; ``codes[i, j]`` is which
    of them row ``i`` has.
    """

    asked: PageAsked
    rows: pl.Series
    papers: NDArray[np.int64]
    answers: tuple[tuple[str, ...], ...]
    seen: tuple[tuple[AnswerSeen, ...], ...]
    codes: Codes

    def replies(self, at: int) -> tuple[tuple[Reply, ...], Codes]:
        """Return the different replies to a problem, and by writing the place of its reply among them.

        Places count from 1; 0 is no reply.
        """
        kinds = dict.fromkeys(one.reply for one in self.seen[at] if one.reply is not None)
        places = {reply: place for place, reply in enumerate(kinds, start=1)}
        found = [0 if one.reply is None else places[one.reply] for one in self.seen[at]]
        return tuple(kinds), np.array(found, dtype=np.uint16)

    def signs(self, at: int) -> NDArray[np.uint8]:
        """Return by writing of a problem the sign of right, wrong or not answered, as a byte."""
        signs = (MISSING if one.reply is None else RIGHT if one.right else WRONG for one in self.seen[at])
        return np.frombuffer("".join(signs).encode(), dtype=np.uint8)

    def times(self, at: int) -> NDArray[np.int64]:
        """Return how many papers have each writing of a problem."""
        found = np.bincount(self.codes[:, at], self.papers, len(self.answers[at]))
        return np.rint(found).astype(np.int64)


def pages_of(counts: Sequence[Path]) -> list[str]:
    """Return the pages that were asked, sorted; each is its problems, a line each."""
    frame = pl.scan_parquet(list(counts)).select("problems").unique().collect(engine="streaming")
    return sorted(frame["problems"])


def page_rows(counts: Sequence[Path], asked: PageAsked) -> PageRows:
    """Put the counts of one page together."""
    merged = (
        pl.scan_parquet(list(counts))
        .filter(pl.col("problems") == BETWEEN.join(asked.problems))
        .group_by("answers")
        .agg(pl.col("papers").sum().cast(pl.Int64))
        .sort("answers")
        .collect(engine="streaming")
    )
    rows = merged["answers"]
    answers, seen, codes = [], [], []
    for at, expected in enumerate(asked.expected):
        column = rows.str.split(BETWEEN).list.get(at)
        written = column.unique().sort()
        told = tuple(written.to_list())
        places = pl.Series(range(len(told)), dtype=pl.UInt16)
        codes.append(column.replace_strict(written, places, return_dtype=pl.UInt16).to_numpy())
        answers.append(told)
        seen.append(tuple(answer_seen(expected, one) for one in told))
    found = np.stack(codes, axis=1)
    return PageRows(asked, rows, merged["papers"].to_numpy(), tuple(answers), tuple(seen), found)
