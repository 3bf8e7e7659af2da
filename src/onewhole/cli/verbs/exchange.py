"""`onewhole exchange`: files for other programs, and from them."""

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date
from enum import StrEnum
from pathlib import Path
from typing import Annotated, assert_never

import typer

from onewhole.cli.clock import now
from onewhole.cli.days import day_in
from onewhole.cli.screen import plain_line
from onewhole.desk.classes.class_records import Store
from onewhole.desk.classes.score_days import score_days
from onewhole.desk.classes.score_tables import put_table
from onewhole.desk.exchange import blank_workbook, due_calendar, grade_book, question_package
from onewhole.desk.exchange.exchanged_files import handed_in, put_file
from onewhole.desk.keep import way_back
from onewhole.desk.page.sheets import sheet_in


class ExchangeAct(StrEnum):
    """What is made or read."""

    WORKBOOK = "workbook"
    GRADES = "grades"
    DUE = "due"
    QUESTIONS = "questions"
    PAGE = "page"


Do = Annotated[
    ExchangeAct,
    typer.Argument(
        metavar="DO",
        help="workbook: an XLSX file to type the answers to a sheet into; grades: a table for a grade book, "
        "as CSV; due: a calendar of what was set, as ICS; questions: a sheet as QTI 3.0 items in a ZIP; "
        "page: a sheet out of such a ZIP.",
    ),
]
File = Annotated[
    Path,
    typer.Argument(
        metavar="FILE",
        help="workbook, questions: the typed sheet; grades, due: the class's file; page: the ZIP.",
    ),
]
To = Annotated[Path, typer.Option("--to", metavar="PATH", help="The file that is written.")]
Book = Annotated[
    Path | None,
    typer.Option("--class", metavar="FILE", help="workbook: the file with the classes, a sheet for each."),
]
Room = Annotated[
    int | None, typer.Option("--room", metavar="NUMBER", help="The class in the file; workbook: all of them.")
]
Pupils = Annotated[
    int, typer.Option("--pupils", metavar="COUNT", help="workbook: so many codes, where no class is named.")
]
From = Annotated[
    str,
    typer.Option(
        "--from", metavar="DAY", help="The first day; if not given, grades: two weeks ago, due: of all."
    ),
]
Until = Annotated[
    str,
    typer.Option("--until", metavar="DAY", help="The last day; if not given, grades: today, due: of all."),
]


def run(
    do: Do,
    file: File,
    to: To,
    book: Book = None,
    number: Room = None,
    pupils: Pupils = 24,
    first: From = "",
    last: Until = "",
) -> int:
    """Write a file for another program."""
    match do:
        case ExchangeAct.WORKBOOK:
            put_table(to, _workbook(file, book, number, pupils))
        case ExchangeAct.GRADES:
            with _opened(file) as kept:
                made = grade_book.grade_book_csv(kept, number or 1, *_days(first, last))
            put_table(to, made)
            print(grade_book.CAUTION, file=sys.stderr)
        case ExchangeAct.DUE:
            with _opened(file) as kept:
                bounds = (day_in(first) if first else date.min, day_in(last) if last else date.max)
                calendar = due_calendar.due_ics(kept, number or 1, *bounds, now())
            put_table(to, calendar)
        case ExchangeAct.QUESTIONS:
            package, left_out = question_package.questions_of_page(sheet_in(file))
            put_file(to, package)
            if left_out:
                print(f"Left out, for they need their picture: {', '.join(left_out)}", file=sys.stderr)
        case ExchangeAct.PAGE:
            held = handed_in(file, question_package.LARGEST)
            put_file(to, question_package.page_of_questions(held, str(file)).encode())
        case _:
            assert_never(do)
    print(plain_line(str(to)))
    return 0


def _workbook(sheet: Path, book: Path | None, number: int | None, pupils: int) -> bytes:
    read = sheet_in(sheet)
    if book is None:
        return blank_workbook.workbook_of_sheet(read, [blank_workbook.class_of(pupils)], now())
    with _opened(book) as kept:
        classes = blank_workbook.classes_in(kept, number)
    return blank_workbook.workbook_of_sheet(read, classes, now())


@contextmanager
def _opened(file: Path) -> Iterator[Store]:
    book = way_back.open_kept(file)
    try:
        yield book
    finally:
        book.close()


def _days(first: str, last: str) -> tuple[date, date]:
    today = now().astimezone().date()
    return score_days(day_in(first) if first else None, day_in(last) if last else None, today)
