"""`onewhole year`: a school year planned week by week, printed, as a calendar, composed night by night."""

import sys
from datetime import date
from pathlib import Path
from typing import Annotated

import typer
from rich.console import Console
from rich.table import Table
from rich.text import Text

from onewhole.cli.clock import now
from onewhole.cli.days import day_in
from onewhole.cli.screen import beneath, plain_line
from onewhole.desk.classes import class_year, year_files
from onewhole.desk.keep import way_back

YearFile = Annotated[Path, typer.Argument(metavar="YEAR", help="The typed year: grade, first day, nights.")]
To = Annotated[
    Path | None, typer.Option("--to", metavar="FOLDER", help="Write year.pdf and year.ics into a folder.")
]
Sheets = Annotated[
    Path | None,
    typer.Option("--sheets", metavar="FOLDER", help="Compose every night and write its sheet into a folder."),
]
Keep = Annotated[
    Path | None,
    typer.Option("--keep", metavar="FILE", help="Keep it in the file of a class."),
]
Night = Annotated[
    str, typer.Option("--night", metavar="DAY", help="Compose the page of one night, as 2026-09-08.")
]
Book = Annotated[
    Path | None,
    typer.Option("--class", metavar="FILE", help="Compose it with what the class in this file showed."),
]
Room = Annotated[int, typer.Option("--room", metavar="NUMBER", help="The class in the file.")]


def run(
    year: YearFile,
    to: To = None,
    sheets: Sheets = None,
    keep: Keep = None,
    night: Night = "",
    book: Book = None,
    number: Room = 1,
) -> int:
    """Print the year, or one night's page; write what was asked for."""
    typed, plan = year_files.year_in(year)
    if keep:
        _keep(keep, typed, number)
    if night:
        day = day_in(night)
        made = _of_class(book, number, typed, day) if book else year_files.composed_night(plan, day)
        print(made.typed, end="")
        print("\n".join((f"{made.minutes} minutes.", *made.told)), file=sys.stderr)
        return 0
    if to:
        for path in year_files.put_year(plan, to, now()):
            print(path)
    if sheets:
        print(f"{len(year_files.put_sheets(plan, sheets))} pages in {sheets}")
    if not (to or sheets):
        console = Console(highlight=False, file=beneath(sys.stdout))
        console.print(Text(year_files.nights_told(plan)))
        console.print(_table(plan))
        console.print("* The pages bring earlier topics back: set your own on this topic.")
    return 0


def _keep(file: Path, typed: str, number: int) -> None:
    book = way_back.open_kept(file)
    try:
        class_year.keep_class_year(book, number, typed, now())
    finally:
        book.close()


def _of_class(file: Path, number: int, typed: str, day: date) -> year_files.NightComposed:
    book = way_back.open_kept(file)
    try:
        return class_year.composed_for_class(book, number, day, now().date(), typed=typed)
    finally:
        book.close()


def _table(plan: year_files.YearPlan) -> Table:
    table = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0))
    for head in ("week", "nights", "topic", "comes back"):
        table.add_column(head)
    for row in year_files.year_rows(plan):
        topic = f"{row.called or 'review'}{'' if row.composed else ' *'}"
        cells = (str(row.week), f"{row.days} ({len(row.nights)})", topic, row.comes_back)
        table.add_row(*(Text(plain_line(cell)) for cell in cells))
    return table
