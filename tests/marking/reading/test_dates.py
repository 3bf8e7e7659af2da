"""Dates and counts of days that a spreadsheet made, and the fractions that they may have been."""

import pytest

from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.dates import fractions_of_date, fractions_of_day_number


@pytest.mark.parametrize(
    ("text", "offers"),
    [
        ("8-Mar", ("3/8", "8/3")),
        ("08-Mar", ("3/8", "8/3")),
        ("8 March", ("3/8", "8/3")),
        ("8-mar-2026", ("3/8", "8/3")),
        ("Mar-08", ("3/8", "8/3")),
        ("March 8, 2026", ("3/8", "8/3")),
        ("Jan-64", ("1/64",)),
        ("3/8/2026", ("3/8", "8/3")),
        ("3/8/26", ("3/8", "8/3")),
        ("03/08/2026 0:00:00", ("3/8", "8/3")),
        ("2026-03-08", ("3/8", "8/3")),
        ("2026-03-08T00:00:00", ("3/8", "8/3")),
        ("3.8.2026", ("3/8", "8/3")),
        ("3/3/2026", ("3/3",)),
        ("0/3/2026", ()),
        ("3/8", None),
        ("3 3/6", None),
        ("3-8", None),
        ("8 - 3", None),
        ("Maya 8", None),
        ("2026", None),
    ],
)
def test_a_date_offers_the_fractions_that_it_may_have_been(text: str, offers: tuple[str, ...] | None) -> None:
    """By month and day first, as in the United States; a year of two digits for what is no day."""
    assert fractions_of_date(text) == offers


@pytest.mark.parametrize(
    ("text", "offers"),
    [
        ("45359", ("3/8", "8/3")),
        ("45,359", None),
        ("36525", None),
        ("55153", None),
        ("3", None),
        ("²3456", None),
    ],
)
def test_a_count_of_days_of_this_half_century(text: str, offers: tuple[str, ...] | None) -> None:
    """Day 45359 is the 8th of March 2024 (tried in a spreadsheet, from memory)."""
    assert fractions_of_day_number(text) == offers


def test_a_date_in_a_cell_says_what_it_may_have_been() -> None:
    """And what to do."""
    read = read_written("8-Mar").read
    assert isinstance(read, Unreadable)
    assert "such as 3/8 or 8/3" in read.why
