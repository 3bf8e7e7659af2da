"""A class file with a night of the kite club whose answers are to be typed."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime
from pathlib import Path

from onewhole.desk.classes.class_records import Classroom, NightPage, Store, open_book, set_night, start_room

NOW = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)
SHEET = "title: Kite tails\n\n1. 9 5/8 - 4 6/8\n2. 7 1/6 - 3 5/6\n3. 3/4 ? 2/3\n4. 5 ft 2 in - 2 ft 7 in\n"


@contextmanager
def book_with_night(
    folder: Path, pupils: int = 3, typed: str = SHEET
) -> Iterator[tuple[Store, Classroom, NightPage]]:
    """Open a new file with Room 12 and one night."""
    book = open_book(folder / "room12.class")
    room = start_room(book, "Room 12", pupils, NOW)
    yield book, room, set_night(book, room.number, typed, date(2026, 9, 1), NOW)
    book.close()
