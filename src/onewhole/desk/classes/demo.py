"""The demo: Room 12's kite club, an invented class with three weeks of nights, in a file of its own."""

import csv
from datetime import date, datetime, time, timedelta
from pathlib import Path

from onewhole.desk.classes.class_records import Classroom, NightPage, open_book, rooms, set_night, start_room
from onewhole.desk.keep.backups import remove_kept
from onewhole.presses.texts import read_text
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.classes import name_pupil
from onewhole.store.opening import Store
from onewhole.store.refusals import StoreRefused
from onewhole.store.sheets import newest_sheets
from onewhole.store.steps import NightStep, keep_step

#: What the class is called, and who is said to have written its answers.
NAME = "Room 12, the kite club"
BY = "demo"
#: Pages and answers, made by `python -m tools.kite_club`.
_FOLDER = Path(__file__).parent / "kite_club"
#: How many school days before today each night was; the last page goes home today.
_SCHOOL_DAYS_AGO = (14, 12, 11, 9, 7, 6, 4, 2, 1, 0)
#: A week from Monday on has so many school days.
_SCHOOL_WEEK = 5
#: Invented names, after kites and what flies beside them: K01, K02 and so on.
NICKNAMES = (
    "Delta", "Sled", "Diamond", "Dragon", "Box Kite", "Swallowtail", "Streamer", "Pinwheel",
    "Ribbon", "Feather", "Breeze", "Comet", "Cloud", "Zigzag", "Moth", "Thistle",
    "Whistle", "Spinner", "Lantern", "Bobbin", "Sparrow", "Puffin", "Rainbow", "Windsock",
)  # fmt: skip


def fill_demo(book: Store, now: datetime) -> Classroom:
    """Fill an empty file with the kite club: 24 pupils, nine nights handed in, one that goes home today.

    Class, names and answers are invented; each is written as by "demo". Raises StoreRefused for a file that
    already holds a class or a page: the demo is never mixed with what is real.

    >>> from datetime import UTC
    >>> from tempfile import TemporaryDirectory
    >>> from onewhole.desk.classes.class_records import night_pages, open_book
    >>> with TemporaryDirectory() as folder:
    ...     book = open_book(Path(folder) / "demo.class")
    ...     club = fill_demo(book, datetime(2026, 11, 25, 16, tzinfo=UTC))
    ...     nights = night_pages(book, club.number)
    ...     book.close()
    >>> club.shown("K05"), nights[0].night.day.isoformat(), nights[-1].night.day.isoformat()
    ('K05 Box Kite', '2026-11-05', '2026-11-25')
    """
    if rooms(book) or newest_sheets(book):
        raise StoreRefused(
            "This file already holds a class, and the demo is kept apart from it",
            where=str(book.path),
            remedy="Open the demo in a file of its own.",
        )
    made = start_room(book, NAME, len(NICKNAMES), now)
    for pupil, name in zip(made.pupils, NICKNAMES, strict=True):
        name_pupil(book, made.number, pupil.code, name)
    for place, ago in enumerate(_SCHOOL_DAYS_AGO, start=1):
        _night(book, made.number, place, ago, now)
    return rooms(book)[0]


def open_demo(path: Path, now: datetime) -> Store:
    """Open the file of the demo, filled: made where there is none, made anew where it was left half-way.

    Raises StoreRefused.
    """
    book = open_book(path)
    if rooms(book) and not is_whole(book):
        book.close()
        remove_kept(path)
        book = open_book(path)
    if not rooms(book):
        fill_demo(book, now)
    return book


def is_whole(book: Store) -> bool:
    """Say whether the demo was filled to its last page."""
    return len(newest_sheets(book)) >= len(_SCHOOL_DAYS_AGO)


def _night(book: Store, room_number: int, place: int, ago: int, now: datetime) -> None:
    day = _school_day(now.date(), ago)
    evening = min(now, datetime.combine(day, time(16, 30), now.tzinfo))
    page = set_night(book, room_number, _typed(place, day), day, evening)
    keep_step(book, page.night.number, NightStep.PRINTED, evening)
    if not ago:
        return
    morning = min(now, datetime.combine(_school_day(now.date(), ago - 1), time(8, 5), now.tzinfo))
    keep_answers(book, _answers(place, page, morning))
    for step in (
        (NightStep.SHOWN, NightStep.MARKED)
        if ago == 1
        else (NightStep.SHOWN, NightStep.MARKED, NightStep.REGROUPED)
    ):
        keep_step(book, page.night.number, step, morning)


def _school_day(today: date, ago: int) -> date:
    """Return the school day so many school days before today; on a weekend "today" is the Friday before."""
    day = today - timedelta(days=max(0, today.weekday() - _SCHOOL_WEEK + 1))
    weeks, days = divmod(ago, _SCHOOL_WEEK)
    day -= timedelta(weeks=weeks)
    return day - timedelta(days=days if days <= day.weekday() else days + 2)


def _typed(place: int, day: date) -> str:
    """Return the page of a night as it was typed, under its date."""
    return f"date: {day:%A, %B} {day.day}\n{read_text(_FOLDER / f'night{place:02}.txt')}"


def _answers(place: int, page: NightPage, written: datetime) -> tuple[KeptAnswer, ...]:
    """Return what the club handed in that night; what was left blank was never written."""
    rows = csv.DictReader(read_text(_FOLDER / f"night{place:02}.csv").splitlines())
    return tuple(
        KeptAnswer(page.night.number, row["pupil"], label, row[label], written, BY)
        for row in rows
        for label in page.labels
        if row[label]
    )
