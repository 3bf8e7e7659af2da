"""Pupil: the story, findings that fade, all that is held, given out or erased."""

from markupsafe import Markup

from onewhole.desk.classes.class_records import Pupil
from onewhole.desk.keep.backups import PRIVACY, clean, erase_everywhere
from onewhole.desk.pupil.pupil_export import export_csv, export_json, export_record
from onewhole.desk.pupil.pupil_story import CAUTION, CERTAINTY, GOOD_FOR_DAYS, MOST_WEEKS, story
from onewhole.errors import InputError
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Content, HtmlPage, Redirect


def look(request: PageRequest) -> HtmlPage:
    """Show the story."""
    told = story(request.book, request.number("room"), str(request.path_params["code"]), request.app.today())
    return HtmlPage(
        "pupil.html",
        {
            "told": told,
            "pupil": told.pupil,
            "picture": Markup(told.picture),  # noqa: S704 - our own drawing, no word of it is typed by anyone
            "caution": CAUTION,
            "certainty": CERTAINTY,
            "good_for": GOOD_FOR_DAYS,
            "most_weeks": MOST_WEEKS,
            "privacy": PRIVACY,
        },
    )


def held(request: PageRequest) -> HtmlPage:
    """Show everything that is held on this child."""
    pupil = _pupil(request)
    all_held = export_record(request.book, request.number("room"), pupil.code)
    return HtmlPage("held.html", {"pupil": pupil, "held": all_held, "privacy": PRIVACY})


def as_json(request: PageRequest) -> Content:
    """Give everything out as JSON."""
    code = _pupil(request).code
    text = export_json(request.book, request.number("room"), code)
    return Content(text.encode(), "application/json", f"held-on-{code.lower()}.json")


def as_csv(request: PageRequest) -> Content:
    """Give everything out as a table; the mark at its start tells a spreadsheet that it is UTF-8."""
    code = _pupil(request).code
    text = "\ufeff" + export_csv(request.book, request.number("room"), code)
    return Content(text.encode(), "text/csv; charset=utf-8", f"held-on-{code.lower()}.csv")


def ask_erase(request: PageRequest) -> HtmlPage:
    """Ask whether this child is to be erased."""
    return _asked(request)


def erase(request: PageRequest) -> HtmlPage:
    """Erase the child where the code was typed to confirm it; tell where the child may be still."""
    pupil = _pupil(request)
    if request.field("sure", "").strip().upper() != pupil.code:
        return _asked(
            request,
            InputError(
                f"Nothing was erased: the code typed is not {pupil.code}",
                remedy=f"Type {pupil.code} if you mean this child.",
            ),
        )
    erased = erase_everywhere(
        request.open_file,
        request.number("room"),
        pupil.code,
        backups=request.field("backups", "") == "yes",
        made=request.app.folder / request.book_name,
    )
    return HtmlPage("erased.html", {"erased": erased})


def clean_file(request: PageRequest) -> Redirect:
    """Write the file anew without what was erased."""
    clean(request.open_file)
    return Redirect(request.at("class_page.look"))


def _asked(request: PageRequest, refused: InputError | None = None) -> HtmlPage:
    words = {"pupil": _pupil(request), "refused": refused, "privacy": PRIVACY}
    return HtmlPage("erase.html", words, 422 if refused else 200)


def _pupil(request: PageRequest) -> Pupil:
    return request.room.pupil(str(request.path_params["code"]))
