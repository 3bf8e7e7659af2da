"""A kept page renamed and copied."""

from contextlib import closing
from pathlib import Path

import pytest

from onewhole.desk.classes.class_records import NotThere, night_pages, open_book, set_night, start_room
from onewhole.desk.classes.seen import ChangedMeanwhile
from onewhole.desk.page.kept_pages import keep_page, kept_pages, kept_versions
from onewhole.desk.page.page_changes import copy_page, rename_page
from onewhole.errors import InputError
from tests.kit.kept import DAY, NOW


def test_a_page_is_renamed_as_its_next_version_and_copied(tmp_path: Path) -> None:
    """Every version stays, a night keeps the page that went home, a long title is cut in the copy only."""
    with closing(open_book(tmp_path / "room12.class")) as book:
        start_room(book, "Room 12", 1, NOW)
        set_night(book, 1, "minutes: 10\n\n1. 52 - 27", DAY, NOW)
        renamed = rename_page(book, 1, "Kite tails", NOW, saw=1)
        assert (renamed.title, renamed.version) == ("Kite tails", 2)
        assert renamed.typed == "minutes: 10\ntitle: Kite tails\n\n1. 52 - 27"
        assert rename_page(book, 1, " Kite tails ", NOW, saw=2).version == 2
        assert [one.typed for one in kept_versions(book, 1)][-1] == "minutes: 10\n\n1. 52 - 27"
        assert [page.name for page in night_pages(book, 1)] == ["Fractions"]
        with pytest.raises(ChangedMeanwhile):
            rename_page(book, 1, "Sails", NOW, saw=1)
        with pytest.raises(InputError):
            rename_page(book, 1, " ", NOW)
        copied = copy_page(book, 1, NOW)
        assert (copied.sheet, copied.title) == (2, "Kite tails (copy)")
        long = keep_page(book, None, f"title: {'W' * 90}\n\n1. 5 - 2", NOW)
        assert copy_page(book, long.sheet, NOW).title == f"{'W' * 73} (copy)"
        assert len(kept_pages(book)) == 4
        with pytest.raises(NotThere):
            rename_page(book, 9, "Sails", NOW)
        with pytest.raises(NotThere):
            copy_page(book, 9, NOW)
