"""The demo: what its file holds, that it is whole, and that it never meets a real class."""

from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import (
    Store,
    StoreRefused,
    night_pages,
    open_book,
    rooms,
    set_night,
    standing_answers,
    start_room,
)
from onewhole.desk.classes.demo import NAME, fill_demo, is_whole, open_demo
from onewhole.desk.marking.mark import mark_sheet
from onewhole.desk.page.sheets import sheet_in
from onewhole.findings.status import Status
from onewhole.marking.reading.class_answers import read_texts
from onewhole.sheets.worked import WorkedSheet
from onewhole.store.steps import NightStep, steps_of
from tools.kite_club import HERE, MARKED, answers

NOW = datetime(2026, 11, 25, 16, tzinfo=UTC)


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """An empty file."""
    return open_book(tmp_path / "demo.class")


def test_the_carried_answers_are_what_the_script_writes() -> None:
    """After a change of a page, a pattern or the lab: python -m tools.kite_club."""
    for night in range(1, MARKED + 1):
        carried = (HERE / f"night{night:02}.csv").read_text(encoding="utf-8")
        assert carried == answers(sheet_in(HERE / f"night{night:02}.txt"), night)


def test_three_weeks_of_nights_and_tonight(book: Store) -> None:
    """24 pupils; ten nights on school days, each a page of its own; tonight's page is not marked yet."""
    club = fill_demo(book, NOW)
    pages = night_pages(book, club.number)
    assert (len(club.pupils), len(pages), len({page.name for page in pages})) == (24, 10, 10)
    assert all(page.night.day.weekday() < 5 for page in pages)
    assert pages[-1].night.day - pages[0].night.day == timedelta(days=20)
    assert [len(row.texts) for row in standing_answers(book, pages[-1], club)] == [10] * 24
    *before, last, tonight = (steps_of(book, club.number)[page.night.number] for page in pages)
    assert all(set(steps) == set(NightStep) for steps in before)
    assert (set(last), set(tonight)) == (
        {NightStep.PRINTED, NightStep.SHOWN, NightStep.MARKED},
        {NightStep.PRINTED},
    )


def test_ideas_fade_and_some_stay(book: Store) -> None:
    """A week after wholes are first opened many answers fit a pattern; on the last night fewer do."""
    club = fill_demo(book, NOW)
    pages = night_pages(book, club.number)
    nights = [
        mark_sheet(
            WorkedSheet(page.sheet), read_texts(standing_answers(book, page, club), page.sheet.problems)
        )
        for page in (pages[4], pages[8])
    ]
    likely = [{one.pupil for one in night.findings if one.status is Status.LIKELY} for night in nights]
    assert likely[1] < likely[0]
    assert len(likely[1]) >= 4


@pytest.mark.parametrize("day", [date(2026, 11, 23) + timedelta(days=ahead) for ahead in range(7)])
def test_no_day_of_the_week_sends_a_page_home_on_a_weekend(book: Store, day: date) -> None:
    """Every day of a week: nights on school days, none after today, answers never written before the page."""
    now = datetime(day.year, day.month, day.day, 7, tzinfo=UTC)
    days = [page.night.day for page in night_pages(book, fill_demo(book, now).number)]
    assert all(one.weekday() < 5 and one <= day for one in days)
    assert sorted(set(days)) == days


@pytest.mark.parametrize("held", ["a class", "the demo", "a page"])
def test_the_demo_is_never_mixed_with_what_is_there(book: Store, held: str) -> None:
    """A file that holds anything is refused and stays as it was."""
    if held == "the demo":
        fill_demo(book, NOW)
    else:
        made = start_room(book, "Room 7", 2, NOW)
        if held == "a page":
            set_night(book, made.number, "1. 52 - 27", NOW.date(), NOW)
    before = rooms(book)
    with pytest.raises(StoreRefused, match="kept apart"):
        fill_demo(book, NOW)
    assert rooms(book) == before


def test_a_demo_left_half_way_is_made_anew_and_a_whole_one_stays(tmp_path: Path) -> None:
    """A class of the demo's name with no page is no demo; what a teacher did in a whole one stays."""
    path = tmp_path / "demo.class"
    half = open_book(path)
    start_room(half, NAME, 24, NOW)
    half.close()
    book = open_demo(path, NOW)
    assert is_whole(book)
    set_night(book, 1, "1. 52 - 27", NOW.date(), NOW)
    book.close()
    again = open_demo(path, NOW)
    assert (len(night_pages(again, 1)), len(rooms(again))) == (11, 1)
    again.close()
