"""The plan of the weeks ahead."""

from collections import Counter
from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from itertools import pairwise
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import Store, open_book, set_night, start_room
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.classes.term_plan import A_NIGHT, AHEAD, TermPlan
from onewhole.desk.classes.week import week
from onewhole.store.answers import KeptAnswer
from tests.kit.kept import keep_answer

MONDAY = date(2026, 11, 23)
NOW = datetime(2026, 11, 23, 16, tzinfo=UTC)
EVERYTHING = "1. 52 - 27\n2. 2/8 + 3/8\n3. 7 5/6 - 3 2/6\n4. 7 2/6 - 3 5/6\n5. 4 - 1 3/8\n6. 4 x 1/3"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two pupils."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    yield made
    made.close()


def _plan(book: Store, today: date = MONDAY) -> TermPlan:
    return week(book, 1, today).plan


def _nights(plan: TermPlan) -> list[date]:
    return sorted(day for row in plan.rows for day in row.row.planned)


def test_a_class_without_a_night_has_an_empty_plan(book: Store) -> None:
    """No row and no picture."""
    assert (_plan(book).rows, _plan(book).picture) == ((), "")


def test_every_skill_is_planned_on_free_school_nights_two_a_night(book: Store) -> None:
    """Six skills on one page: no day that has a page, no weekday but the usual, two a night at most."""
    set_night(book, 1, EVERYTHING, MONDAY - timedelta(weeks=6), NOW)
    set_night(book, 1, "1. 9 - 4", MONDAY + timedelta(days=1), NOW)
    plan = _plan(book)
    nights = _nights(plan)
    assert len(plan.rows) == 7
    assert all(row.row.planned for row in plan.rows)
    assert max(Counter(nights).values()) == A_NIGHT
    assert MONDAY + timedelta(days=1) not in nights
    assert {day.weekday() for day in nights} <= {0, 1, 2, 3}
    assert MONDAY <= nights[0] <= nights[-1] < MONDAY + timedelta(weeks=AHEAD)


def test_the_weekdays_are_those_of_the_class(book: Store) -> None:
    """A class with pages on Wednesdays and Fridays is planned for these."""
    for back in range(1, 5):
        for day in (2, 4):
            set_night(book, 1, EVERYTHING, MONDAY + timedelta(days=day, weeks=-back), NOW)
    assert {day.weekday() for day in _nights(_plan(book))} == {2, 4}


def test_each_return_comes_later_than_the_one_before(book: Store) -> None:
    """Practised as planned, a skill lasts longer each time."""
    set_night(book, 1, "1. 52 - 27", MONDAY - timedelta(days=1), NOW)
    (row,) = _plan(book).rows
    days = [MONDAY - timedelta(days=1), *row.row.planned]
    pauses = [(after - before).days for before, after in pairwise(days)]
    assert len(pauses) > 1
    assert all(later >= sooner for sooner, later in pairwise(pauses))


def test_answers_change_the_plan(book: Store) -> None:
    """Wrong in every week against right in every week: more returns are planned."""
    start_room(book, "Room 13", 2, NOW)
    planned = []
    for room_number, wrote in ((1, "25"), (2, "1")):
        for back in range(6, 0, -1):
            page = set_night(book, room_number, "1. 52 - 27", MONDAY - timedelta(weeks=back), NOW)
            for code in ("K01", "K02"):
                keep_answer(book, KeptAnswer(page.night.number, code, "1", wrote, NOW, "teacher"))
        mark_missing(book, room_number, lambda _done, _of: None)
        (row,) = week(book, room_number, MONDAY).plan.rows
        planned.append(row.row.planned)
    kept, lost = planned
    assert len(lost) > len(kept)
