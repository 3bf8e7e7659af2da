"""The first address: to the week of the class, or to the welcome of an empty file."""

from onewhole.desk.classes.class_records import rooms
from onewhole.web.ask import Ask, Went


def start(ask: Ask) -> Went:
    """Go to the week of the first class; where there is none, to the welcome."""
    found = rooms(ask.book)
    return Went(f"/mine/{found[0].number}/week" if found else "/welcome")
