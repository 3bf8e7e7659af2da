"""The papers of a night: who got the page, who was away, and what that changes elsewhere."""

from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_list import enrol
from onewhole.desk.classes.class_records import NightPage, NotThere, Store, open_book, set_night, start_room
from onewhole.desk.classes.marked_nights import mark_missing, mark_night, night_summaries
from onewhole.desk.classes.papers import keep_papers, papers
from onewhole.desk.classes.pupil_days import days_of_class, keep_days
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.classes.week import Next, week
from onewhole.desk.marking.cells import Change, keep_cells, keep_column
from onewhole.desk.marking.grid import grid
from onewhole.desk.marking.heat import heat
from onewhole.desk.pupil.pupil_story import story
from onewhole.desk.tomorrow.morning import morning
from onewhole.errors import InputError
from tests.kit.marking_book import NOW, SHEET

DAY = date(2026, 9, 1)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of four, and nothing set."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 4, NOW)
    yield made
    made.close()


def _set(book: Store, later: int = 0, typed: str = SHEET) -> NightPage:
    return set_night(book, 1, typed, DAY + timedelta(days=later), NOW)


def _say(book: Store, night: int, **said: str) -> int:
    return keep_papers(book, 1, night, said, {}, now=NOW, by="teacher")


def _write(book: Store, night: int, *codes: str, text: str = "5 1/8") -> tuple[str, ...]:
    cells = [Change(code, "1", text) for code in codes]
    return keep_cells(book, 1, night, cells, now=NOW, by="teacher").told


def _choices(book: Store, night: int) -> list[str]:
    return [row.choice.value for row in papers(book, 1, night).rows]


def test_what_is_said_of_each_paper_stands_and_is_taken_back(book: Store) -> None:
    """Every choice after every other; the same said twice changes nothing."""
    night = _set(book).night.number
    every = ("here", "absent", "no page", "excused", "late")
    for first in every:
        for then in every:
            _say(book, night, K02=first)
            _say(book, night, K02=then)
            assert _choices(book, night) == ["here", then, "here", "here"]
            assert _say(book, night, K02=then) == 0
    with pytest.raises(InputError):
        _say(book, night, K01="ill")
    with pytest.raises(NotThere):
        _say(book, night, K09="late")
    with pytest.raises(ChangedMeanwhile):
        keep_papers(book, 1, night, {"K02": "absent"}, {"K02": "here"}, now=NOW, by="teacher")
    assert _choices(book, night)[1] == "late"


def test_who_is_away_holds_nothing_up_and_is_no_evidence(book: Store) -> None:
    """The week waits for the others; Tomorrow says why; nothing written is said of nobody who was away."""
    night = _set(book).night.number
    _say(book, night, K02="absent", K03="excused", K04="no page")
    _write(book, night, "K01")
    (row,) = week(book, 1, DAY).shown[0].nights
    assert (row.marked, row.pupils, row.got, row.in_class, row.next) == (1, 1, 3, 4, Next.REGROUP)
    seats = {seat.code: seat.because for card in morning(book, 1, night).cards for seat in card.seats}
    assert (seats["K02"], seats["K03"], sorted(seats)) == ("Absent.", "Excused.", ["K01", "K02", "K03"])
    blank = heat(mark_night(book, 1, night)).rest[-1]
    assert blank.pupils == ("K01",), "the other three problems of K01"
    assert [row.owes for row in papers(book, 1, night).rows] == [False] * 4
    told = {code: story(book, 1, code, DAY).nights for code in ("K01", "K02", "K03", "K04")}
    assert [[one.paper for one in nights] for nights in told.values()] == [[""], ["absent"], ["excused"], []]


