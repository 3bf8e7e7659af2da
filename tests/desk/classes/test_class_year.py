"""The year of a class: kept, planned, and its next night composed from what the class showed."""

from collections.abc import Iterator
from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import NotThere, Store, night_pages, open_book, set_night, start_room
from onewhole.desk.classes.class_year import (
    class_year,
    class_year_ics,
    class_year_pdf,
    composed_for_class,
    keep_class_year,
    usual_year,
)
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.sheets.years.year_wishes import YearError, read_year
from onewhole.store.deleting import delete_class

TUESDAY = date(2026, 9, 8)
NOW = datetime(2026, 9, 8, 16, tzinfo=UTC)
TYPED = "grade: 4\nfirst day: 2026-09-08\nmove: 18 to 1\n"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two pupils with a year that begins with equal fractions."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    keep_class_year(made, 1, TYPED, NOW)
    yield made
    made.close()


def test_a_kept_year_is_planned(book: Store) -> None:
    """The first night is tonight, on the topic that was moved to the first week."""
    year = class_year(book, 1, TUESDAY)
    assert year is not None
    assert year.typed == TYPED
    assert year.tonight is not None
    assert (year.tonight.day, year.tonight.of and year.tonight.of.week) == (TUESDAY, 18)
    assert "<svg" in year.picture


def test_a_night_that_has_its_page_is_passed_over(book: Store) -> None:
    """What is set already is not proposed; after the last night nothing is."""
    set_night(book, 1, "1. 52 - 27", TUESDAY, NOW)
    year = class_year(book, 1, TUESDAY)
    assert year is not None
    assert year.tonight is not None
    assert year.tonight.day == date(2026, 9, 9)
    over = class_year(book, 1, date(2027, 7, 1))
    assert over is not None
    assert over.tonight is None


def test_tonight_is_composed_with_what_was_set_before(book: Store) -> None:
    """Under the class's own settings; no problem of an earlier night comes again."""
    first = composed_for_class(book, 1, TUESDAY, TUESDAY)
    assert first.sheet.header.title == "Week 1: equal fractions"
    own = first.typed.replace("title: ", "class: Room 12\npaper: a4\ntitle: ")
    set_night(book, 1, own, TUESDAY, NOW)
    second = composed_for_class(book, 1, date(2026, 9, 9), date(2026, 9, 9))
    assert (second.sheet.header.class_name, second.sheet.header.paper.value) == ("Room 12", "a4")
    (kept,) = night_pages(book, 1)
    before = {one.typed for one in kept.sheet.problems}
    assert not before & {one.typed for one in second.sheet.problems}
    assert second.minutes <= 20


def test_a_year_is_kept_only_where_it_can_be_planned(book: Store) -> None:
    """A mistake is told and nothing changes; so is another window's year."""
    with pytest.raises(YearError):
        keep_class_year(book, 1, "first day: never", NOW)
    with pytest.raises(ChangedMeanwhile):
        keep_class_year(book, 1, "first day: 2026-08-24", NOW, saw="grade: 5")
    year = class_year(book, 1, TUESDAY)
    assert year is not None
    assert year.typed == TYPED
    with pytest.raises(NotThere):
        keep_class_year(book, 7, TYPED, NOW)


def test_what_is_not_there_is_refused(book: Store) -> None:
    """A day without a night, and a class without a year; a class that is deleted takes its year along."""
    with pytest.raises(NotThere, match="no night on this day"):
        composed_for_class(book, 1, date(2026, 9, 12), TUESDAY)
    start_room(book, "Room 13", 1, NOW)
    assert class_year(book, 2, TUESDAY) is None
    with pytest.raises(NotThere, match="No year is kept"):
        composed_for_class(book, 2, TUESDAY, TUESDAY)
    delete_class(book, 1)
    with pytest.raises(NotThere):
        class_year(book, 1, TUESDAY)


def test_a_year_to_begin_with_can_be_planned(book: Store) -> None:
    """From June on it is the next one."""
    assert read_year(usual_year(date(2026, 6, 1))).first_day == date(2026, 9, 1)
    assert read_year(usual_year(date(2027, 2, 1))).first_day == date(2026, 9, 1)


def test_a_year_is_printed_and_saved(book: Store) -> None:
    """A tagged PDF, and a calendar."""
    made = class_year_pdf(book, 1, NOW)
    assert made.startswith(b"%PDF")
    assert b"/MarkInfo" in made
    assert class_year_ics(book, 1, NOW).startswith(b"BEGIN:VCALENDAR\r\n")
