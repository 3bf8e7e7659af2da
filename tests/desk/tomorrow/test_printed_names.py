"""How pupils are named in print."""

from datetime import UTC, datetime

import pytest

from onewhole.desk.classes.class_records import Classroom, Pupil
from onewhole.desk.tomorrow.printed_names import printed_names

NOW = datetime(2026, 11, 24, 7, tzinfo=UTC)


@pytest.mark.parametrize(
    ("name", "shown"),
    [
        ("Nguyễn Zoë", "K01 Nguyễn Zoë"),
        ("美咲 Ada", "K01"),
        ("Ada \N{KITE}", "K01"),
        ("\N{RIGHT-TO-LEFT OVERRIDE}Ada\tDelta", "K01 Ada Delta"),
        ("Wilhelmina-Theodora van der Berg", "K01 Wilhelmina-Theodora van…"),
        (None, "K01"),
    ],
)
def test_a_name_stands_behind_the_code_where_it_can_be_printed(name: str | None, shown: str) -> None:
    """No name makes the page fail or run off; another pupil's is not touched by it."""
    pupils = (Pupil(1, 1, "K01", name), Pupil(2, 1, "K02", "Bo"))
    found = printed_names(Classroom(1, "Room 12", pupils), NOW)
    assert (found("K01"), found("K02"), found("K03")) == (shown, "K02 Bo", "K03")
