"""What a teacher is likely to open next, worked out while nothing is typed, so that it is there at once."""

from functools import partial

from onewhole.desk.classes.marked_nights import missing_before
from onewhole.desk.tomorrow.morning import morning
from onewhole.web.app import App
from onewhole.web.http.request import PageRequest
from onewhole.web.pages.reading import READ_AT_ONCE


def tomorrow_ahead(request: PageRequest, *, whole: bool = False) -> None:
    """Work out Tomorrow of the night that answers are typed of, once nothing was typed for a while.

    Where a ``whole`` table was kept there is nothing to wait for.
    """
    room, night, jobs = request.number("room"), request.number("night"), request.app.jobs
    ahead = jobs.prefetch if whole else jobs.prefetch_when_quiet
    ahead(
        f"{request.book_name} {night} morning", partial(_morning, request.app, request.book_name, room, night)
    )


def _morning(app: App, name: str, room: int, night: int) -> None:
    """Work it out in the file as it is by then.

    The file is not asked for before: who brings a backup back holds the files, and waits for whoever writes.
    """
    book = app.books[name]
    if missing_before(book, room, night) <= READ_AT_ONCE:
        morning(book, room, night)
