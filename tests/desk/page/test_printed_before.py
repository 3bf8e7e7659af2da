"""Pages printed before they are set."""

from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

from onewhole.desk.classes.class_records import open_book, start_room
from onewhole.desk.keep.deleting import delete_class
from onewhole.desk.page.printed_before import REMEMBERED, keep_printed_before, note_printed
from onewhole.store.settings import set_setting, setting
from onewhole.store.steps import NightStep, steps_of
from tests.kit.kept import first_round

NOW = datetime(2026, 11, 24, 16, tzinfo=UTC)
KEPT = "printed before set in class 1"


def test_the_last_ones_are_remembered(tmp_path: Path) -> None:
    """Twenty of them, by digests and not by what was typed; damaged, nothing is remembered."""
    with closing(open_book(tmp_path / "room12.class")) as book:
        night = first_round(book).night
        for at in range(REMEMBERED + 2):
            note_printed(book, 1, f"1. {at + 5} - 2 | Ada has kites", NOW + timedelta(minutes=at))
        note_printed(book, 1, "1. 7 - 2 | Ada has kites", NOW)
        text = setting(book, KEPT) or ""
        assert (text.count("2026-11-24"), "Ada" in text) == (REMEMBERED, False)
        keep_printed_before(book, 1, night, "1. 6 - 2 | Ada has kites")
        assert steps_of(book, 1) == {}
        keep_printed_before(book, 1, night, "1. 7 - 2 | Ada has kites")
        assert steps_of(book, 1)[night] == {NightStep.PRINTED: NOW}
        set_setting(book, KEPT, "{")
        keep_printed_before(book, 1, night, "1. 8 - 2 | Ada has kites")
        note_printed(book, 1, "1. 8 - 2", NOW)
        assert (setting(book, KEPT) or "").count("2026-11-24") == 1


def test_with_the_class_it_is_forgotten(tmp_path: Path) -> None:
    """Nothing of a deleted class stays in the settings; another class's pages are still remembered."""
    with closing(open_book(tmp_path / "room12.class")) as book:
        first_round(book)
        other = start_room(book, "Room 7", 1, NOW).number
        for room in (1, other):
            note_printed(book, room, "1. 7 - 2", NOW)
        delete_class(book, 1, NOW)
        assert setting(book, KEPT) is None
        assert setting(book, f"printed before set in class {other}")
