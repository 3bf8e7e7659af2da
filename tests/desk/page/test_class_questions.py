"""What the last night of a class leaves open."""

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import Store, open_book, set_night, start_room
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.page.class_questions import last_answered, questions_left
from onewhole.errors import InputError
from tests.kit.club import NOW, small_club


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """An empty file."""
    made = open_book(tmp_path / "room12.class")
    yield made
    made.close()


def test_nothing_is_open_without_answers(book: Store) -> None:
    """A night was set, and nobody wrote yet."""
    start_room(book, "Room 12", 2, NOW)
    set_night(book, 1, "1. 52 - 27", date(2026, 9, 1), NOW)
    assert (last_answered(book, 1), questions_left(book, 1)) == (None, ())


def test_the_last_night_with_answers_is_asked_about(book: Store) -> None:
    """A night without any comes after it. The weights are thousandths of all the doubt."""
    small_club(book, 2)
    set_night(book, 1, "1. 52 - 27", date(2026, 9, 9), NOW)
    assert last_answered(book, 1) == 2
    asked = questions_left(book, 1)
    assert asked
    assert sum(one.weight for one in asked) <= 1000


def test_nights_that_are_not_read_yet_are_told(book: Store) -> None:
    """Many of them would take long; once they are read, there is an answer."""
    small_club(book, 5)
    with pytest.raises(InputError, match="earlier nights are not read yet"):
        questions_left(book, 1)
    mark_missing(book, 1, lambda *_: None)
    assert questions_left(book, 1)
