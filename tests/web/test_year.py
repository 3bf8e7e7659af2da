"""The page Year, asked without a browser."""

from tests.kit.doors import Opened

YEAR = "/mine/1/year"


def test_a_year_is_planned_and_its_next_night_composed(door: Opened) -> None:
    """From nothing to a page on the Page desk; the year to print and as a calendar."""
    door.post("/welcome", name="Room 12", pupils="2", names="")
    assert "Plan a year" in door.get(YEAR).text
    assert door.get(f"{YEAR}/year.pdf").status == 404
    kept = door.post(YEAR, typed="first day: 2026-09-08\r\nmove: 18 to 1\r\n", saw="")
    assert (kept.status, kept.goes) == (303, f"{YEAR}#weeks")
    page = door.get(YEAR).text
    assert "week 1, equal fractions" in page
    assert "<svg" in page
    made = door.post(f"{YEAR}/night", day="2026-09-08")
    assert made.status == 303
    assert made.goes.startswith("/under-way/")
    assert door.get(f"{YEAR}/year.pdf").content.startswith(b"%PDF")
    assert door.get(f"{YEAR}/year.ics").content.startswith(b"BEGIN:VCALENDAR")


def test_every_mistake_is_told_and_nothing_typed_is_lost(door: Opened) -> None:
    """Each with its line and column; what was typed stands in the field."""
    door.post("/welcome", name="Room 12", pupils="2", names="")
    told = door.post(YEAR, typed="grade: 9\n<b>kites</b>\n", saw="")
    assert told.status == 422
    assert "(line 1, column 8)" in told.text
    assert "&lt;b&gt;kites" in told.text
    assert "Plan a year" in door.get(YEAR).text
