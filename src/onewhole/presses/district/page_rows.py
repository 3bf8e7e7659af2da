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
from onewhole.presses.district.distinct import Places, distinct_rows

Codes = NDArray[np.unsignedinteger]
#: Rows whose answers are taken apart at once: twelve texts a row lie in memory meanwhile.
APART = 65_536


class RowCounts(Struct, frozen=True, eq=False):
    """How often each different paper was written where and when: a line of counts each.

    ``row[i]`` is which of the different papers a line counts; ``school[i]`` and ``when[i]`` are places in
    ``schools`` and ``whens``, which are sorted.
    """

    row: Places
    papers: NDArray[np.int64]
    schools: tuple[str, ...]
    school: Places
    whens: tuple[str, ...]
    when: Places


class PageRows(Struct, frozen=True, eq=False):
    """The different papers of a page, sorted by their answers, and how many there are of each.

    ``rows[i]`` is a paper's text; ``answers[j]`` are the writings of a problem, sorted, ``seen[j]`` what each
    says; ``codes[i, j]`` is which of them row ``i`` has.
    """

    asked: PageAsked
    rows: pl.Series
    papers: NDArray[np.int64]
    answers: tuple[tuple[str, ...], ...]
    seen: tuple[tuple[AnswerSeen, ...], ...]
    codes: Codes
    counts: RowCounts

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
    lines = (
        pl.scan_parquet(list(counts))
        .filter(pl.col("problems") == BETWEEN.join(asked.problems))
        .select(
            "answers",
            pl.col("school").cast(pl.Categorical),
            pl.concat_str(
                pl.lit("Grade "),
                pl.col("grade").cast(pl.String),
                pl.lit(", "),
                pl.col("week").cast(pl.String),
            )
            .cast(pl.Categorical)
            .alias("when"),
            pl.col("papers").cast(pl.Int64),
        )
        .collect(engine="streaming")
    )
    codes, answers = _codes(lines["answers"], len(asked.problems))
    first, row = distinct_rows(codes)
    papers = lines["papers"].to_numpy()
    seen = [
        tuple(answer_seen(expected, one) for one in told)
        for expected, told in zip(asked.expected, answers, strict=True)
    ]
    return PageRows(
        asked,
        lines["answers"].gather(first),
        np.rint(np.bincount(row, papers)).astype(np.int64),
        answers,
        tuple(seen),
        codes[first],
        RowCounts(row, papers, *_places(lines["school"]), *_places(lines["when"])),
    )


def _codes(rows: pl.Series, problems: int) -> tuple[Codes, tuple[tuple[str, ...], ...]]:
    """Take papers apart: by paper and problem the place of what was written among the problem's writings."""
    found = np.empty((len(rows), problems), dtype=np.uint32)
    named: dict[str, int] = {}
    for begin in range(0, len(rows), APART):
        texts = rows.slice(begin, APART).str.split(BETWEEN).explode().cast(pl.Categorical)
        found[begin : begin + APART] = _named(texts, named).reshape(-1, problems)
    kinds = list(named)
    rank = np.empty(len(kinds), dtype=np.intp)
    rank[sorted(range(len(kinds)), key=kinds.__getitem__)] = np.arange(len(kinds))
    small = np.min_scalar_type(len(kinds))
    codes, answers = np.empty(found.shape, dtype=small), []
    for at in range(problems):
        mine = np.unique(found[:, at])
        mine = mine[np.argsort(rank[mine])]
        place = np.zeros(len(kinds), dtype=small)
        place[mine] = np.arange(len(mine))
        codes[:, at] = place[found[:, at]]
        answers.append(tuple(kinds[one] for one in mine.tolist()))
    return codes, tuple(answers)


def _named(texts: pl.Series, named: dict[str, int]) -> NDArray[np.uint32]:
    """Return for each text its number, and number those that are new."""
    kinds = texts.unique()
    at = kinds.to_physical().to_numpy()
    numbers = np.zeros(int(at.max()) + 1, dtype=np.uint32)
    numbers[at] = [named.setdefault(kind, len(named)) for kind in kinds.to_list()]
    return np.asarray(numbers[texts.to_physical().to_numpy()])


def _places(column: pl.Series) -> tuple[tuple[str, ...], Places]:
    names = sorted(column.unique().to_list())
    numbers = {name: at for at, name in enumerate(names)}
    return tuple(names), _named(column, numbers).astype(np.intp)
