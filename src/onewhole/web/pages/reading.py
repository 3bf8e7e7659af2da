"""Read the answers of the nights that are not read yet: long work, started by a button."""

from onewhole.desk.classes.class_records import Store
from onewhole.desk.classes.marked_nights import mark_missing
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Redirect
from onewhole.web.jobs import Job, Outcome, Progress

#: So many earlier nights are read while a page waits; with more it shows how far that is.
READ_AT_ONCE = 2


def read(request: PageRequest) -> Redirect:
    """Start the reading and go to it; afterwards back to the page that was asked from."""
    code = request.field("pupil", "")
    known = {pupil.code for pupil in request.room.pupils}
    back = request.at("pupil.look", code=code) if code in known else request.at("week.look")
    job = started(request, request.open_file, request.room.number, back)
    return Redirect(request.at("job.look", job=job.name))


def started(request: PageRequest, book: Store, room: int, back: str) -> Job:
    """Start the reading."""

    def run(progress: Progress) -> Outcome:
        nights = mark_missing(book, room, progress)
        return Outcome(back, f"{nights} {'night is' if nights == 1 else 'nights are'} read.")

    return request.app.jobs.start("Reading the answers", back, run)
