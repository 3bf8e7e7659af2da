"""What a class was set, as a calendar: an event a night."""

from datetime import UTC, date, datetime

from onewhole.desk.classes.class_records import NightPage, night_pages, room
from onewhole.store.opening import Store
from onewhole.writers.calendar_file import CalendarDay, calendar_file


def due_ics(book: Store, room_number: int, first: date, last: date, when: datetime) -> bytes:
    """Return the nights of some days as a calendar (RFC 5545): what goes home, and when it is due back.

    A page is due on the next school day, and which day that is the school knows. No pupil is named. Raises
    NotThere.
    """
    with book.snapshot() as seen:
        here, pages = room(seen, room_number), night_pages(seen, room_number)
    days = [
        CalendarDay(page.night.day, page.name, _told(page), f"onewhole-{room_number}-{page.night.number}")
        for page in pages
        if first <= page.night.day <= last
    ]
    return calendar_file(here.name, days, when.astimezone(UTC).strftime("%Y%m%dT%H%M%SZ"))


def _told(page: NightPage) -> str:
    count = len(page.labels)
    return f"{count} {'problem' if count == 1 else 'problems'}. Goes home today, due on the next school day."
