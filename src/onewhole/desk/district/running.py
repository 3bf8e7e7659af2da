"""A district: papers of many classes put together, on one machine or on the workers of a cluster."""

import shutil
from fractions import Fraction
from pathlib import Path
from time import perf_counter

import numpy as np
from msgspec import Struct, field
from numpy.typing import NDArray

from onewhole.desk.district.engines import needed
from onewhole.desk.district.telling import put_report
from onewhole.errors import InputError
from onewhole.marking.district.district_found import DistrictFound, difficulty, idea_table, shown_table
from onewhole.marking.district.district_prior import district_prior, prior_text
from onewhole.marking.district.small_counts import LEAST
from onewhole.presses.files import write
from onewhole.presses.folders import made

#: Files that a run leaves in its folder, and folders: what was counted, and what was found for each pupil.
PRIOR_FILE, COUNTS, WORK, PUPILS = "prior.json", "counts", "work", "pupils"


class DistrictWishes(Struct, frozen=True):
    """How a district is run: how small a number is not shown, and who works."""

    least: int = LEAST
    workers: int = 0
    scheduler: str = ""
    pupils: bool = True


NO_DISTRICT_WISHES = DistrictWishes()


class DistrictRun(Struct, frozen=True):
    """What a run did: how many files were there and how many of them were read, what was found, seconds."""

    files: int
    read: int
    found: DistrictFound
    seconds: dict[str, float] = field(default_factory=dict)


def run_district(folders: list[Path], goal: Path, wishes: DistrictWishes = NO_DISTRICT_WISHES) -> DistrictRun:
    """Put the papers of some folders together and write what they show into a folder.

    What was counted before is not read again. Written are the report, the prior file, and unless that is not
    wished for a file of odds beside each file of papers. Raises InputError for what cannot be used.
    """
    if wishes.least < 1:
        raise InputError(f"numbers under {wishes.least} cannot be left out", remedy="Give 1 or more.")
    needed("polars")
    if wishes.workers or wishes.scheduler:
        needed("distributed")
    from onewhole.presses.district import counting  # noqa: PLC0415
    from onewhole.presses.district.engine import engine  # noqa: PLC0415
    from onewhole.presses.district.page_rows import pages_of  # noqa: PLC0415
    from onewhole.presses.district.page_work import PageToFind, page_found  # noqa: PLC0415
    from onewhole.presses.district.pupils_back import PupilsBack, keep_pages, write_back  # noqa: PLC0415
    from onewhole.presses.district.tallies import Tallies, tally  # noqa: PLC0415

    files = counting.paper_files(folders)
    goal = made(goal, private=True).resolve()
    counts, work = made(goal / COUNTS, private=True), made(goal / WORK, private=True)
    took = _Clock()
    with engine(wishes.workers, wishes.scheduler) as by:
        took.lap("start")
        kept, asked = counting.to_count(files, counts)
        counted = sorted([*kept, *by.of_all(counting.count, asked)])
        pages = pages_of(counted)
        took.lap("count")
        tallies, shares, rows = Tallies(), dict[str, tuple[Fraction, int]](), dict[str, str]()
        for at, problems in enumerate(pages):
            found = page_found(counted, PageToFind(at, problems, work), by, took.lap)
            _add(shares, found.rows.asked.keys, found.pupils, int(found.rows.papers.sum()))
            tally(found, tallies, wishes.least)
            rows[problems] = str(work / f"rows-{at}.parquet")
            del found
            took.lap("tables")
        if wishes.pupils:
            keep_pages(rows, work)
            goals = {name: str(goal / PUPILS / _beside(name, folders)) for name in files}
            back = [
                PupilsBack({name: goals[name] for name in some}, str(work))
                for some in counting.together(files)
            ]
            by.of_all(write_back, back)
            took.lap("pupils")
    told = DistrictFound(
        tallies.papers,
        len(pages),
        len(tallies.schools),
        wishes.least,
        difficulty(kinds := shown_table(tallies.kinds, wishes.least)),
        kinds,
        idea_table(tallies.ideas, wishes.least),
        idea_table(tallies.places, wishes.least),
        tuple(tallies.problems),
    )
    write(goal / PRIOR_FILE, prior_text(district_prior(shares, wishes.least)).encode())
    put_report(told, goal)
    shutil.rmtree(work)
    took.lap("report")
    return DistrictRun(len(files), sum(len(one.files) for one in asked), told, took.seconds)


class _Clock:
    """How long the parts of a run take together, in seconds, by name."""

    def __init__(self) -> None:
        self.seconds: dict[str, float] = {}
        self._last = perf_counter()

    def lap(self, name: str) -> None:
        """Say that a part is done."""
        now = perf_counter()
        self.seconds[name] = self.seconds.get(name, 0.0) + now - self._last
        self._last = now


def _add(
    shares: dict[str, tuple[Fraction, int]],
    keys: tuple[str, ...],
    pupils: NDArray[np.float64],
    papers: int,
) -> None:
    """Add what a page shows of each hypothesis: how many have it, of how many of whom it could be told."""
    here: dict[str, Fraction] = {}
    for key, count in zip(keys, pupils.tolist(), strict=True):
        here[key] = here.get(key, Fraction(0)) + Fraction(count)
    for key, count in here.items():
        have, of = shares.get(key, (Fraction(0), 0))
        shares[key] = have + count, of + papers


def _beside(name: str, folders: list[Path]) -> Path:
    """Return the path of a file within the folder that was named, after that folder's name."""
    path = Path(name)
    for folder in (one.resolve() for one in folders):
        if path.is_relative_to(folder):
            return Path(folder.name) / path.relative_to(folder)
    raise AssertionError(name)
