"""A calendar file, read back as RFC 5545 says."""

from datetime import date

from onewhole.writers.calendar_file import CalendarDay, calendar_file

MADE = "20260901T183000Z"
LONG = "kites; strips, and more: " * 12 + "é\nSecond line"


def _unfolded(made: bytes) -> list[tuple[str, str]]:
    """Return names and values: lines end with CRLF, a line that begins with a blank goes on (3.1)."""
    text = made.decode("utf-8").replace("\r\n ", "")
    lines = text.removesuffix("\r\n").split("\r\n")
    return [(name, value) for name, _, value in (line.partition(":") for line in lines)]


def _text(value: str) -> str:
    """Take the escapes of a text away (3.3.11)."""
    signs = {"\\n": "\n", "\\,": ",", "\\;": ";", "\\\\": "\\"}
    found, at = "", 0
    while at < len(value):
        pair = value[at : at + 2]
        found += signs.get(pair, value[at])
        at += 2 if pair in signs else 1
    return found


def test_days_read_back() -> None:
    """Every day is there with its words; lines have at most 75 bytes; ends are the day after (3.6.1)."""
    days = [
        CalendarDay(date(2026, 9, 8), "Week 1: facts; adding, taking away", LONG, "a"),
        CalendarDay(date(2026, 12, 31), "Week 17", "", "b"),
    ]
    made = calendar_file("Grade 4", days, MADE)
    assert all(len(line) <= 75 for line in made.split(b"\r\n"))
    assert b"\n" not in made.replace(b"\r\n", b"")
    read = _unfolded(made)
    assert read[0] == ("BEGIN", "VCALENDAR")
    assert read[-1] == ("END", "VCALENDAR")
    assert ("VERSION", "2.0") in read
    named = {name: [value for key, value in read if key == name] for name, _ in read}
    assert list(map(_text, named["SUMMARY"])) == [day.called for day in days]
    assert list(map(_text, named["DESCRIPTION"])) == [LONG]
    assert named["DTSTART;VALUE=DATE"] == ["20260908", "20261231"]
    assert named["DTEND;VALUE=DATE"] == ["20260909", "20270101"]
    assert named["DTSTAMP"] == [MADE] * 2
    assert len(set(named["UID"])) == 2
