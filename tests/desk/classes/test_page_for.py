"""A page for a part of a class: a group, codes, names; two pages on one night."""

from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_list import enrol, new_class
from onewhole.desk.classes.class_records import NotThere, Store, open_book, room, set_night
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.classes.page_for import WHOLE, give_page_to, groups_now, meant
from onewhole.desk.classes.papers import keep_papers, papers
from onewhole.desk.classes.week import week
from onewhole.desk.marking.cells import Change, keep_cells
from onewhole.desk.marking.grid import grid
from onewhole.desk.page.kept_pages import set_page
from onewhole.desk.pupil.pupil_story import story
from onewhole.desk.tomorrow.morning import morning
from onewhole.errors import InputError
from onewhole.store.keeping import erase_pupil
from tests.kit.marking_book import NOW, SHEET

DAY = date(2026, 9, 1)
NAMES = ("Ada", "Bo", "Cy", "Di", "Ed", "Fay")


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of six with names."""
    made = open_book(tmp_path / "room12.class")
    new_class(made, "Room 12", 0, NAMES, NOW)
    yield made
    made.close()


def _give(book: Store, night: int, *codes: str) -> None:
    give_page_to(book, 1, night, codes or None, now=NOW, by="teacher")


def _rows(book: Store, night: int) -> list[str]:
    return [row.pupil.code for row in grid(book, 1, night).rows]


def test_two_pages_on_one_night_are_each_marked_for_those_who_got_them(book: Store) -> None:
    """On Marking, Tomorrow and the Week; nobody has a page that was for the others, also not as blank."""
    first, other = (
        set_page(book, 1, None, typed, day=DAY, now=NOW, whom=whom).night.number
        for typed, whom in ((SHEET, "Ada, k2 3"), ("title: Others\n1. 52 - 27\n", "Di, Ed; Fay"))
    )
    assert (_rows(book, first), _rows(book, other)) == (["K01", "K02", "K03"], ["K04", "K05", "K06"])
    assert grid(book, 1, first).others == ("K04 Di", "K05 Ed", "K06 Fay")
    for night, codes in ((first, ("K01", "K02")), (other, ("K04", "K05", "K06"))):
        keep_cells(book, 1, night, [Change(code, "1", "35") for code in codes], now=NOW, by="teacher")
    for night, got in ((first, "K01 K02 K03"), (other, "K04 K05 K06")):
        seated = [seat.code for card in morning(book, 1, night).cards for seat in card.seats]
        assert " ".join(sorted(seated)) == got
    mark_missing(book, 1, lambda _done, _of: None)
    assert [[one.number for one in story(book, 1, code, DAY).nights] for code in ("K01", "K03", "K04")] == [
        [first],
        [first],
        [other],
    ]
    rows = [row for one in week(book, 1, DAY).shown for row in one.nights]
    assert [(row.marked, row.pupils, row.got, row.in_class) for row in rows] == [(2, 3, 3, 6), (3, 3, 3, 6)]


def test_what_is_typed_means_groups_codes_and_names(book: Store) -> None:
    """As the last marked night left the groups; the whole class by its words, or by nothing."""
    night = set_night(book, 1, SHEET, DAY, NOW).night.number
    cells = [Change(code, "1", text) for code, text in (("K01", "4 7/8"), ("K02", "4 7/8"), ("K03", "5 1/8"))]
    keep_cells(book, 1, night, cells, now=NOW, by="teacher")
    assert groups_now(book, 1) == ()
    mark_missing(book, 1, lambda _done, _of: None)
    groups, of = groups_now(book, 1), room(book, 1)
    assert sorted(code for group in groups for code in group.codes) == ["K01", "K02", "K03"]
    one = groups[0]
    assert meant(of, f"fay,  {one.name.upper()}", groups) == (*one.codes, "K06")
    assert meant(of, WHOLE.title(), groups) is meant(of, " ", groups) is None
    for wrong in ("Owls of no night", "K09", ",", "Ada, nobody"):
        with pytest.raises(InputError):
            meant(of, wrong, groups)


def test_for_whom_a_page_is_can_be_changed_and_taken_back(book: Store) -> None:
    """Who joins later did not get a page of named pupils; who is ticked one by one got it beside them."""
    night = set_night(book, 1, SHEET, DAY, NOW).night.number
    _give(book, night, "K01", "K02")
    enrol(book, 1, 1)
    assert _rows(book, night) == ["K01", "K02"]
    keep_papers(book, 1, night, {"K07": "here", "K02": "no page"}, {}, now=NOW, by="teacher")
    assert _rows(book, night) == ["K01", "K07"]
    erase_pupil(book, 1, "K01")
    erase_pupil(book, 1, "K07")
    assert _rows(book, night) == []
    _give(book, night)
    assert _rows(book, night) == ["K02", "K03", "K04", "K05", "K06"]
    keep_papers(book, 1, night, {"K03": "no page"}, {}, now=NOW, by="teacher")
    assert not papers(book, 1, night).for_part
    assert _rows(book, night) == ["K02", "K04", "K05", "K06"]
    with pytest.raises(NotThere):
        _give(book, 99, "K02")


def test_a_page_set_again_stays_with_those_it_was_for(book: Store) -> None:
    """Unless others are typed; a word of nobody sets nothing at all."""
    made = set_page(book, 1, None, SHEET, day=DAY, now=NOW, whom="Bo")
    sheet, night = made.kept.number, made.night.number
    again = SHEET + "5. 52 - 27\n"
    set_page(book, 1, sheet, again, day=DAY, now=NOW, saw=1)
    assert _rows(book, night) == ["K02"]
    with pytest.raises(InputError):
        set_page(book, 1, sheet, again, day=DAY + timedelta(days=1), now=NOW, saw=2, whom="Owls")
    assert [row.number for one in week(book, 1, DAY).shown for row in one.nights] == [night]
    set_page(book, 1, sheet, again, day=DAY, now=NOW, saw=2, whom="the whole class")
    assert len(_rows(book, night)) == 6
