"""A calendar file: days with what is on them, as calendars read it (iCalendar, RFC 5545, read)."""

from collections.abc import Iterable, Iterator
from datetime import date

from msgspec import Struct

#: Who made the file, as the format wants it told (3.7.3).
MADE_BY = "-//onewhole//year//EN"
#: A line has at most so many bytes; one that goes on begins with a blank (3.1).
LONGEST = 75
_SIGNS = {"\\": "\\\\", ";": "\\;", ",": "\\,", "\n": "\\n"}


class CalendarDay(Struct, frozen=True):
    """Something on a whole day: its name, more words on it, and a key that no other day has."""

    day: date
    called: str
    words: str
    key: str


def calendar_file(called: str, days: Iterable[CalendarDay], made: str) -> bytes:
    r"""Return a calendar as a file; ``made`` is the moment in UTC, such as 20260901T183000Z.

    >>> day = CalendarDay(date(2026, 9, 8), "Week 1: adding", "4.NBT.B.4", "2026-09-08")
    >>> b"DTSTART;VALUE=DATE:20260908\r\n" in calendar_file("Grade 4", [day], "20260901T183000Z")
    True
    """
    lines = ["BEGIN:VCALENDAR", "VERSION:2.0", f"PRODID:{MADE_BY}", f"X-WR-CALNAME:{_text(called)}"]
    for one in days:
        lines += _event(one, made)
    return "".join(f"{part}\r\n" for line in (*lines, "END:VCALENDAR") for part in _folded(line)).encode()


def _event(one: CalendarDay, made: str) -> Iterator[str]:
    yield "BEGIN:VEVENT"
    yield f"UID:{one.key}@onewhole"
    yield f"DTSTAMP:{made}"
    yield f"DTSTART;VALUE=DATE:{_day(one.day)}"
    yield f"DTEND;VALUE=DATE:{_day(date.fromordinal(one.day.toordinal() + 1))}"
    yield f"SUMMARY:{_text(one.called)}"
    if one.words:
        yield f"DESCRIPTION:{_text(one.words)}"
    yield "TRANSP:TRANSPARENT"
    yield "END:VEVENT"


def _day(day: date) -> str:
    return day.isoformat().replace("-", "")


def _text(said: str) -> str:
    return "".join(_SIGNS.get(sign, sign) for sign in said)


def _folded(line: str) -> Iterator[str]:
    """Yield a line in parts that are short enough, cut between signs and not inside one."""
    part, size = "", 0
    for sign in line:
        many = len(sign.encode())
        if size + many > LONGEST:
            yield part
            part, size = " ", 1
        part, size = part + sign, size + many
    yield part
