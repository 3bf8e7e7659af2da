"""The problems with which a class comes back, for a page to be composed."""

from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes import week as weeks
from onewhole.desk.classes.class_records import open_book, set_night, start_room
from onewhole.desk.page.class_due import AT_MOST, problems_due
from onewhole.store.refusals import NotThere

TODAY = date(2026, 11, 25)
NOW = datetime(2026, 11, 25, 16, tzinfo=UTC)


def test_they_are_the_first_on_the_week_and_no_picture_is_drawn_for_them(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Two at most, each with new numbers; the Week with its plan of the term is not needed."""
    book = open_book(tmp_path / "room12.class")
    start_room(book, "Room 12", 2, NOW)
    for ago, typed in ((120, "1. 3/8 ? 5/8"), (90, "1. 2/8 + 3/8"), (100, "1. 52 - 27")):
        set_night(book, 1, typed, TODAY - timedelta(days=ago), NOW)
    told = [one.problem for one in weeks.week(book, 1, TODAY).due]

    def drawn(*_given: object) -> None:
        raise AssertionError("the plan of the term is made")

    monkeypatch.setattr(weeks, "term_plan", drawn)
    assert len(told) == 3
    assert list(problems_due(book, 1, TODAY)) == told[:AT_MOST]
    with pytest.raises(NotThere):
        problems_due(book, 7, TODAY)
    book.close()
