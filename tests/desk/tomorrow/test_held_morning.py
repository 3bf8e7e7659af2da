"""A morning that was worked out is held until anything that it rests on changes."""

from collections.abc import Callable
from pathlib import Path

import pytest
from msgspec.structs import replace

from onewhole.desk.classes.class_records import Store, open_book
from onewhole.desk.classes.group_settings import groups_of, set_groups, settings_text
from onewhole.desk.classes.marked_nights import (
    MarkedNight,
    NightToMark,
    marked_from,
    marked_night,
    night_to_mark,
)
from onewhole.desk.pupil.asked_answers import note_asked
from onewhole.desk.tomorrow.held_morning import hold_morning
from onewhole.desk.tomorrow.keeping_groups import keep_seen
from onewhole.desk.tomorrow.morning import Morning, morning, shown
from onewhole.desk.tomorrow.moving import move, set_aside
from onewhole.marking.reading.talk_word import TalkSaid
from onewhole.store.answers import KeptAnswer, keep_answers
from onewhole.store.classes import add_pupil
from onewhole.store.keeping import erase_pupil
from onewhole.store.morning_cache import cache_morning, cached_morning
from onewhole.store.night_cache import cache_night
from tests.kit.club import NOW, small_club


@pytest.fixture
def book(tmp_path: Path) -> Store:
    """Two nights of a class of five; the last one is looked at."""
    made = open_book(tmp_path / "room12.class")
    small_club(made, 2)
    return made


def worked_out(book: Store, night: int = 2) -> Morning:
    """Return a night's morning, worked out anew."""
    return shown(marked_night(book, 1, night))


@pytest.fixture
def marks(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """The nights that are marked for a morning."""
    marked = list[int]()

    def counted(book: Store, found: NightToMark) -> MarkedNight:
        marked.append(found.page.night.number)
        return marked_from(book, found)

    monkeypatch.setattr("onewhole.desk.tomorrow.morning.marked_from", counted)
    return marked


def test_what_is_held_is_what_was_worked_out(book: Store, marks: list[int]) -> None:
    """Every part of it, and nothing is marked for it again; what was seen since is not unseen."""
    first = morning(book, 1, 2)
    assert marks == [2]
    assert morning(book, 1, 2) == first == worked_out(book)
    assert all((first.talks, first.first, first.ideas, first.heat.rows, first.unseen))
    assert marks == [2]
    assert not morning(book, 1, 1).unseen


def _answer(book: Store) -> None:
    keep_answers(book, [KeptAnswer(2, "K03", "3", "3 1/4", NOW, "teacher")])


def _earlier(book: Store) -> None:
    keep_answers(book, [KeptAnswer(1, "K03", "3", "3 1/4", NOW, "teacher")])


def _talk(book: Store) -> None:
    note_asked(book, 1, 2, "K01", asked="9 1/4 - 6 2/4", wrote="3 1/4", word=TalkSaid.SLIP.value, now=NOW)


def _settings(book: Store) -> None:
    set_groups(book, 1, 2, (2, 5), saw=settings_text(groups_of(book, 1)))


def _pupil(book: Store) -> None:
    add_pupil(book, 1)


def _seat(book: Store) -> None:
    one, other, *_ = (card for card in worked_out(book).cards if card.takes)
    move(book, 1, 2, code=one.seats[0].code, key=other.key, now=NOW, saw="")


def _aside(book: Store) -> None:
    set_aside(book, 1, 2, code="K01", aside=True, now=NOW)


def _seen(book: Store) -> None:
    keep_seen(book, 1, 2, saw=worked_out(book).stamp, now=NOW)


@pytest.mark.parametrize("change", [_answer, _earlier, _talk, _settings, _pupil, _seat, _aside, _seen])
def test_whatever_it_rests_on_makes_it_anew(book: Store, change: Callable[[Store], None]) -> None:
    """An answer of this night or an earlier one, a talk, a setting, a new child, the teacher's word."""
    before = morning(book, 1, 2)
    change(book)
    after = morning(book, 1, 2)
    assert after != before
    assert after == replace(worked_out(book), unseen=after.unseen)


@pytest.mark.parametrize("text", ["no base64", "QUJD", "eJwDAAAAAAE=", "eJyLjgUAARUAuQ=="])
def test_what_cannot_be_read_is_worked_out(book: Store, marks: list[int], text: str) -> None:
    """What is no base64, nothing packed, packed emptily, or a list of no parts."""
    first = morning(book, 1, 2)
    kept = cached_morning(book, 2)
    assert kept is not None
    cache_morning(book, 2, kept[0], text)
    assert morning(book, 1, 2) == first
    assert marks == [2, 2]


def test_a_night_that_is_not_read_is_read(book: Store, marks: list[int]) -> None:
    """The Week counts what was read: a morning that is held does not keep a night from being read."""
    first = morning(book, 1, 2)
    cache_night(book, 2, "", "")
    assert morning(book, 1, 2) == first
    assert marks == [2, 2]


def test_a_child_that_is_erased_is_in_no_morning(book: Store) -> None:
    """It is worked out anew, also where it was being worked out meanwhile."""
    found = night_to_mark(book, 1, 2)
    morning(book, 1, 2)
    erase_pupil(book, 1, "K01")
    assert cached_morning(book, 2) is None
    hold_morning(book, found, ["K01"])
    assert cached_morning(book, 2) is None
    assert "K01" not in repr(morning(book, 1, 2))
