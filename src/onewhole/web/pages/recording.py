"""A part of a walkthrough recorded: kept, heard again, taken away."""

from onewhole.desk.classes.class_records import spoken_night
from onewhole.desk.walkthrough.board import Board, board
from onewhole.desk.walkthrough.film_plan import plan_of
from onewhole.desk.walkthrough.recordings import forget, keep, sound_of
from onewhole.desk.walkthrough.soundtrack_choice import MOST_BYTES, MOST_STEPS, Recorded, called
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Content, Json, Redirect
from onewhole.web.http.templates import rendered

#: A form with a recording has so many bytes at most: the sound, and what stands around it.
MOST = MOST_BYTES + 64 * 1024


def take(request: PageRequest) -> Json:
    """Keep a recording; the answer comes when it is on the disk."""
    night, shown = _board(request)
    sent = request.files.get("sound")
    if sent is None:
        raise InputError("No sound came with the form", remedy="Record it again.")
    recorded = Recorded(sent.content, _steps(request.field("steps")))
    kept = keep(
        request.book,
        night,
        shown,
        request.field("label"),
        recorded,
        kind=sent.kind,
        now=request.app.now(),
        saw=request.field("saw"),
    )
    words = {
        "label": kept.label,
        "kept": kept,
        "called": called,
        "at": request.at,
        "csrf_token": request.csrf_token,
    }
    return Json({"words": f"Kept: {kept.seconds}.", "row": rendered("_recorded.html", words)})


def hear(request: PageRequest) -> Content:
    """Give a recording to be heard."""
    night, _ = _board(request)
    found = sound_of(request.book, night, str(request.path_params["label"]))
    return Content(found.sound, found.kind)


def take_away(request: PageRequest) -> Redirect:
    """Take a recording away."""
    night, _ = _board(request)
    forget(request.book, night, request.field("label"), request.field("saw"))
    return Redirect(request.at("walkthrough.look") + "#voice")


def _board(request: PageRequest) -> tuple[int, Board]:
    page = spoken_night(request.book, request.number("room"), request.number("night"))
    return page.night.number, board(page.sheet, plan_of(request.book, page.night.number))


def _steps(typed: str) -> tuple[int, ...]:
    """Read milliseconds, parted by blanks. Raises InputError."""
    parts = typed.split()
    if len(parts) > MOST_STEPS or not all(
        one.isascii() and one.isdecimal() and len(one) < 9 for one in parts
    ):
        raise InputError("The steps of the board cannot be read", remedy="Record it again.")
    return tuple(map(int, parts))
