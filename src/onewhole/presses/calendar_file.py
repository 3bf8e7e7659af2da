"""A calendar file: days with what is on them, as calendars read it (iCalendar, RFC 5545)."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from icalendar import Calendar, Event

#: Who made the file, as the format wants it told.
MADE_BY = "-//onewhole//year//EN"


@dataclass(frozen=True, slots=True)
class CalendarDay:
    """Something on a whole day: its name, more words on it, and a key that no other day has."""

    day: date
    called: str
    words: str
    key: str


def calendar_file(called: str, days: Iterable[CalendarDay], when: datetime) -> bytes:
    r"""Return a calendar as a file; ``when`` is the moment at which it was made.

    >>> from datetime import UTC
    >>> day = CalendarDay(date(2026, 9, 8), "Week 1: adding", "4.NBT.B.4", "onewhole-2026-09-08")
    >>> made = calendar_file("Grade 4", [day], datetime(2026, 9, 1, tzinfo=UTC))
    >>> b"DTSTART;VALUE=DATE:20260908\r\n" in made
    True
    """
    made = Calendar()
    made.add("prodid", MADE_BY)
    made.add("version", "2.0")
    made.add("x-wr-calname", called)
    for one in days:
        event = Event()
        event.add("uid", f"{one.key}@onewhole")
        event.add("dtstamp", when)
        event.add("dtstart", one.day)
        event.add("dtend", one.day + timedelta(days=1))
        event.add("summary", one.called)
        if one.words:
            event.add("description", one.words)
        event.add("transp", "TRANSPARENT")
        made.add_component(event)
    return bytes(made.to_ical())
