"""Printing: what one click prints for a class, and a night printed that way."""

from collections.abc import Mapping

from onewhole.desk.classes.own_forms import own_readers
from onewhole.desk.page.class_prints import (
    FITS,
    MARKED,
    DoesNotFit,
    chosen,
    printable,
    printed_night,
    printed_typed,
    prints_of,
    prints_text,
    set_prints,
)
from onewhole.desk.page.own_pages_of_night import own_pages_of_night
from onewhole.desk.page.print_choice import MOST_COPIES, SheetPage
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Content, HtmlPage, Redirect, refused_status

#: What a form that prints has: what is typed, which page of it; whether the nearest will do.
TYPED, NEAREST = ("typed", "print"), ("nearest",)
#: What the form has: the place in the order and the copies of each page.
FORM = (
    *(f"{what}_{page.value}" for page in SheetPage for what in ("place", "copies")),
    "both",
    "fit",
    "marks",
    "each",
    "saw",
)


def look(request: PageRequest) -> HtmlPage:
    """Show what is printed, in which order, how many copies."""
    return _shown(request)


def keep(request: PageRequest) -> HtmlPage | Redirect:
    """Keep what is printed."""
    places = {page: _place(request, page) for page in SheetPage}
    copies = {page: request.count(f"copies_{page.value}", 0, 10**6) for page in SheetPage}
    try:
        choice = chosen(
            places,
            copies,
            both_sides=request.field("both", "") == "yes",
            fit=_fit(request),
            marks=_marks(request),
            each_pupil=request.field("each", "") == "yes",
        )
        set_prints(request.book, request.number("room"), choice, saw=request.field("saw"))
    except InputError as refused:
        return _shown(request, refused)
    return Redirect(f"{request.at('printing.look')}#kept")


def night(request: PageRequest) -> Content | HtmlPage:
    """Give the pages of a night as one PDF in a tab of its own; where they do not fit, say so and ask."""
    nearest = request.field("nearest", "") == "yes"
    book, room, number = request.book, request.number("room"), request.number("night")
    try:
        made = printed_night(book, room, number, request.app.now(), nearest=nearest)
    except DoesNotFit as refused:
        return not_fitting(request.at("printing.night"), refused, {})
    return Content(made.content, "application/pdf", made.name, in_tab=True)


def own(request: PageRequest) -> Content:
    """Give the own pages of pupils who read a night's page in braille or in large print, as one ZIP file."""
    made = own_pages_of_night(
        request.book, request.number("room"), request.number("night"), request.app.now()
    )
    return Content(made.content, made.media, made.name)


def typed(request: PageRequest) -> Content | HtmlPage:
    """Give what is typed on the Page desk as a PDF, or in braille; otherwise as :func:`night`."""
    nearest = request.field("nearest", "") == "yes"
    text, kind = request.field("typed").replace("\r\n", "\n"), request.field("print")
    book, room = request.book, request.number("room")
    try:
        made = printed_typed(book, room, text, kind, request.app.now(), nearest=nearest)
    except DoesNotFit as refused:
        return not_fitting(request.at("printing.typed"), refused, {"typed": text, "print": kind})
    return Content(made.content, made.media, made.name, in_tab=True)


def not_fitting(again: str, refused: DoesNotFit, fields: Mapping[str, str]) -> HtmlPage:
    """Say that the problems do not fit, and offer the nearest."""
    return HtmlPage("not_fitting.html", {"again": again, "fit": refused.fit, "fields": fields})


def _fit(request: PageRequest) -> str:
    fit = request.field("fit", "")
    if fit not in FITS:
        raise InputError("There is no such choice of room", remedy="Choose one of the list.")
    return fit


def _marks(request: PageRequest) -> str:
    marks = request.field("marks", "")
    if marks not in MARKED:
        raise InputError("There is no such choice of marks", remedy="Choose one of the list.")
    return marks


def _place(request: PageRequest, page: SheetPage) -> str:
    place = request.field(f"place_{page.value}", "")
    if place not in {"", *_PLACES}:
        raise InputError("There is no such place in the order", remedy="Choose one of the list.")
    return place


_PLACES = {"1": "first", "2": "second", "3": "third", "4": "fourth"}


def _shown(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    choice = prints_of(request.book, request.number("room"))
    order = [part.page.value for part in choice.parts]
    typed = {
        page.value: {
            "place": str(order.index(page.value) + 1) if page.value in order else "",
            "copies": str(choice.copies(page) or 1),
        }
        for page in SheetPage
    }
    if refused:
        typed = {
            page.value: {what: request.field(f"{what}_{page.value}", "") for what in ("place", "copies")}
            for page in SheetPage
        }
    return HtmlPage(
        "printing.html",
        {
            "pages": printable(),
            "places": _PLACES,
            "typed": typed,
            "both": request.field("both", "") == "yes" if refused else choice.both_sides,
            "saw": prints_text(choice),
            "fits": FITS,
            "fit": request.field("fit", "") if refused else choice.fit,
            "marked": MARKED,
            "marks": request.field("marks", "") if refused else choice.marks,
            "each": request.field("each", "") == "yes" if refused else choice.each_pupil,
            "most": MOST_COPIES,
            "own_pages": own_readers(request.book, request.number("room")),
            "refused": refused,
        },
        refused_status(refused) if refused else 200,
    )
