"""A grade book and a calendar: by code, no zero that nobody gave, no formula; the calendar names nobody."""

import csv
from datetime import UTC, date, datetime
from io import StringIO
from pathlib import Path

import pytest

from onewhole.desk.classes.class_list import new_class
from onewhole.desk.classes.class_records import open_book, set_night
from onewhole.desk.classes.papers import keep_papers
from onewhole.desk.exchange.due_calendar import due_ics
from onewhole.desk.exchange.grade_book import grade_book_csv
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.opening import Store

WHEN = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)
DAYS = (date(2026, 9, 1), date(2026, 9, 2))


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """A class of three: one wrote, one is excused, one owes; a second night has a title like a formula."""
    kept = open_book(tmp_path / "room12.class")
    new_class(kept, "Room 12", 0, ("Ada", "Bo", "Cy"), WHEN)
    first = set_night(kept, 1, "title: Kites\n1. 5 1/8 - 2 5/8\n2. 3/4 - 1/4", DAYS[0], WHEN).night
    set_night(kept, 1, 'title: =cmd "a", b\n1. 52 - 27', DAYS[1], WHEN)
    keep_answers(kept, [KeptAnswer(first.number, "K01", "1", "2 1/2", WHEN, "teacher")])
    keep_papers(kept, 1, first.number, {"K02": "excused"}, {}, now=WHEN, by="teacher")
    return kept


def test_a_line_a_pupil_and_page(book: Store) -> None:
    """Right of possible; blank for excused and for what is still to come."""
    rows = list(csv.reader(StringIO(grade_book_csv(book, 1, *DAYS))))
    assert rows[:4] == [
        ["identifier", "title", "points possible", "score"],
        ["K01", "2026-09-01 Kites", "2", "1"],
        ["K02", "2026-09-01 Kites", "2", ""],
        ["K03", "2026-09-01 Kites", "2", ""],
    ]
    assert {row[1] for row in rows[4:]} == {'2026-09-02 =cmd "a", b'}
    assert not any(name in cell for row in rows for cell in row for name in ("Ada", "Bo", "Cy"))
    book.close()


def test_a_calendar_names_nobody(book: Store) -> None:
    """An event a night of the days that are asked for."""
    made = due_ics(book, 1, DAYS[0], DAYS[0], WHEN).decode()
    assert made.count("BEGIN:VEVENT") == 1
    assert "DTSTART;VALUE=DATE:20260901\r\nDTEND;VALUE=DATE:20260902\r\nSUMMARY:Kites\r\n" in made
    assert "K01" not in made
    assert due_ics(book, 1, date.min, date.max, WHEN).count(b"BEGIN:VEVENT") == 2
    book.close()