def test_a_paper_that_comes_in_all_the_same_is_late_and_told_once(book: Store) -> None:
    """The teacher's word stays, so that a cell that is cleared again leaves the pupil absent as before."""
    night = _set(book).night.number
    _say(book, night, K02="absent", K03="no page")
    told = _write(book, night, "K01", "K02", "K03")
    assert [words.partition(" ")[0] for words in told] == ["K02", "K03"]
    assert "late paper" in told[0]
    assert _write(book, night, "K02", text="4 7/8") == ()
    assert [(row.pupil.code, row.paper.value) for row in grid(book, 1, night).rows] == [
        ("K01", "here"),
        ("K02", "late"),
        ("K03", "here"),
        ("K04", "here"),
    ]
    mark_missing(book, 1, lambda _done, _of: None)
    (left,) = night_summaries(book, 1).nights
    assert left.pupils.keys() == {"K01", "K02", "K03"}
    keep_cells(book, 1, night, [Change(code, "1", "") for code in ("K02", "K03")], now=NOW, by="teacher")
    found = grid(book, 1, night)
    assert [row.paper.value for row in found.rows] == ["here", "absent", "here"]
    assert found.others == ("K03",)


def test_everyone_right_except_fills_nothing_of_who_was_away(book: Store) -> None:
    """Nor of whoever did not get the page; a late paper that is there is filled."""
    night = _set(book).night.number
    _say(book, night, K01="absent", K02="no page", K03="excused")
    _write(book, night, "K03")
    kept = keep_column(book, 1, night, "2", (), now=NOW, by="teacher")
    assert [change.code for change in kept.kept] == ["K03", "K04"]


def test_a_pupil_who_joined_or_left_has_only_the_nights_between(book: Store) -> None:
    """On the day of joining a page is theirs, on the day of leaving none is."""
    nights = [_set(book, later).night.number for later in range(4)]
    days = {"K02": ("2026-09-02", "2026-09-04")}
    assert keep_days(book, 1, days, {}) == 1
    assert [len(grid(book, 1, night).rows) for night in nights] == [3, 4, 4, 3]
    assert [papers(book, 1, night).rows[1].in_class for night in nights] == [False, True, True, False]
    for night in nights:
        _write(book, night, "K01")
    mark_missing(book, 1, lambda _done, _of: None)
    assert [one.number for one in story(book, 1, "K02", DAY).nights] == nights[1:3]
    assert [row.pupils for one in week(book, 1, DAY).shown for row in one.nights] == [3, 4, 4, 3]
    _say(book, nights[0], K02="here")
    assert len(grid(book, 1, nights[0]).rows) == 4, "a page given all the same"


def test_days_that_cannot_be_are_refused_and_nothing_is_kept(book: Store) -> None:
    """Left before joining, no day at all; the other pupil of the form is not kept either."""
    for wrong in (("2026-09-02", "2026-09-01"), ("soon", ""), ("", "0001-01-01")):
        with pytest.raises(InputError, match="K02"):
            keep_days(book, 1, {"K01": ("2026-09-01", ""), "K02": wrong}, {})
    assert {row.saw for row in days_of_class(book, 1)} == {"|"}


def test_who_is_added_after_the_first_pages_joins_today(book: Store) -> None:
    """Before any page was set, and on the first day itself, they are there all year."""
    enrol(book, 1, 1, today=DAY)
    night = _set(book).night.number
    enrol(book, 1, 1, today=DAY)
    enrol(book, 1, 1, today=DAY + timedelta(days=30))
    assert [row.joined for row in days_of_class(book, 1)][4:] == ["", "", "2026-10-01"]
    assert [row.pupil.code for row in grid(book, 1, night).rows][-1] == "K06"


def test_a_skill_of_a_page_that_was_not_theirs_is_not_practised(book: Store) -> None:
    """Of a night to come, and of one that was marked."""
    for later, said in ((0, "no page"), (1, "excused")):
        night = _set(book, later, "1. 52 - 27").night.number
        _say(book, night, K02=said)
        if not later:
            _write(book, night, "K01")
    mark_missing(book, 1, lambda _done, _of: None)
    left = {code: story(book, 1, code, DAY + timedelta(days=3)).left for code in ("K01", "K02", "K03")}
    assert {code: [one.last for one in rows] for code, rows in left.items()} == {
        "K01": [DAY + timedelta(days=1)],
        "K02": [],
        "K03": [DAY + timedelta(days=1)],
    }
