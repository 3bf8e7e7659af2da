"""A class's file as the doors see it."""

from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import (
    NotThere,
    Store,
    night_page,
    night_pages,
    open_book,
    room,
    rooms,
    set_night,
    standing_answers,
    start_room,
)
from onewhole.desk.marking.mark import mark_sheet
from onewhole.errors import InputError
from onewhole.marking.reading.class_answers import read_texts
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.answers import KeptAnswer
from tests.kit.kept import keep_answer

NOW = datetime(2026, 9, 1, 18, 30, tzinfo=UTC)
DAY = date(2026, 9, 1)
TYPED = "title: Kite tails\n\n1. 5 1/8 - 2 5/8\n2. 52 - 27\n"


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """An empty file."""
    return open_book(tmp_path / "room12.class")


def test_a_night_comes_back_with_the_page_that_went_home(book: Store) -> None:
    """Sheet, labels and name are those that were typed, also after the sheet is read again."""
    made = start_room(book, "  Room 12 ", 2, NOW)
    page = set_night(book, made.number, TYPED, DAY, NOW)
    assert night_page(book, made.number, page.night.number) == page
    assert night_pages(book, made.number) == (page,)
    assert (page.labels, page.name, rooms(book)) == (("1", "2"), "Kite tails", (made,))


def test_a_night_is_not_found_under_another_class(book: Store) -> None:
    """The number of a night opens it only under its own class."""
    one, other = (start_room(book, name, 1, NOW) for name in ("Room 12", "Room 13"))
    page = set_night(book, one.number, TYPED, DAY, NOW)
    with pytest.raises(NotThere):
        night_page(book, other.number, page.night.number)
    with pytest.raises(NotThere):
        room(book, 99)


def test_answers_are_marked_as_they_were_typed(book: Store) -> None:
    """What looks like a formula, has a comma or a line break stays in its cell."""
    made = start_room(book, "Room 12", 2, NOW)
    page = set_night(book, made.number, TYPED, DAY, NOW)
    for text, label in (('=1+"2",\n3', "1"), ("25", "2")):
        keep_answer(book, KeptAnswer(page.night.number, "K02", label, text, NOW, "teacher"))
    (first, second) = mark_sheet(
        WorkedSheet(page.sheet), read_texts(standing_answers(book, page, made), page.sheet.problems)
    ).marks.pupils
    assert [mark.verdict.value for mark in first.marks] == ["blank", "blank"]
    assert [mark.verdict.value for mark in second.marks] == ["unreadable", "right"]


@pytest.mark.parametrize(
    ("name", "pupils"), [("", 3), ("x" * 81, 3), ("a\0b", 3), ("Room", 61), ("Room", -1)]
)
def test_a_class_that_cannot_be_is_refused(book: Store, name: str, pupils: int) -> None:
    """Nothing is kept of it."""
    with pytest.raises(InputError):
        start_room(book, name, pupils, NOW)
    assert rooms(book) == ()
