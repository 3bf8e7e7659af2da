"""The first address: to the week of the class, or to the welcome of an empty file."""

from onewhole.desk.classes.class_records import rooms
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Redirect


def start(request: PageRequest) -> Redirect:
    """Go to the week of the first class; where there is none, to the welcome."""
    found = rooms(request.book)
    return Redirect(request.at("week.look", room=found[0].number) if found else request.at("welcome.look"))
