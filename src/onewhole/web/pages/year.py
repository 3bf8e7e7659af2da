"""Year: the weeks of a class's year, the page for its next night, and the year to print and as a calendar."""

from markupsafe import Markup

from onewhole.desk.classes.class_year import (
    class_year,
    class_year_ics,
    class_year_pdf,
    composed_for_class,
    keep_class_year,
    usual_year,
)
from onewhole.desk.classes.year_files import ICS
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest, day_typed
from onewhole.web.http.response import Content, HtmlPage, Redirect, refused_status
from onewhole.web.jobs import Draft, Outcome, Progress

#: What the forms carry.
KEEP, COMPOSE = ("typed", "saw"), ("day",)


def look(request: PageRequest) -> HtmlPage:
    """Show the year of the class, or one to begin with."""
    return _shown(request)


def keep(request: PageRequest) -> HtmlPage | Redirect:
    """Keep a typed year."""
    typed = request.field("typed")
    try:
        keep_class_year(
            request.book, request.number("room"), typed, request.app.now(), saw=request.field("saw")
        )
    except InputError as refused:
        return _shown(request, refused, typed)
    return Redirect(f"{request.at('year.look')}#weeks")


def compose(request: PageRequest) -> Redirect:
    """Compose the page of a night; it goes on when the page is left, and ends on the Page desk."""
    day, file, room = day_typed(request.field("day")), request.open_file, request.room.number
    today, home = request.app.today(), request.at("page_desk.new")

    def run(_progress: Progress) -> Outcome:
        made = composed_for_class(file, room, day, today)
        said = (f"For {day.isoformat()}: {made.minutes} minutes.", *made.told)
        return Outcome(home, "The page is composed.", Draft(made.typed, said))

    job = request.app.jobs.start("A page is composed", home, run, again=True)
    return Redirect(request.at("job.look", job=job.name))


def as_pdf(request: PageRequest) -> Content:
    """Give the year as a PDF in a tab of its own."""
    made = class_year_pdf(request.book, request.number("room"), request.app.now())
    return Content(made, "application/pdf", "year.pdf", in_tab=True)


def as_ics(request: PageRequest) -> Content:
    """Give the year as a calendar file."""
    return Content(class_year_ics(request.book, request.number("room"), request.app.now()), ICS, "year.ics")


def _shown(request: PageRequest, refused: InputError | None = None, typed: str | None = None) -> HtmlPage:
    today = request.app.today()
    found = class_year(request.book, request.number("room"), today)
    kept = found.typed if found else ""
    mistakes = getattr(refused, "mistakes", ()) or ((refused,) if refused else ())
    return HtmlPage(
        "year.html",
        {
            "year": found,
            "saw": kept,
            "typed": (kept or usual_year(today)) if typed is None else typed,
            "mistakes": mistakes,
            "today": today,
            "picture": Markup(found.picture) if found else "",  # noqa: S704 - our own drawing, nothing typed
        },
        status=refused_status(refused) if refused else 200,
    )
