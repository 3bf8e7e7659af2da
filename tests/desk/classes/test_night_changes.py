"""A night renamed, moved, its page set again: what was written stays with it."""

from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import (
    NotThere,
    Store,
    night_page,
    night_pages,
    open_book,
    set_night,
    start_room,
)
from onewhole.desk.classes.night_changes import move_night, rename_night, set_again
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.classes.week import week
from onewhole.errors import InputError
from onewhole.store.answers import KeptAnswer, answers_of
from tests.kit.kept import DAY, NOW, keep_answer

LATER = DAY + timedelta(days=3)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class with a night and an answer."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 1, NOW)
    set_night(made, 1, "title: Kite tails\n\n1. 52 - 27", DAY, NOW)
    keep_answer(made, KeptAnswer(1, "K01", "1", "25", NOW, "teacher"))
    yield made
    made.close()


def test_a_night_has_a_name_of_its_own_or_that_of_its_page(book: Store) -> None:
    """On the Week, and where it is looked for; typed like the page's, or not at all, it is the page's."""
    rename_night(book, 1, 1, "  Windy day ", saw="")
    assert (night_page(book, 1, 1).name, night_page(book, 1, 1).page_name) == ("Windy day", "Kite tails")
    assert [night.name for night in week(book, 1, DAY, sought="windy").found] == ["Windy day"]
    with pytest.raises(ChangedMeanwhile, match="“Windy day” since"):
        rename_night(book, 1, 1, "Calm", saw="")
    for typed in ("Kite tails", "", "  "):
        rename_night(book, 1, 1, "Windy day")
        rename_night(book, 1, 1, typed, saw="Windy day")
        assert night_page(book, 1, 1).night.name is None
    for bad in ("a\x07b", "W" * 81):
        with pytest.raises(InputError):
            rename_night(book, 1, 1, bad)
    with pytest.raises(NotThere):
        rename_night(book, 1, 9, "Calm")


def test_a_night_moves_with_what_was_written(book: Store) -> None:
    """Its answers stay; a day on which the page goes home already is refused, and a stale form is told."""
    move_night(book, 1, 1, LATER, saw=DAY.isoformat())
    assert night_page(book, 1, 1).night.day == LATER
    assert [one.text for one in answers_of(book, 1)] == ["25"]
    with pytest.raises(ChangedMeanwhile, match="The day is"):
        move_night(book, 1, 1, date(2026, 10, 1), saw=DAY.isoformat())
    assert set_again(book, 1, 1, DAY) == 2
    with pytest.raises(InputError, match="goes home on Friday, September 4 already"):
        move_night(book, 1, 2, LATER)
    move_night(book, 1, 1, LATER, saw=LATER.isoformat())


def test_the_same_page_goes_home_again_without_the_answers(book: Store) -> None:
    """A night of its own, under the same name; not twice on one day."""
    rename_night(book, 1, 1, "Windy day")
    made = set_again(book, 1, 1, LATER)
    assert [(page.night.number, page.name, page.kept.number) for page in night_pages(book, 1)] == [
        (1, "Windy day", 1),
        (made, "Windy day", 1),
    ]
    assert answers_of(book, made) == ()
    with pytest.raises(InputError, match="already"):
        set_again(book, 1, 1, LATER)
