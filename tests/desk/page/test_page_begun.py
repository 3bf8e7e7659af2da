"""A new page of a class begins with what the class has said before."""

from contextlib import closing
from datetime import date
from pathlib import Path

from onewhole.desk.classes.class_records import open_book, set_night, start_room
from onewhole.desk.page.page_begun import page_begun, page_begun_with, typed_settings
from tests.kit.club import NOW

TYPED = """title: Trails, night one
date: Monday
class: Hill school
whole: trail mile
stories: the trail club walks
minutes: 20
multiply: multiply in columns
divide: long division
paper: a4

1. 5 1/3 - 2 2/3
"""


def test_settings_of_the_last_night(tmp_path: Path) -> None:
    """Whose page it is, how the class works, paper and words; not title, day and minutes, and no problem."""
    with closing(open_book(tmp_path / "mine.class")) as book:
        start_room(book, "Hill school", 3, NOW)
        assert page_begun(book, 1) == ""
        set_night(book, 1, "1. 5 - 2", date(2026, 9, 1), NOW)
        assert page_begun(book, 1) == ""
        set_night(book, 1, TYPED, date(2026, 9, 2), NOW)
        assert page_begun(book, 1) == (
            "class: Hill school\nmultiply: multiply in columns\ndivide: long division\n"
            "whole: trail mile\nstories: the trail club walks\npaper: a4\n"
        )
        assert page_begun_with(book, 1, ["5 - 2", "# Look.\r\n6 - 3\n"]) == (
            f"{page_begun(book, 1)}\n5 - 2\n# Look.\n6 - 3\n"
        )
        assert page_begun_with(book, 1, ["title: Kites\n\n5 - 2"]) == "title: Kites\n\n5 - 2\n"


def test_what_cannot_be_read_is_left_out() -> None:
    """A setting that there is not, and a value that cannot be used, lose nothing else."""
    header = typed_settings("colour: red\nstories: nobody\nwhole: ribbon\n")
    assert (header.words.whole, header.words.story) == ("ribbon", None)
