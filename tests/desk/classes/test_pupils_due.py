"""Which skills are due for each pupil on the day after a night."""

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import NightPage, NotThere, Store, open_book, set_night, start_room
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.desk.classes.pupils_due import pupils_due
from onewhole.notations.text import text
from onewhole.store.answers import KeptAnswer
from tests.kit.kept import keep_answer

TONIGHT = date(2026, 11, 25)
NOW = datetime(2026, 11, 25, 16, tzinfo=UTC)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Store]:
    """A class of two pupils."""
    made = open_book(tmp_path / "room12.class")
    start_room(made, "Room 12", 2, NOW)
    yield made
    made.close()


def _night(book: Store, weeks_ago: int, typed: str, **wrote: str) -> NightPage:
    page = set_night(book, 1, typed, TONIGHT - timedelta(weeks=weeks_ago), NOW)
    for code, answer in wrote.items():
        keep_answer(book, KeptAnswer(page.night.number, code, "1", answer, NOW, "teacher"))
    return page


def _due(book: Store, night: NightPage) -> dict[str, list[str]]:
    mark_missing(book, 1, lambda _done, _of: None)
    found = pupils_due(book, 1, night.night.number)
    return {code: [text(one) for one in dues] for code, dues in found.items()}


def test_a_pupil_is_due_by_own_answers(book: Store) -> None:
    """K01 keeps whole numbers from week to week, K02 loses them; tonight's own skill is not told."""
    for weeks_ago in (9, 8, 6, 4):
        _night(book, weeks_ago, "1. 52 - 27", K01="25", K02="35" if weeks_ago < 9 else "25")
    tonight = _night(book, 0, "1. 2/8 + 3/8", K01="5/8", K02="5/8")
    found = _due(book, tonight)
    assert found == {"K01": [], "K02": ["52 - 27"]}


def test_a_night_to_come_and_one_of_tonight_do_not_count(book: Store) -> None:
    """What is set for later changes nothing of the pages for the morning after tonight."""
    _night(book, 16, "1. 52 - 27", K01="25")
    tonight = _night(book, 0, "1. 2/8 + 3/8", K01="5/8")
    before = _due(book, tonight)
    _night(book, -1, "1. 61 - 34")
    assert _due(book, tonight) == before
    assert before == {"K01": ["52 - 27"], "K02": []}


def test_a_night_that_is_not_there(book: Store) -> None:
    """Nor a class."""
    with pytest.raises(NotThere):
        pupils_due(book, 7, 1)
    with pytest.raises(NotThere):
        pupils_due(book, 1, 1)
