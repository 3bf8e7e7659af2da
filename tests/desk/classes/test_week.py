"""The week: where each night stands and what is next."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.bring_back import AHEAD_DAYS
from onewhole.desk.classes.class_records import NightPage, NotThere, Store, open_book, set_night, start_room
from onewhole.desk.classes.demo import fill_demo
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.classes.week import Next, NightStep, WeekNight, keep_step, week
from onewhole.store.answers import KeptAnswer
from tests.kit.kept import keep_answer

TODAY = date(2026, 11, 25)
NOW = datetime(2026, 11, 25, 16, tzinfo=UTC)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two pupils."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    yield made
    made.close()


def _set(book: Store, day: date, typed: str = "1. 52 - 27") -> NightPage:
    return set_night(book, 1, typed, day, NOW)


def _only(book: Store) -> WeekNight:
    (night,) = (night for one in week(book, 1, TODAY).shown for night in one.nights)
    return night


def _write(book: Store, page: NightPage, code: str) -> None:
    keep_answer(book, KeptAnswer(page.night.number, code, "1", "25", NOW, "teacher"))


def test_the_round_of_a_night_step_by_step(book: Store) -> None:
    """Print, show, mark, regroup, done; a step that is taken leads to the next one."""
    page = _set(book, TODAY)
    assert (_only(book).next, _only(book).problems, _only(book).pupils) == (Next.PRINT, 1, 2)
    for step, then in ((NightStep.PRINTED, Next.SHOW), (NightStep.SHOWN, Next.MARK)):
        keep_step(book, page.night.number, step, NOW)
        assert _only(book).next is then
    _write(book, page, "K01")
    assert (_only(book).marked, _only(book).next) == (1, Next.MARK)
    _write(book, page, "K02")
    assert (_only(book).marked, _only(book).next) == (2, Next.REGROUP)
    keep_step(book, page.night.number, NightStep.REGROUPED, NOW)
    assert _only(book).next is Next.DONE


def test_a_pupil_who_was_away_holds_nothing_up(book: Store) -> None:
    """One of two has an answer and the teacher said that marking is done: the groups are next."""
    page = _set(book, TODAY - timedelta(days=1))
    assert _only(book).next is Next.MARK
    _write(book, page, "K01")
    keep_step(book, page.night.number, NightStep.MARKED, NOW)
    assert (_only(book).next, _only(book).is_marked) == (Next.REGROUP, True)


def test_every_night_can_be_reached_and_three_weeks_are_shown(book: Store) -> None:
    """Of ten weeks the last three are shown, or the three up to another; every night is told."""
    for back in range(10):
        _set(book, TODAY - timedelta(weeks=back))
    usual, earlier = week(book, 1, TODAY), week(book, 1, TODAY, TODAY - timedelta(weeks=6))
    assert [one.monday for one in usual.shown] == [date(2026, 11, 23), date(2026, 11, 16), date(2026, 11, 9)]
    assert earlier.shown[0].monday == date(2026, 10, 12)
    assert [one.day for one in usual.every] == [TODAY - timedelta(weeks=back) for back in range(10)]
    assert (usual.every, usual.earlier) == (earlier.every, TODAY - timedelta(weeks=3))


def test_every_night_is_told_also_while_this_week_is_empty(book: Store) -> None:
    """On 16 December the nights of 23 and 30 November: the first is in no week that is shown."""
    for day in (date(2026, 11, 23), date(2026, 11, 30)):
        _set(book, day)
    found = week(book, 1, date(2026, 12, 16))
    shown = {night.day for one in found.shown for night in one.nights}
    assert shown == {date(2026, 11, 30)}
    assert [one.day for one in found.every] == [date(2026, 11, 30), date(2026, 11, 23)]
    assert found.earlier == date(2026, 11, 23)


@pytest.mark.parametrize(
    ("sought", "days"),
    [
        ("kite", (2, 23)),
        ("KITE 2", (2, 23)),
        ("2", (2, 23)),
        ("monday", (2, 16, 23)),
        ("nov 16", (16,)),
        ("11/23", (23,)),
        ("11/23/26", (23,)),
        ("11/23/2025", ()),
        ("2026-11-02,", (2,)),
        ("2026", (2, 16, 23)),
        ("13/99", ()),
        ("straße", (16,)),
        ("\N{ARABIC-INDIC DIGIT TWO}", (2,)),
        ("9" * 200, ()),
        ("  ", ()),
    ],
)
def test_a_night_is_found_by_its_date_and_its_title(book: Store, sought: str, days: tuple[int, ...]) -> None:
    """By every word that is typed, whatever it is."""
    for day, title in ((2, "Kite tails"), (16, "STRASSE"), (23, "Kite tails 2")):
        _set(book, date(2026, 11, day), f"title: {title}\n\n1. 52 - 27")
    found = week(book, 1, TODAY, sought=sought).found
    assert tuple(reversed([one.day.day for one in found])) == days


def test_a_week_without_a_night_is_shown_empty_and_one_to_come_is_shown(book: Store) -> None:
    """This week stands there before anything is set in it; so does a night set for later."""
    assert [(one.monday, one.nights) for one in week(book, 1, TODAY).shown] == [(date(2026, 11, 23), ())]
    _set(book, TODAY + timedelta(weeks=2))
    assert [len(one.nights) for one in week(book, 1, TODAY).shown] == [1, 0]
    with pytest.raises(NotThere):
        week(book, 7, TODAY)


def test_a_skill_that_is_due_is_told_two_weeks_ahead(book: Store) -> None:
    """Not a day sooner; when it is on a page set since, also one still to come, it is due after that."""
    taking = _set(book, TODAY, "1. 7 2/6 - 3 5/6")
    _write(book, taking, "K01")
    mark_missing(book, 1, lambda _done, _of: None)
    day = next(day for day in map(TODAY.__add__, map(timedelta, range(120))) if week(book, 1, day).due)
    (due,) = week(book, 1, day).due
    assert (due.skill.name, due.due - day) == ("TAKE_REGROUPED", timedelta(days=AHEAD_DAYS))
    assert due.reason == f"Last on a page {due.days} days ago; 0 of 1 answers were right then."
    assert f"; due on {due.due:%A, %B} {due.due.day}" in due.told
    assert due.problem != "7 2/6 - 3 5/6"
    _set(book, day + timedelta(days=1), "1. 9 1/6 - 4 3/6")
    assert all(one.due > one.last > day for one in week(book, 1, day).due)


def test_a_class_that_keeps_a_skill_comes_back_later(book: Store) -> None:
    """Two classes with the same pages on the same days: of one every later answer is right, of one wrong."""
    start_room(book, "Room 13", 2, NOW)
    for weeks in range(5, 0, -1):
        for room_number, wrote in ((1, "25"), (2, "1")):
            page = set_night(book, room_number, "1. 52 - 27", TODAY - timedelta(weeks=weeks), NOW)
            for code in ("K01", "K02"):
                keep_answer(book, KeptAnswer(page.night.number, code, "1", wrote, NOW, "teacher"))
    dues = []
    for room_number in (1, 2):
        mark_missing(book, room_number, lambda _done, _of: None)
        days = (TODAY + timedelta(days=days) for days in range(120))
        dues.append(next(due for day in days for due in week(book, room_number, day).due))
    kept, lost = dues
    assert kept.due > lost.due + timedelta(days=14)
    assert kept.band.share > lost.band.share


def test_the_demo_shows_each_place_a_night_can_be_in(tmp_path: Path) -> None:
    """Groups to make for last night, tonight's page to show, earlier nights done."""
    book = open_book(tmp_path / "demo.class")
    club = fill_demo(book, NOW)
    found = week(book, club.number, TODAY)
    assert [night.next for night in found.shown[0].nights] == [Next.DONE, Next.REGROUP, Next.SHOW]
    assert (found.missing, found.due[0].skill.name) == (9, "ADD")
    book.close()
