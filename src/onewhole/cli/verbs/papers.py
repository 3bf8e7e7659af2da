"""`onewhole papers`: who got a page, who was away, whose paper is late; who joined, left, reads braille."""

from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Annotated

import typer

from onewhole.cli.clock import now
from onewhole.cli.days import day_in
from onewhole.cli.screen import plain_line
from onewhole.desk.classes import papers as desk
from onewhole.desk.classes.class_records import Store, room
from onewhole.desk.classes.own_forms import forms_of_class, keep_forms
from onewhole.desk.classes.page_for import give_page_to, groups_now, meant
from onewhole.desk.classes.pupil_codes import codes_typed
from onewhole.desk.classes.pupil_days import days_of_class, keep_days
from onewhole.desk.keep import way_back
from onewhole.errors import InputError

#: Every word says who wrote it; the terminal knows one teacher.
BY = "teacher"

ClassFile = Annotated[Path, typer.Argument(metavar="FILE", help="The file of the class.")]
Room = Annotated[int, typer.Option("--room", metavar="NUMBER", help="The class in the file.")]
Night = Annotated[
    int | None,
    typer.Option("--night", metavar="NUMBER", help="The night, by the number that `onewhole scores` tells."),
]
Whom = Annotated[
    str,
    typer.Option("--for", metavar="WHOM", help="The page is only for a group, codes or names, or: all."),
]
Here = Annotated[str, typer.Option("--here", metavar="PUPILS", help="Their papers are as usual.")]
Absent = Annotated[str, typer.Option("--absent", metavar="PUPILS", help="They were absent.")]
Excused = Annotated[str, typer.Option("--excused", metavar="PUPILS", help="They need not do it.")]
Late = Annotated[str, typer.Option("--late", metavar="PUPILS", help="Their papers are late.")]
NoPage = Annotated[str, typer.Option("--no-page", metavar="PUPILS", help="They did not get the page.")]
Joined = Annotated[
    list[str] | None,
    typer.Option("--joined", metavar="CODE=DAY", help="A pupil joined on DAY; CODE= takes it back."),
]
Left = Annotated[
    list[str] | None,
    typer.Option("--left", metavar="CODE=DAY", help="A pupil left on DAY; CODE= takes it back."),
]

Reads = Annotated[
    list[str] | None,
    typer.Option(
        "--reads",
        metavar="CODE=FORM",
        help="A pupil reads pages in braille or in large print: K05=braille, K06=large; K05= takes it back.",
    ),
]


def run(
    file: ClassFile,
    room_number: Room = 1,
    night: Night = None,
    whom: Whom = "",
    here: Here = "",
    absent: Absent = "",
    excused: Excused = "",
    late: Late = "",
    no_page: NoPage = "",
    joined: Joined = None,
    left: Left = None,
    reads: Reads = None,
) -> int:
    """Keep what is said of a night's papers, or of the days of pupils, and print how it stands."""
    said = {"here": here, "absent": absent, "excused": excused, "late": late, "no page": no_page}
    if night is None and (whom or any(said.values())):
        raise InputError("--night is missing", remedy="Name the night: onewhole scores FILE lists them.")
    book = way_back.open_kept(file)
    try:
        with book.transaction() as within:
            _keep_days(within, room_number, joined or (), left or ())
            forms = dict(_parted(one, "form", "braille") for one in reads or ())
            keep_forms(within, room_number, forms, {})
            if night is not None:
                _keep(within, room_number, night, whom, said)
        lines = tuple(_days(book, room_number) if night is None else _papers(book, room_number, night))
    finally:
        book.close()
    for line in lines:
        print(plain_line(line))
    return 0


def _keep(book: Store, room_number: int, night: int, whom: str, said: dict[str, str]) -> None:
    of = room(book, room_number)
    if whom:
        codes = None if whom == "all" else meant(of, whom, groups_now(book, room_number))
        give_page_to(book, room_number, night, codes, now=now(), by=BY)
    words: dict[str, str] = {}
    for word, typed in said.items():
        for code in codes_typed(of, typed):
            if code in words:
                raise InputError(f"{code} is named twice", remedy="Say one thing of each pupil.")
            words[code] = word
    desk.keep_papers(book, room_number, night, words, {}, now=now(), by=BY)


def _keep_days(book: Store, room_number: int, joined: Sequence[str], left: Sequence[str]) -> None:
    days = {row.pupil.code: (row.joined, row.left) for row in days_of_class(book, room_number)}
    wanted: dict[str, tuple[str, str]] = {}
    for typed in joined:
        code, day = _code_and_day(typed)
        wanted[code] = (day, wanted.get(code, days.get(code, ("", "")))[1])
    for typed in left:
        code, day = _code_and_day(typed)
        wanted[code] = (wanted.get(code, days.get(code, ("", "")))[0], day)
    keep_days(book, room_number, wanted, {})


def _code_and_day(typed: str) -> tuple[str, str]:
    code, day = _parted(typed, "day", "2026-10-01")
    return code, day_in(day).isoformat() if day else ""


def _parted(typed: str, called: str, such_as: str) -> tuple[str, str]:
    code, sign, said = typed.partition("=")
    if not sign:
        raise InputError(
            f"“{typed[:20]}” names no {called}", remedy=f"Write it as K05={such_as}, or K05= for none."
        )
    return code, said


def _papers(book: Store, room_number: int, night: int) -> Iterator[str]:
    found = desk.papers(book, room_number, night)
    for row in found.rows:
        there = "handed in" if row.wrote else "not here yet" if row.owes else ""
        yield "  ".join(part for part in (row.shown, row.choice.value, there) if part)
    yield f"Still to come: {len(found.owed)}"


def _days(book: Store, room_number: int) -> Iterator[str]:
    forms = {row.pupil.code: row.typed for row in forms_of_class(book, room_number)}
    for row in days_of_class(book, room_number):
        reads = f"reads {forms[row.pupil.code]}" * bool(forms[row.pupil.code])
        days = [f"joined {row.joined}" * bool(row.joined), f"left {row.left}" * bool(row.left)]
        yield "  ".join(part for part in (row.pupil.code, row.pupil.name or "", *days, reads) if part)
