"""What stands round every page."""

import pytest

from onewhole.sheets.header import Header, Paper, Print
from onewhole.writers.frame import UNTITLED, frame, named


@pytest.mark.parametrize(
    ("header", "small"),
    [
        (Header(class_name="Room 12", date="Monday"), "Room 12, Monday"),
        (Header(class_name="Room 12"), "Room 12"),
        (Header(date="Monday"), "Monday"),
        (Header(), None),
    ],
)
def test_class_and_day_stand_over_the_title(header: Header, small: str | None) -> None:
    """Nothing stands over the title where neither class nor day is set."""
    assert frame(header).get("small_title") == small


def test_a_page_without_a_title_has_one() -> None:
    """A page is never without a title, which PDF/UA-1 asks for."""
    assert frame(Header())["title"] == named(Header()) == UNTITLED


def test_paper_and_print_are_the_sheet_s() -> None:
    """Paper and size of print are those of the header."""
    data = frame(Header(paper=Paper.A4, print=Print.LARGE), title="Key", small="")
    assert data == {
        "title": "Key",
        "paper": "a4",
        "print": "large",
        "lang": "en-US",
        "page_of": "page {at} of {of}",
    }


def test_a_page_of_a_sheet_is_named_by_it() -> None:
    """A page that belongs to a sheet tells its title and day."""
    assert named(Header(title="Kite tails", date="Monday")) == "Kite tails, Monday"
