"""Pages kept, and set for a night."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import (
    NotThere,
    Store,
    StoreRefused,
    night_pages,
    open_book,
    start_room,
)
from onewhole.desk.page.kept_pages import (
    keep_page,
    kept_pages,
    kept_versions,
    last_typed,
    set_page,
)
from onewhole.desk.page.wished_page import WishForm, composed
from onewhole.errors import InputError
from onewhole.store.answers import KeptAnswer
from onewhole.store.sheets import newest_sheets
from tests.kit.kept import keep_answer

TODAY = date(2026, 11, 24)
NOW = datetime(2026, 11, 24, 16, tzinfo=UTC)
KITES = "title: Kites\n\n1. 5 3/8 - 2 5/8\n2. 5 - 2\n"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two pupils."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    yield made
    made.close()


def test_every_saved_version_stays(book: Store) -> None:
    """The newest first; the same text is kept once, and a draft that cannot be read is kept too."""
    first = keep_page(book, None, KITES, NOW)
    keep_page(book, first.sheet, KITES, NOW)
    draft = keep_page(book, first.sheet, "title: More kites\n\n1. 5 -", NOW + timedelta(minutes=1))
    other = keep_page(book, None, "1. 6 - 3", NOW + timedelta(minutes=2))
    assert [(one.version, one.title) for one in kept_versions(book, first.sheet)] == [
        (2, "More kites"),
        (1, "Kites"),
    ]
    assert [one.typed for one in kept_versions(book, first.sheet)] == [draft.typed, KITES]
    assert [one.sheet for one in kept_pages(book)] == [other.sheet, first.sheet]


def test_the_recipe_of_a_composed_page_is_kept_beside_it(book: Store) -> None:
    """And what is no recipe is not."""
    made = composed("", WishForm(number="3", denominators="6"))
    kept = keep_page(book, None, made.typed, NOW, recipe=made.recipe)
    (found,) = newest_sheets(book)
    assert (found.recipe, found.number) == (made.recipe, kept.sheet)
    with pytest.raises(InputError):
        keep_page(book, None, KITES, NOW, recipe="six kites")
    assert len(kept_pages(book)) == 1


def test_too_long_is_refused_and_nothing_is_kept(book: Store) -> None:
    """Also a sheet that is not there."""
    with pytest.raises(InputError, match="50000 characters"):
        keep_page(book, None, "#" * 50_000, NOW)
    assert kept_pages(book) == ()
    with pytest.raises(NotThere):
        keep_page(book, 7, KITES, NOW)


def test_set_for_tonight_makes_one_night(book: Store) -> None:
    """Twice pressed is once set; mended and set again, the night has the newest version."""
    first = set_page(book, 1, None, KITES, day=TODAY, now=NOW)
    again = set_page(book, 1, first.kept.number, KITES, day=TODAY, now=NOW)
    assert again.night == first.night
    mended = set_page(book, 1, first.kept.number, KITES.replace("5 - 2", "6 - 2"), day=TODAY, now=NOW)
    assert (mended.night.number, mended.night.version) == (first.night.number, 2)
    assert [one.night for one in night_pages(book, 1)] == [mended.night]
    later = set_page(book, 1, first.kept.number, KITES, day=TODAY + timedelta(1), now=NOW)
    assert [one.night.number for one in night_pages(book, 1)] == [mended.night.number, later.night.number]
    assert last_typed(book, 1) == (mended.kept.typed, later.kept.typed)


def test_answers_stay_with_the_page_they_were_written_on(book: Store) -> None:
    """A night with answers does not get another version."""
    first = set_page(book, 1, None, KITES, day=TODAY, now=NOW)
    keep_answer(book, KeptAnswer(first.night.number, "K01", "1", "3", NOW, "teacher"))
    with pytest.raises(StoreRefused, match="Answers to the earlier version"):
        set_page(book, 1, first.kept.number, "1. 6 - 3", day=TODAY, now=NOW)
    (night,) = night_pages(book, 1)
    assert night.kept.typed == KITES


@pytest.mark.parametrize("typed", ["1. 5 -", "", "title: \N{KITE}\n\n1. 5 - 2"])
def test_a_page_that_cannot_be_printed_is_not_set(book: Store, typed: str) -> None:
    """Nothing is kept of it either."""
    with pytest.raises(InputError) as refused:
        set_page(book, 1, None, typed, day=TODAY, now=NOW)
    assert (refused.value.line, bool(refused.value.remedy)) == (1, True)
    assert (kept_pages(book), night_pages(book, 1)) == ((), ())
