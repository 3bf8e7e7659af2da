"""A small class with nights in its file: the same answers for every test of what is told of them."""

from datetime import UTC, date, datetime, timedelta

from onewhole.desk.classes.class_records import Store, set_night, start_room
from onewhole.store.answers import KeptAnswer, keep_answers

NOW = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)
DAY = date(2026, 9, 1)
TYPED = "title: Kite tails {}\n\n1. 9 5/8 - 4 6/8\n2. 8 1/6 - 3 5/6\n3. 6 1/4 - 3 2/4\n"
#: K01 takes the smaller number of pieces from the larger, K03 twice; K04 has a slip and a cell that cannot
#: be read; K05 is away.
ROWS = {
    "K01": ("5 1/8", "5 4/6", "3 1/4"),
    "K02": ("4 7/8", "4 2/6", "2 3/4"),
    "K03": ("5 1/8", "5 4/6", "2 3/4"),
    "K04": ("4 6/8", "x", "2 3/4"),
}


def small_club(book: Store, nights: int) -> None:
    """Fill an empty file: five pupils, so many nights; the pages are called after even and odd nights."""
    start_room(book, "Room 12", 5, NOW)
    for at in range(nights):
        page = set_night(book, 1, TYPED.format(at % 2), DAY + timedelta(days=at), NOW)
        keep_answers(
            book,
            [
                KeptAnswer(page.night.number, code, label, text, NOW, "teacher")
                for code, row in ROWS.items()
                for label, text in zip(page.labels, row, strict=True)
            ],
        )
