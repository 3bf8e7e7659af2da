"""`onewhole scores`: right of tried by pupil and night, who owes a paper, and tables for a grade book."""

import sys
from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Annotated

import typer
from rich.console import Console, RenderableType
from rich.table import Table
from rich.text import Text

from onewhole.cli.clock import now
from onewhole.cli.days import day_in
from onewhole.cli.screen import beneath, plain_line
from onewhole.desk.classes import score_tables
from onewhole.desk.classes.class_records import Store, room
from onewhole.desk.classes.score_days import score_days
from onewhole.desk.classes.scores import Score, Scores, night_scores, owed_in, scores
from onewhole.desk.keep import way_back

ClassFile = Annotated[Path, typer.Argument(metavar="FILE", help="The file of the class.")]
Room = Annotated[int, typer.Option("--room", metavar="NUMBER", help="The class in the file.")]
From = Annotated[str, typer.Option("--from", metavar="DAY", help="The first day, as 2026-09-01.")]
To = Annotated[str, typer.Option("--to", metavar="DAY", help="The last day; if not given, today.")]
Night = Annotated[
    int | None,
    typer.Option("--night", metavar="NUMBER", help="One night, by the number that stands before it."),
]
Csv = Annotated[Path | None, typer.Option("--csv", metavar="PATH", help="Write a table as CSV, too.")]
Xlsx = Annotated[Path | None, typer.Option("--xlsx", metavar="PATH", help="Write a workbook, too.")]


def run(
    file: ClassFile,
    number: Room = 1,
    first: From = "",
    last: To = "",
    night: Night = None,
    csv: Csv = None,
    xlsx: Xlsx = None,
) -> int:
    """Print the scores of some days, or of one night, and write them as tables."""
    book = way_back.open_kept(file)
    try:
        if night is None:
            days = _days(first, last)
            parts = tuple(_several(scores(book, number, *days)))
            text = score_tables.range_csv(book, number, *days) if csv else ""
            made = score_tables.range_xlsx(book, number, *days, now()) if xlsx else b""
        else:
            parts = tuple(_one(book, number, night))
            text = score_tables.night_csv(book, number, night) if csv else ""
            made = score_tables.night_xlsx(book, number, night, now()) if xlsx else b""
    finally:
        book.close()
    if csv:
        score_tables.put_table(csv, text)
    if xlsx:
        score_tables.put_table(xlsx, made)
    console = Console(highlight=False, file=beneath(sys.stdout))
    for part in parts:
        console.print(part)
    return 0


def _days(first: str, last: str) -> tuple[date, date]:
    today = now().astimezone().date()
    return score_days(day_in(first) if first else None, day_in(last) if last else None, today)


def _several(found: Scores) -> Iterator[RenderableType]:
    if not found.nights:
        yield "No page was set in these days."
        return
    for night in found.nights:
        yield _text(f"{night.page.night.number}  {score_tables.night_called(night.page)}")
    table = Table(box=None, pad_edge=False, padding=(0, 2, 0, 0))
    table.add_column("pupil")
    for night in found.nights:
        table.add_column(str(night.page.night.number))
    table.add_column("together")
    for pupil in found.pupils:
        cells = [_cell(night.of.get(pupil.code)) for night in found.nights]
        right, tried = found.total(pupil.code)
        table.add_row(
            *map(_text, (found.room.shown(pupil.code), *cells, f"{right} of {tried}" if tried else ""))
        )
    yield table
    yield ""
    for one in owed_in(found, now().astimezone().date()):
        nights = ", ".join(f"{page.night.number}" for page in one.nights)
        yield _text(f"Still to come from {one.shown}: {nights}")


def _one(book: Store, number: int, night: int) -> Iterator[RenderableType]:
    found, here = night_scores(book, number, night), room(book, number)
    yield _text(f"{night}  {score_tables.night_called(found.page)}")
    for code, score in found.of.items():
        yield _text(f"{here.shown(code)}  {_cell(score)}")


def _cell(score: Score | None) -> str:
    if score is None:
        return "-"
    paper = score_tables.paper_called(score)
    return " ".join(part for part in (f"{score.right} of {score.tried}" * score.wrote, paper) if part)


def _text(said: str) -> Text:
    return Text(plain_line(said))
