"""`onewhole district`: papers of many classes put together, without names."""

from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.screen import plain_line
from onewhole.desk.district.running import PRIOR_FILE, PUPILS, DistrictWishes, run_district
from onewhole.desk.district.telling import REPORT_HTML, REPORT_PDF

Folders = Annotated[
    list[Path], typer.Argument(metavar="FOLDER...", help="Folders of `onewhole share`, one a school.")
]
To = Annotated[Path, typer.Option("--to", metavar="FOLDER", help="Where what is found is put.")]
Least = Annotated[int, typer.Option("--least", metavar="NUMBER", help="Smaller numbers are not shown.")]
Workers = Annotated[
    int,
    typer.Option("--workers", metavar="NUMBER", min=0, help="Let so many worker processes of Dask do it."),
]
Scheduler = Annotated[
    str,
    typer.Option(
        "--scheduler",
        metavar="ADDRESS",
        help="Let the workers of this Dask scheduler do it; they see the same folders.",
    ),
]
WithPupils = Annotated[
    bool, typer.Option("--pupils/--no-pupils", help="Write odds back for every pupil (hashes, no names).")
]


def run(
    folders: Folders,
    to: To = Path("district-found"),
    least: Least = 10,
    workers: Workers = 0,
    scheduler: Scheduler = "",
    pupils: WithPupils = True,
) -> int:
    """Count the papers, fit skills and ideas, and write a report, a prior file and odds for every pupil."""
    done = run_district(folders, to, DistrictWishes(least, workers, scheduler, pupils))
    found = done.found
    print(
        f"Papers: {found.papers:,}. Files: {done.files:,}, read now: {done.read:,}. Pages: {found.pages:,}."
    )
    for name in (REPORT_HTML, REPORT_PDF, PRIOR_FILE, *([PUPILS] if pupils else [])):
        print(plain_line(f"{to / name}"))
    return 0
