"""A night changed: its name, its day, the same page set once more, all of it deleted."""

from onewhole.desk.classes.class_list import LONGEST_NAME
from onewhole.desk.classes.class_records import night_page
from onewhole.desk.classes.night_changes import move_night, rename_night, set_again
from onewhole.desk.keep.deleting import delete_night, holding_text, night_holding
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest, day_typed
from onewhole.web.http.response import HtmlPage, Redirect, refused_status
from onewhole.web.pages.gone import check_idle, deleted_page


def look(request: PageRequest) -> HtmlPage:
    """Show what can be changed of a night, and what would go with it."""
    return _shown(request)


def rename(request: PageRequest) -> HtmlPage | Redirect:
    """Give the night a name of its own, or take that away."""
    room, night = _night(request)
    name = request.field("name", "")
    try:
        rename_night(request.book, room, night, name, saw=request.field("saw"))
    except InputError as refused:
        return _shown(request, refused, name=name)
    return _to_week(request, night)


def move(request: PageRequest) -> HtmlPage | Redirect:
    """Let the night be another day's."""
    room, night = _night(request)
    try:
        move_night(request.book, room, night, day_typed(request.field("day")), saw=request.field("saw"))
    except InputError as refused:
        return _shown(request, refused, day=request.field("day"))
    return _to_week(request, night)


def again(request: PageRequest) -> HtmlPage | Redirect:
    """Set the same page for another day."""
    room, night = _night(request)
    try:
        made = set_again(request.book, room, night, day_typed(request.field("day")))
    except InputError as refused:
        return _shown(request, refused)
    return _to_week(request, made)


def delete(request: PageRequest) -> HtmlPage:
    """Delete the night; a backup is made first."""
    room, night = _night(request)
    try:
        check_idle(request)
        gone = delete_night(
            request.open_file,
            room,
            night,
            request.app.now(),
            saw=request.field("saw"),
            made=request.app.folder / request.book_name,
        )
    except InputError as refused:
        return _shown(request, refused)
    return deleted_page(request, gone)


def _shown(
    request: PageRequest,
    refused: InputError | None = None,
    *,
    name: str | None = None,
    day: str | None = None,
) -> HtmlPage:
    room, night = _night(request)
    page = night_page(request.book, room, night)
    holding = night_holding(request.book, night)
    words: dict[str, object] = {
        "page": page,
        "typed": {
            "name": page.night.name or "" if name is None else name,
            "day": page.night.day.isoformat() if day is None else day,
        },
        "holding": holding,
        "saw": holding_text(holding),
        "refused": refused,
        "longest": LONGEST_NAME,
    }
    return HtmlPage("night_change.html", words, refused_status(refused) if refused else 200)


def _night(request: PageRequest) -> tuple[int, int]:
    return request.number("room"), request.number("night")


def _to_week(request: PageRequest, night: int) -> Redirect:
    day = night_page(request.book, request.number("room"), night).night.day
    return Redirect(f"{request.at('week.look')}?of={day.isoformat()}#night-{night}")
