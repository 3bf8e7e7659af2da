"""One page of a district worked out: its different papers, the skills behind them, and the odds of patterns.

What the workers need lies in a folder of files; a part names a file and some of its rows.
"""

from collections.abc import Callable, Sequence
from functools import lru_cache
from pathlib import Path

import numpy as np
import polars as pl
from msgspec import Struct
from msgspec.structs import replace
from numpy.typing import NDArray

from onewhole.marking.district.page_asked import page_asked
from onewhole.mastery.fitted import FittedSkills
from onewhole.mastery.needed_skills import needed_skills
from onewhole.mastery.right_wrong import RightWrong
from onewhole.mastery.skill_model import SkillModel
from onewhole.presses.district.distinct import distinct_rows
from onewhole.presses.district.engine import Engine
from onewhole.presses.district.page_rows import PageRows, page_rows
from onewhole.presses.district.weighing import (
    Odds,
    Weights,
    keep_weights,
    kept_weights,
    learnt,
    reply_rows,
    weighed,
    weights,
)
from onewhole.presses.one_thread import one_thread
from onewhole.presses.skills.cells import Floats, cells_of
from onewhole.presses.skills.fit import fit_skills
from onewhole.presses.skills.likelihood import Point
from onewhole.presses.skills.profiles import posterior, skills_of_groups
from onewhole.presses.skills.rows import row_arrays

#: Rows of one part; the parts begin at the same places whoever works them out.
PART = 65_536
#: From so many papers on a skill model is fitted; the limit is ours.
ENOUGH = 500


class PageToFind(Struct, frozen=True):
    """A page by its place among all pages, its problems, and the folder of files for those who work."""

    page: int
    problems: str
    folder: Path


class PagePart(Struct, frozen=True):
    """Some rows of replies of a page, in files of a folder."""

    folder: str
    page: int
    first: int
    last: int


class PageFound(Struct, frozen=True, eq=False):
    """What was found on a page: the rows with their odds, skills where a model was fitted, and the learnt.

    ``sets`` and the two odds are by row of ``rows``; ``skills`` are rows by skills, the even odds; ``pupils``
    is by hypothesis how many have it.
    """

    rows: PageRows
    names: tuple[str, ...]
    sets: NDArray[np.uint16]
    odds: NDArray[np.uint32]
    none: NDArray[np.uint32]
    pupils: Floats
    fitted: FittedSkills | None
    skills: NDArray[np.float32]


def page_found(
    counts: Sequence[Path], asked: PageToFind, by: Engine, lap: Callable[[str], None]
) -> PageFound:
    """Work a page out and write its rows into the folder, for those who write back by pupil.

    ``lap`` is told what is done: the grouping, the fit of the skill model, what is learnt before, the odds.
    """
    rows = page_rows(counts, page_asked(asked.problems))
    lap("group")
    fitted, skills = _skills(rows)
    lap("fit")
    different = reply_rows(rows)
    known = weights(rows, different.problems)
    codes, papers, place = different.codes, different.papers, different.place
    with one_thread():
        known = replace(known, shares=learnt(known, codes, papers))
    lap("learn")
    page, folder = asked.page, asked.folder
    np.save(folder / f"codes-{page}.npy", codes)
    np.save(folder / f"papers-{page}.npy", papers)
    keep_weights(known, folder / f"weights-{page}.npz")
    parts = [
        PagePart(str(folder), page, first, min(first + PART, len(codes)))
        for first in range(0, len(codes), PART)
    ]
    odds = by.of_all(weigh_part, parts)
    pupils = np.empty(len(known.order))
    pupils[known.order] = np.sum([one.pupils for one in odds], axis=0)
    found = PageFound(
        rows,
        known.names,
        np.concatenate([one.sets for one in odds])[place],
        np.concatenate([one.odds for one in odds])[place],
        np.concatenate([one.none for one in odds])[place],
        pupils,
        fitted,
        skills,
    )
    _write(found, folder / f"rows-{page}.parquet")
    lap("odds")
    return found


def weigh_part(part: PagePart) -> Odds:
    """Return the odds of some rows of a page."""
    known = _weights(part.folder, part.page)
    codes = np.load(Path(part.folder) / f"codes-{part.page}.npy", mmap_mode="r")
    papers = np.load(Path(part.folder) / f"papers-{part.page}.npy", mmap_mode="r")
    some = slice(part.first, part.last)
    with one_thread():
        return weighed(known, np.asarray(codes[some]), np.asarray(papers[some]))


@lru_cache(maxsize=1)
def _weights(folder: str, page: int) -> Weights:
    return kept_weights(Path(folder) / f"weights-{page}.npz")


def _skills(rows: PageRows) -> tuple[FittedSkills | None, NDArray[np.float32]]:
    """Fit DINA to right and wrong, and return the odds of each skill by row, rounded to thousandths."""
    labels = tuple(str(at + 1) for at in range(rows.codes.shape[1]))
    q = needed_skills(labels, rows.asked.skills)
    nothing = np.zeros((len(rows.rows), 0), dtype=np.float32)
    if q is None or int(rows.papers.sum()) < ENOUGH:
        return None, nothing
    signs = np.stack([rows.signs(at)[rows.codes[:, at]] for at in range(len(labels))], axis=1)
    first, place = distinct_rows(signs)
    times = np.rint(np.bincount(place, rows.papers)).astype(np.int64)
    table = RightWrong(labels, tuple(bytes(one).decode() for one in signs[first]), tuple(times.tolist()))
    if any(all(row[at] == "." for row in table.rows) for at in range(len(labels))):
        return None, nothing
    fitted = fit_skills(table, q, SkillModel.DINA, climbs=1, seed=1)
    cells = cells_of(q, SkillModel.DINA)
    chances = [float(one.right.value) for problem in fitted.problems for one in problem.chances]
    point = Point(np.array(chances), np.array([float(one.share.value) for one in fitted.groups]))
    had = skills_of_groups(cells, len(q.skills)).even
    arrays = row_arrays(table)
    with one_thread():
        odds = np.concatenate(
            [posterior(cells, piece, point) @ had for piece in arrays.pieces(len(cells.groups))]
        )
    return fitted, np.round(odds[place], 3).astype(np.float32)


def _write(found: PageFound, goal: Path) -> None:
    names = pl.Series(found.names)
    skills = found.fitted.q.skills if found.fitted else ()
    table = pl.DataFrame(
        {
            "answers": found.rows.rows,
            "idea": names.gather(found.sets.astype(np.uint32)),
            "odds": found.odds,
            "no_idea": found.none,
            **{f"skill: {name}": found.skills[:, at] for at, name in enumerate(skills)},
        }
    )
    table.write_parquet(goal, compression="zstd")
