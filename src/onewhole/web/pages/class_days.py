"""The days on which pupils joined and left the class."""

from onewhole.desk.classes.pupil_days import days_of_class, keep_days
from onewhole.errors import InputError
from onewhole.web.http.request import BrokenForm, PageRequest
from onewhole.web.http.response import HtmlPage, Redirect, refused_status


def look(request: PageRequest) -> HtmlPage:
    """Show every pupil with the days."""
    return _shown(request)


def keep(request: PageRequest) -> HtmlPage | Redirect:
    """Keep the days beside the codes."""
    try:
        joined, left = request.beside("joined"), request.beside("left")
        typed = {code: (day, left[code]) for code, day in joined.items()}
        keep_days(request.book, request.number("room"), typed, request.beside("saw"))
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(f"{request.at('class_days.look')}?kept=yes")


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    rows = days_of_class(request.book, request.number("room"))
    stand = {row.pupil.code: (row.joined, row.left) for row in rows}
    if refused and not isinstance(refused, BrokenForm):
        saw, left = request.beside("saw"), request.beside("left")
        for code, joined in request.beside("joined").items():
            if f"{joined}|{left[code]}" != saw[code]:
                stand[code] = joined, left[code]
    words: dict[str, object] = {
        "rows": rows,
        "stand": stand,
        "refused": refused,
        "kept": request.query.get("kept") == "yes",
    }
    return HtmlPage("class_days.html", words, refused_status(refused) if refused else 200)
