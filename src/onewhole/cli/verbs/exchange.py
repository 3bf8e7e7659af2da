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
from onewhole.desk.classes.class_records import Store, open_book
from onewhole.desk.classes.score_days import score_days
from onewhole.desk.classes.score_tables import put_table
from onewhole.desk.exchange import (
    blank_workbook,
    class_lists,
    due_calendar,
    grade_book,
    question_package,
    results_package,
)
from onewhole.desk.exchange.exchanged_files import handed_in, put_file
from onewhole.desk.keep import way_back
from onewhole.desk.page.sheets import sheet_in
from onewhole.errors import InputError


class ExchangeAct(StrEnum):
    """What is made or read."""

    WORKBOOK = "workbook"
    GRADES = "grades"
    DUE = "due"
    QUESTIONS = "questions"
    PAGE = "page"
    CLASSES = "classes"
    RESULTS = "results"


Do = Annotated[
    ExchangeAct,
    typer.Argument(
        metavar="DO",
        help="workbook: an XLSX file to type the answers to a sheet into; grades: a table for a grade book, "
        "as CSV; due: a calendar of what was set, as ICS; questions: a sheet as QTI 3.0 items in a ZIP; "
        "page: a sheet out of such a ZIP; classes: a list of classes or names, into the class's file; "
        "results: a OneRoster 1.2 package of scores.",
    ),
]
File = Annotated[
    Path,
    typer.Argument(
        metavar="FILE",
        help="workbook, questions: the typed sheet; grades, due, results: the class's file; page: the ZIP; "
        "classes: OneRoster 1.2 CSV, or names in XLSX, ODS or CSV.",
    ),
]
To = Annotated[
    Path, typer.Option("--to", metavar="PATH", help="The file that is written; classes: the class's file.")
]
Roster = Annotated[
    Path | None,
    typer.Option("--roster", metavar="ZIP", help="results: the class list of the school, OneRoster 1.2 CSV."),
]
Called = Annotated[
    str,
    typer.Option(
        "--called", metavar="NAME", help="classes, results: the class of the list; a list's own name."
    ),
]
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
    roster: Roster = None,
    called: Called = "",
) -> int:
    """Write a file for another program, or read one."""
    match do:
        case ExchangeAct.WORKBOOK:
            put_table(to, _workbook(file, book, number, pupils))
        case ExchangeAct.GRADES:
            with _opened(file) as kept:
                table = grade_book.grade_book_csv(kept, number or 1, *_days(first, last))
            put_table(to, table)
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
        case ExchangeAct.CLASSES:
            _add_classes(file, to, called)
        case ExchangeAct.RESULTS:
            if roster is None:
                raise InputError("--roster is missing", remedy="Name the class list of the school.")
            listed = handed_in(roster, class_lists.LARGEST), str(roster)
            with _opened(file) as kept:
                made = results_package.results_package(kept, number or 1, _days(first, last), listed, called)
            put_table(to, made)
            print(grade_book.CAUTION, file=sys.stderr)
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


def _add_classes(file: Path, to: Path, called: str) -> None:
    """Add the classes of a list to the file of a class, which is made where there is none."""
    classes = class_lists.classes_listed(handed_in(file, class_lists.LARGEST), str(file), called)
    class_lists.check_classes(classes)
    book = open_book(to)
    try:
        added = class_lists.add_classes(book, classes, now())
    finally:
        book.close()
    for one in added:
        print(plain_line(f"{one.number}  {one.name}: {len(one.pupils)} pupils"))


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
